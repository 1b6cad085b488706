package takeup.day;

import java.time.OffsetDateTime;

/**
 * Something that happened on a day, as it was written down.
 *
 * @param step the line that did it, counted over all rolls and days of one writer
 * @param at when it was written
 * @param event what happened
 */
public record DayRecord(long step, OffsetDateTime at, DayEvent event) {}
