package takeup.roll;

import java.time.OffsetDateTime;

/**
 * The camera's own counter against the log, once: it showed 9 where the log came to 8.
 *
 * @param at when it was read
 * @param expected the next frame by the log
 * @param shown what the camera, wound on, showed
 */
public record CounterCheck(OffsetDateTime at, int expected, int shown) {}
