package takeup.screen;

/**
 * The one sanitiser at the border to the screen and to plain output: what steers a terminal or hides from the eye becomes
 * a visible escape such as {@code \}{@code u{1b}}, and all else stays as it is.
 */
public final class Visible {
    private Visible() { }

    /**
     * The text with nothing hidden in it. Escaped are control characters, lone surrogates, marks that turn the writing
     * direction or have no width, line and paragraph separators, and whatever Unicode calls a format character, private
     * use or unassigned (The Unicode Standard, section 4.5, General Category Cc, Cf, Cs, Co, Cn, Zl, Zp).
     */
    public static String of(String text) {
        int at = 0;
        while (at < text.length() && plain(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        if (at == text.length()) {
            return text;
        }
        StringBuilder seen = new StringBuilder(text.length() + 16).append(text, 0, at);
        while (at < text.length()) {
            int point = text.codePointAt(at);
            if (plain(point)) {
                seen.appendCodePoint(point);
            } else {
                escape(seen, point);
            }
            at += Character.charCount(point);
        }
        return seen.toString();
    }

    /** As {@link #of}, and everything beyond ASCII as an escape or, for the program's own glyphs, in their ASCII form. */
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
        StringBuilder escape = new StringBuilder();
        escape(escape, point);
        return escape.toString();
    }

    private static void escape(StringBuilder seen, int point) {
        seen.append("\\u{").append(Integer.toHexString(point)).append('}');
    }

    private static boolean plain(int point) {
        if (point < 0x7f) {
            return point >= ' ';
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED,
                 Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            // Letters by name, blanks to the eye: the Hangul fillers.
            default -> point != 0x115f && point != 0x1160 && point != 0x3164 && point != 0xffa0;
        };
    }
}
