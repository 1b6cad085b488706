package takeup.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads by hand what journals and profiles are most often made of: objects, arrays, strings without escapes, numbers of
 * few digits. It refuses nothing: whatever else a text holds is left to {@link ParsedJson}, which reads it from the
 * start and knows what to say.
 */
final class PlainJson {
    /** Whole numbers of so many digits, and tenfold powers up to it, are exact as a double, and so is one division. */
    private static final int DIGITS = 15;

    /** With more, as 1/60 s has, the class library finds the nearest number. */
    private static final int MOST_DIGITS = 30;

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** What is found behind the last letter; where it is a letter itself, more follows. */
    private static final char END = '\uffff';

    private final String text;
    private final int longest;
    private final boolean isOfManyLines;
    private int at;
    private int line = 1;
    private int depth;

    private PlainJson(String text, int longest, boolean isOfManyLines) {
        this.text = text;
        this.longest = longest;
        this.isOfManyLines = isOfManyLines;
    }

    /** The one document of a text, as {@link ParsedJson#read} answers it; empty where anything in it is unusual. */
    static Optional<Json> read(String text, int longest, boolean isOfManyLines) {
        if (text.length() > ParsedJson.DOCUMENT) {
            return Optional.empty();
        }
        PlainJson reader = new PlainJson(text, longest, isOfManyLines);
        Json json = reader.value();
        boolean isAll = json != null && reader.next() == END && reader.at == text.length();
        return isAll ? Optional.of(json) : Optional.empty();
    }

    /** The next letter that means something; it stays the next. */
    private char next() {
        while (at < text.length()) {
            char letter = text.charAt(at);
            if (letter == '\n') {
                line += isOfManyLines ? 1 : 0;
            } else if (letter != ' ') {
                return letter;
            }
            at++;
        }
        return END;
    }

    /** Null, here and below, for what is not plain. */
    private Json value() {
        char first = next();
        int where = line;
        return switch (first) {
            case '{' -> depth < ParsedJson.DEPTH ? object(where) : null;
            case '[' -> depth < ParsedJson.DEPTH ? array(where) : null;
            case '"' -> {
                String string = string(longest);
                yield string == null ? null : new Json.Text(string, where);
            }
            case 't' -> isWord("true") ? new Json.Bool(true, where) : null;
            case 'f' -> isWord("false") ? new Json.Bool(false, where) : null;
            case 'n' -> isWord("null") ? new Json.Nil(where) : null;
            default -> number(where);
        };
    }

    private boolean isWord(String word) {
        boolean is = text.startsWith(word, at);
        at += word.length();
        return is;
    }

    private Json object(int where) {
        Map<String, Json> fields = new LinkedHashMap<>();
        if (isOpenedEmpty('}')) {
            return new Json.Obj(fields, where);
        }
        do {
            String name = next() == '"' ? string(ParsedJson.NAME) : null;
            if (name == null || next() != ':') {
                return null;
            }
            at++;
            Json value = value();
            if (value == null || fields.put(name, value) != null) {
                return null;
            }
        } while (isComma());
        return isClosed('}') ? new Json.Obj(fields, where) : null;
    }

    private Json array(int where) {
        List<Json> items = new ArrayList<>();
        if (isOpenedEmpty(']')) {
            return new Json.Arr(items, where);
        }
        do {
            Json item = value();
            if (item == null) {
                return null;
            }
            items.add(item);
        } while (isComma());
        return isClosed(']') ? new Json.Arr(items, where) : null;
    }

    private boolean isOpenedEmpty(char bracket) {
        at++;
        depth++;
        return next() == bracket && isClosed(bracket);
    }

    private boolean isComma() {
        boolean is = next() == ',';
        at += is ? 1 : 0;
        return is;
    }

    private boolean isClosed(char bracket) {
        boolean is = next() == bracket;
        at++;
        depth--;
        return is;
    }

    private String string(int most) {
        int from = at + 1;
        int end = from;
        while (end < text.length()) {
            char letter = text.charAt(end);
            if (letter == '"') {
                at = end + 1;
                return end - from <= most ? text.substring(from, end) : null;
            }
            if (letter < ' ' || letter == '\\') {
                return null;
            }
            end++;
        }
        return null;
    }

    private Json number(int where) {
        boolean isNegative = at < text.length() && text.charAt(at) == '-';
        at += isNegative ? 1 : 0;
        int from = at;
        long whole = digits(0);
        int end = at;
        int digits = end - from;
        int decimals = 0;
        if (end < text.length() && text.charAt(end) == '.') {
            at++;
            whole = digits(whole);
            decimals = at - end - 1;
            if (decimals == 0) {
                return null;
            }
        }
        boolean hasZeroBefore = digits > 1 && text.charAt(from) == '0';
        boolean goesOn = at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E');
        if (digits == 0 || digits + decimals > MOST_DIGITS || hasZeroBefore || goesOn || isNegative && whole == 0) {
            return null;
        }
        if (digits + decimals <= DIGITS) {
            double value = whole / POWERS_OF_TEN[decimals];
            return new Json.Num(isNegative ? -value : value, where);
        }
        return decimals == 0
                ? null
                : new Json.Num(Double.parseDouble(text.substring(isNegative ? from - 1 : from, at)), where);
    }

    /** Goes past the digits, and answers their number behind this one; too many may answer any. */
    private long digits(long before) {
        long number = before;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            number = 10 * number + text.charAt(at) - '0';
            at++;
        }
        return number;
    }
}
