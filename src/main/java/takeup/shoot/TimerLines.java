package takeup.shoot;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.day.DayEvent;
import takeup.day.InHand;
import takeup.day.Timer;
import takeup.exposure.ExposureTime;
import takeup.exposure.Plain;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Json;
import takeup.roll.Change;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.Verdict;

/**
 * The bulb timer: {@code time} starts it on the camera in hand, {@code time} again stops it and puts what it showed in
 * hand.
 */
final class TimerLines {
    /** Up to so many seconds a tenth is kept, as a thumb can; beyond it whole seconds. */
    private static final double TENTHS_UP_TO = 10;

    private final Interpreter in;

    TimerLines(Interpreter in) {
        this.in = in;
    }

    Outcome time(List<String> words) {
        Interpreter.alone("time", words);
        Camera camera = in.camera();
        Timer running = in.s.day().timers().get(camera.key());
        return running == null ? start(camera) : stop(camera, running);
    }

    private Outcome start(Camera camera) {
        Timer timer = new Timer(in.exact, target());
        List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.TimerStarted(camera.key(), timer)));
        Situation after = in.after(entries);
        String until = timer.targetSeconds().isPresent()
                ? "the bell rings at "
                        + ExposureTime.words(timer.targetSeconds().getAsDouble()) + "; "
                : "";
        return in.does(
                entries,
                after,
                in.state(after, "The timer runs on " + camera.key() + ": " + until + "time again stops it.", List.of()),
                List.of());
    }

    /** The corrected time for the aperture in hand as it is said, else the time in hand; from a second on. */
    private OptionalDouble target() {
        Setting setting = in.setting();
        Optional<Roll> roll = in.s.roll();
        OptionalDouble wanted =
                setting.time().map(it -> OptionalDouble.of(it.exactSeconds())).orElse(OptionalDouble.empty());
        if (roll.isPresent()
                && in.s.day().light().isPresent()
                && setting.aperture().isPresent()) {
            wanted = Verdict.path(roll.get().film(), setting)
                    .corrected(
                            in.s.day().light().get().ev100(), setting.aperture().get());
            wanted = wanted.stream()
                    .map(it -> it < 9.95 ? it : ExposureTime.counted(it))
                    .findFirst();
        }
        return wanted.isPresent() && !Stops.above(0, Stops.of(wanted.getAsDouble())) ? wanted : OptionalDouble.empty();
    }

    private Outcome stop(Camera camera, Timer timer) {
        if (timer.since().isAfter(in.exact)) {
            List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.TimerStopped(camera.key())));
            Situation after = in.after(entries);
            return in.does(
                    entries,
                    after,
                    in.state(
                            after,
                            "The timer on " + camera.key()
                                    + " stopped. The clock went back while it ran, so how long it was is not known: "
                                    + "type the time, such as set b27s.",
                            List.of()),
                    List.of());
        }
        double elapsed = timer.elapsed(in.exact);
        double seconds = elapsed < TENTHS_UP_TO
                ? Math.max(0.1, Plain.rounded(Math.rint(elapsed * 10) / 10, 3))
                : Math.rint(elapsed);
        ExposureTime time = ExposureTime.literal(seconds);
        InHand inHand = in.s.inHand(camera).with(Change.time(time));
        List<Entry> entries = List.of(
                new Entry.OnDay(new DayEvent.Changed(camera.key(), inHand)),
                new Entry.OnDay(new DayEvent.TimerStopped(camera.key())));
        Situation after = in.after(entries);
        OptionalDouble error = State.errorInHand(after);
        Json.Obj fields = State.json(after).and("seconds", seconds);
        String text = "The timer on " + camera.key() + " stopped: " + time + " is in hand"
                + (error.isPresent() ? ", " + Stops.error(error.getAsDouble()) : "") + "; a point alone logs it.";
        return in.does(entries, after, new Outcome.Answer("state", text, fields, List.of()), List.of());
    }
}
