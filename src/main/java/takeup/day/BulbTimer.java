package takeup.day;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.OptionalDouble;

/**
 * A bulb exposure that is being timed: since 15:00:00, to be ended after 27 s.
 *
 * @param since when the shutter was opened
 * @param targetSeconds how long it is to stay open, in seconds; empty where it is not known
 */
public record BulbTimer(OffsetDateTime since, OptionalDouble targetSeconds) {
    /** How long it has run by then, in seconds; 0 where the clock was put back. */
    public double elapsed(OffsetDateTime now) {
        return Math.max(0, Duration.between(since, now).toMillis() / 1000.0);
    }
}
