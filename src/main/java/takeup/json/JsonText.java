package takeup.json;

import java.util.Optional;

/**
 * JSON text to {@link Json} and back. Strict: duplicate names, a second document, deep nesting, endless strings and
 * numbers without an end (1e999) are refused.
 */
public final class JsonText {
    /** A text may have so many letters: more than any note that can be typed. */
    private static final int LONGEST = 20_000;
    /** The same in an order or an exported roll, where one text may be made of several notes. */
    static final int LONGEST_EXPORTED = 100_000;

    /**
     * So many letters are read by hand at most: the parser takes 8 ms to be made ready, and is quicker then where there
     * is much.
     */
    private static final int BY_HAND = 100_000;

    /** Two threads that count at once count one text less, which does no harm. */
    private static int readByHand;

    /** Why a text is no acceptable JSON, and on which line. */
    public static final class NotJson extends Exception {
        private static final long serialVersionUID = 1;
        private final int line;

        NotJson(int line, String why) {
            super(why);
            this.line = line;
        }

        /** The line, from 1. */
        public int line() {
            return line;
        }
    }

    private JsonText() {}

    /** The one document that the text holds. */
    public static Json read(String text) throws NotJson {
        return read(text, LONGEST, hasManyLines(text));
    }

    /** The same for a line of some file, whose values are not asked where they stand: all of them are on line 1. */
    public static Json readLine(String line) throws NotJson {
        return read(line, LONGEST, false);
    }

    /**
     * Whether a line that {@link #line} made is one that {@link #readLine} takes, as a look at its characters tells
     * without reading it; no answer is false too. In such a line only words too long, a number that is none, too large
     * or has too many digits, and brackets too deep are refused.
     */
    public static boolean isSurelyReadable(String line) {
        if (line.length() > LONGEST) {
            return false;
        }
        boolean isText = false;
        int digits = 0;
        int opened = 0;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c < ' ' || c >= 0x7f) {
                return false;
            }
            if (isText) {
                isText = c != '"';
                i += c == '\\' ? 1 : 0;
            } else {
                isText = c == '"';
                boolean isExponent = digits > 0 && (c == 'e' || c == 'E');
                digits = c >= '0' && c <= '9' ? digits + 1 : 0;
                opened += c == '{' || c == '[' ? 1 : 0;
                if (isExponent || c == 'N' || c == 'I' || digits > ParsedJson.DIGITS || opened > ParsedJson.DEPTH) {
                    return false;
                }
            }
        }
        return !isText;
    }

    /** The same for an order or an exported roll. */
    public static Json readExported(String text) throws NotJson {
        return read(text, LONGEST_EXPORTED, hasManyLines(text));
    }

    private static boolean hasManyLines(String text) {
        return text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0;
    }

    private static Json read(String text, int longest, boolean isOfManyLines) throws NotJson {
        if (readByHand < BY_HAND) {
            readByHand += text.length();
            Optional<Json> plain = PlainJson.read(text, longest, isOfManyLines);
            if (plain.isPresent()) {
                return plain.get();
            }
        }
        return ParsedJson.read(text, longest, isOfManyLines);
    }

    /** On one line, without blanks that mean nothing. */
    public static String line(Json json) {
        return JsonWriter.line(json);
    }

    /** On several lines, two blanks a level, ending in a line feed. */
    public static String pretty(Json json) {
        return JsonWriter.pretty(json);
    }
}
