package takeup.action;

/**
 * How large the window is, and what of it a list has. Help is paged through by what is seen of it.
 *
 * @param columns how wide
 * @param rows how high
 */
public record Window(int columns, int rows) {
    /** The usual one, until the terminal has told its size. */
    public static final Window USUAL = new Window(80, 24);

    /** Columns left free at both sides of a wide screen. */
    public int margin() {
        return columns >= 96 ? 2 : 0;
    }

    /** Columns between the margins. */
    public int room() {
        return columns - 2 * margin();
    }

    /** How many lines of a list are seen at once: below the title, above the row of warnings and the prompt. */
    public int listRows() {
        return Math.max(0, rows - 5);
    }
}
