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
    /** Each exact, as are whole numbers of so many digits, and the division of one by another. */
    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /**
     * Below this a decimal of seven places at most is the only one that short which reads back as its number. Such
     * numbers, and those that lie clearly on one side of a middle, are rounded as whole numbers: {@code BigDecimal} is
     * right for all, and takes 14 ms of the start of Java 25 to be made ready.
     */
    private static final double LARGEST = 1e7;

    private static final int MOST_PLACES = 7;
    /** So far from the middle of two numbers, and no larger, the last bit of a double does not count. */
    private static final double CLEARLY = 1e-6;

    private static final double LARGEST_CLEAR = 1e9;

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
        int places = places(Math.abs(value));
        if (places >= 0) {
            return print(value, Math.round(Math.abs(value) * POWERS_OF_TEN[places]), places);
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
        long whole = scaled(Math.abs(value), places);
        return whole >= 0
                ? print(value, whole, places)
                : BigDecimal.valueOf(value)
                        .setScale(places, RoundingMode.HALF_UP)
                        .toPlainString();
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
        int places = significant - 1 - exponent(Math.abs(value));
        long whole = significant > 0 ? scaled(Math.abs(value), places) : -1;
        if (whole >= 0) {
            return Math.copySign(whole / POWERS_OF_TEN[places], value);
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(significant, RoundingMode.HALF_UP))
                .doubleValue();
    }

    /** The places of the shortest decimal that reads back as a number that has no sign; -1 where they are many. */
    private static int places(double size) {
        for (int places = 0; size < LARGEST && places <= MOST_PLACES; places++) {
            if (Math.rint(size * POWERS_OF_TEN[places]) / POWERS_OF_TEN[places] == size) {
                return places;
            }
        }
        return -1;
    }

    /** The number times ten for each place, rounded; -1 where {@code BigDecimal} is to say. */
    private static long scaled(double size, int places) {
        if (!(size < LARGEST) || places < 0 || places >= POWERS_OF_TEN.length) {
            return -1;
        }
        int own = places(size);
        if (own > places) {
            long part = (long) POWERS_OF_TEN[own - places];
            return (Math.round(size * POWERS_OF_TEN[own]) + part / 2) / part;
        }
        double scaled = size * POWERS_OF_TEN[places];
        boolean isClear = own >= 0 || Math.abs(scaled - Math.floor(scaled) - 0.5) > CLEARLY;
        return isClear && scaled < LARGEST_CLEAR ? Math.round(scaled) : -1;
    }

    /** 0 from 1 up to 10, 1 from there up to 100, -1 from 0.1 up to 1. */
    private static int exponent(double size) {
        int exponent = 0;
        while (exponent + 1 < POWERS_OF_TEN.length && size >= POWERS_OF_TEN[exponent + 1]) {
            exponent++;
        }
        while (exponent <= 0 && 1 - exponent < POWERS_OF_TEN.length && size * POWERS_OF_TEN[-exponent] < 1) {
            exponent--;
        }
        return exponent;
    }

    private static String print(double sign, long whole, int places) {
        String digits = Long.toString(whole);
        String padded = digits.length() > places ? digits : "0".repeat(places + 1 - digits.length()) + digits;
        int point = padded.length() - places;
        return (sign < 0 && whole > 0 ? "-" : "")
                + (places == 0 ? padded : padded.substring(0, point) + "." + padded.substring(point));
    }
}
