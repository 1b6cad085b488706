package takeup.advice;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.roll.Roll;
import takeup.roll.RollEvent;

/**
 * What begins to be wrong when another camera, back or roll comes in hand; it is said then, and no oftener.
 *
 * @param noFilm the place in hand, where no film is in it now, as far as is known
 * @param meterSpeed the roll in hand, where the meter is now set to another speed than it is rated at
 */
public record EntryWarnings(Optional<CameraPlace> noFilm, Optional<MeterSpeed> meterSpeed) {
    /** A reading that was taken with the meter at another speed than a roll is rated at. */
    public record MeterSpeed(Light light, Roll roll) {}

    /** What holds after a line and did not before it. */
    public static EntryWarnings begunBetween(ShootState before, ShootState after, OffsetDateTime now) {
        Optional<CameraPlace> place = after.placeInHand();
        boolean wasEmpty = before.rollInHand().isEmpty() && before.placeInHand().equals(place);
        boolean isEmpty = after.rollInHand().isEmpty()
                && place.isPresent()
                && after.unreadableIn(place.get()).isEmpty();
        Optional<MeterSpeed> speed = meterSpeed(before).isPresent() ? Optional.empty() : meterSpeed(after);
        return new EntryWarnings(
                isEmpty && !wasEmpty ? place : Optional.empty(),
                speed.isPresent() && wasWarned(speed.get().light(), before, now) ? Optional.empty() : speed);
    }

    /** The meter at another speed than the roll in hand is rated at. */
    public static Optional<MeterSpeed> meterSpeed(ShootState s) {
        Optional<Roll> roll = s.rollInHand();
        Optional<Light> light = s.day().light();
        if (roll.isEmpty() || light.isEmpty()) {
            return Optional.empty();
        }
        Optional<MeterSpeed> other = meterSpeed(light.get(), roll.get());
        return other.isPresent() && wasReadFor(roll.get(), light.get(), s) ? Optional.empty() : other;
    }

    /** A reading at another speed than a roll's; a digital camera's own meter may be at any. */
    public static Optional<MeterSpeed> meterSpeed(Light light, Roll roll) {
        boolean isOther = light.index().isPresent()
                && light.method() != Light.Method.CAMERA
                && Math.abs(Stops.of(light.index().getAsDouble()
                                / roll.film().index().arithmetic()))
                        > Stops.TOLERANCE;
        return isOther ? Optional.of(new MeterSpeed(light, roll)) : Optional.empty();
    }

    /** Whether the meter was brought from another speed to the roll's for a reading since it was loaded. */
    private static boolean wasReadFor(Roll roll, Light latest, ShootState s) {
        boolean wasOther = false;
        for (CameraEvent.LightMetered metered : s.history()
                .on(latest.at().toLocalDate())
                .events(CameraEvent.LightMetered.class)
                .toList()) {
            Light light = metered.light();
            boolean isOther = meterSpeed(light, roll).isPresent();
            if (wasOther && !isOther && light.index().isPresent() && !light.at().isBefore(roll.loadedAt())) {
                return true;
            }
            wasOther |= isOther;
        }
        return false;
    }

    /**
     * Whether the warning about the meter in hand at that speed was given on this day: with a reading, or when a roll
     * came in hand.
     */
    public static boolean wasWarned(Light light, ShootState s, OffsetDateTime now) {
        boolean isSame = false;
        String meter = s.day().meter().orElse("");
        for (JournalStep step : s.history().on(now.toLocalDate()).steps()) {
            for (JournalEntry entry : step.entries()) {
                Optional<CameraEvent.LightMetered> metered = entry.as(CameraEvent.LightMetered.class);
                if (metered.isPresent()) {
                    isSame = metered.get().meter().equals(meter)
                            && metered.get().light().index().equals(light.index());
                    if (isSame && metered.get().warned().contains(Warning.Code.METER_SPEED)) {
                        return true;
                    }
                } else if (isSame
                        && cameInHand(entry)
                                .flatMap(it -> rollIn(it, step.at(), s))
                                .flatMap(it -> meterSpeed(light, it))
                                .isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Optional<CameraPlace> cameInHand(JournalEntry entry) {
        return entry.as(CameraEvent.CameraSelected.class)
                .map(CameraEvent.CameraSelected::place)
                .or(() -> entry.as(RollEvent.Loaded.class)
                        .map(it -> new CameraPlace(it.camera().key(), it.back())));
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
