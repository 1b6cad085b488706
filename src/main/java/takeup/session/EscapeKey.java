package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.AnswerFields;
import takeup.command.Outcome;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.message.Leaving;
import takeup.message.PendingLines.From;
import takeup.session.Session.Page;

/** Esc: takes back the nearest thing that was begun, one at a time, and then goes back to the shoot screen. */
final class EscapeKey {
    private EscapeKey() {}

    static Transition escape(Session before) {
        boolean wasAsked = before.question().isPresent();
        Session session = before.withoutQuestion();
        if (session.pendingLines().awaitedRoll().isPresent()
                || session.pendingLines().leaving() == Leaving.WHEN_SAVED) {
            return LineFlow.giveUp(session.say(LastAnswer.Tone.QUIET, "given up"));
        }
        if (session.view().page() == Page.FIND && ShootKeys.isBareFind(session)) {
            return goBack(session.with(session.prompt().with("")));
        }
        if (!session.prompt().isEmpty()) {
            return Transition.to(session.with(session.prompt().cleared())
                    .say(
                            LastAnswer.Tone.QUIET,
                            (wasAsked ? "withdrawn and cleared; " : "cleared; ") + PromptKeys.recallHint(session)));
        }
        if (wasAsked) {
            return Transition.to(session.say(LastAnswer.Tone.QUIET, "withdrawn"));
        }
        Optional<Session> back = ActionKeys.back(session);
        if (back.isPresent()) {
            return Transition.to(back.get());
        }
        if (OrderFlow.isAtSheet(session)) {
            return LineFlow.take(session, "order");
        }
        Page page = session.view().page();
        boolean isList = page == Page.ACTIONS || session.view().isList();
        if (session.view().chosen() >= 0 && !isList) {
            return Transition.to(session.withoutChoice().saysNothing());
        }
        if (EnterKey.isLoadCheckAsked(session)) {
            return LineFlow.take(session, "routine skip");
        }
        return isGuideShown(session) ? leaveGuide(session) : goBack(session);
    }

    private static boolean isGuideShown(Session session) {
        return session.view().page() == Page.SHOOT
                && !session.view().big()
                && session.view().sheet().isEmpty()
                && Guide.of(session).isPresent();
    }

    private static Transition goBack(Session session) {
        View view = session.view().page(session.view().previous());
        View back = view.page() == Page.SHOOT ? view.big(false) : view;
        return ViewFlow.listIfShown(session.with(back).saysNothing());
    }

    private static Transition leaveGuide(Session session) {
        ShootState state = session.afterPending();
        List<JournalEntry> entries = new ArrayList<>(state.carryOverEntries(session.now()));
        entries.add(new JournalEntry.OnDay(new DayEvent.GuideDismissed()));
        String title = "The guide is gone for good";
        Outcome.Answer answer = new Outcome.Answer(
                "state",
                title,
                title + "; ? shows all keys and words.",
                "",
                new AnswerFields.WholeState(state),
                List.of());
        return SaveFlow.accept(
                session, new Outcome.Accepted(entries, state, answer, Optional.empty(), List.of()), From.KEY);
    }
}
