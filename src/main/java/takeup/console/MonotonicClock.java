package takeup.console;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Milliseconds that only run forward, sleep of the computer included where the system tells it: Java's own clock of
 * that kind stands still on Linux while the lid is closed, and a nap must not look like a clock that was set.
 */
public final class MonotonicClock {
    /** Seconds since the start of the computer, sleep included: proc(5), /proc/uptime. */
    private static final String UPTIME = "/proc/uptime";
    /** So far the time of day may run ahead before it is asked why. */
    private static final long AHEAD = 2000;

    private final long uptimeAhead = uptime() - nano();
    private long dayAhead = System.currentTimeMillis() - nano();
    private long slept;

    public synchronized long now() {
        long nano = nano();
        long ahead = System.currentTimeMillis() - nano;
        if (ahead - dayAhead > AHEAD) {
            dayAhead = ahead;
            long uptime = uptime();
            slept = uptime == 0 ? slept : Math.max(slept, uptime - nano - uptimeAhead);
        }
        return nano + slept;
    }

    private static long nano() {
        return System.nanoTime() / 1_000_000;
    }

    private static long uptime() {
        try (InputStream in = new FileInputStream(UPTIME)) {
            String text = new String(in.readNBytes(64), StandardCharsets.US_ASCII);
            int point = text.indexOf('.');
            return Long.parseLong(text.substring(0, point)) * 1000
                    + Long.parseLong(text.substring(point + 1, point + 3)) * 10;
        } catch (IOException | NumberFormatException | IndexOutOfBoundsException e) {
            return 0;
        }
    }
}
