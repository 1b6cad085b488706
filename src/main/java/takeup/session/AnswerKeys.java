package takeup.session;

import java.util.Optional;
import takeup.message.GivenAnswer;
import takeup.message.Key;

/** A lone y or n answers the question that stands, at once; the rest of the word is not a line of its own. */
final class AnswerKeys {
    private AnswerKeys() {}

    static Transition answer(Session session, String word) {
        GivenAnswer given = GivenAnswer.of(word, session.clock().ticks());
        return LineFlow.take(session, word)
                .then(it -> Transition.to(it.with(it.dialogue().given(given))));
    }

    /** After a key that belongs to an answer just given; empty where it is a key like any other. */
    static Optional<Session> rest(Session session, Key key) {
        GivenAnswer given = session.dialogue().given();
        // Nearly every key comes without an answer before it, the first one of all too: that must cost nothing.
        if (given == GivenAnswer.NOTHING || !session.prompt().isEmpty()) {
            return Optional.empty();
        }
        return given.with(key, session.clock().ticks())
                .map(it -> session.with(session.dialogue().given(it)));
    }

    /** Before a key that does not belong to it. */
    static Session beforeOther(Session session, Key key) {
        if (session.dialogue().given() == GivenAnswer.NOTHING) {
            return session;
        }
        String begun = session.dialogue().given().begun(key, session.clock().ticks());
        Session free = session.with(session.dialogue().given(GivenAnswer.NOTHING));
        return begun.isEmpty() || !free.prompt().isEmpty()
                ? free
                : free.with(free.prompt().with(begun));
    }
}
