package takeup.grid;

/**
 * One place on the screen: the letter {@code f}, drawn as a {@link TextRole#READOUT}.
 *
 * @param text one character with its combining marks; "" is the second half of a wide one to its left
 * @param role what it is
 * @param pixels the dots of a picture that are drawn instead
 */
public record Cell(String text, TextRole role, PixelPair pixels) {
    /** Those that a screen is full of are made once: a picture is compared with the one before cell by cell. */
    private static final Cell[][] KEPT = new Cell[TextRole.values().length][0x7f];

    Cell(String text, TextRole role) {
        this(text, role, PixelPair.NONE);
    }

    /** One character in this role. */
    static Cell of(int point, TextRole role) {
        Cell[] kept = KEPT[role.ordinal()];
        if (point >= kept.length) {
            return new Cell(Character.toString(point), role);
        }
        if (kept[point] == null) {
            kept[point] = new Cell(Character.toString(point), role);
        }
        return kept[point];
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
