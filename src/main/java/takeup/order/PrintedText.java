package takeup.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import takeup.text.Hidden;

/**
 * Text for paper. Nobody's words are rewritten: {@code 1+1} is a dilution and {@code +1 212} begins a telephone number.
 * What the program itself has to say of a push is said in words, so it never hangs on a sign.
 */
final class PrintedText {
    /** Line breaks of every kind, and tabs. */
    private static final Pattern BLANK = Pattern.compile("[\t-\r\u0085\u2028\u2029]");

    private PrintedText() {}

    /** A text on one line, as it was written; what turns the writing direction or steers a printer as an escape. */
    static String of(String text) {
        return Hidden.printed(BLANK.matcher(text.strip()).replaceAll(" "));
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
}
