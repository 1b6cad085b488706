package takeup.history;

import java.time.OffsetDateTime;
import java.util.List;
import takeup.day.DayEvent;
import takeup.roll.RollEvent;

/**
 * All that one line did: one step of undo.
 *
 * @param step counted over all rolls and days of one writer
 * @param at when
 * @param entries what is written down, in that order
 */
public record JournalStep(long step, OffsetDateTime at, List<JournalEntry> entries) {
    public JournalStep {
        entries = List.copyOf(entries);
    }

    /** Whether a frame or a reading was logged: what a moved clock is told with. */
    public boolean isFrameOrReading() {
        return ClockShiftNotes.isMet(entries);
    }

    /**
     * Whether undo can take it back: it changed something, and is itself no undo, redo or mere taking up of a camera.
     */
    public boolean isUndoable() {
        for (JournalEntry entry : entries) {
            if (entry instanceof JournalEntry.OnRoll onRoll
                            && (onRoll.event() instanceof RollEvent.Undone
                                    || onRoll.event() instanceof RollEvent.Redone)
                    || entry instanceof JournalEntry.OnDay onDay
                            && (onDay.event() instanceof DayEvent.Undone || onDay.event() instanceof DayEvent.Redone)) {
                return false;
            }
        }
        return entries.stream()
                .anyMatch(it -> it instanceof JournalEntry.OnRoll
                        || it instanceof JournalEntry.OnDay onDay
                                && onDay.event().isStep());
    }
}
