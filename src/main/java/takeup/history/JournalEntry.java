package takeup.history;

import takeup.day.DayEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** One thing that a line did, and where it is written down: on a roll, or on the day. */
public sealed interface JournalEntry {
    /** On a roll. */
    record OnRoll(RollId roll, RollEvent event) implements JournalEntry {}

    /** On the day. */
    record OnDay(DayEvent event) implements JournalEntry {}
}
