package takeup.text;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;

/** Times of day and stretches of time as a clock on a wall and a person give them: {@code 15:16}, {@code 2 h 5 min}. */
public final class ClockText {
    private ClockText() {}

    /**
     * Hours and minutes, two digits each, of a time of day, or of a point in time as it was read there: {@code 09:30}.
     */
    public static String clock(TemporalAccessor at) {
        return twoDigits(at.get(ChronoField.HOUR_OF_DAY)) + ":" + twoDigits(at.get(ChronoField.MINUTE_OF_HOUR));
    }

    /**
     * A point in time as the world has it, letter for letter as Java's Instant prints it: {@code 2026-09-12T07:16:00Z}.
     */
    public static String instant(OffsetDateTime at) {
        // That has formatters made for all there is, which takes longer than to read a day.
        OffsetDateTime utc = at.withOffsetSameInstant(ZoneOffset.UTC);
        boolean isWholeMinute = utc.getSecond() == 0 && utc.getNano() == 0;
        return utc.toLocalDateTime() + (isWholeMinute ? ":00Z" : "Z");
    }

    /** A number of minutes, in hours from 60 on: {@code 6 min}, {@code 1 h 24 min}, {@code 2 h}. */
    public static String minutes(long minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h" + unlessZero(minutes % 60, "min");
    }

    /** A number of seconds in all the units that it has: {@code 2 h 3 min 1 s}, {@code 45 s}. */
    public static String seconds(long seconds) {
        String hoursAndMinutes = unlessZero(seconds / 3600, "h") + unlessZero(seconds / 60 % 60, "min");
        String rest = hoursAndMinutes.isEmpty() ? " " + seconds + " s" : unlessZero(seconds % 60, "s");
        return (hoursAndMinutes + rest).substring(1);
    }

    /** A number below 100 in two digits: {@code 07}. */
    public static String twoDigits(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    private static String unlessZero(long number, String unit) {
        return number == 0 ? "" : " " + number + " " + unit;
    }
}
