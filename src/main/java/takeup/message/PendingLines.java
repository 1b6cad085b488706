package takeup.message;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.RollId;

/**
 * Lines that are still to be read, and what they wait for: a roll that is being read in, or the end of the program.
 *
 * @param batches the lines, oldest first
 * @param awaitedRoll the roll that is being read in; no line is read until it is there
 * @param leaving how far leaving has come; no line is read once it is under way
 */
public record PendingLines(List<Batch> batches, Optional<RollId> awaitedRoll, Leaving leaving) {
    /** Where lines come from: only those of the prompt go back to it when they are refused. */
    public enum From {
        PROMPT,
        KEY,
        SPACE,
        SUGGESTION
    }

    /**
     * Lines that came in together, such as a paste of three after Enter, or the point that a Space stands for.
     *
     * @param lines one or more, none of them blank
     * @param from what gave them
     */
    public record Batch(List<String> lines, From from) {
        public Batch {
            lines = List.copyOf(lines);
        }

        public String first() {
            return lines.get(0);
        }
    }

    public static final PendingLines NONE = new PendingLines(List.of(), Optional.empty(), Leaving.NO);

    public PendingLines {
        batches = List.copyOf(batches);
    }

    public Batch first() {
        return batches.get(0);
    }

    public boolean isEmpty() {
        return batches.isEmpty();
    }

    /** Whether no line may be read now. */
    public boolean isBlocked() {
        return awaitedRoll.isPresent() || leaving.isUnderWay();
    }

    public PendingLines and(Batch batch) {
        List<Batch> all = new ArrayList<>(batches);
        all.add(batch);
        return new PendingLines(all, awaitedRoll, leaving);
    }

    public PendingLines withoutFirstBatch() {
        return new PendingLines(batches.subList(1, batches.size()), awaitedRoll, leaving);
    }

    public PendingLines withoutFirstLine() {
        Batch first = first();
        if (first.lines().size() == 1) {
            return withoutFirstBatch();
        }
        List<Batch> all = new ArrayList<>(batches);
        all.set(0, new Batch(first.lines().subList(1, first.lines().size()), first.from()));
        return new PendingLines(all, awaitedRoll, leaving);
    }

    public PendingLines awaiting(RollId roll) {
        return new PendingLines(batches, Optional.of(roll), leaving);
    }

    /** The roll that was awaited is there. */
    public PendingLines arrived() {
        return new PendingLines(batches, Optional.empty(), leaving);
    }

    public PendingLines leaving(Leaving how) {
        return new PendingLines(batches, awaitedRoll, how);
    }
}
