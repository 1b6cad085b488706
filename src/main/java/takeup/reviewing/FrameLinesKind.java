package takeup.reviewing;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import takeup.handoff.FrameJsonLines;
import takeup.handoff.MadeBy;
import takeup.index.IndexKind;
import takeup.review.Review;
import takeup.roll.Roll;

/**
 * The frames of a roll as JSON lines, kept in the index as their values alone.
 *
 * @param madeBy asked only where something is read anew, or lies in the index
 */
record FrameLinesKind(Supplier<MadeBy> madeBy) implements IndexKind<String> {
    @Override
    public String name() {
        return "frames";
    }

    @Override
    public String madeFor() {
        return madeBy.get().folder().orElse("0");
    }

    @Override
    public String text(Roll roll, long loading, Review review) {
        return roll.state() == Roll.State.WITHDRAWN ? "" : values(roll, review, madeBy.get());
    }

    @Override
    public String read(String text) {
        return FrameJsonLines.ofValues(text);
    }

    static String values(Roll roll, Review review, MadeBy madeBy) {
        List<Optional<String>> verdicts = review.verdicts(roll).stream()
                .map(it -> it.map(Object::toString))
                .toList();
        return FrameJsonLines.values(roll, madeBy, review.scans(roll), verdicts);
    }
}
