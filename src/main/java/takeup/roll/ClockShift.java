package takeup.roll;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import takeup.text.English;

/**
 * How the clock of the computer was moved between two things that were logged: back 2 h, or from +02:00 to +01:00. It
 * is a remark on the times; the order of what was logged never hangs on it.
 *
 * @param seconds by how many seconds the time itself jumped; negative is back, 0 where only the zone changed
 * @param from the offset before
 * @param to the offset after
 */
public record ClockShift(long seconds, ZoneOffset from, ZoneOffset to) {
    private static final long MINUTE = 60;
    private static final long HOUR = 60 * MINUTE;
    private static final long DAY = 24 * HOUR;
    private static final long[] UNITS = {DAY, HOUR, MINUTE, 1};

    public ClockShift {
        if (seconds == 0 && from.equals(to)) {
            throw new IllegalArgumentException("a clock that was moved by nothing was not moved");
        }
    }

    /** In words: {@code the clock went back 2 h since frame 6; the order of the frames is not touched}. */
    public String words(String since) {
        List<String> changes = new ArrayList<>();
        if (seconds != 0) {
            changes.add(
                    seconds < 0
                            ? "went back " + length()
                            : "jumped ahead " + length() + " (it was set, or the computer slept)");
        }
        if (!from.equals(to)) {
            changes.add("changed its zone from " + from.getId() + " to " + to.getId());
        }
        return "the clock " + English.list(changes) + " since " + since + "; the order of the frames is not touched";
    }

    /** The two greatest units, the lesser one to the nearest: {@code 1 day 2 h}, {@code 2 h}, {@code 45 s}. */
    private String length() {
        long exact = Math.abs(seconds);
        // A clock that is set while seconds pass went back two hours, not 1 h 59 min.
        long step = step(exact);
        long left = (exact + step / 2) / step * step;
        String[] names = {English.plural(left / DAY, "day"), "h", "min", "s"};
        for (int i = 0; i < UNITS.length; i++) {
            if (left >= UNITS[i]) {
                long rest = i + 1 < UNITS.length ? left % UNITS[i] / UNITS[i + 1] : 0;
                return left / UNITS[i] + " " + names[i] + (rest == 0 ? "" : " " + rest + " " + names[i + 1]);
            }
        }
        return "0 s";
    }

    /** The lesser of the two units that are said of so many seconds. */
    private static long step(long exact) {
        if (exact >= DAY) {
            return HOUR;
        }
        return exact >= HOUR ? MINUTE : 1;
    }
}
