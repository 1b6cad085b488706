package takeup.scans;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The clock on the screen, as a code beside its figures holds it: 2026-09-12T15:04:05+02:00. A digital camera that
 * photographs it tells how far its own clock is off.
 *
 * @param at the time shown, to the second
 */
public record ScreenClock(OffsetDateTime at) {
    private static final String FIRST = "T:";
    private static final Pattern BODY = Pattern.compile(FIRST + "(-?[0-9]+):(-?[0-9]+)");

    public ScreenClock {
        at = at.withNano(0);
    }

    /** The text of its code: {@code TAKEUP:T:}, seconds since 1970, the offset in minutes, and a check. */
    public String text() {
        return ChecksummedCode.text(
                FIRST + at.toEpochSecond() + ":" + at.getOffset().getTotalSeconds() / 60);
    }

    /** The clock that a code's text is; empty for any other text. */
    public static Optional<ScreenClock> read(String text) {
        Optional<Matcher> numbers =
                ChecksummedCode.read(text).map(BODY::matcher).filter(Matcher::matches);
        try {
            return numbers.map(it -> new ScreenClock(Instant.ofEpochSecond(Long.parseLong(it.group(1)))
                    .atOffset(ZoneOffset.ofTotalSeconds(60 * Integer.parseInt(it.group(2))))));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }
}
