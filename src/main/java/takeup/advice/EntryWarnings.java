package takeup.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.report.StatusText;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.text.Plain;

/**
 * The warnings about a state that begins when another camera, back or roll comes in hand; said then, and no oftener.
 */
public final class EntryWarnings {
    private EntryWarnings() {}

    /**
     * What begins to hold between two situations: no film where the camera in hand had one, a meter set to another
     * speed.
     */
    public static List<Warning> between(ShootState before, ShootState after, OffsetDateTime now) {
        List<Warning> begun = new ArrayList<>();
        boolean stood = before.rollInHand().isEmpty() && before.placeInHand().equals(after.placeInHand());
        if (after.placeInHand().isPresent() && after.rollInHand().isEmpty() && !stood) {
            begun.add(StatusText.noFilm(after));
        }
        if (meterSpeed(before).isEmpty()) {
            meterSpeed(after)
                    .filter(it -> !wasSaid(after.day().light().orElseThrow(), before, now))
                    .ifPresent(begun::add);
        }
        return begun;
    }

    /** The meter at another speed than the roll in hand is rated at. */
    public static Optional<Warning> meterSpeed(ShootState s) {
        Optional<Light> light = s.day().light();
        return s.rollInHand()
                .filter(it -> light.isPresent() && isOther(light.get(), it))
                .map(it -> meterSpeed(light.get(), it));
    }

    public static Warning meterSpeed(Light light, Roll roll) {
        return new Warning(
                Warning.Code.METER_SPEED,
                "the meter was set to " + Plain.number(light.index().orElseThrow()) + ", " + roll.id() + " is rated "
                        + roll.film().index() + ": set it to " + roll.film().index());
    }

    /** Whether a reading was taken at another speed than a roll's; a digital camera's own meter may be. */
    public static boolean isOther(Light light, Roll roll) {
        return light.index().isPresent()
                && light.method() != Light.Method.CAMERA
                && Math.abs(Stops.of(light.index().getAsDouble()
                                / roll.film().index().arithmetic()))
                        > Stops.TOLERANCE;
    }

    /**
     * Whether the warning about that meter at that speed was given on this day: with a reading, or when a roll came in
     * hand.
     */
    public static boolean wasSaid(Light light, ShootState s, OffsetDateTime now) {
        boolean same = false;
        String meter = s.day().meter().orElse("");
        for (JournalStep step : s.history()) {
            if (!step.at().toLocalDate().equals(now.toLocalDate())) {
                continue;
            }
            for (JournalEntry entry : step.entries()) {
                if (entry instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.LightMetered lit) {
                    same = lit.meter().equals(meter) && lit.light().index().equals(light.index());
                    if (same && lit.said().contains(Warning.Code.METER_SPEED)) {
                        return true;
                    }
                } else if (same
                        && cameInHand(entry)
                                .flatMap(it -> rollIn(it, step.at(), s))
                                .filter(it -> isOther(light, it))
                                .isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Optional<CameraPlace> cameInHand(JournalEntry entry) {
        if (entry instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.CameraSelected took) {
            return Optional.of(took.place());
        }
        return entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Loaded loaded
                ? Optional.of(new CameraPlace(loaded.camera().key(), loaded.back()))
                : Optional.empty();
    }

    private static Optional<Roll> rollIn(CameraPlace place, OffsetDateTime at, ShootState s) {
        return s.rolls().values().stream()
                .filter(it -> CameraPlace.of(it).equals(place)
                        && !it.loadedAt().isAfter(at)
                        && it.state() != Roll.State.WITHDRAWN
                        && it.finishedAt().map(end -> end.isAfter(at)).orElse(true))
                .findFirst();
    }
}
