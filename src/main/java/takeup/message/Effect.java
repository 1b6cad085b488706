package takeup.message;

import java.time.OffsetDateTime;
import java.util.List;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.history.JournalStep;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FindQuery;

/** What the model asks of the outside. The outside does it and answers with a {@link Message}. */
public sealed interface Effect {
    /** Write a step down; then see to the files of rolls that were finished, reopened or changed since. */
    record Save(JournalStep step, List<Roll> rollsToExport) implements Effect {}

    /** Read a finished roll. */
    record Fetch(RollId roll) implements Effect {}

    /** List all rolls. */
    record ListRolls() implements Effect {}

    /** Read what a lab order can be made from. */
    record ReadOrders() implements Effect {}

    /** Write a lab order. */
    record WriteOrder(OrderDraft draft, OffsetDateTime at) implements Effect {}

    /** Say of an order how far it has come. */
    record MarkOrder(OrderMark mark, OffsetDateTime at) implements Effect {}

    /** Look for frames in all rolls. */
    record Find(FindQuery query) implements Effect {}

    /** Lay the scans of a folder beside a roll. */
    record OpenScans(RollId roll, String folder) implements Effect {}

    /** Send a tick after so many milliseconds. */
    record Wake(long milliseconds) implements Effect {}

    /** Ring the terminal's bell: a timed exposure has lasted as long as it should. */
    record Bell() implements Effect {}

    /** Paint everything afresh. */
    record Repaint() implements Effect {}

    /** End, and print these lines on the terminal. */
    record Quit(List<String> lines) implements Effect {}

    /** Keep what is being typed, so that it can be offered back after a crash; empty text means that nothing is. */
    record Draft(String text) implements Effect {}
}
