package takeup.exposure;

import takeup.text.Plain;

/**
 * Differences in light, counted in stops: one stop is twice the light.
 *
 * <p>Sources of the formulas: stops = log2(factor) = density / log10(2) = log2(ND number); factors multiply, stops add
 * (chemeurope.com, "Filter factor"; camera-wiki.org, "Neutral density filter"). Bellows factor = (1 + magnification)
 * squared (armycommunications.tpub.com, SS0512).
 */
public final class Stops {
    /** Two values closer than this, in stops, are the same where a limit is compared. */
    public static final double TOLERANCE = 0.01;

    private static final double LOG_2 = Math.log(2);

    private Stops() {}

    /** log2 of a factor of light: {@code of(8)} is 3. The factor is above 0. */
    public static double of(double factor) {
        return Math.log(factor) / LOG_2;
    }

    /** The factor that so many stops are: {@code factor(3)} is 8. */
    public static double factor(double stops) {
        return Math.pow(2, stops);
    }

    /** Two amounts of light together: {@code sum(0, 0)} is 1. */
    public static double sum(double stops, double more) {
        return of(factor(stops) + factor(more));
    }

    /** Stops that an optical density takes: {@code ofDensity(0.9)} is 2.99. */
    public static double ofDensity(double density) {
        return density / Math.log10(2);
    }

    /** Stops that a magnification on film takes: {@code ofMagnification(1)} is 2. */
    public static double ofMagnification(double magnification) {
        return 2 * of(1 + magnification);
    }

    /** Whether {@code a} is above {@code b} by more than the tolerance. */
    public static boolean above(double a, double b) {
        return a - b > TOLERANCE;
    }

    /** Tenths of a stop in words, unsigned: {@code tenths(-0.33)} is {@code 0.3}. */
    public static String tenths(double stops) {
        return Plain.decimals(Math.abs(stops), 1);
    }

    /** Whether an error of exposure is none when it is given in tenths. */
    public static boolean isRight(double stops) {
        return Math.abs(stops) < 0.05;
    }

    /** An error of exposure in words: {@code 0.3 over}, {@code 1.2 under} or {@code right}. */
    public static String error(double stops) {
        return isRight(stops) ? "right" : tenths(stops) + (stops > 0 ? " over" : " under");
    }

    /** The same in a table: {@code 0.3 over}, or {@code on meter}. */
    public static String onMeter(double stops) {
        return isRight(stops) ? "on meter" : error(stops);
    }

    /** A count of stops in words: {@code 1 stop}, {@code 2.6 stops}, {@code half a stop} is {@code 0.5 stops}. */
    public static String words(double stops) {
        String tenths = tenths(stops);
        String number = tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths;
        return number + (number.equals("1") ? " stop" : " stops");
    }
}
