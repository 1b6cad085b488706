package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.action.Menu;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderMark;
import takeup.drafting.OrderRow;
import takeup.drafting.OrderSource;
import takeup.drafting.OrderWords;
import takeup.json.Json;
import takeup.message.Effect;
import takeup.message.Message;
import takeup.order.OrderText;
import takeup.prompt.CommandRejected;
import takeup.session.Session.Page;

/** The lab order on the screen: what it is made from comes from the disk, and so does the answer that it is written. */
final class OrderFlow {
    private static final String WRITE = "write";
    private static final String WRITE_ANYWAY = "write anyway";

    private OrderFlow() {}

    /** What the folder holds has come in. What was chosen before stays, but for an order that is written. */
    static Session read(Session session, Message.OrderRead message) {
        return over(session, message.source());
    }

    private static Session over(Session session, OrderSource source) {
        Optional<OrderDraft> before = session.view().draft().filter(it -> it.step() != OrderDraft.Step.WRITTEN);
        return session.with(
                session.view().drafting(before.map(it -> it.over(source)).orElseGet(() -> OrderDraft.of(source))));
    }

    /** How far an order has come is on the disk. */
    static Session marked(Session session, Message.OrderMarked message) {
        return over(session, message.source()).say(LastAnswer.Tone.ANSWER, message.text());
    }

    /** A line of the order that is made. */
    static LineResult line(Session session, String words) {
        Optional<OrderDraft> draft =
                session.view().page() == Page.ORDER ? session.view().draft() : Optional.empty();
        if (words.isEmpty() && !isAtSheet(session)) {
            return LineResult.done(ViewFlow.show(session, Page.ORDER));
        }
        if (draft.isEmpty()) {
            return LineResult.refused(session, "order (or F7) shows the order first");
        }
        try {
            if (words.equals(OrderMark.WORD) || words.startsWith(OrderMark.WORD + " ")) {
                return mark(session, draft.get(), words);
            }
            return words.equals(WRITE) || words.equals(WRITE_ANYWAY)
                    ? write(session, draft.get(), words)
                    : LineResult.done(session.with(session.view().drafting(OrderWords.apply(draft.get(), words)))
                            .saysNothing());
        } catch (CommandRejected e) {
            return LineResult.refused(session, e.getMessage());
        }
    }

    private static LineResult mark(Session session, OrderDraft draft, String words) {
        OrderMark mark = OrderMark.parse(words, draft.source().earlier());
        Optional<String> readOnly = session.settings().readOnly();
        return readOnly.isPresent()
                ? LineResult.refused(session, "read only: " + readOnly.get())
                : LineResult.done(session.saysNothing(), new Effect.MarkOrder(mark, session.now()));
    }

    private static LineResult write(Session session, OrderDraft draft, String words) {
        Optional<String> readOnly = session.settings().readOnly();
        if (readOnly.isPresent()) {
            return LineResult.refused(session, "read only: " + readOnly.get());
        }
        OrderDraft atSheet = OrderWords.apply(draft, "sheet");
        List<String> stops = atSheet.stops();
        if (!stops.isEmpty() && words.equals(WRITE)) {
            return LineResult.done(asking(session, String.join("; ", stops) + ". Order it anyway? y/n"));
        }
        return LineResult.done(
                session.say(LastAnswer.Tone.QUIET, "writing the order"), new Effect.WriteOrder(atSheet, session.now()));
    }

    private static Session asking(Session session, String question) {
        Outcome.Accepted ifYes = new Outcome.Accepted(
                List.of(),
                session.afterPending(),
                new Outcome.Answer("state", "", Json.object(), List.of()),
                Optional.of(new ScreenAction.MakeOrder(WRITE_ANYWAY)),
                List.of());
        Outcome.NeedsConfirmation asked = new Outcome.NeedsConfirmation(question, ifYes);
        return session.with(session.dialogue().asking(Optional.of(asked))).say(LastAnswer.Tone.QUESTION, question);
    }

    /** The order is on the disk. */
    static Session written(Session session, Message.OrderWritten message) {
        return session.with(session.view().drafting(message.draft()))
                .say(
                        LastAnswer.Tone.ANSWER,
                        message.order() + " written: the sheet is "
                                + message.draft().sheet());
    }

    /** Whether the sheet is shown before it is written; Esc and a bare {@code order} go back from there. */
    static boolean isAtSheet(Session session) {
        return session.view().page() == Page.ORDER
                && session.view()
                        .draft()
                        .filter(it -> it.step() == OrderDraft.Step.SHEET)
                        .isPresent();
    }

    /** How many rows can be picked. */
    static int rows(Session session) {
        return choosing(session)
                .map(it -> OrderRow.of(it, session.now()).size())
                .orElse(0);
    }

    /** How many lines the sheet has about, to be scrolled. */
    static int lines(Session session) {
        return session.view()
                .draft()
                .map(it -> 2 * it.checks().size()
                        + (int) OrderText.of(it.order(session.now())).lines().count())
                .orElse(0);
    }

    private static Optional<OrderDraft> choosing(Session session) {
        return session.view().draft().filter(it -> it.step() == OrderDraft.Step.CHOOSING);
    }

    /** Enter: does what the row says, or asks for it; at the sheet it writes. */
    static Transition enter(Session session) {
        Optional<OrderDraft> draft = choosing(session);
        if (draft.isEmpty()) {
            return isAtSheet(session) ? LineFlow.take(session, "order " + WRITE) : ViewFlow.show(session, Page.ROLLS);
        }
        OrderRow row = OrderRow.of(draft.get(), session.now())
                .get(Math.max(0, session.view().chosen()));
        Optional<Menu> asked = row.asked();
        return asked.isPresent()
                ? Transition.to(
                        session.with(session.view().offering(asked.get())).saysNothing())
                : LineFlow.take(session, row.line());
    }
}
