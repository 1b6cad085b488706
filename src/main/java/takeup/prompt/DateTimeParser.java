package takeup.prompt;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words of a line as they were typed, for lines that hold names; and the dates and times in them. */
public final class DateTimeParser {
    private DateTimeParser() {}

    /** The words, letter for letter. */
    public static List<String> of(String text) {
        return Tokens.split(text);
    }

    public static String small(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    /** A date: {@code 2026-09-12}, {@code today} or {@code tomorrow}; empty for any other word. */
    public static Optional<LocalDate> date(String word, LocalDate today) {
        switch (small(word)) {
            case "today":
                return Optional.of(today);
            case "tomorrow":
                return Optional.of(today.plusDays(1));
            default:
                try {
                    return word.length() == 10 ? Optional.of(LocalDate.parse(word)) : Optional.empty();
                } catch (DateTimeException e) {
                    return Optional.empty();
                }
        }
    }

    /** A time of day: {@code 16:30}, {@code 16.30}, {@code 1630}, {@code 930}; empty for any other word. */
    public static Optional<LocalTime> time(String word) {
        int cut = Math.max(word.indexOf(':'), Math.max(word.indexOf('.'), word.indexOf(',')));
        String hours = cut < 0 ? word.substring(0, Math.max(0, word.length() - 2)) : word.substring(0, cut);
        String minutes = cut < 0 ? word.substring(hours.length()) : word.substring(cut + 1);
        if (hours.isEmpty() || hours.length() > 2 || minutes.length() != 2) {
            return Optional.empty();
        }
        for (char c : (hours + minutes).toCharArray()) {
            if (!Tokens.isDigit(c)) {
                return Optional.empty();
            }
        }
        int hour = Integer.parseInt(hours);
        int minute = Integer.parseInt(minutes);
        return hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : Optional.empty();
    }
}
