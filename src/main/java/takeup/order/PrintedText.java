package takeup.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import takeup.text.Hidden;

/**
 * Text for paper that cannot be misread: a bare {@code +1} means longer development to a lab and more light to a
 * photographer, so it is printed as {@code plus 1}. Nothing hidden is printed either.
 */
final class PrintedText {
    /** Line breaks of every kind, and tabs. */
    private static final Pattern BLANK = Pattern.compile("[\t-\r\u0085\u2028\u2029]");

    private static final String PLUS = "+\uff0b\ufe62\u2795";
    private static final String MINUS = "-\u2212\u2010\u2011\u2012\u2013\uff0d\ufe63\u2796";

    private PrintedText() {}

    /** A text on one line, signs before a number as words, what steers a printer or hides from the eye as an escape. */
    static String of(String text) {
        return unsigned(Hidden.shown(BLANK.matcher(text.strip()).replaceAll(" ")));
    }

    /** A number without an exponent or a trailing {@code .0}: {@code 400}, {@code 0.3}. */
    static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Stops to a tenth, without a sign: {@code 1}, {@code 0.5}. */
    static String tenths(double stops) {
        return number(BigDecimal.valueOf(Math.abs(stops))
                .setScale(1, RoundingMode.HALF_UP)
                .doubleValue());
    }

    private static String unsigned(String text) {
        StringBuilder words = new StringBuilder(text.length() + 8);
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            boolean isPlus = PLUS.indexOf(c) >= 0;
            boolean isBare =
                    isPlus || MINUS.indexOf(c) >= 0 && !(at > 0 && Character.isLetterOrDigit(text.charAt(at - 1)));
            if (isBare && isOneDigit(text, at + 1)) {
                words.append(words.isEmpty() || words.charAt(words.length() - 1) == ' ' ? "" : " ")
                        .append(isPlus ? "plus " : "minus ");
            } else {
                words.append(c);
            }
        }
        return words.toString();
    }

    /** Whether a number below ten begins here; a telephone number does not. */
    private static boolean isOneDigit(String text, int at) {
        return at < text.length()
                && Character.isDigit(text.charAt(at))
                && !(at + 1 < text.length() && Character.isDigit(text.charAt(at + 1)));
    }
}
