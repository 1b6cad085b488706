package takeup.session;

import java.time.OffsetDateTime;
import takeup.history.ClockShiftDetector;

/**
 * The time, as it came in with the last message.
 *
 * @param now the time of day
 * @param ticks milliseconds on a clock that only runs forward
 * @param drift by how many seconds the time of day was moved against it since the last frame or reading
 */
record SessionClock(OffsetDateTime now, long ticks, long drift) {
    SessionClock at(OffsetDateTime time, long tick) {
        return new SessionClock(time, tick, drift + ClockShiftDetector.jump(now, ticks, time, tick));
    }

    SessionClock withoutDrift() {
        return new SessionClock(now, ticks, 0);
    }
}
