package takeup.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A key moment of the day: 3, Prize-giving at 16:30, wants 12 frames, must be had.
 *
 * <p>Its time is what the clock on the wall shows then, so that a change of the clocks in between moves nothing.
 *
 * @param number what it is called by in the plan; never given twice
 * @param at when it begins
 * @param name what it is
 * @param wants how many frames it needs, 0 to 999; 0 where that is not known
 * @param must whether the day is lost without it
 * @param camera the camera's key, where one is meant for it
 * @param back the back on that camera
 * @param ev100 the light that is expected, EV at ISO 100
 */
public record KeyMoment(
        int number,
        LocalDateTime at,
        String name,
        int wants,
        boolean must,
        Optional<String> camera,
        Optional<String> back,
        OptionalDouble ev100) {
    /** So long after its beginning a moment still counts as the one that is on: a rule of our own. */
    public static final Duration LASTS = Duration.ofMinutes(15);

    public KeyMoment {
        if (number < 1 || wants < 0 || wants > 999 || name.isBlank()) {
            throw new IllegalArgumentException("a moment has a number, a name, and wants 0 to 999 frames");
        }
    }

    /** The same at another time. */
    public KeyMoment at(LocalDateTime other) {
        return new KeyMoment(number, other, name, wants, must, camera, back, ev100);
    }

    /** The same under another number. */
    public KeyMoment numbered(int other) {
        return new KeyMoment(other, at, name, wants, must, camera, back, ev100);
    }

    /** Whole minutes until it begins, a begun one counted as one; 0 or less once it has begun. */
    public long minutesFrom(LocalDateTime now) {
        long seconds = Duration.between(now, at).getSeconds();
        return Math.floorDiv(seconds + 59, 60);
    }
}
