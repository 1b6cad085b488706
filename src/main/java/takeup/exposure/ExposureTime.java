package takeup.exposure;

import takeup.text.Plain;

/**
 * How long the shutter is open: 1/125, 0.8s, 2s, 4m10s, 1h02m30s.
 *
 * <p>A dial's prints are rounded (the dial says 1/60 where the shutter gives 1/64 s), so the printed and the exact time
 * are kept side by side.
 *
 * @param seconds the time as printed, in seconds, above 0
 * @param exactSeconds the time that the mark stands for, in seconds, above 0
 */
public record ExposureTime(double seconds, double exactSeconds) {
    public ExposureTime {
        if (!(seconds > 0 && Double.isFinite(seconds) && exactSeconds > 0 && Double.isFinite(exactSeconds))) {
            throw new IllegalArgumentException("an exposure time is above 0 seconds, was " + seconds);
        }
    }

    /** What is longer than this, in seconds, can be timed by a watch: as one second or more. */
    public static final double SHORTEST_BULB = 0.75;

    /** A time at face value, as a stop watch gives it. */
    public static ExposureTime literal(double seconds) {
        return new ExposureTime(seconds, seconds);
    }

    /** log2 of the exact time in seconds; larger is more light: 1/125 is -7. APEX Tv is its negative. */
    public double stops() {
        return Stops.of(exactSeconds);
    }

    /** What a dial prints for this mark: {@code 125} for 1/125, {@code 1} for 1 s, {@code 0.8} for 0.8 s. */
    public String dial() {
        long below = oneOver(seconds);
        return below > 1 ? Long.toString(below) : Plain.number(seconds);
    }

    @Override
    public String toString() {
        return print(seconds);
    }

    /**
     * A worked-out time in the words of the trade, rounded for reading: {@code 1/90}, {@code 2.7s}, {@code 47s},
     * {@code 4m10s}. From ten seconds on as one {@linkplain #counted counts} it, so that the time to set and the reason
     * for it are one figure.
     */
    public static String words(double seconds) {
        if (seconds < 0.29) {
            return "1/" + Math.max(2, Math.round(Plain.rounded(1 / seconds, 2 + (1 / seconds >= 100 ? 1 : 0))));
        }
        return seconds < 9.95
                ? Plain.number(Double.parseDouble(Plain.decimals(seconds, 1))) + "s"
                : print(counted(seconds));
    }

    /**
     * A time by the watch: to half a second up to 10 s, a second up to a minute, then five seconds; half a step is
     * rounded up.
     */
    public static double counted(double seconds) {
        return Math.max(1, Math.floor(seconds / step(seconds) + 0.5)) * step(seconds);
    }

    /** How finely a time is counted by the watch, in seconds. */
    public static double step(double seconds) {
        if (seconds <= 10) {
            return 0.5;
        }
        return seconds <= 60 ? 1 : 5;
    }

    private static String print(double seconds) {
        long below = oneOver(seconds);
        if (below > 1) {
            return "1/" + below;
        }
        if (seconds <= 60) {
            return Plain.number(seconds) + "s";
        }
        if (seconds >= 3600) {
            return hours((long) (seconds / 3600), seconds);
        }
        long minutes = (long) (seconds / 60);
        double rest = Plain.rounded(seconds - 60 * minutes, 9);
        return rest == 0 ? minutes + "min" : minutes + "m" + Plain.number(rest) + "s";
    }

    /** {@code 1h}, {@code 1h30m}, {@code 1h02m30s}: two digits each, so that no minute is taken for ten. */
    private static String hours(long hours, double seconds) {
        double past = Plain.rounded(seconds - 3600.0 * hours, 9);
        double minutes = Math.floor(past / 60);
        double rest = Plain.rounded(past - 60 * minutes, 9);
        return hours + "h" + (past == 0 ? "" : two(minutes) + "m") + (rest == 0 ? "" : two(rest) + "s");
    }

    private static String two(double number) {
        return (number < 10 ? "0" : "") + Plain.number(number);
    }

    /** n if the time is 1/n second, else 0. */
    private static long oneOver(double seconds) {
        double n = 1 / seconds;
        long whole = Math.round(n);
        return whole > 1 && Math.abs(n - whole) < 1e-6 * n ? whole : 0;
    }
}
