package takeup.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.exposure.ExposureValue;

/**
 * A typed line cut into its words and the note behind the first semicolon. A comma between two digits is a decimal
 * point; a blank may stand between a number and its unit.
 *
 * @param words lower case, units joined to their numbers
 * @param note letter for letter, without the blanks around it; empty where there is none
 */
public record Tokens(List<String> words, Optional<String> note) {
    public static Tokens of(String line) {
        int semicolon = line.indexOf(';');
        String typed = semicolon < 0 ? line : line.substring(0, semicolon);
        String note = semicolon < 0 ? "" : line.substring(semicolon + 1).strip();
        return new Tokens(
                joined(split(points(typed.toLowerCase(Locale.ROOT)))),
                note.isEmpty() ? Optional.empty() : Optional.of(note));
    }

    private static String points(String text) {
        StringBuilder out = new StringBuilder(text);
        for (int at = 1; at + 1 < text.length(); at++) {
            if (text.charAt(at) == ',' && isDigit(text.charAt(at - 1)) && isDigit(text.charAt(at + 1))) {
                out.setCharAt(at, '.');
            }
        }
        return out.toString();
    }

    /** The words between blanks of every kind, letter for letter. */
    static List<String> split(String text) {
        List<String> words = new ArrayList<>();
        int start = -1;
        for (int at = 0; at <= text.length(); at++) {
            boolean blank = at == text.length() || isBlank(text.charAt(at));
            if (blank && start >= 0) {
                words.add(text.substring(start, at));
                start = -1;
            } else if (!blank && start < 0) {
                start = at;
            }
        }
        return words;
    }

    /** Every kind of blank, also the one that does not break a line. */
    public static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** {@code 85 mm} becomes {@code 85mm}, {@code f 8} becomes {@code f8}, {@code ev 11.2} stays. */
    private static List<String> joined(List<String> words) {
        List<String> out = new ArrayList<>();
        for (String word : words) {
            String before = out.isEmpty() ? "" : out.get(out.size() - 1);
            boolean unit = isUnit(word)
                    && !before.isEmpty()
                    && isDigit(before.charAt(before.length() - 1))
                    && (isDigit(before.charAt(0)) || before.startsWith("1/") || before.charAt(0) == 'b');
            boolean isKey = out.size() > 1 && out.get(out.size() - 2).equals("cam");
            boolean sign = isSign(before) && !isKey && isDigit(word.charAt(0));
            if (unit || sign) {
                out.set(out.size() - 1, before + word);
            } else {
                out.add(word);
            }
        }
        return out;
    }

    private static boolean isSign(String word) {
        return switch (word) {
            case "f", "f/", "b", "@", "ei", "x", "*", "nd" -> true;
            default -> false;
        };
    }

    private static boolean isUnit(String word) {
        return switch (word) {
            case "mm", "m", "ft", "s", "min", "h", "lx", "fc", "cd", "\"" -> true;
            default -> false;
        };
    }

    /** What the sign of a word says. */
    public static Token token(String word) {
        Optional<Token> signed = aperture(word);
        if (signed.isEmpty()) {
            signed = time(word);
        }
        if (signed.isEmpty()) {
            signed = other(word);
        }
        if (signed.isEmpty()) {
            signed = bare(word);
        }
        return signed.isPresent() ? signed.get() : new Token(Token.Kind.WORD, 0, -1, word);
    }

    private static Optional<Token> token(Token.Kind kind, Optional<Double> number, int tenths, String word) {
        return number.isPresent() ? Optional.of(new Token(kind, number.get(), tenths, word)) : Optional.empty();
    }

    private static Optional<Token> aperture(String word) {
        String rest = after(word, "f/", "f");
        return rest.isEmpty() ? Optional.empty() : withTenths(Token.Kind.APERTURE, rest, word);
    }

    /** What follows the first of the signs that a word begins with; "" where it begins with none. */
    private static String after(String word, String... signs) {
        for (String sign : signs) {
            if (word.startsWith(sign)) {
                return word.substring(sign.length());
            }
        }
        return "";
    }

    private static Optional<Token> bare(String word) {
        return word.startsWith("-")
                ? token(Token.Kind.BARE, times(-1, number(word.substring(1))), -1, word)
                : withTenths(Token.Kind.BARE, word, word);
    }

    private static Optional<Double> times(double factor, Optional<Double> number) {
        return number.isPresent() ? Optional.of(factor * number.get()) : number;
    }

    /** A number, or one with tenths of a stop behind it: {@code 5.6.3}, {@code 5.6+.3}, {@code 5.6+3/10}. */
    private static Optional<Token> withTenths(Token.Kind kind, String number, String word) {
        int plus = number.indexOf('+');
        if (plus > 0) {
            String tail = number.substring(plus + 1);
            String digit = tail.endsWith("/10") ? tail.substring(0, tail.length() - 3) : after(tail, ".", "0.");
            return digit.length() == 1 && isDigit(digit.charAt(0))
                    ? token(kind, number(number.substring(0, plus)), digit.charAt(0) - '0', word)
                    : Optional.empty();
        }
        int first = number.indexOf('.');
        int last = number.lastIndexOf('.');
        if (first >= 0 && last > first) {
            // 5..6 is 5.6 typed with a heavy finger, and no f/5 with tenths.
            return last == number.length() - 2 && number.charAt(last - 1) != '.' && isDigit(number.charAt(last + 1))
                    ? token(kind, number(number.substring(0, last)), number.charAt(last + 1) - '0', word)
                    : Optional.empty();
        }
        return token(kind, number(number), -1, word);
    }

    private static Optional<Token> time(String word) {
        if (word.startsWith("1/")) {
            String below = word.endsWith("s") ? word.substring(2, word.length() - 1) : word.substring(2);
            Optional<Double> parts = number(below);
            double seconds = parts.isPresent() && parts.get() > 0 ? 1 / parts.get() : 0;
            return parts.isPresent() ? Optional.of(new Token(Token.Kind.TIME, seconds, -1, word)) : Optional.empty();
        }
        boolean bulb = word.startsWith("b") && word.length() > 1 && isDigit(word.charAt(1));
        Optional<Double> seconds = seconds(bulb ? word.substring(1) : word);
        return seconds.isPresent() && seconds.get() > 0
                ? token(bulb ? Token.Kind.BULB : Token.Kind.TIME, seconds, -1, word)
                : Optional.empty();
    }

    /**
     * {@code 0.5s}, {@code 2"}, {@code 1m30s}, {@code 2min}, {@code 1min30s}, {@code 1h}, {@code 1h30m},
     * {@code 1h02m30s}, in seconds.
     */
    private static Optional<Double> seconds(String word) {
        int h = word.indexOf('h');
        if (h < 0) {
            return minutes(word);
        }
        String rest = word.substring(h + 1);
        Optional<Double> past = rest.isEmpty() ? Optional.of(0.0) : minutes(rest.endsWith("m") ? rest + "in" : rest);
        return sum(times(3600, number(word.substring(0, h))), past);
    }

    private static Optional<Double> sum(Optional<Double> one, Optional<Double> other) {
        return one.isPresent() && other.isPresent() ? Optional.of(one.get() + other.get()) : Optional.empty();
    }

    private static Optional<Double> minutes(String word) {
        int m = word.indexOf('m');
        String minutes = m > 0 ? word.substring(0, m) : "";
        String rest = m > 0 ? word.substring(m + (word.startsWith("min", m) ? 3 : 1)) : word;
        if (m > 0 && rest.isEmpty()) {
            return word.endsWith("min") ? times(60, number(minutes)) : Optional.empty();
        }
        if (!rest.endsWith("s") && !rest.endsWith("\"")) {
            return Optional.empty();
        }
        Optional<Double> tail = number(rest.substring(0, rest.length() - 1));
        return m > 0 ? sum(times(60, number(minutes)), tail) : tail;
    }

    private static Optional<Token> other(String word) {
        Token.Kind kind = null;
        Optional<Double> value = Optional.empty();
        double factor = 1;
        if (word.startsWith("@")) {
            kind = Token.Kind.INDEX;
            value = number(word.substring(1));
        } else if (word.startsWith("ei")) {
            kind = Token.Kind.INDEX;
            value = number(word.substring(2));
        } else if (word.startsWith("ev")) {
            kind = Token.Kind.EV;
            boolean negative = word.startsWith("ev-");
            value = number(word.substring(negative ? 3 : 2));
            factor = negative ? -1 : 1;
        } else if (word.startsWith("x") || word.startsWith("*")) {
            kind = Token.Kind.COUNT;
            value = number(word.substring(1));
        } else if (word.endsWith("mm")) {
            kind = Token.Kind.MILLIMETRES;
            value = number(word.substring(0, word.length() - 2));
        } else if (word.endsWith("ft")) {
            kind = Token.Kind.METRES;
            value = number(word.substring(0, word.length() - 2));
            factor = 0.3048;
        } else if (word.endsWith("lx")) {
            kind = Token.Kind.LUX;
            value = number(word.substring(0, word.length() - 2));
        } else if (word.endsWith("fc")) {
            kind = Token.Kind.LUX;
            value = number(word.substring(0, word.length() - 2));
            factor = ExposureValue.LUX_PER_FOOTCANDLE;
        } else if (word.endsWith("cd")) {
            kind = Token.Kind.CANDELAS;
            value = number(word.substring(0, word.length() - 2));
        } else if (word.endsWith("x")) {
            kind = Token.Kind.COUNT;
            value = number(word.substring(0, word.length() - 1));
        } else if (word.endsWith("m")) {
            kind = Token.Kind.METRES;
            value = number(word.substring(0, word.length() - 1));
        }
        return token(kind, times(factor, value), -1, word);
    }

    /** A plain decimal, not negative, at most nine digits. */
    public static Optional<Double> number(String text) {
        int points = 0;
        int digits = 0;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '.') {
                points++;
            } else if (isDigit(c)) {
                digits++;
            } else {
                return Optional.empty();
            }
        }
        return digits == 0 || digits > 9 || points > 1 ? Optional.empty() : Optional.of(Double.parseDouble(text));
    }

    public static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
