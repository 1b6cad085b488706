package takeup.roll;

import java.time.OffsetDateTime;

/**
 * Something that happened to a roll, as it was written down.
 *
 * @param step the line that did it, counted over all rolls and days of one writer
 * @param at when it was written
 * @param event what happened
 */
public record RollRecord(long step, OffsetDateTime at, RollEvent event) {}
