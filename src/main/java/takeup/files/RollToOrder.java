package takeup.files;

import java.util.Optional;
import java.util.Set;
import takeup.handoff.MadeBy;
import takeup.handoff.RollJson;
import takeup.index.IndexKind;
import takeup.json.JsonProblem;
import takeup.order.ExposedRoll;
import takeup.review.Review;
import takeup.roll.Roll;

/**
 * A roll as the index holds it for an order.
 *
 * @param roll empty where it cannot be ordered
 * @param problem why it cannot; empty where it can
 */
record RollToOrder(Optional<ExposedRoll> roll, String problem) {
    /** The entries that say so. */
    static final IndexKind<RollToOrder> KIND = new IndexKind<>() {
        private static final char PROBLEM = '!';

        @Override
        public String name() {
            return "orders";
        }

        @Override
        public String text(Roll roll, long loading, Review review) {
            try {
                return of(roll).kept();
            } catch (JsonProblem e) {
                return PROBLEM + e.getMessage();
            }
        }

        @Override
        public RollToOrder read(String text) {
            return text.charAt(0) == PROBLEM
                    ? new RollToOrder(Optional.empty(), text.substring(1))
                    : new RollToOrder(Optional.of(ExposedRoll.ofKept(text)), "");
        }
    };

    /**
     * What an order sees of a roll: its published JSON and no more, wherever it comes from. The client is in it, and
     * goes no further than the order was told to take it.
     */
    static ExposedRoll of(Roll roll) {
        return ExposedRoll.of(
                roll.id() + OrderFolder.ENDING,
                RollJson.text(roll, MadeBy.version(Version.number()), Set.of(RollJson.Private.CLIENT)));
    }
}
