package takeup.index;

import java.util.List;
import takeup.review.Review;
import takeup.roll.Roll;
import takeup.search.FindQuery;
import takeup.search.FrameRow;

/**
 * The frames of a roll that meet a query, looked for where the entry of the roll is read, so that all cores look.
 *
 * @param frames in the order of the film; none where the roll has none of them
 */
public record FoundInRoll(List<FrameRow> frames) {
    /** What the index holds of each roll, read for a query. */
    public static IndexKind<FoundInRoll> by(FindQuery query) {
        return new IndexKind<>() {
            @Override
            public String name() {
                return IndexedRoll.KIND.name();
            }

            @Override
            public String text(Roll roll, long loading, Review review) {
                return IndexedRoll.KIND.text(roll, loading, review);
            }

            @Override
            public FoundInRoll read(String text) {
                return new FoundInRoll(IndexedRoll.KIND.read(text).found(query));
            }
        };
    }
}
