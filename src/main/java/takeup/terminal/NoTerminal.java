package takeup.terminal;

/**
 * There is no terminal to draw on; the message says why in one plain sentence, such as "the output is not a terminal".
 */
public final class NoTerminal extends Exception {
    private static final long serialVersionUID = 1L;

    NoTerminal(String sentence) {
        super(sentence);
    }
}
