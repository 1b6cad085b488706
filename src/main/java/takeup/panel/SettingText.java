package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.ExposureInHand;
import takeup.day.BulbTimer;
import takeup.exposure.ExposureTime;
import takeup.exposure.LightParts;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.lettering.TextFit;
import takeup.report.ExposuresText;
import takeup.report.LightText;
import takeup.report.StatusText;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.session.Session;
import takeup.text.Plain;

/** The setting in hand in words: the pair or the running timer, and what it comes to in this light. */
public final class SettingText {
    private SettingText() {}

    /** The pair to set, or how long the timer runs: {@code f/5.6 1/60}, {@code 12s of 30s}; empty with nothing set. */
    public static Optional<String> pair(Session session) {
        Optional<BulbTimer> timer = session.shown().timerInHand();
        if (timer.isPresent()) {
            OptionalDouble target = timer.get().targetSeconds();
            return Optional.of(elapsed(timer.get(), session)
                    + (target.isPresent() ? " of " + ExposureTime.words(target.getAsDouble()) : ", timer runs"));
        }
        Setting setting = session.shown().inHand().setting();
        String pair = (Plain.textOr(setting.aperture(), "") + " " + Plain.textOr(setting.time(), "")).strip();
        return pair.isEmpty() ? Optional.empty() : Optional.of(pair);
    }

    public static String elapsed(BulbTimer timer, Session session) {
        return StatusText.seconds(timer.elapsed(session.now()));
    }

    /** How far the setting is off: {@code 0.3 over for this light}. */
    public static String error(ShootState state) {
        LightParts light = ExposureInHand.light(state);
        OptionalDouble open = ExposureInHand.withFrame(state);
        if (open.isPresent()) {
            Roll roll = state.rollInHand().orElseThrow();
            return ExposuresText.soFar(roll, roll.newest().orElseThrow()).orElseThrow() + "; with this "
                    + Stops.onMeter(open.getAsDouble());
        }
        if (light.totalStops().isPresent()) {
            if (!light.isMixed() && Stops.isRight(light.totalStops().getAsDouble())) {
                return "ON METER";
            }
            return light.isMixed() ? light.words() : light.words() + " for this light";
        }
        if (state.inHand().setting().flash() && state.day().flash().isPresent()) {
            return ExposureInHand.missing(state);
        }
        return state.day().light().isEmpty() ? "no reading to judge it by" : "";
    }

    /** The pair that would do: {@code set f/8 1/125}; nothing where the light is not known, or there is none. */
    static String instead(Optional<Suggestions> advice) {
        Optional<Suggestion> best = advice.isPresent() ? advice.get().bestOne() : Optional.empty();
        return best.isPresent() && best.get().time().isPresent()
                ? "set " + best.get().aperture() + " " + best.get().time().get()
                : "";
    }

    /** How far the setting is off in few words: {@code 0.3 over}. */
    public static String errorBriefly(ShootState state) {
        OptionalDouble open = ExposureInHand.withFrame(state);
        if (open.isPresent()) {
            return "with this " + Stops.onMeter(open.getAsDouble());
        }
        OptionalDouble total = ExposureInHand.light(state).totalStops();
        if (total.isPresent()) {
            return Stops.onMeter(total.getAsDouble());
        }
        return state.day().light().isEmpty() ? "no reading" : "";
    }

    /**
     * The stops above box speed, and the habits that they are made of. What adds nothing is left out; where room is
     * short, the way the light was metered is left out first.
     */
    static Optional<String> sum(ShootState state, int room) {
        OptionalDouble error = ExposureInHand.error(state);
        if (error.isEmpty() || state.rollInHand().isEmpty()) {
            return Optional.empty();
        }
        Roll roll = state.rollInHand().get();
        List<String> parts = new ArrayList<>();
        part("rating", roll.film().stock().stopsOverBox(roll.film().index()), parts);
        part("bias", state.inHand().setting().biasStops(), parts);
        part("error", error.getAsDouble(), parts);
        String total = overBox(ExposureInHand.overBox(state).orElseThrow());
        List<String> withHabit = new ArrayList<>(parts);
        if (!state.inHand().setting().flash() && state.day().light().isPresent()) {
            Optional<String> habit = LightText.habit(state.day().light().get());
            if (habit.isPresent()) {
                withHabit.add(habit.get());
            }
        }
        return Optional.of(TextFit.first(
                room, joined(total, withHabit, ", "), joined(total, parts, ", "), joined(total, parts, " ")));
    }

    private static String joined(String total, List<String> parts, String between) {
        return total + (parts.isEmpty() ? "" : ": " + String.join(between, parts));
    }

    /** Stops above or below box speed without a sign: {@code 1.1 over box} reads one way only. */
    private static String overBox(double stops) {
        String tenths = Stops.tenths(stops);
        return tenths.equals("0.0") ? "at box" : tenths + (stops > 0 ? " over box" : " under box");
    }

    private static void part(String name, double stops, List<String> into) {
        String tenths = Stops.tenths(stops);
        if (!tenths.equals("0.0")) {
            into.add(name + " " + tenths + (stops > 0 ? "" : " less"));
        }
    }
}
