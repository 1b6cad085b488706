package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.message.SaveError;
import takeup.roll.Roll;

/**
 * What the disk holds, and what is on its way there, in order. A step that could not be written stays the first until
 * it is.
 *
 * @param saved the state as the disk holds it; this is what the counter shows
 * @param waiting steps that the disk has not acknowledged yet, oldest first
 * @param isWriting whether the disk has the first of them in work, so that none is handed over twice
 * @param saveError why the first of them could not be written; it stays until it is
 */
public record SaveQueue(ShootState saved, List<Waiting> waiting, boolean isWriting, Optional<SaveError> saveError) {
    /** A step on its way to the disk, what is said once it is there and how loud, and the rolls whose files follow. */
    public record Waiting(
            JournalStep step, ShootState after, Outcome.Answer answer, boolean isLarge, List<Roll> rollsToExport) {
        /** What it is, in few words: {@code Frame 7 on R0003}; the title of its answer. */
        public String name() {
            return answer.title();
        }
    }

    public SaveQueue {
        waiting = List.copyOf(waiting);
    }

    static SaveQueue of(ShootState saved) {
        return new SaveQueue(saved, List.of(), false, Optional.empty());
    }

    /** The state once all that waits is on the disk: what the next line is read in. */
    ShootState afterPending() {
        return waiting.isEmpty() ? saved : waiting.get(waiting.size() - 1).after();
    }

    boolean isEmpty() {
        return waiting.isEmpty();
    }

    /** Whether there is a step for the disk, and the disk is idle. */
    boolean canWrite() {
        return !waiting.isEmpty() && !isWriting;
    }

    /** Whether the disk's answer is about the step that it was handed. */
    boolean expects(long step) {
        return isWriting && first().step().step() == step;
    }

    Waiting first() {
        return waiting.get(0);
    }

    /** The first step is handed to the disk. */
    SaveQueue writing() {
        return new SaveQueue(saved, waiting, true, saveError);
    }

    SaveQueue and(Waiting step) {
        List<Waiting> all = new ArrayList<>(waiting);
        all.add(step);
        return new SaveQueue(saved, all, isWriting, saveError);
    }

    /** The first step is on the disk. */
    SaveQueue written() {
        return new SaveQueue(first().after(), waiting.subList(1, waiting.size()), false, Optional.empty());
    }

    /** The first step could not be written. */
    SaveQueue failed(SaveError why) {
        return new SaveQueue(saved, waiting, false, Optional.of(why));
    }

    /** With a finished roll's own steps read in, under all that waits. */
    SaveQueue with(List<JournalStep> read) {
        ShootState under = saved.with(read);
        ShootState after = under;
        List<Waiting> again = new ArrayList<>();
        for (Waiting one : waiting) {
            after = after.and(one.step());
            again.add(new Waiting(one.step(), after, one.answer(), one.isLarge(), one.rollsToExport()));
        }
        return new SaveQueue(under, again, isWriting, saveError);
    }
}
