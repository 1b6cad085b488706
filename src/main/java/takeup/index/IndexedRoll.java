package takeup.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import takeup.review.Review;
import takeup.roll.Roll;
import takeup.search.FindQuery;
import takeup.search.FrameRow;
import takeup.search.RollHead;

/**
 * A roll as the index holds it to find its frames.
 *
 * @param head what its frames have in common
 * @param frames a line for each frame, each ending in a line feed
 */
record IndexedRoll(RollHead head, String frames) {
    /** The entries that say so. */
    static final IndexKind<IndexedRoll> KIND = new IndexKind<>() {
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

    /** Its frames that meet a query, in the order of the film. A roll whose loading was undone has none. */
    List<FrameRow> found(FindQuery query) {
        if (frames.isEmpty() || head.summary().state() == Roll.State.WITHDRAWN) {
            return List.of();
        }
        List<FrameRow> found = new ArrayList<>();
        String wanted = query.mustHave(head);
        String small = wanted.isEmpty() ? "" : frames.toLowerCase(Locale.ROOT);
        // Few letters are longer when they are small, and then places in the one text are none in the other.
        boolean isLeaping = !wanted.isEmpty() && small.length() == frames.length();
        int from = 0;
        while (from < frames.length()) {
            if (isLeaping) {
                int at = small.indexOf(wanted, from);
                if (at < 0) {
                    break;
                }
                from = frames.lastIndexOf('\n', at) + 1;
            }
            int end = frames.indexOf('\n', from);
            FrameRow row = new FrameRow(head, frames.substring(from, end));
            if (query.matches(row)) {
                found.add(row);
            }
            from = end + 1;
        }
        return found;
    }
}
