package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.history.ShootState;
import takeup.message.Effect;
import takeup.message.Leaving;
import takeup.message.Message;
import takeup.message.PendingLines.Batch;
import takeup.message.PendingLines.From;

/** Lines are read one after the other, until one waits for a roll or for the end of the program. */
final class LineFlow {
    private LineFlow() {}

    /** Lines of the prompt, or what a Space stands for. */
    static Transition take(Session session, From from, List<String> lines) {
        return run(session.with(session.pendingLines().and(new Batch(lines, from))));
    }

    /** A line that a key stands for; it leaves the prompt alone. */
    static Transition take(Session session, String line) {
        return take(session, From.KEY, List.of(line));
    }

    /**
     * Reads the lines that are to be read, until one waits. A refused one goes back to the prompt, with the rest of its
     * kind.
     */
    private static Transition run(Session session) {
        Transition all = Transition.to(session);
        while (!all.session().pendingLines().isEmpty()
                && !all.session().pendingLines().isBlocked()) {
            all = all.then(LineFlow::readFirst);
        }
        return all;
    }

    private static Transition readFirst(Session session) {
        Batch first = session.pendingLines().first();
        LineResult result = read(session.withoutQuestion(), session.outcome(first.first()), first.from());
        return result.transition()
                .then(it -> Transition.to(
                        switch (result.progress()) {
                            case DONE -> it.with(it.pendingLines().withoutFirstLine());
                            case REFUSED -> withFirstPutBack(it);
                            case WAITS -> it;
                        }));
    }

    private static LineResult read(Session session, Outcome outcome, From from) {
        if (outcome instanceof Outcome.Rejected rejected) {
            return LineResult.refused(session, rejected.why());
        }
        if (outcome instanceof Outcome.NeedsConfirmation asked && from != From.SUGGESTION) {
            return LineResult.done(session.with(session.dialogue().asking(Optional.of(asked)))
                    .say(LastAnswer.Tone.QUESTION, asked.question()));
        }
        if (outcome instanceof Outcome.NeedsRoll needs) {
            return LineResult.waits(Transition.to(
                    session.with(session.pendingLines().awaiting(needs.roll()))
                            .say(LastAnswer.Tone.QUIET, "reading " + needs.roll() + " …"),
                    new Effect.Fetch(needs.roll())));
        }
        // Space on a highlighted pair follows a shutter that was pressed: its frame is never kept waiting.
        Outcome.Accepted accepted =
                outcome instanceof Outcome.NeedsConfirmation asked ? asked.ifYes() : (Outcome.Accepted) outcome;
        return accepted.entries().isEmpty()
                ? ScreenActions.run(session, accepted)
                : LineResult.done(SaveFlow.accept(session, accepted, from).then(it -> asking(it, accepted)));
    }

    /** What a line asks once it is done: its answer stands in front of the question, which covers it otherwise. */
    private static Transition asking(Session session, Outcome.Accepted accepted) {
        if (accepted.thenAsks().isEmpty() || session.saveError().isPresent()) {
            return Transition.to(session);
        }
        Outcome.NeedsConfirmation asks = accepted.thenAsks().get();
        String text = accepted.answer().text() + " " + asks.question();
        Optional<Outcome.NeedsConfirmation> asked =
                Optional.of(new Outcome.NeedsConfirmation(text, asks.ifYes(), asks.ifNo()));
        return Transition.to(session.with(session.dialogue().asking(asked)).say(LastAnswer.Tone.QUESTION, text));
    }

    /** Lines of the prompt go back to it; where something else is being typed by now, PgUp brings them. */
    private static Session withFirstPutBack(Session session) {
        Batch first = session.pendingLines().first();
        Session without = session.with(session.pendingLines().withoutFirstBatch());
        String text = String.join("\n", first.lines());
        if (first.from() != From.PROMPT) {
            return without;
        }
        return session.prompt().isEmpty()
                ? without.with(session.prompt().withSelected(text))
                : without.with(session.prompt().remembering(text))
                        .say(LastAnswer.Tone.REFUSAL, session.lastAnswer().text() + "; PgUp brings the line back");
    }

    /** No longer waits for a roll or for leaving: the line that did goes back, what came after it goes on. */
    static Transition giveUp(Session session) {
        Session free = session.with(session.pendingLines().arrived().leaving(Leaving.NO));
        return run(free.pendingLines().isEmpty() ? free : withFirstPutBack(free));
    }

    /** A roll was read in. */
    static Transition fetched(Session session, Message.Fetched message) {
        SaveQueue queue = session.saveQueue();
        boolean isAwaited = session.pendingLines().awaitedRoll().equals(Optional.of(message.roll()));
        boolean isNew = !knows(queue.saved(), message)
                && (isAwaited || message.problems().isEmpty());
        Session after = isNew ? session.with(queue.with(message.steps())) : session;
        if (!isAwaited) {
            return Transition.to(after);
        }
        boolean isThere = knows(after.saved(), message);
        if (isThere && message.problems().isEmpty()) {
            return run(after.with(after.pendingLines().arrived()).saysNothing());
        }
        String why = message.problems().isEmpty()
                ? message.roll() + " cannot be read"
                : message.problems().get(0);
        return giveUp(
                after.say(LastAnswer.Tone.REFUSAL, why + (isThere ? "; Enter goes on with what could be read" : "")));
    }

    private static boolean knows(ShootState state, Message.Fetched message) {
        return state.rolls().containsKey(message.roll());
    }
}
