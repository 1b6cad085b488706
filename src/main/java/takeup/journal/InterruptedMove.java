package takeup.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * A move of frames that was cut short: they are written where they go before they are taken from where they were, so
 * that a crash in between leaves them on two rolls.
 *
 * @param from the roll that they were on
 * @param to the roll that they went to
 * @param first the first of them, by its number on the one
 * @param last the last of them
 * @param roll the roll whose journal lacks the rest
 * @param rest what it lacks: with it the move, or its undoing, is whole
 */
public record InterruptedMove(RollId from, RollId to, int first, int last, RollId roll, RollRecord rest) {
    /**
     * All of them among some rolls, each given with its records. Frames of which nobody knows when they were exposed
     * are not told apart.
     */
    public static List<InterruptedMove> among(Map<RollId, List<RollRecord>> rolls) {
        List<InterruptedMove> all = new ArrayList<>();
        for (Map.Entry<RollId, List<RollRecord>> to : rolls.entrySet()) {
            List<RollRecord> moved = new ArrayList<>();
            for (RollRecord record : to.getValue()) {
                if (record.event() instanceof RollEvent.Added added
                        && added.origin() == RollEvent.Origin.MOVED
                        && added.frame().exposure().at().isPresent()) {
                    if (!moved.isEmpty() && moved.get(0).step() != record.step()) {
                        find(rolls, to.getKey(), moved).ifPresent(all::add);
                        moved.clear();
                    }
                    moved.add(record);
                }
            }
            if (!moved.isEmpty()) {
                find(rolls, to.getKey(), moved).ifPresent(all::add);
            }
        }
        return all;
    }

    private static Optional<InterruptedMove> find(
            Map<RollId, List<RollRecord>> rolls, RollId to, List<RollRecord> moved) {
        RollRecord head = moved.get(0);
        if (place(rolls.get(to), moved).isEmpty()) {
            return Optional.empty();
        }
        for (Map.Entry<RollId, List<RollRecord>> from : rolls.entrySet()) {
            Optional<List<Frame>> left = from.getKey().equals(to) ? Optional.empty() : place(from.getValue(), moved);
            if (left.isPresent()) {
                int first = left.get().get(0).number();
                int last = left.get().get(moved.size() - 1).number();
                RollId source = from.getKey();
                Optional<RollRecord> onTarget = lastUndoOrRedo(rolls.get(to), head.step());
                Optional<RollRecord> onSource = lastUndoOrRedo(from.getValue(), head.step());
                if (stepOf(onTarget) == stepOf(onSource)) {
                    return Optional.of(new InterruptedMove(
                            source,
                            to,
                            first,
                            last,
                            source,
                            new RollRecord(
                                    head.step(), head.at(), new RollEvent.Dropped(first, last, Optional.of(to)))));
                }
                return Optional.of(
                        stepOf(onTarget) > stepOf(onSource)
                                ? new InterruptedMove(source, to, first, last, source, onTarget.get())
                                : new InterruptedMove(source, to, first, last, to, onSource.get()));
            }
        }
        return Optional.empty();
    }

    /** The last record that took a step back on a roll, or put it back. */
    private static Optional<RollRecord> lastUndoOrRedo(List<RollRecord> records, long step) {
        Optional<RollRecord> last = Optional.empty();
        for (RollRecord record : records) {
            if (record.event() instanceof RollEvent.Undone back && back.step() == step
                    || record.event() instanceof RollEvent.Redone again && again.step() == step) {
                last = Optional.of(record);
            }
        }
        return last;
    }

    private static long stepOf(Optional<RollRecord> record) {
        return record.isPresent() ? record.get().step() : 0;
    }

    /** The moved frames as a roll holds them now, one after the other; empty if it does not. */
    private static Optional<List<Frame>> place(List<RollRecord> records, List<RollRecord> moved) {
        List<Frame> frames = Roll.of(records).map(Roll::frames).orElse(List.of());
        for (int at = 0; at + moved.size() <= frames.size(); at++) {
            int same = 0;
            while (same < moved.size()
                    && isSame(
                            frames.get(at + same),
                            ((RollEvent.Added) moved.get(same).event()).frame())) {
                same++;
            }
            if (same == moved.size()) {
                return Optional.of(frames.subList(at, at + same));
            }
        }
        return Optional.empty();
    }

    private static boolean isSame(Frame a, Frame b) {
        return a.loggedAs() == b.loggedAs()
                && a.kind() == b.kind()
                && a.exposure().equals(b.exposure())
                && a.further().equals(b.further())
                && a.note().equals(b.note());
    }

    /** The frames and the rolls in words: {@code frames 3 to 5 of R0001 are on R0002 too}. */
    public String words() {
        return (first == last
                        ? "frame " + first + " of " + from + " is on "
                        : "frames " + first + " to " + last + " of " + from + " are on ")
                + to + " too";
    }
}
