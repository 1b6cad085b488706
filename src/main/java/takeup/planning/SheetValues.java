package takeup.planning;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;

/**
 * Times and dates as spreadsheets write them: {@code 4:30 PM}, {@code 16:30:00}, {@code 12.09.2026}. What two countries
 * read in two ways is refused.
 */
final class SheetValues {
    private static final Pattern TIME = Pattern.compile(
            "(\\d{1,2})(?:[:.](\\d{2}))?(?:[:.]\\d{2})?\\s*(?:([ap])[.]?m[.]?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern DATE = Pattern.compile("(\\d{1,2})([./-])\\s*(\\d{1,2})\\2\\s*(\\d{4})");

    private SheetValues() {}

    static LocalTime time(String cell) {
        return DateTimeParser.time(cell)
                .or(() -> timeOfSheet(cell))
                .orElseThrow(() ->
                        new CommandRejected((cell.isEmpty() ? "nothing" : cell) + " is no time of day, such as 16:30"));
    }

    private static Optional<LocalTime> timeOfSheet(String cell) {
        Matcher time = TIME.matcher(cell.replace('\u00a0', ' ').replace('\u202f', ' '));
        if (!time.matches() || time.group(2) == null && time.group(3) == null) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(time.group(1));
        int minute = time.group(2) == null ? 0 : Integer.parseInt(time.group(2));
        boolean isHalfDay = time.group(3) != null;
        if (minute > 59 || hour > (isHalfDay ? 12 : 23) || isHalfDay && hour == 0) {
            return Optional.empty();
        }
        if (!isHalfDay) {
            return Optional.of(LocalTime.of(hour, minute));
        }
        // 12 PM is noon, and 12 AM midnight.
        return Optional.of(LocalTime.of(hour % 12 + (time.group(3).equalsIgnoreCase("p") ? 12 : 0), minute));
    }

    static LocalDate date(String cell, LocalDate today) {
        return DateTimeParser.date(cell, today)
                .or(() -> dateOfSheet(cell))
                .orElseThrow(() -> new CommandRejected(cell + " is no date, such as 2026-09-12"));
    }

    private static Optional<LocalDate> dateOfSheet(String cell) {
        Matcher date = DATE.matcher(cell);
        if (!date.matches()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(date.group(1));
        int second = Integer.parseInt(date.group(3));
        int year = Integer.parseInt(date.group(4));
        // With points the day comes first everywhere; with a stroke it depends on the country.
        boolean isDayFirst = date.group(2).equals(".") || first > 12;
        if (!isDayFirst && second <= 12 && first != second) {
            throw new CommandRejected(cell + " is one date here and another there: write it as 2026-09-12");
        }
        try {
            return Optional.of(LocalDate.of(year, isDayFirst ? second : first, isDayFirst ? first : second));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
