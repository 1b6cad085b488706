package takeup.session;

import java.util.List;
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
 * @param action what it does
 */
record KeyBinding(Key key, String description, String word, When when, List<Page> pages, KeyAction action) {
    /** When a key works. */
    enum When {
        EMPTY,
        TYPED,
        /** While the load routine asks, on the empty prompt that shows it. */
        ASKED,
        /** While a question waits for yes or no, with nothing typed yet. */
        QUESTIONED,
        ALWAYS
    }

    /** The same, told apart as what a word of the prompt does too. */
    KeyBinding like(String sameWord) {
        return new KeyBinding(key, description, sameWord, when, pages, action);
    }

    /** Whether it is this key's turn, in the view and with the prompt as they are. */
    boolean isHere(Session session) {
        boolean isEmpty = session.prompt().isEmpty();
        boolean fits = switch (when) {
            case EMPTY -> isEmpty;
            case TYPED -> !isEmpty;
            case QUESTIONED -> isEmpty && session.question().isPresent();
            case ASKED -> isEmpty && EnterKey.isLoadCheckAsked(session);
            case ALWAYS -> true;
        };
        return fits && pages.contains(session.view().page());
    }
}
