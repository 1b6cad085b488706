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
import takeup.command.Reply;
import takeup.day.BulbTimer;
import takeup.day.CameraEvent;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
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
    /** Up to so many seconds a tenth is kept, as a thumb can; beyond it whole seconds. */
    private static final double TENTHS_UP_TO = 10;

    public static final CommandInfo INFO = CommandInfo.of(
                    "time", "starts the bulb timer; again, stops it and puts the time in hand")
            .needs(Need.CAMERA);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Camera camera = context.camera();
        BulbTimer running = context.state().day().timers().get(camera.key());
        return running == null ? start(camera, context) : stop(camera, running, context);
    }

    private static Outcome start(Camera camera, CommandContext context) {
        BulbTimer timer = new BulbTimer(context.nowMillis(), target(context));
        String until = timer.targetSeconds().isPresent()
                ? "the bell rings at "
                        + ExposureTime.words(timer.targetSeconds().getAsDouble()) + "; "
                : "";
        return context.reply(new CameraEvent.TimerStarted(camera.key(), timer))
                .says("The timer runs on " + camera.key(), ": " + until + "time again stops it.")
                .accepted();
    }

    /** The corrected time for the aperture in hand as it is said, else the time in hand; from a second on. */
    private static OptionalDouble target(CommandContext context) {
        OptionalDouble metered = metered(context);
        // A long time in hand although the light asks for a short one is meant: the light is another by now.
        return isLong(metered)
                ? metered
                : context.setting().time().stream()
                        .mapToDouble(ExposureTime::exactSeconds)
                        .filter(it -> isLong(OptionalDouble.of(it)))
                        .findFirst();
    }

    private static OptionalDouble metered(CommandContext context) {
        Setting setting = context.setting();
        Optional<Roll> roll = context.state().rollInHand();
        OptionalDouble wanted = OptionalDouble.empty();
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
        return wanted;
    }

    private static boolean isLong(OptionalDouble seconds) {
        return seconds.isPresent() && !Stops.above(0, Stops.of(seconds.getAsDouble()));
    }

    private static Outcome stop(Camera camera, BulbTimer timer, CommandContext context) {
        String stopped = "The timer on " + camera.key() + " stopped";
        if (timer.since().isAfter(context.nowMillis())) {
            return context.reply(new CameraEvent.TimerStopped(camera.key()))
                    .says(
                            stopped,
                            ". The clock went back while it ran, so how long it was is not known: type the time, such "
                                    + "as set b27s.")
                    .accepted();
        }
        double elapsed = timer.elapsed(context.nowMillis());
        double seconds = elapsed < TENTHS_UP_TO
                ? Math.max(0.1, Plain.rounded(Math.rint(elapsed * 10) / 10, 3))
                : Math.rint(elapsed);
        ExposureTime time = ExposureTime.literal(seconds);
        Reply reply = context.reply(List.of(
                new JournalEntry.OnDay(context.changedSetup(SettingPatch.time(time))),
                new JournalEntry.OnDay(new CameraEvent.TimerStopped(camera.key()))));
        String error = ExposureInHand.error(reply.after()).stream()
                .mapToObj(it -> ", " + Stops.error(it))
                .findFirst()
                .orElse("");
        return reply.says(stopped, ": " + time + " is in hand" + error + "; press Space to log it.")
                .fields(StatusJson.of(reply.after()).and("seconds", seconds))
                .accepted();
    }
}
