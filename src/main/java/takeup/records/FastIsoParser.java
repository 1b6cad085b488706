package takeup.records;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Dates and times from the form that {@code toString} gives them: {@code 2026-09-12T15:10:03.25+02:00}. The parser of
 * the class library needs its whole machinery of formats, which costs more than the reading of a roll.
 */
public final class FastIsoParser {
    private FastIsoParser() {}

    /** A date such as {@code 2026-09-12}. */
    public static Optional<LocalDate> date(String text) {
        try {
            return text.length() == 10 && is(text, 4, '-') && is(text, 7, '-')
                    ? Optional.of(LocalDate.of(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10)))
                    : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A month such as {@code 2026-09}. */
    static Optional<YearMonth> month(String text) {
        Optional<LocalDate> first = date(text + "-01");
        return first.isPresent() ? Optional.of(YearMonth.from(first.get())) : Optional.empty();
    }

    /** A time without a zone such as {@code 2026-09-12T15:10}. */
    static Optional<LocalDateTime> dateTime(String text) {
        Optional<OffsetDateTime> time = time(text + "Z");
        return time.isPresent() ? Optional.of(time.get().toLocalDateTime()) : Optional.empty();
    }

    /** A time such as {@code 2026-09-12T15:10+02:00}; seconds and their fraction may be missing. */
    public static Optional<OffsetDateTime> time(String text) {
        int offset = 16;
        while (offset < text.length() && "Z+-".indexOf(text.charAt(offset)) < 0) {
            offset++;
        }
        if (offset >= text.length()
                || !is(text, 10, 'T')
                || !is(text, 13, ':')
                || offset > 16 && (!is(text, 16, ':') || offset < 19)
                || offset > 19 && (!is(text, 19, '.') || offset == 20 || offset > 29)) {
            return Optional.empty();
        }
        try {
            LocalTime time = LocalTime.of(
                    digits(text, 11, 13),
                    digits(text, 14, 16),
                    offset > 16 ? digits(text, 17, 19) : 0,
                    nanos(text, offset));
            ZoneOffset zone = zone(text.substring(offset));
            Optional<LocalDate> date = date(text.substring(0, 10));
            return date.isPresent() ? Optional.of(OffsetDateTime.of(date.get(), time, zone)) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int nanos(String text, int end) {
        int nanos = 0;
        for (int at = 20; at < 29; at++) {
            nanos = 10 * nanos + (at < end ? digits(text, at, at + 1) : 0);
        }
        return nanos;
    }

    private static ZoneOffset zone(String text) {
        if (text.equals("Z")) {
            return ZoneOffset.UTC;
        }
        if (text.charAt(0) == 'Z'
                || text.length() != 6 && text.length() != 9
                || !is(text, 3, ':')
                || text.length() == 9 && !is(text, 6, ':')) {
            throw new DateTimeException(text);
        }
        int sign = text.charAt(0) == '-' ? -1 : 1;
        return ZoneOffset.ofHoursMinutesSeconds(
                sign * digits(text, 1, 3),
                sign * digits(text, 4, 6),
                text.length() == 9 ? sign * digits(text, 7, 9) : 0);
    }

    private static boolean is(String text, int at, char wanted) {
        return text.charAt(at) == wanted;
    }

    private static int digits(String text, int from, int to) {
        int number = 0;
        for (int at = from; at < to; at++) {
            char c = text.charAt(at);
            if (c < '0' || c > '9') {
                throw new DateTimeException(text);
            }
            number = 10 * number + c - '0';
        }
        return number;
    }
}
