package takeup.console;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;

/** The time of day: the wall clock, or one that stands still until a line moves it, for rehearsals and tests. */
public final class Clock {
    /** Read at the first question, and kept: a program has one zone from its start to its end. */
    private static final Optional<LocalTimeFile> LOCAL_TIME = LocalTimeFile.ofSystem();

    private final MonotonicClock running = new MonotonicClock();
    private Optional<OffsetDateTime> standing;
    private long passed;

    private Clock(Optional<OffsetDateTime> standing) {
        this.standing = standing;
    }

    /** The wall clock, or a standing one. */
    public static Clock of(Optional<OffsetDateTime> standing) {
        return new Clock(standing);
    }

    /** The clock of an option {@code --clock TIME}; the wall clock where it was not given. */
    public static Clock ofOption(String typed) {
        try {
            return of(Optional.ofNullable(typed).map(Clock::parse));
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
    }

    public OffsetDateTime now() {
        return standing.orElseGet(() -> wall().withNano(0));
    }

    /**
     * The wall clock in the zone of this machine. Where the system's own file does not tell the offset, it is asked of
     * the older of Java's two readers of the zones: the newer one looks through every library for further zones first.
     */
    public static OffsetDateTime wall() {
        Instant now = Instant.now();
        Optional<ZoneOffset> offset =
                LOCAL_TIME.isPresent() ? LOCAL_TIME.get().at(now.getEpochSecond()) : Optional.empty();
        return offset.isPresent() ? now.atOffset(offset.get()) : at(now, TimeZone.getDefault());
    }

    static OffsetDateTime at(Instant now, TimeZone zone) {
        return now.atOffset(ZoneOffset.ofTotalSeconds(zone.getOffset(now.toEpochMilli()) / 1000));
    }

    /**
     * Milliseconds that only run forward. In a rehearsal time passes when the clock is moved on; moved back, it was
     * set.
     */
    public long ticks() {
        return standing.isPresent() ? passed : running.now();
    }

    private void stand(OffsetDateTime time) {
        passed += Math.max(0, Duration.between(standing.orElseThrow(), time).toMillis());
        standing = Optional.of(time);
    }

    /** A time with its offset; a wrong one is an argument that cannot be taken. */
    public static OffsetDateTime parse(String text) {
        try {
            return OffsetDateTime.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(text + " is no time with its offset, such as 2026-09-12T15:00+02:00");
        }
    }

    /**
     * Moves a standing clock: {@code +10min}, {@code +30s}, {@code -2h}, or to a time. Answers what to say; throws
     * where it cannot.
     */
    public String move(String how) {
        if (standing.isEmpty()) {
            throw new IllegalArgumentException("clock moves the clock of a rehearsal only: start with --clock TIME");
        }
        String word = how.strip().toLowerCase(Locale.ROOT).replace(" ", "");
        if (!word.startsWith("+") && !word.startsWith("-")) {
            stand(parse(how.strip()));
            return "It is " + standing.get() + ".";
        }
        int end = 1;
        while (end < word.length() && word.charAt(end) >= '0' && word.charAt(end) <= '9') {
            end++;
        }
        if (end == 1 || end > 7) {
            throw new IllegalArgumentException("clock +10min, clock +30s, clock -2h, or a time with its offset");
        }
        long count = Long.parseLong(word.substring(1, end)) * (word.startsWith("-") ? -1 : 1);
        Duration step = switch (word.substring(end)) {
            case "s" -> Duration.ofSeconds(count);
            case "min", "m" -> Duration.ofMinutes(count);
            case "h" -> Duration.ofHours(count);
            case "d" -> Duration.ofDays(count);
            default ->
                throw new IllegalArgumentException("clock +10min, clock +30s, clock -2h, or a time with its offset");
        };
        stand(standing.get().plus(step));
        return "It is " + standing.get() + ".";
    }
}
