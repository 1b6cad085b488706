package takeup.search;

import java.util.Optional;
import takeup.report.RollSummary;
import takeup.roll.Assignment;
import takeup.roll.DevelopedIn;
import takeup.roll.Roll;

/**
 * What the frames of a roll have in common, as far as they are found by it.
 *
 * @param shoot the name of the shoot that it belongs to
 * @param developed in what it was developed, and how
 */
public record RollHead(RollSummary summary, Optional<String> shoot, Optional<String> developed) {
    public static RollHead of(Roll roll) {
        return new RollHead(
                RollSummary.of(roll),
                roll.assignment().map(Assignment::name),
                roll.developed().map(DevelopedIn::words));
    }
}
