package takeup.screen;

import takeup.text.Hidden;

/**
 * The one sanitiser at the border to the screen and to plain output: what steers a terminal or hides from the eye
 * becomes a visible escape such as {@code \}{@code u{1b}}, and all else stays as it is.
 */
public final class Visible {
    private Visible() {}

    /** The text with nothing {@link Hidden} in it. */
    public static String of(String text) {
        return Hidden.shown(text);
    }

    /**
     * As {@link #of}, and everything beyond ASCII as an escape or, for the program's own glyphs, in their ASCII form.
     */
    public static String ascii(String text) {
        StringBuilder seen = new StringBuilder(text.length() + 16);
        String clean = of(text);
        for (int at = 0; at < clean.length(); at += Character.charCount(clean.codePointAt(at))) {
            boolean afterDigit = !seen.isEmpty() && Character.isDigit(seen.charAt(seen.length() - 1));
            seen.append(ascii(clean.codePointAt(at), afterDigit));
        }
        return seen.toString();
    }

    static String ascii(int point, boolean afterDigit) {
        if (point < 0x7f) {
            return Character.toString(point);
        }
        String glyph = Glyphs.ascii(point, afterDigit);
        return glyph.isEmpty() ? escaped(point) : glyph;
    }

    static String escaped(int point) {
        return "\\u{" + Integer.toHexString(point) + '}';
    }
}
