package takeup.exposure;

/**
 * How long the shutter is open: 1/125, 0.8s, 2s, 4m10s.
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

    @Override public String toString() {
        return print(seconds);
    }

    /** A worked-out time in the words of the trade, rounded for reading: {@code 1/90}, {@code 2.7s}, {@code 47s}, {@code 4m10s}. */
    public static String words(double seconds) {
        if (seconds < 0.29) {
            return "1/" + Math.max(2, Math.round(Plain.rounded(1 / seconds, 2 + (1 / seconds >= 100 ? 1 : 0))));
        }
        if (seconds < 9.95) {
            return Plain.number(Double.parseDouble(Plain.decimals(seconds, 1))) + "s";
        }
        return print(Math.rint(seconds));
    }

    private static String print(double seconds) {
        long below = oneOver(seconds);
        if (below > 1) {
            return "1/" + below;
        }
        if (seconds <= 60) {
            return Plain.number(seconds) + "s";
        }
        long minutes = (long) (seconds / 60);
        double rest = Plain.rounded(seconds - 60 * minutes, 9);
        return rest == 0 ? minutes + "min" : minutes + "m" + Plain.number(rest) + "s";
    }

    /** n if the time is 1/n second, else 0. */
    private static long oneOver(double seconds) {
        double n = 1 / seconds;
        long whole = Math.round(n);
        return whole > 1 && Math.abs(n - whole) < 1e-6 * n ? whole : 0;
    }
}
