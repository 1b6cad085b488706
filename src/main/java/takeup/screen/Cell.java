package takeup.screen;

/**
 * One place on the screen: the letter {@code f}, drawn as a {@link TextRole#READOUT}.
 *
 * @param text one character with the marks that sit on it; "" is the second half of a wide one to its left
 * @param look what it is
 * @param ink the dots of a picture that are drawn instead
 */
public record Cell(String text, TextRole look, PixelPair ink) {
    Cell(String text, TextRole look) {
        this(text, look, PixelPair.NONE);
    }

    public boolean isPicture() {
        return ink != PixelPair.NONE;
    }

    static Cell blank(TextRole look) {
        return new Cell(" ", look);
    }

    public boolean isSecondHalf() {
        return text.isEmpty();
    }

    boolean isBlank() {
        return text.equals(" ");
    }

    /** True where a terminal may think otherwise than {@link Width} about the columns it takes. */
    public boolean isUncertain() {
        return text.length() > 1
                || text.length() == 1
                        && text.charAt(0) >= 0x7f
                        && Glyphs.ascii(text.charAt(0), false).isEmpty();
    }
}
