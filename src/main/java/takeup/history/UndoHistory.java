package takeup.history;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import takeup.day.DayEvent;
import takeup.roll.RollEvent;

/** Which steps undo and redo would take next, worked out from all that happened. */
public final class UndoHistory {
    private final List<Long> done = new ArrayList<>();
    private final List<Long> undone = new ArrayList<>();

    public UndoHistory(List<JournalStep> happened) {
        for (JournalStep step : happened) {
            if (step.isUndoable()) {
                done.add(step.step());
                undone.clear();
                continue;
            }
            for (JournalEntry entry : step.entries()) {
                long back = takenBack(entry);
                long again = putBack(entry);
                if (back > 0 && done.remove(back)) {
                    undone.add(back);
                }
                if (again > 0 && undone.remove(again)) {
                    done.add(again);
                }
            }
        }
    }

    public OptionalLong undo() {
        return done.isEmpty() ? OptionalLong.empty() : OptionalLong.of(done.get(done.size() - 1));
    }

    public OptionalLong redo() {
        return undone.isEmpty() ? OptionalLong.empty() : OptionalLong.of(undone.get(undone.size() - 1));
    }

    /** The step that an entry takes back; 0 for any other entry. */
    static long takenBack(JournalEntry entry) {
        return entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Undone back
                ? back.step()
                : entry instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.Undone dayBack
                        ? dayBack.step()
                        : 0;
    }

    /** The step that an entry puts back; 0 for any other entry. */
    static long putBack(JournalEntry entry) {
        return entry instanceof JournalEntry.OnRoll onRoll && onRoll.event() instanceof RollEvent.Redone again
                ? again.step()
                : entry instanceof JournalEntry.OnDay onDay && onDay.event() instanceof DayEvent.Redone dayAgain
                        ? dayAgain.step()
                        : 0;
    }
}
