package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.action.PickList;
import takeup.advice.LoadChecks;
import takeup.command.Outcome;
import takeup.kit.Suggestion;
import takeup.message.PendingLines.From;
import takeup.session.Session.Page;

/** Enter: does what is on the prompt, or takes the highlighted choice, or shows what can be done. */
final class EnterKey {
    private EnterKey() {}

    static Transition enter(Session session) {
        if (!session.prompt().isEmpty()) {
            return enterPrompt(session);
        }
        if (session.question().flatMap(Outcome.NeedsConfirmation::ifNo).isPresent()) {
            return LineFlow.take(session, "yes");
        }
        Optional<Suggestion> suggestion = session.highlighted();
        if (suggestion.isPresent()) {
            return LineFlow.take(session.withoutChoice(), "set " + HeldKeyFlow.typed(session, suggestion.get()));
        }
        Optional<PickList.Row> row = session.highlightedPick();
        if (row.isPresent()) {
            return LineFlow.take(session.withoutChoice(), row.get().line());
        }
        if (session.view().page() == Page.SHOOT && isJustDenied(session)) {
            // Who types n and Enter, as to any other question, says no, and not yes to what is asked next.
            return Transition.to(session);
        }
        if (isLoadCheckAsked(session)) {
            return LineFlow.take(session, "yes");
        }
        return ActionKeys.open(session);
    }

    private static Transition enterPrompt(Session session) {
        List<String> lines = session.prompt().lines();
        Outcome first = session.outcome(lines.get(0));
        Session cleared = session.with(session.prompt().cleared()).withoutChoice();
        // A disk that does not answer must not keep anybody here.
        return session.pendingLines().isBlocked() && ScreenActions.isQuit(first)
                ? ScreenActions.run(cleared, (Outcome.Accepted) first).transition()
                : LineFlow.take(cleared, From.PROMPT, lines);
    }

    static boolean isJustDenied(Session session) {
        return LoadChecks.isJustDenied(session.afterPending().history(), session.now());
    }

    /** Whether the load routine waits for a key: where it is to be seen, and nothing else was asked. */
    static boolean isLoadCheckAsked(Session session) {
        return session.view().page() == Page.SHOOT
                && session.view().sheet().isEmpty()
                && session.question().isEmpty()
                && session.settings().readOnly().isEmpty()
                && LoadChecks.of(session.afterPending()).isPresent();
    }
}
