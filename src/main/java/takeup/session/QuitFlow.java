package takeup.session;

import takeup.message.Effect;
import takeup.message.Leaving;

/** Leaving the program: Ctrl-C, {@code quit} and {@code quit yes}, and waiting for the disk before that. */
final class QuitFlow {
    private static final String QUIT_YES =
            "so it does not leave; quit yes leaves all the same and prints it on the terminal";
    private static final String NOT_SAVED = "NOT SAVED yet, " + QUIT_YES;
    /** The disk refused once more while it waited to leave. */
    static final String STILL_NOT_SAVED = "still NOT SAVED, " + QUIT_YES;

    private QuitFlow() {}

    /** {@code quit}: leaves once the disk has everything. */
    static LineResult leaveWhenSaved(Session session) {
        if (session.saveError().isPresent()) {
            return LineResult.refused(session, NOT_SAVED);
        }
        Session leaving = leaving(session, Leaving.WHEN_SAVED);
        return LineResult.waits(session.saveQueue().isEmpty() ? quit(leaving) : Transition.to(leaving));
    }

    /** {@code quit yes}: leaves once the disk has answered; asked a second time, at once. */
    static Transition leaveAnyway(Session session) {
        Session leaving = leaving(session, Leaving.ANYWAY);
        if (session.saveQueue().isEmpty() || session.pendingLines().leaving() == Leaving.ANYWAY) {
            return quit(leaving);
        }
        return SaveFlow.write(
                leaving.say(LastAnswer.Tone.QUIET, "leaving as soon as the disk answers; Ctrl-C leaves now"));
    }

    /** Ctrl-C: clears the prompt; twice: leaves. */
    static Transition ctrlC(Session session) {
        if (session.pendingLines().leaving() == Leaving.ANYWAY) {
            return quit(session);
        }
        if (session.pendingLines().leaving() == Leaving.WHEN_SAVED) {
            return Transition.to(session.say(
                    LastAnswer.Tone.QUIET,
                    "leaving as soon as the disk answers; quit yes leaves whatever it says, Esc stays"));
        }
        Session once = leaving(session, Leaving.CTRL_C_ONCE).withoutQuestion();
        LastAnswer.Tone tone = session.saveError().isPresent() ? LastAnswer.Tone.REFUSAL : LastAnswer.Tone.QUIET;
        String how = session.saveError().isPresent() ? NOT_SAVED : "Ctrl-C again, or quit, leaves";
        if (!session.prompt().isEmpty()) {
            return Transition.to(once.with(session.prompt().cleared())
                    .withoutChoice()
                    .say(tone, "cleared (" + PromptKeys.recallHint(session) + "); " + how));
        }
        return session.pendingLines().leaving() == Leaving.CTRL_C_ONCE
                ? leaveWhenSaved(once).transition()
                : Transition.to(once.say(
                        tone, how + (session.saveQueue().isEmpty() ? "; all that was logged is on disk" : "")));
    }

    /** Another key than Ctrl-C was pressed: the next Ctrl-C is the first again. */
    static Session forgetCtrlC(Session session) {
        return session.pendingLines().leaving() == Leaving.CTRL_C_ONCE ? leaving(session, Leaving.NO) : session;
    }

    /** The disk has everything: now it leaves, if that was what it waited for. */
    static Transition whenSaved(Session session) {
        return session.pendingLines().leaving().isUnderWay()
                        && session.saveQueue().isEmpty()
                ? quit(session)
                : Transition.to(session);
    }

    static Transition quit(Session session) {
        return Transition.to(session, new Effect.Quit(ExitMessage.of(session)));
    }

    private static Session leaving(Session session, Leaving how) {
        return session.with(session.pendingLines().leaving(how));
    }
}
