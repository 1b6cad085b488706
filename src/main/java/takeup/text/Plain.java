package takeup.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Numbers as plain decimals with a point, never with an exponent or a local sign: {@code 2.8}, {@code 11},
 * {@code 0.008}; and what may be there or not as text.
 */
public final class Plain {
    private Plain() {}

    /** What is there, as it prints itself, or these words in its place. */
    public static String textOr(Optional<?> value, String otherwise) {
        return value.isPresent() ? value.get().toString() : otherwise;
    }

    /**
     * The shortest decimal that reads back as the same number, without a trailing {@code .0}: {@code 5.6}, {@code 11}.
     */
    public static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        String text = Double.toString(value);
        return text.indexOf('E') < 0
                ? text
                : new BigDecimal(text).stripTrailingZeros().toPlainString();
    }

    /** The same with a point in any case: {@code 8.0} for 8. */
    public static String decimal(double value) {
        String plain = number(value);
        return plain.indexOf('.') < 0 ? plain + ".0" : plain;
    }

    /**
     * Exactly so many decimals, halves away from zero: {@code decimals(0.25, 1)} is {@code 0.3}. A zero carries no
     * sign.
     */
    public static String decimals(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** At most so many significant digits, trailing zeros dropped: {@code digits(12.3456, 3)} is {@code 12.3}. */
    public static String digits(double value, int significant) {
        return number(rounded(value, significant));
    }

    /** The number rounded to so many significant digits. */
    public static double rounded(double value, int significant) {
        boolean isShort = value == Math.rint(value) && Math.abs(value) < Math.pow(10, significant);
        if (isShort || !Double.isFinite(value)) {
            return value;
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(significant, RoundingMode.HALF_UP))
                .doubleValue();
    }
}
