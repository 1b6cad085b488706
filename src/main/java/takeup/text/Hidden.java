package takeup.text;

import java.util.function.IntPredicate;

/**
 * Which characters steer a terminal or hide from the eye, such as ESC or U+202E: control characters, halves of
 * characters, marks that turn the writing direction or have no width, line and paragraph separators, and whatever
 * Unicode calls a format character, private use or unassigned (The Unicode Standard, section 4.5, General Category Cc,
 * Cf, Cs, Co, Cn, Zl, Zp). Each way out shows them in its own form of an escape.
 */
public final class Hidden {
    private Hidden() {}

    /** Whether a code point is one of them. */
    public static boolean is(int point) {
        if (point < 0x7f) {
            return point < ' ';
        }
        if (isOfTheScreen(point)) {
            return false;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            // Letters by name, blanks to the eye: the Hangul fillers.
            default -> point == 0x115f || point == 0x1160 || point == 0x3164 || point == 0xffa0;
        };
    }

    /** Where the first of them stands in a text; the text's length if there is none. */
    public static int first(String text) {
        int at = 0;
        while (at < text.length()) {
            char letter = text.charAt(at);
            if (isPlain(letter)) {
                at++;
                continue;
            }
            int point = text.codePointAt(at);
            if (is(point)) {
                return at;
            }
            at += Character.charCount(point);
        }
        return at;
    }

    /** Most of what is ever shown: a printable ASCII character. */
    private static boolean isPlain(char letter) {
        return letter >= ' ' && letter < 0x7f;
    }

    /**
     * Dashes, points and quotation marks, and the blocks of lines, of which large letters are made, and of shapes: with
     * these a screen can be drawn without the class library's table of all others, which takes a while to be made.
     */
    static boolean isOfTheScreen(int point) {
        return point >= 0x2010 && point <= 0x2027 || point >= 0x2500 && point <= 0x25ff;
    }

    /** A code point as a visible escape: {@code \}{@code u{1b}}. */
    public static String escaped(int point) {
        return "\\u{" + Integer.toHexString(point) + '}';
    }

    /** The text with each of them as a visible escape such as {@code \}{@code u{1b}}, and all else as it is. */
    public static String shown(String text) {
        return first(text) == text.length() ? text : escaped(text, Hidden::is);
    }

    /**
     * The text as it is written on paper and in files, word for word: the joiners of Persian and of emoji stay, and so
     * does whatever else has no width. Escapes are only what turns the writing direction (Unicode Standard Annex 9,
     * section 2, the property Bidi_Control), what steers a terminal, and half a character.
     */
    public static String printed(String text) {
        return escaped(text, Hidden::isSteering);
    }

    private static boolean isSteering(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                true;
            case Character.FORMAT ->
                point == 0x61c
                        || point == 0x200e
                        || point == 0x200f
                        || point >= 0x202a && point <= 0x202e
                        || point >= 0x2066 && point <= 0x2069;
            default -> false;
        };
    }

    private static String escaped(String text, IntPredicate hidden) {
        StringBuilder seen = new StringBuilder(text.length() + 16);
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int point = text.codePointAt(at);
            if (hidden.test(point)) {
                seen.append(escaped(point));
            } else {
                seen.appendCodePoint(point);
            }
        }
        return seen.toString();
    }
}
