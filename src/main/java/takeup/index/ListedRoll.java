package takeup.index;

import takeup.review.Review;
import takeup.review.VerdictCounts;
import takeup.roll.Roll;
import takeup.search.RollHead;

/**
 * A roll as the index lists it, without its frames.
 *
 * @param loading the step that loaded it, by which rolls are put in order
 * @param verdicts its judged frames, for {@link VerdictCounts#add(String)}
 */
public record ListedRoll(RollHead head, long loading, String verdicts) {
    /** The entries that say so. */
    public static final IndexKind<ListedRoll> KIND = new IndexKind<>() {
        @Override
        public String name() {
            return "rolls";
        }

        @Override
        public String text(Roll roll, long loading, Review review) {
            return RollLine.text(roll, loading) + VerdictCounts.lines(roll, review);
        }

        @Override
        public ListedRoll read(String text) {
            RollLine line = RollLine.of(text);
            return new ListedRoll(line.head(), line.loading(), RollLine.rest(text));
        }
    };
}
