package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.advice.LoadChecks;
import takeup.command.Outcome;
import takeup.framing.RatingCommand;
import takeup.kit.Suggestion;
import takeup.session.PendingLines.From;
import takeup.session.Session.Page;
import takeup.session.Session.Tone;

/** Enter: does what is on the prompt, or takes the highlighted choice, or says what Space would do. */
final class EnterKey {
    private EnterKey() {}

    static Transition enter(Session session) {
        if (!session.prompt().isEmpty()) {
            return enterPrompt(session);
        }
        Optional<Suggestion> suggestion = session.highlighted();
        if (suggestion.isPresent()) {
            return LineFlow.take(session.withoutChoice(), "set " + HeldKeyFlow.typed(session, suggestion.get()));
        }
        Optional<PickList.Row> row = PickList.highlighted(session);
        if (row.isPresent()) {
            return LineFlow.take(session.withoutChoice(), row.get().line());
        }
        if (isLoadCheckAsked(session)) {
            return LineFlow.take(session, "yes");
        }
        return Transition.to(session.say(Tone.QUIET, hint(session)));
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

    /**
     * Whether the load routine waits for a key: where it is to be seen, nothing else was asked, and the guide is over.
     */
    static boolean isLoadCheckAsked(Session session) {
        return session.view().page() == Page.SHOOT
                && session.view().sheet().isEmpty()
                && session.question().isEmpty()
                && session.settings().readOnly().isEmpty()
                && Guide.of(session).isEmpty()
                && LoadChecks.of(session.afterPending()).isPresent();
    }

    private static String hint(Session session) {
        return switch (session.view().page()) {
            case SHOOT ->
                whatSpaceDoes(session)
                        + (PickList.of(session).rows().isEmpty() ? "" : "; Down and Enter take a choice from the list");
            case HELP -> "Down highlights an entry and Enter does it; typing looks for one; Esc goes back";
            case FRAMES, ROLLS, PLAN, BAG, DAY_END ->
                "Space turns the page here; Esc goes back to the shoot screen, where Space logs a frame";
        };
    }

    private static String whatSpaceDoes(Session session) {
        Outcome same =
                session.outcome(RatingCommand.space(session.afterPending().asOf(session.now())));
        if (same instanceof Outcome.Accepted accepted) {
            return "Space logs: " + accepted.answer().text();
        }
        return same instanceof Outcome.Rejected rejected
                ? "Space logs nothing: " + rejected.why()
                : "Space logs the same again";
    }
}
