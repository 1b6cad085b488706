package takeup.message;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.history.JournalStep;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FindQuery;
import takeup.search.FoundFrames;

/** Where steps are kept and read again: the data folder, or the memory of a test. No method throws. */
public interface StepStore {
    /** Writes a step down: once this returns it is safe. Why it could not be written; empty if it was. */
    Optional<SaveError> save(JournalStep step);

    /** Brings the files of rolls that were finished, reopened or changed since up to date; why not, or empty. */
    Optional<String> export(List<Roll> rolls);

    /** What was put right on the disk, or is about to go wrong: sentences for the photographer, often none. */
    List<String> remarks();

    /** A finished roll, with what of it could not be read. */
    Message.Fetched read(RollId roll);

    /** Every roll there is. Called while another method is at work, on a thread of its own. */
    RollList list();

    /** Frames of any roll that meet all that is asked. On that other thread too. */
    FoundFrames find(FindQuery query);

    /** What a lab order can be made from: {@link Message.OrderRead}, or a notice why not. On that other thread too. */
    Message readOrders();

    /** Writes a lab order: {@link Message.OrderWritten}, or a notice why not. */
    Message writeOrder(OrderDraft draft, OffsetDateTime at);

    /** Writes down how far an order has come: {@link Message.OrderMarked}, or a notice why not. */
    Message markOrder(OrderMark mark, OffsetDateTime at);

    /** Keeps what is being typed, for the next start. */
    void draft(String text);

    /**
     * Every roll there is, with what could not be read.
     *
     * @param ordered where each roll is that is in an order, by its number: {@code at the lab}
     */
    record RollList(Optional<List<RollSummary>> rolls, Map<String, String> ordered, List<String> problems) {
        /** Where no order is known. */
        public RollList(Optional<List<RollSummary>> rolls, List<String> problems) {
            this(rolls, Map.of(), problems);
        }
    }
}
