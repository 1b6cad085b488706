package takeup.grid;

/**
 * One place on the screen: the letter {@code f}, drawn as a {@link TextRole#READOUT}.
 *
 * @param text one character with its combining marks; "" is the second half of a wide one to its left
 * @param role what it is
 * @param pixels the dots of a picture that are drawn instead
 */
public record Cell(String text, TextRole role, PixelPair pixels) {
    /**
     * Those that a screen is full of are made once, so that a picture is quickly compared with the one before: ASCII,
     * and from U+2500 on lines, blocks and marks.
     */
    private static final Cell[][] KEPT = new Cell[TextRole.values().length][];

    private static final int ASCII = 0x7f;
    private static final int LINES = 0x2500;
    private static final int LINES_END = 0x2600;

    Cell(String text, TextRole role) {
        this(text, role, PixelPair.NONE);
    }

    /** One character in this role. */
    static Cell of(int point, TextRole role) {
        int at = point < ASCII ? point : point >= LINES && point < LINES_END ? ASCII + point - LINES : -1;
        if (at < 0) {
            return new Cell(Character.toString(point), role);
        }
        if (KEPT[role.ordinal()] == null) {
            KEPT[role.ordinal()] = new Cell[ASCII + LINES_END - LINES];
        }
        Cell[] kept = KEPT[role.ordinal()];
        if (kept[at] == null) {
            kept[at] = new Cell(Character.toString(point), role);
        }
        return kept[at];
    }

    public boolean isPicture() {
        return pixels != PixelPair.NONE;
    }

    // Written by hand, here and in Key: the generated equals costs milliseconds at its first use, which is at the very
    // first key.
    @Override
    public boolean equals(Object other) {
        return other == this
                || other instanceof Cell cell
                        && role == cell.role
                        && text.equals(cell.text)
                        && (pixels == cell.pixels || pixels.equals(cell.pixels));
    }

    @Override
    public int hashCode() {
        return 31 * text.hashCode() + role.ordinal();
    }

    static Cell blank(TextRole role) {
        return of(' ', role);
    }

    public boolean isSecondHalf() {
        return text.isEmpty();
    }

    public boolean isBlank() {
        return text.equals(" ");
    }

    /** Whether a terminal may count its columns differently from {@link Width}. */
    public boolean isUncertain() {
        return text.length() > 1
                || text.length() == 1
                        && text.charAt(0) >= 0x7f
                        && Glyphs.ascii(text.charAt(0), false).isEmpty();
    }
}
