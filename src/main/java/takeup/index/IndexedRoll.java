package takeup.index;

import java.util.function.Consumer;
import takeup.review.Review;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FrameRow;
import takeup.search.RollHead;

/**
 * A roll as the index holds it to find its frames.
 *
 * @param head what its frames have in common
 * @param frames a line for each frame, each ending in a line feed
 */
public record IndexedRoll(RollHead head, String frames) {
    /** The entries that say so. */
    public static final IndexKind<IndexedRoll> KIND = new IndexKind<>() {
        @Override
        public String name() {
            return "find";
        }

        @Override
        public String text(Roll roll, long loading, Review review) {
            return RollLine.text(roll, loading) + FrameRow.lines(roll, review);
        }

        @Override
        public IndexedRoll read(String text) {
            return new IndexedRoll(RollLine.of(text).head(), RollLine.rest(text));
        }
    };

    public RollId id() {
        return head.summary().id();
    }

    /** Each of its frames, in the order of the film. A roll whose loading was undone has none. */
    public void forEachFrame(Consumer<FrameRow> taken) {
        int from = 0;
        while (from < frames.length() && head.summary().state() != Roll.State.WITHDRAWN) {
            int end = frames.indexOf('\n', from);
            taken.accept(new FrameRow(head, frames.substring(from, end)));
            from = end + 1;
        }
    }
}
