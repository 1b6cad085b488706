package takeup.terminal;

import takeup.message.Key;

/** What a terminal has to tell; it comes on threads of the terminal. */
public interface TerminalListener {
    /** A key; the next is read only after {@link Terminal#next()}. */
    void pressed(Key key);

    /** Another size, or the program goes on after a stop: ask {@link Terminal#size()}, and show a picture. */
    void changed();

    /** The terminal is gone, and why; this comes once. */
    void ended(String why);
}
