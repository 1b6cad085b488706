package takeup.history;

import java.time.Duration;
import java.time.OffsetDateTime;

/** Holds the time of day against a clock that only runs forward: where the two part, somebody moved the first. */
public final class ClockShiftDetector {
    /** The time of day may gain so much, in milliseconds, before it counts as moved: a slow line, a paused program. */
    private static final long AHEAD = 120_000;

    private static final long BACK = 1000;

    private ClockShiftDetector() {}

    /**
     * By how many seconds the time of day jumped between two looks at both clocks: 0 for no jump, negative for back.
     *
     * @param before the time of day at the first look
     * @param ticksBefore milliseconds on the other clock at the first look
     * @param now the time of day at the second look
     * @param ticks milliseconds on the other clock at the second look
     */
    public static long jump(OffsetDateTime before, long ticksBefore, OffsetDateTime now, long ticks) {
        long moved = Duration.between(before, now).toMillis() - (ticks - ticksBefore);
        return moved > AHEAD || moved < -BACK ? Math.floorDiv(moved + 500, 1000L) : 0;
    }
}
