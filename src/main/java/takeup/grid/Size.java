package takeup.grid;

/**
 * How large the terminal is, such as 80 columns by 24 rows.
 *
 * @param columns character cells across, 1 or more
 * @param rows lines, 1 or more
 */
public record Size(int columns, int rows) {
    /** The size of a terminal that does not say its own. */
    public static final Size USUAL = new Size(80, 24);

    public Size {
        if (columns < 1 || rows < 1) {
            throw new IllegalArgumentException("a terminal has at least one cell, was " + columns + "x" + rows);
        }
    }
}
