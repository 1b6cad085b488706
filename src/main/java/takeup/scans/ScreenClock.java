package takeup.scans;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * The clock on the screen, as a code beside its figures holds it: 2026-09-12T15:04:05+02:00. A digital camera that
 * photographs it tells how far its own clock is off.
 *
 * @param at the time shown, to the second
 */
public record ScreenClock(OffsetDateTime at) {
    private static final String FIRST = "T:";

    public ScreenClock {
        at = at.withNano(0);
    }

    /** What stands in its code: {@code TAKEUP:T:}, seconds since 1970, the offset in minutes, and a check. */
    public String text() {
        return ChecksummedCode.text(
                FIRST + at.toEpochSecond() + ":" + at.getOffset().getTotalSeconds() / 60);
    }

    /** The clock that a code's text is; empty for any other text. */
    public static Optional<ScreenClock> read(String text) {
        Optional<String> body = ChecksummedCode.read(text).filter(it -> it.startsWith(FIRST));
        if (body.isEmpty()) {
            return Optional.empty();
        }
        String numbers = body.get().substring(FIRST.length());
        int colon = numbers.indexOf(':');
        try {
            ZoneOffset offset = ZoneOffset.ofTotalSeconds(60 * Integer.parseInt(numbers.substring(colon + 1)));
            return Optional.of(new ScreenClock(
                    Instant.ofEpochSecond(Long.parseLong(numbers.substring(0, Math.max(0, colon))))
                            .atOffset(offset)));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }
}
