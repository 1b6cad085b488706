package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.day.CameraEvent;
import takeup.day.Sun;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Meter;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.prompt.CommandRejected;
import takeup.prompt.Reading;
import takeup.prompt.ReadingParser;
import takeup.prompt.Sky;
import takeup.report.LightText;
import takeup.report.StatusJson;
import takeup.roll.Coordinates;
import takeup.roll.Film;
import takeup.roll.Roll;

/** {@code m 5.6 125}: a light reading. */
public final class ReadingCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("m", "a light reading; alone: the last one again")
            .usage("m 5.6 125", "m ev11.3", "m low 5.6 125 and 11 125")
            .form("m 5.6 125", "the pair that the meter shows")
            .form("m 5.6.3 125", "f/5.6 and three tenths")
            .form("m ev11.3", "an exposure value, at ISO 100")
            .form("m low 5.6 125 and 11 125", "several; the lowest counts, for the shadows")
            .form("m 5.6 125 and 11 125", "several; their mean counts")
            .form("m spot 9.3 z3", "a spot reading, placed on zone III")
            .form("m spot 9 z3 and 12 z7", "shadow and highlight with their zones: the span, and whether it fits")
            .form("m reflected ev11", "reflected, not incident")
            .form("m flash 8", "the aperture that the flash meter shows; flash is on then")
            .form("m flash 8 and 5.6", "key and fill, each measured alone, with their ratio")
            .form("m camera 4 500 @400", "a digital camera's own meter")
            .form("m sky shade", "common light without a meter: snow sun shade sunset dusk stage moon (Tab: all)")
            .form("m 2500lx", "in lux; fc and cd too")
            .form("m", "the last reading again, with its age");

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            return again(context);
        }
        Meter meter = context.state().meterInHand();
        Optional<Film> film = film(context.state());
        Reading reading = ReadingParser.read(
                        arguments.line(),
                        arguments.rest(),
                        meter,
                        context.state().day().preset(),
                        film.isPresent() ? Optional.of(film.get().index()) : Optional.empty(),
                        context.now())
                .on(film.isPresent() ? Optional.of(film.get().stock()) : Optional.empty());
        List<JournalEntry> entries = reading.preset().isPresent()
                ? List.of(new JournalEntry.OnDay(new CameraEvent.MeterSelected(meter.key(), reading.preset())))
                : List.of();
        return reading.flash().isPresent()
                ? FlashReading.measured(reading, arguments.line(), entries, context)
                : LightReading.run(dated(reading, context), entries, context);
    }

    private static Optional<Film> film(ShootState state) {
        Optional<Roll> roll = state.rollInHand();
        return roll.isPresent() ? Optional.of(roll.get().film()) : Optional.empty();
    }

    /** A reading near sunset is called old sooner, where the place of the shoot is known. */
    private static Reading dated(Reading reading, CommandContext context) {
        Optional<Coordinates> at = context.state().day().position();
        if (at.isEmpty() || reading.light().isEmpty()) {
            return reading;
        }
        Light light = reading.light().get();
        return reading.with(Optional.of(light.fresh(Sun.freshMinutes(at.get(), light.at()))));
    }

    private static Outcome again(CommandContext context) {
        ShootState state = context.state();
        Optional<FlashLight> flash = state.day().flash();
        if (flash.isPresent() && (state.day().light().isEmpty() || isFlashNewer(state))) {
            return context.says(
                    "light",
                    FlashReading.words(flash.get()) + ", "
                            + LightText.age(flash.get().at(), context.now()) + ".",
                    StatusJson.of(state).and("flashLight", flash.get().aperture()));
        }
        if (state.day().light().isEmpty()) {
            throw new CommandRejected("no light reading today: m 5.6 125, m ev11.3, m sky shade");
        }
        Light light = state.day().light().get();
        Optional<AdviceRequest> request = AdviceRequest.inHand(state);
        Suggestions suggestions = request.isPresent() ? request.get().advice(light) : Suggestions.NONE;
        Optional<Suggestion> best = suggestions.bestOne();
        String words = best.isPresent() && best.get().time().isPresent()
                ? " Best: " + best.get().aperture() + " " + best.get().time().get() + "."
                : "";
        return context.says(
                "light",
                LightText.of(light, context.now()) + "." + words,
                ReadingFields.again(state, light, suggestions, context));
    }

    /** Which of the two was taken last: the order of the lines says so, whatever the clock did. */
    private static boolean isFlashNewer(ShootState state) {
        Optional<FlashLight> flash = state.day().flash();
        Optional<Light> light = state.day().light();
        return state.history()
                .entriesNewestFirst()
                .filter(it -> it.as(CameraEvent.FlashMetered.class)
                                .map(CameraEvent.FlashMetered::flash)
                                .equals(flash)
                        || it.as(CameraEvent.LightMetered.class)
                                .map(CameraEvent.LightMetered::light)
                                .equals(light))
                .findFirst()
                .filter(it -> it.is(CameraEvent.FlashMetered.class))
                .isPresent();
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        List<String> sky = Sky.after(before.get(before.size() - 1));
        return !sky.isEmpty()
                ? sky
                : List.of("ev", "low", "high", "spot", "reflected", "flash", "camera", "sky", "and");
    }
}
