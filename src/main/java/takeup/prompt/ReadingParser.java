package takeup.prompt;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.kit.Meter;
import takeup.kit.MeteredPair;
import takeup.text.Plain;

/**
 * Reads what a meter said, as the meter in hand shows it: {@code 5.6 125}, {@code 5.6.3 125}, {@code ev11.3},
 * {@code 2500lx}, {@code spot 9.3 z3}, {@code sky shade}.
 */
public final class ReadingParser {
    private final Meter meter;
    private final Optional<ExposureTime> preset;
    private final Optional<FilmSpeed> rollIndex;
    private final ReadingOptions options;
    private final List<Double> values = new ArrayList<>();
    private Optional<ExposureTime> presetNow;
    private Optional<Light.Method> method;
    private boolean usedIndex;
    private Optional<MeteredPair> shown = Optional.empty();

    private ReadingParser(
            ReadingOptions options, Meter meter, Optional<ExposureTime> preset, Optional<FilmSpeed> rollIndex) {
        this.options = options;
        this.meter = meter;
        this.preset = preset;
        this.presetNow = preset;
        this.rollIndex = rollIndex;
        this.method = options.method();
    }

    /**
     * The reading that the words behind {@code m} mean.
     *
     * @param typed the whole line, for the record
     * @param words the words behind {@code m}
     * @param meter the meter in hand
     * @param preset the time it is preset to
     * @param rollIndex the index of the roll in hand
     * @param now when it is taken
     */
    public static Reading read(
            String typed,
            List<String> words,
            Meter meter,
            Optional<ExposureTime> preset,
            Optional<FilmSpeed> rollIndex,
            OffsetDateTime now) {
        ReadingOptions options = ReadingOptions.of(words);
        ReadingParser parser = new ReadingParser(options, meter, preset, rollIndex);
        return options.isFlash() ? parser.flash() : parser.read(typed, now);
    }

    private Reading read(String typed, OffsetDateTime now) {
        if (method.isEmpty() && meter.method() != Light.Method.INCIDENT) {
            method = Optional.of(meter.method());
        }
        if (isCamera() && options.isEv()) {
            throw cameraPair("ev");
        }
        if (options.sky().isPresent()) {
            values.add(options.sky().get().ev100() - options.fromTheSide());
        } else {
            for (List<Token> part : options.parts()) {
                part(part);
            }
        }
        if (values.isEmpty()) {
            throw new CommandRejected(
                    options.which().isPresent()
                            ? "m " + (options.which().get() == ReadingOptions.Which.LOW ? "low" : "high")
                                    + " needs numbers: m low 5.6 125 and 11 125"
                            : "a reading needs numbers: m 5.6 125, m ev11.3, m 2500lx");
        }
        return new Reading(
                Optional.of(light(typed, now)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Reading.Basis.of(values, options),
                presetNow.equals(preset) ? Optional.empty() : presetNow,
                values.size() == 1 && !options.hasZone() ? shown : Optional.empty());
    }

    private Light light(String typed, OffsetDateTime now) {
        Light.Method how = method.orElse(Light.Method.INCIDENT);
        OptionalInt zone = options.zone(how, values.size());
        OptionalInt placed = how == Light.Method.SPOT ? OptionalInt.of(zone.orElse(5)) : zone;
        double ev = options.counted(values) + 5 - placed.orElse(5);
        if (!(ev >= -20 && ev <= 30)) {
            throw new CommandRejected(
                    "EV " + Plain.decimals(ev, 1) + " is no light that there is: EV -20 to 30 at ISO 100");
        }
        OptionalDouble span = values.size() < 2 || !options.zoneOfEach().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Collections.max(values) - Collections.min(values));
        OptionalDouble index = usedIndex ? OptionalDouble.of(index().arithmetic()) : OptionalDouble.empty();
        return new Light(new ExposureValue(ev), how, typed, span, placed, index, now);
    }

    private boolean isCamera() {
        return method.equals(Optional.of(Light.Method.CAMERA));
    }

    private MeterMarks marks() {
        return isCamera() ? MeterMarks.CAMERA : MeterMarks.of(meter);
    }

    private static CommandRejected cameraPair(String word) {
        return new CommandRejected(
                "a camera's own meter gives an aperture and a time (m camera 4 500 @400); " + word + " is neither");
    }

    private FilmSpeed index() {
        Optional<FilmSpeed> speed = options.speed().isPresent() ? options.speed() : rollIndex;
        if (speed.isEmpty()) {
            throw new CommandRejected("no film is loaded: say the speed that the meter is set to, such as @200");
        }
        return speed.get();
    }

    /** One reading, or several numbers of one sort in a row. */
    private void part(List<Token> part) {
        if (part.isEmpty()) {
            return;
        }
        boolean camera = isCamera();
        boolean spot = method.equals(Optional.of(Light.Method.SPOT)) && !(marks().isPair(part) && !options.isEv());
        boolean evs = options.isEv() || spot || meter.shows() == Meter.Shows.EV && !camera;
        List<Token> left = new ArrayList<>();
        for (Token token : part) {
            switch (token.kind()) {
                case EV -> {
                    if (camera) {
                        throw cameraPair(token.text());
                    }
                    ev(token.value(), token.text());
                }
                case LUX -> {
                    Optional<Light.Method> said = options.method().isPresent() ? method : Optional.empty();
                    method = Optional.of(ReadingOptions.oneOf(said, Light.Method.LUX));
                    values.add(ExposureValue.ofLux(positive(token), meter.incidentConstant())
                            .stops());
                }
                case CANDELAS -> {
                    if (camera) {
                        throw cameraPair(token.text());
                    }
                    method = Optional.of(method.orElse(Light.Method.REFLECTED));
                    values.add(ExposureValue.ofLuminance(positive(token), meter.reflectedConstant())
                            .stops());
                }
                case BARE -> {
                    if (evs && token.tenths() < 0) {
                        ev(token.value(), token.text());
                    } else {
                        left.add(token);
                    }
                }
                case APERTURE, TIME -> {
                    if (spot) {
                        throw new CommandRejected(token.text() + ": spot readings are EVs, such as m spot 9.3 z3");
                    }
                    left.add(token);
                }
                default -> throw new CommandRejected(token.text() + " is no part of a reading");
            }
        }
        if (left.isEmpty()) {
            return;
        }
        if (meter.shows() == Meter.Shows.APERTURE && !camera) {
            apertures(left);
        } else if (!camera && areLoneEvs(left)) {
            for (Token token : left) {
                ev(token.value(), token.text());
            }
        } else {
            pairOf(left);
        }
    }

    private boolean areLoneEvs(List<Token> tokens) {
        for (Token token : tokens) {
            if (!isLoneEv(token)) {
                return false;
            }
        }
        return true;
    }

    private static double positive(Token token) {
        if (!(token.value() > 0)) {
            throw new CommandRejected(token.text() + ": no light at all; a reading is above 0");
        }
        return token.value();
    }

    /** A bare number with a decimal that is no f-number is an EV, unless the meter shows tenths. */
    private boolean isLoneEv(Token token) {
        return token.is(Token.Kind.BARE)
                && token.tenths() < 0
                && token.text().indexOf('.') >= 0
                && !meter.tenths()
                && token.value() > 0
                && marks().fNumber(token).isEmpty();
    }

    private void ev(double value, String text) {
        if (options.speed().isPresent() || meter.evAtSetSpeed()) {
            usedIndex = true;
            values.add(value - index().stopsFrom100());
        } else {
            values.add(value);
        }
        if (!(Math.abs(value) <= 40)) {
            throw new CommandRejected(text + " is no exposure value that there is");
        }
    }

    private void pairOf(List<Token> tokens) {
        if (tokens.size() == 1) {
            throw LoneNumber.rejected(tokens.get(0), isCamera());
        }
        if (tokens.size() > 2) {
            throw new CommandRejected("a reading is an aperture and a time; "
                    + tokens.get(2).text() + " is one too many (and stands between two readings)");
        }
        Token first = tokens.get(0);
        Token second = tokens.get(1);
        boolean turned = first.is(Token.Kind.TIME) || second.is(Token.Kind.APERTURE);
        Optional<Aperture> aperture = marks().fNumber(turned ? second : first);
        Optional<ExposureTime> time = marks().time(turned ? first : second);
        if (aperture.isEmpty() || time.isEmpty()) {
            boolean other = !turned
                    && marks().fNumber(second).isPresent()
                    && marks().time(first).isPresent();
            throw new CommandRejected(first.text() + " " + second.text() + " is no aperture and time, such as "
                    + (other ? second.text() + " " + first.text() : "5.6 125")
                    + (isCamera() ? "" : "; two EVs are m ev " + first.text() + " " + second.text()));
        }
        pair(aperture.get(), time.get());
    }

    private void pair(Aperture aperture, ExposureTime time) {
        shown = Optional.of(new MeteredPair(aperture, time));
        usedIndex = true;
        values.add(ExposureValue.of(aperture, time).at100(index()).stops());
    }

    /** Apertures at the preset time; with a pair that time is the preset from then on. */
    private void apertures(List<Token> tokens) {
        List<Aperture> found = new ArrayList<>();
        for (Token token : tokens) {
            Optional<Aperture> aperture = token.is(Token.Kind.TIME) ? Optional.empty() : marks().fNumber(token);
            if (aperture.isPresent()) {
                found.add(aperture.get());
            } else {
                Optional<ExposureTime> time = marks().time(token);
                if (time.isEmpty()) {
                    throw new CommandRejected(token.text() + " is no aperture and no time: m 5.6, or m 5.6 1/125");
                }
                if (found.size() != 1 || tokens.size() != 2) {
                    throw new CommandRejected("an aperture, then one time: m 5.6 " + token.text());
                }
                presetNow = time;
            }
        }
        if (presetNow.isEmpty()) {
            throw new CommandRejected("this meter shows an aperture at a preset time, which is not known yet: m "
                    + tokens.get(0).text() + " 1/125, or meter " + meter.key() + " 1/125");
        }
        for (Aperture aperture : found) {
            pair(aperture, presetNow.get());
        }
    }

    private Reading flash() {
        if (options.parts().size() > 2 || options.parts().stream().anyMatch(it -> it.size() != 1)) {
            throw new CommandRejected(
                    "a flash meter gives one aperture, or one each for key and fill: m flash 8, m flash 8 and 5.6");
        }
        return Reading.ofFlash(
                options.parts().stream().map(it -> marks().flash(it.get(0))).toList(), index());
    }
}
