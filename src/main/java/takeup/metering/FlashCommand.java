package takeup.metering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.advice.ExposureInHand;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.GuideNumber;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Shutter;
import takeup.kit.Warning;
import takeup.prompt.CameraStateParser;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.Reading;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.report.AdviceJson;
import takeup.report.StatusJson;
import takeup.report.WarningText;
import takeup.roll.ClockShift;
import takeup.roll.ExposureResult;
import takeup.roll.Film;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * Flash: {@code flash on}, guide numbers ({@code flash gn36m 3m 1/4}) and the flash meter's aperture ({@code m flash
 * 8}).
 */
public final class FlashCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "flash", "flash is on or off, or its guide number, distance and power")
            .usage("flash on", "flash gn36m 3m 1/4")
            .form("flash on", "the frames that follow are with flash")
            .form("flash gn36m 3m 1/4", "guide number in metres, distance, power")
            .form("flash off", "without flash")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return read(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, Completions.ON_OFF);
    }

    private static Outcome read(CommandContext context, Arguments arguments) {
        List<String> words = arguments.rest();
        if (words.isEmpty()) {
            throw new CommandRejected("flash is on or off, or a guide number with the distance: flash gn36 3m 1/4");
        }
        return words.get(0).startsWith("gn")
                ? guided(context, arguments.line(), joined(words))
                : switched(context, Arguments.one("flash", words, "flash on, flash gn36 3m"));
    }

    private static Outcome switched(CommandContext context, String value) {
        Camera camera = context.camera();
        boolean on = CameraStateParser.onOrOff("flash", value);
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(
                camera.key(), context.state().inHand(camera).with(SettingPatch.flash(on))))));
        List<Warning> warnings = on ? caution(context, camera, entries) : List.of();
        ShootState after = context.after(entries);
        return context.does(
                entries,
                after,
                context.stateAnswer(after, camera.key() + ": flash " + value + ".", warnings),
                List.of());
    }

    /** The caution about old units, once ever on a camera; that it was given is written down. */
    private static List<Warning> caution(CommandContext context, Camera camera, List<JournalEntry> entries) {
        if (context.state().day().flashed().contains(camera.key())) {
            return List.of();
        }
        entries.add(new JournalEntry.OnDay(new DayEvent.FlashCautioned(camera.key())));
        return List.of(new Warning(
                Warning.Code.FLASH_VOLTAGE, "an old unit can harm the contacts: keep to the camera's limit"));
    }

    /** {@code gn 36 m} becomes {@code gn36m}. */
    private static List<String> joined(List<String> words) {
        List<String> out = new ArrayList<>();
        for (String word : words) {
            String before = out.isEmpty() ? "" : out.get(out.size() - 1);
            boolean number = before.equals("gn");
            boolean unit = before.startsWith("gn")
                    && before.length() > 2
                    && Tokens.isDigit(before.charAt(before.length() - 1))
                    && (word.equals("m") || word.equals("ft"));
            if (number || unit) {
                out.set(out.size() - 1, before + word);
            } else {
                out.add(word);
            }
        }
        return out;
    }

    private static Outcome guided(CommandContext context, String line, List<String> words) {
        Camera camera = context.camera();
        Film film = context.roll().film();
        OptionalDouble power = OptionalDouble.empty();
        Optional<Token> distance = Optional.empty();
        List<String> heads = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            if (word.startsWith("gn")) {
                heads.add(word);
                continue;
            }
            boolean said = word.equals("power");
            if (said && at + 1 == words.size()) {
                throw new CommandRejected("which power? such as power 1/4");
            }
            String value = said ? words.get(++at) : word;
            Token token = Tokens.token(value);
            if (token.is(Token.Kind.METRES) && !said) {
                if (distance.isPresent()) {
                    throw new CommandRejected("two distances: " + distance.get().text() + " and " + value);
                }
                FrameArguments.distance(token);
                distance = Optional.of(token);
            } else if (said || value.indexOf('/') >= 0) {
                if (power.isPresent()) {
                    throw new CommandRejected("two powers in one line; " + value + " is one too many");
                }
                power = OptionalDouble.of(power(value));
            } else {
                throw new CommandRejected(value + " is no part of a flash line: flash gn36 3m 1/4");
            }
        }
        CameraSetup before = context.state().inHand(camera);
        OptionalDouble metres = distance.isPresent()
                ? OptionalDouble.of(distance.get().value())
                : before.setting().distanceM();
        if (metres.isEmpty()) {
            throw new CommandRejected("how far is it from the flash to the subject? flash " + heads.get(0) + " 3m");
        }
        Optional<Token> unit = distance;
        GuideNumber guide = heads.size() > 9
                ? none("more than nine heads")
                : together(heads.stream().map(it -> head(it, unit)).toList());
        double exact = guide.fNumber(film.index(), power.orElse(1), metres.getAsDouble());
        FlashLight flash = new FlashLight(
                new Aperture(Plain.rounded(exact, 3), 0, 2 * Stops.of(exact)), film.index(), line, context.now());
        CameraSetup inHand = before.with(SettingPatch.flash(true));
        inHand = distance.isPresent() ? inHand.with(SettingPatch.distance(metres.getAsDouble())) : inHand;
        String far = distance.isPresent() && distance.get().text().endsWith("ft")
                ? Plain.digits(metres.getAsDouble() / GuideNumber.FOOT, 3) + " ft"
                : Plain.digits(metres.getAsDouble(), 3) + " m";
        return lit(
                context,
                flash,
                camera,
                film,
                inHand,
                "Flash at EI " + film.index() + ": " + flash.aperture() + " at " + far + ": set ",
                new ArrayList<>());
    }

    /** A part of full power: {@code 1/4}, or {@code 0.25} behind the word. */
    private static double power(String word) {
        int slash = word.indexOf('/');
        Optional<Double> above = Tokens.number(slash < 0 ? word : word.substring(0, slash));
        Optional<Double> below = slash < 0 ? Optional.of(1.0) : Tokens.number(word.substring(slash + 1));
        double power = above.isPresent() && below.isPresent() && below.get() > 0 ? above.get() / below.get() : 0;
        if (!(power >= 1 / 4096.0 && power <= 1)) {
            throw new CommandRejected(word + " is no power: a part of full power, above 0 and up to 1, such as 1/4");
        }
        return power;
    }

    /** One head; its unit is said outright, or is that of the distance on the line. */
    private static GuideNumber head(String word, Optional<Token> distance) {
        boolean feet = word.endsWith("ft");
        boolean metres = !feet && word.endsWith("m");
        String number = word.substring(2, word.length() - (feet ? 2 : metres ? 1 : 0));
        double value = Tokens.number(number)
                .orElseThrow(
                        () -> new CommandRejected(word + " is no guide number: gn36m for metres, gn118ft for feet"));
        if (!feet && !metres && distance.isEmpty()) {
            throw new CommandRejected(word + " could be for metres or for feet: " + word + "m or " + word + "ft");
        }
        boolean inFeet = feet || !metres && distance.orElseThrow().text().endsWith("ft");
        if (!(value > 0 && value * (inFeet ? GuideNumber.FOOT : 1) <= 500)) {
            return none(word);
        }
        return inFeet ? GuideNumber.inFeet(value) : new GuideNumber(value);
    }

    private static GuideNumber together(List<GuideNumber> heads) {
        double sum = heads.stream().mapToDouble(it -> it.metres() * it.metres()).sum();
        return Math.sqrt(sum) <= 500 ? GuideNumber.together(heads) : none("all heads together");
    }

    private static GuideNumber none(String what) {
        throw new CommandRejected(what + " is no guide number that there is: above 0 and up to 500 in metres");
    }

    /** What a flash meter said. */
    static Outcome measured(CommandContext context, String line, Reading reading, List<JournalEntry> entries) {
        Camera camera = context.camera();
        Film film = context.roll().film();
        FlashLight flash = new FlashLight(
                reading.flash().orElseThrow(), reading.flashIndex().orElseThrow(), line, context.now());
        return lit(context, flash, camera, film, context.state().inHand(camera), words(flash) + ". Set: ", entries);
    }

    private static Outcome lit(
            CommandContext context,
            FlashLight flash,
            Camera camera,
            Film film,
            CameraSetup before,
            String words,
            List<JournalEntry> entries) {
        Optional<ClockShift> shift = context.clockShifts().sinceFrameOrReading();
        shift.ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it))));
        entries.add(new JournalEntry.OnDay(new DayEvent.FlashMetered(flash)));
        CameraSetup inHand = before;
        String text = words.substring(0, words.length() - 6).strip();
        if (before.setting().lens().isPresent()) {
            double asked = ExposureResult.path(film, before.setting()).flashError(flash, Aperture.literal(1));
            Aperture nearest = before.hold()
                    .flatMap(Hold::aperture)
                    .orElseGet(() -> before.setting().lens().get().ring().nearest(asked));
            inHand = before.with(SettingPatch.aperture(nearest));
            text = words + nearest + ", " + Stops.error(asked - nearest.stops())
                    + (before.setting().flash() ? "" : "; flash on counts it") + ".";
        }
        if (!inHand.equals(context.state().inHand(camera))
                || before.setting().lens().isPresent()) {
            entries.add(new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(camera.key(), inHand)));
        }
        List<Warning> all = new ArrayList<>(caution(context, camera, entries));
        shift.map(WarningText::clockBeforeReading).ifPresent(all::add);
        List<Warning> warnings = context.unsilenced(all);
        ShootState after = context.after(entries);
        Json.Obj fields = StatusJson.of(after)
                .and("flashLight", flash.aperture())
                .and("ambientStops", AdviceJson.exact(ExposureInHand.ambientError(after)));
        return context.does(
                entries, after, new Outcome.Answer("light", text + ambientWords(after), fields, warnings), List.of());
    }

    /** Whether a flash reading decides the aperture: flash is on, and both are known. */
    static boolean leads(ShootState s) {
        return s.inHand().setting().flash()
                && s.inHand().setting().aperture().isPresent()
                && s.day().flash().isPresent();
    }

    /**
     * The time beside a flash reading: the one in hand, but none that is faster than the sync, and none that gives the
     * light that is there anyway too much. Empty on a camera without a dial.
     */
    static Optional<ExposureTime> besideFlash(Camera camera, AdviceRequest asking, Light light) {
        if (camera.shutter().isEmpty()) {
            return asking.setting().time();
        }
        Shutter shutter = camera.shutter().get();
        ExposureTime sync = camera.syncTime().orElse(shutter.fastest());
        ExposureTime time = asking.setting()
                .time()
                .filter(it -> !Stops.above(sync.stops(), it.stops()))
                .orElse(sync);
        Aperture aperture = asking.setting().aperture().orElseThrow();
        OptionalDouble wanted = asking.path().corrected(light.ev100(), aperture);
        if (wanted.isEmpty()
                || !Stops.above(asking.path().error(light.ev100(), aperture, time), asking.toleratedOverStops())) {
            return Optional.of(time);
        }
        ExposureTime shorter = shutter.nearest(wanted.getAsDouble(), asking.prefersOverexposure());
        return Optional.of(Stops.above(sync.stops(), shorter.stops()) ? sync : shorter);
    }

    /**
     * How far the light that is there anyway lies under or over the setting in hand; empty while one of the two
     * readings is missing.
     */
    static String ambientWords(ShootState s) {
        OptionalDouble ambient = ExposureInHand.ambientError(s);
        return ambient.isEmpty() ? "" : " Ambient light alone: " + Stops.error(ambient.getAsDouble()) + ".";
    }

    static String words(FlashLight flash) {
        return "Flash: " + flash.aperture() + " at " + flash.index();
    }
}
