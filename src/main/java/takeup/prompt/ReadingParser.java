package takeup.prompt;

import java.time.OffsetDateTime;
import java.util.ArrayList;
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
import takeup.text.Nearest;
import takeup.text.Plain;

/**
 * Reads what a meter said, as the meter in hand shows it: {@code 5.6 125}, {@code 5.6.3 125}, {@code ev11.3},
 * {@code 2500lx}, {@code spot 9.3 z3}, {@code sky shade}.
 */
public final class ReadingParser {
    private static final List<String> SKIES = List.of("snow", "sun", "hazy", "cloudy", "overcast", "shade");
    /** EV at ISO 100 for each sky: the daylight rule (armycommunications.tpub.com, SS0507; ANSI PH2.7 table). */
    private static final double[] SKY_EV = {16, 15, 14, 13, 12, 12};

    private static final List<String> WORDS =
            List.of("ev", "low", "high", "spot", "reflected", "incident", "flash", "camera", "sky", "and");

    private final Meter meter;
    private final Optional<ExposureTime> preset;
    private final Optional<FilmSpeed> rollIndex;
    private final List<Double> values = new ArrayList<>();
    private Optional<ExposureTime> presetNow;
    private Optional<FilmSpeed> speed = Optional.empty();
    private Optional<Light.Method> method = Optional.empty();
    private Optional<Boolean> lowest = Optional.empty();
    private OptionalInt zone = OptionalInt.empty();
    private boolean allEv;
    private boolean saysHow;
    private boolean flash;
    private boolean usedIndex;

    private ReadingParser(Meter meter, Optional<ExposureTime> preset, Optional<FilmSpeed> rollIndex) {
        this.meter = meter;
        this.preset = preset;
        this.presetNow = preset;
        this.rollIndex = rollIndex;
    }

    /** The light of a sky by the daylight rule, EV at ISO 100; empty for another word. */
    static OptionalDouble sky(String word) {
        int index = SKIES.indexOf(word);
        return index < 0 ? OptionalDouble.empty() : OptionalDouble.of(SKY_EV[index]);
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
        return new ReadingParser(meter, preset, rollIndex).read(typed, words, now);
    }

    private Reading read(String typed, List<String> words, OffsetDateTime now) {
        List<List<Token>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        boolean sky = false;
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            Token token = Tokens.token(word);
            switch (word) {
                case "ev" -> allEv = true;
                case "low", "high" -> {
                    if (lowest.isPresent()) {
                        throw new CommandRejected("low or high, one of the two");
                    }
                    lowest = Optional.of(word.equals("low"));
                }
                case "spot" -> method(Light.Method.SPOT);
                case "reflected" -> method(Light.Method.REFLECTED);
                case "incident" -> method(Light.Method.INCIDENT);
                case "camera" -> method(Light.Method.CAMERA);
                case "flash" -> flash = true;
                case "sky" -> {
                    method(Light.Method.SKY);
                    sky = true;
                    String which = at + 1 < words.size() ? words.get(++at) : "";
                    int index = SKIES.indexOf(which);
                    if (index < 0) {
                        throw new CommandRejected((which.isEmpty() ? "which sky" : which + " is no sky known here")
                                + ": one of " + String.join(", ", SKIES) + Nearest.question(which, SKIES));
                    }
                    values.add(SKY_EV[index]);
                }
                case "and" -> {
                    if (parts.get(parts.size() - 1).isEmpty() && !sky) {
                        throw new CommandRejected("a reading is missing before and");
                    }
                    parts.add(new ArrayList<>());
                }
                default -> {
                    if (token.is(Token.Kind.INDEX)) {
                        FilmSpeed other = LoadArguments.speed(token);
                        if (speed.isPresent() && !speed.get().equals(other)) {
                            throw new CommandRejected("two speeds for one reading: @" + speed.get() + " and " + word);
                        }
                        speed = Optional.of(other);
                    } else if (isZone(word)) {
                        zone = OptionalInt.of(zone(word));
                    } else if (token.is(Token.Kind.WORD)) {
                        throw new CommandRejected(word + " is no reading"
                                + (SKIES.contains(word)
                                        ? "; did you mean m sky " + word + "?"
                                        : Nearest.question(word, WORDS))
                                + "; such as m 5.6 125, m ev11.3, m 2500lx, m sky shade");
                    } else {
                        parts.get(parts.size() - 1).add(token);
                    }
                }
            }
        }
        if (parts.size() > 1 && parts.get(parts.size() - 1).isEmpty()) {
            throw new CommandRejected("a reading is missing after and");
        }
        if (flash) {
            if (method.isPresent() || lowest.isPresent() || zone.isPresent() || allEv) {
                throw new CommandRejected("a flash meter gives one aperture, and nothing else: m flash 8");
            }
            return flash(parts.get(0), parts.size());
        }
        if (sky && (parts.size() > 1 || !parts.get(0).isEmpty())) {
            throw new CommandRejected("m sky takes the word for the sky alone");
        }
        saysHow = method.isPresent();
        if (!saysHow && meter.method() != Light.Method.INCIDENT) {
            method = Optional.of(meter.method());
        }
        if (isCamera() && allEv) {
            throw cameraPair("ev");
        }
        if (!sky) {
            for (List<Token> part : parts) {
                part(part);
            }
        }
        if (values.isEmpty()) {
            throw new CommandRejected(
                    lowest.isPresent()
                            ? "m " + (lowest.get() ? "low" : "high") + " needs numbers: m low 5.6 125 and 11 125"
                            : "a reading needs numbers: m 5.6 125, m ev11.3, m 2500lx");
        }
        return new Reading(
                Optional.of(light(typed, now)),
                Optional.empty(),
                Optional.empty(),
                values.size() < 2
                        ? OptionalDouble.empty()
                        : values.stream().mapToDouble(Double::doubleValue).min(),
                changedPreset());
    }

    private Optional<ExposureTime> changedPreset() {
        return presetNow.equals(preset) ? Optional.empty() : presetNow;
    }

    private Light light(String typed, OffsetDateTime now) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
            sum += value;
        }
        double ev = lowest.isEmpty() ? sum / values.size() : lowest.get() ? least : most;
        Light.Method how = method.orElse(Light.Method.INCIDENT);
        if (zone.isPresent() && how != Light.Method.SPOT) {
            throw new CommandRejected("a zone belongs to a spot reading: m spot 9.3 z" + zone.getAsInt());
        }
        if (how == Light.Method.SPOT) {
            int placed = zone.orElse(5);
            zone = OptionalInt.of(placed);
            ev += 5 - placed;
        }
        if (!(ev >= -20 && ev <= 30)) {
            throw new CommandRejected(
                    "EV " + Plain.decimals(ev, 1) + " is no light that there is: EV -20 to 30 at ISO 100");
        }
        OptionalDouble span = values.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(most - least);
        OptionalDouble index = usedIndex ? OptionalDouble.of(index().arithmetic()) : OptionalDouble.empty();
        return new Light(new ExposureValue(ev), how, typed, span, zone, index, now);
    }

    private void method(Light.Method other) {
        if (method.isPresent() && method.get() != other) {
            throw new CommandRejected(
                    "one way of reading at a time: " + method.get().word() + " or " + other.word());
        }
        method = Optional.of(other);
    }

    private static boolean isZone(String word) {
        return word.length() > 1 && word.charAt(0) == 'z' && Tokens.isDigit(word.charAt(1));
    }

    private int zone(String word) {
        if (zone.isPresent()) {
            throw new CommandRejected("two zones in one reading");
        }
        return Tokens.number(word.substring(1))
                .filter(it -> it == Math.rint(it) && it <= 10)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected(word + " is no zone: z0 to z10, z5 is the middle"));
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
        return speed.or(() -> rollIndex)
                .orElseThrow(() ->
                        new CommandRejected("no film is loaded: say the speed that the meter is set to, such as @200"));
    }

    /** One reading, or several numbers of one sort in a row. */
    private void part(List<Token> part) {
        if (part.isEmpty()) {
            return;
        }
        boolean camera = isCamera();
        boolean spot = method.equals(Optional.of(Light.Method.SPOT));
        boolean evs = allEv || spot || meter.shows() == Meter.Shows.EV && !camera;
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
                    if (!saysHow) {
                        method = method.filter(it -> it == Light.Method.LUX);
                    }
                    method(Light.Method.LUX);
                    positive(token);
                    values.add(ExposureValue.ofLux(token.value(), meter.incidentConstant())
                            .stops());
                }
                case CANDELAS -> {
                    if (camera) {
                        throw cameraPair(token.text());
                    }
                    if (method.isEmpty()) {
                        method(Light.Method.REFLECTED);
                    }
                    positive(token);
                    values.add(ExposureValue.ofLuminance(token.value(), meter.reflectedConstant())
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
        } else if (!camera && left.stream().allMatch(this::isLoneEv)) {
            left.forEach(it -> ev(it.value(), it.text()));
        } else {
            pairOf(left);
        }
    }

    private static void positive(Token token) {
        if (!(token.value() > 0)) {
            throw new CommandRejected(token.text() + ": no light at all; a reading is above 0");
        }
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
        if (speed.isPresent() || meter.evAtSetSpeed()) {
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
            throw lone(tokens.get(0));
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

    private CommandRejected lone(Token token) {
        String number = token.text();
        if (token.is(Token.Kind.TIME)) {
            return new CommandRejected("m " + number + ": the aperture is missing, m f5.6 " + number);
        }
        if (isCamera()) {
            return new CommandRejected("the time of " + number + " is missing: m camera 4 500");
        }
        if (token.is(Token.Kind.APERTURE)) {
            return new CommandRejected("m " + number + ": the time is missing, m " + number + " 125");
        }
        if (token.value() < 0) {
            return new CommandRejected("m " + number + ": no aperture is below 0; as an EV it is m ev" + number);
        }
        return new CommandRejected("m " + number + " could be an aperture (its time is missing: m " + number
                + " 125) or an EV (m ev" + number + ")");
    }

    private void pair(Aperture aperture, ExposureTime time) {
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
                ExposureTime time = marks().time(token)
                        .orElseThrow(() -> new CommandRejected(
                                token.text() + " is no aperture and no time: m 5.6, or m 5.6 1/125"));
                if (found.size() != 1 || tokens.size() != 2) {
                    throw new CommandRejected("an aperture, then one time: m 5.6 " + token.text());
                }
                presetNow = Optional.of(time);
            }
        }
        if (presetNow.isEmpty()) {
            throw new CommandRejected("this meter shows an aperture at a preset time, which is not known yet: m "
                    + tokens.get(0).text() + " 1/125, or meter " + meter.key() + " 1/125");
        }
        found.forEach(it -> pair(it, presetNow.get()));
    }

    private Reading flash(List<Token> tokens, int parts) {
        if (parts > 1 || tokens.size() != 1) {
            throw new CommandRejected("a flash meter gives one aperture: m flash 8");
        }
        Aperture aperture = marks().fNumber(tokens.get(0))
                .orElseThrow(() -> new CommandRejected(tokens.get(0).text() + " is no aperture: m flash 8"));
        return new Reading(
                Optional.empty(),
                Optional.of(aperture),
                Optional.of(index()),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
