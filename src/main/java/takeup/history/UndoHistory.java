package takeup.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which steps undo and redo would take next, worked out from all that happened. */
public final class UndoHistory {
    private final List<Long> done = new ArrayList<>();
    private final List<Long> undone = new ArrayList<>();

    public UndoHistory(History history) {
        for (JournalStep step : history.steps()) {
            if (step.isUndoable()) {
                done.add(step.step());
                undone.clear();
                continue;
            }
            for (JournalEntry entry : step.entries()) {
                move(entry.undoes(), done, undone);
                move(entry.redoes(), undone, done);
            }
        }
    }

    private static void move(Optional<Long> step, List<Long> from, List<Long> to) {
        if (step.isPresent() && from.remove(step.get())) {
            to.add(step.get());
        }
    }

    /** The step that undo takes back. */
    public Optional<Long> undo() {
        return newest(done);
    }

    /** The step that redo brings back. */
    public Optional<Long> redo() {
        return newest(undone);
    }

    private static Optional<Long> newest(List<Long> steps) {
        return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
    }
}
