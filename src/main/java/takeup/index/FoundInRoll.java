package takeup.index;

import java.util.List;
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
        return IndexedRoll.KIND.readAs(
                text -> new FoundInRoll(IndexedRoll.KIND.read(text).found(query)));
    }
}
