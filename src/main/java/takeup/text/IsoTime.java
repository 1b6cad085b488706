package takeup.text;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/** Points in time as files hold them: {@code 2026-09-12T15:10:03+02:00}, ISO 8601 with offset, to the second. */
public final class IsoTime {
    private IsoTime() {}

    /** The time with its seconds, also where they are 00, and without parts of a second. */
    public static String of(OffsetDateTime at) {
        OffsetDateTime whole = at.truncatedTo(ChronoUnit.SECONDS);
        return whole.toLocalDate() + "T" + ClockText.clock(whole) + ":" + ClockText.twoDigits(whole.getSecond())
                + whole.getOffset();
    }
}
