package takeup.metering;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.ExposureInHand;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.BulbTimer;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.report.StatusJson;
import takeup.roll.ExposureResult;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * The bulb timer: {@code time} starts it on the camera in hand, {@code time} again stops it and puts what it showed in
 * hand.
 */
public final class TimeCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "time", "starts the bulb timer; again, stops it and puts the time in hand")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return time(context, arguments.rest());
    }

    /** Up to so many seconds a tenth is kept, as a thumb can; beyond it whole seconds. */
    private static final double TENTHS_UP_TO = 10;

    static Outcome time(CommandContext context, List<String> words) {
        Arguments.alone("time", words);
        Camera camera = context.camera();
        BulbTimer running = context.state().day().timers().get(camera.key());
        return running == null ? start(context, camera) : stop(context, camera, running);
    }

    private static Outcome start(CommandContext context, Camera camera) {
        BulbTimer timer = new BulbTimer(context.nowMillis(), target(context));
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.TimerStarted(camera.key(), timer)));
        ShootState after = context.after(entries);
        String until = timer.targetSeconds().isPresent()
                ? "the bell rings at "
                        + ExposureTime.words(timer.targetSeconds().getAsDouble()) + "; "
                : "";
        return context.does(
                entries,
                after,
                context.stateAnswer(
                        after, "The timer runs on " + camera.key() + ": " + until + "time again stops it.", List.of()),
                List.of());
    }

    /** The corrected time for the aperture in hand as it is said, else the time in hand; from a second on. */
    private static OptionalDouble target(CommandContext context) {
        Setting setting = context.setting();
        Optional<Roll> roll = context.state().rollInHand();
        OptionalDouble wanted =
                setting.time().map(it -> OptionalDouble.of(it.exactSeconds())).orElse(OptionalDouble.empty());
        if (roll.isPresent()
                && context.state().day().light().isPresent()
                && setting.aperture().isPresent()) {
            wanted = ExposureResult.path(roll.get().film(), setting)
                    .corrected(
                            context.state().day().light().get().ev100(),
                            setting.aperture().get());
            wanted = wanted.stream()
                    .map(it -> it < 9.95 ? it : ExposureTime.counted(it))
                    .findFirst();
        }
        return wanted.isPresent() && !Stops.above(0, Stops.of(wanted.getAsDouble())) ? wanted : OptionalDouble.empty();
    }

    private static Outcome stop(CommandContext context, Camera camera, BulbTimer timer) {
        if (timer.since().isAfter(context.nowMillis())) {
            List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.TimerStopped(camera.key())));
            ShootState after = context.after(entries);
            return context.does(
                    entries,
                    after,
                    context.stateAnswer(
                            after,
                            "The timer on " + camera.key()
                                    + " stopped. The clock went back while it ran, so how long it was is not known: "
                                    + "type the time, such as set b27s.",
                            List.of()),
                    List.of());
        }
        double elapsed = timer.elapsed(context.nowMillis());
        double seconds = elapsed < TENTHS_UP_TO
                ? Math.max(0.1, Plain.rounded(Math.rint(elapsed * 10) / 10, 3))
                : Math.rint(elapsed);
        ExposureTime time = ExposureTime.literal(seconds);
        CameraSetup inHand = context.state().inHand(camera).with(SettingPatch.time(time));
        List<JournalEntry> entries = List.of(
                new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(camera.key(), inHand)),
                new JournalEntry.OnDay(new DayEvent.TimerStopped(camera.key())));
        ShootState after = context.after(entries);
        OptionalDouble error = ExposureInHand.error(after);
        Json.Obj fields = StatusJson.of(after).and("seconds", seconds);
        String text = "The timer on " + camera.key() + " stopped: " + time + " is in hand"
                + (error.isPresent() ? ", " + Stops.error(error.getAsDouble()) : "") + "; a point alone logs it.";
        return context.does(entries, after, new Outcome.Answer("state", text, fields, List.of()), List.of());
    }
}
