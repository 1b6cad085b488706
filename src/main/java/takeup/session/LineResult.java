package takeup.session;

import takeup.message.Effect;

/**
 * What became of one line.
 *
 * @param progress whether the next line may be read
 * @param transition the model after it
 */
record LineResult(Progress progress, Transition transition) {
    /** Whether the next line may be read. */
    enum Progress {
        DONE,
        /** It goes back to the prompt, with those that came in with it. */
        REFUSED,
        /** It is read once more when what it waits for is there. */
        WAITS
    }

    static LineResult done(Session session, Effect... effects) {
        return done(Transition.to(session, effects));
    }

    static LineResult done(Transition transition) {
        return new LineResult(Progress.DONE, transition);
    }

    static LineResult refused(Session session, String why) {
        return new LineResult(Progress.REFUSED, Transition.to(session.say(LastAnswer.Tone.REFUSAL, why)));
    }

    static LineResult waits(Transition transition) {
        return new LineResult(Progress.WAITS, transition);
    }
}
