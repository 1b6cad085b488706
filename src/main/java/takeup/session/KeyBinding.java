package takeup.session;

import java.util.List;
import java.util.Optional;
import takeup.message.Key;
import takeup.session.Session.Page;

/**
 * A key and what it does.
 *
 * @param key the key
 * @param description what it does, in a few words
 * @param word the word that does the same; empty where there is none
 * @param when whether it works on an empty prompt only, while something is typed only, or always
 * @param pages in which views it works
 * @param whyNot why it cannot act now
 * @param step what it does
 */
record KeyBinding(Key key, String description, String word, When when, List<Page> pages, WhyNot whyNot, Step step) {
    /** When a key works. */
    enum When {
        EMPTY,
        TYPED,
        ALWAYS
    }

    /** Why a key cannot act now; empty if it can. */
    interface WhyNot {
        Optional<String> apply(Session session);
    }

    /** What a key makes of the model. */
    interface Step {
        Transition apply(Session session);
    }

    /** The same, told apart as what a word of the prompt does too. */
    KeyBinding like(String sameWord) {
        return new KeyBinding(key, description, sameWord, when, pages, whyNot, step);
    }

    KeyBinding unless(WhyNot reason) {
        return new KeyBinding(key, description, word, when, pages, reason, step);
    }

    /** Whether it is this key's turn, in the view and with the prompt as they are. */
    boolean isHere(Session session) {
        boolean fits =
                when == When.ALWAYS || (when == When.EMPTY) == session.prompt().isEmpty();
        return fits && pages.contains(session.view().page());
    }
}
