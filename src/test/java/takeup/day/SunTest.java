package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.roll.Coordinates;

/** The sun's times against an almanac office's, within the 75 s that its rounded minutes ask for. */
class SunTest {
    static Stream<ReferenceTable.Row> cases() {
        return ReferenceTable.rows("sun_cases");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void risesAndSetsWhenTheAlmanacSays(ReferenceTable.Row row) {
        LocalDate date = LocalDate.parse(row.text("date_utc"));
        Coordinates place = new Coordinates(row.number("lat"), row.number("lon"));
        check(row.text("rise_utc"), Sun.crossing(place, date, ZoneOffset.UTC, row.number("altitude_deg"), true));
        check(row.text("set_utc"), Sun.crossing(place, date, ZoneOffset.UTC, row.number("altitude_deg"), false));
    }

    private static void check(String expected, Optional<OffsetDateTime> found) {
        if (expected.equals("none")) {
            assertEquals(Optional.empty(), found);
            return;
        }
        Duration off = Duration.between(
                        LocalTime.parse(expected), found.orElseThrow().toLocalTime())
                .abs();
        assertTrue(off.compareTo(Duration.ofSeconds(75)) <= 0, expected + " expected, " + found);
    }

    /**
     * In UTC the evening of Lima (row of 2026-03-20: set 23:19 UTC) is at 18:19 by its own clocks, five hours back, on
     * the same date.
     */
    @Test
    void aWesternEveningBelongsToItsOwnDay() {
        OffsetDateTime set = Sun.set(
                        new Coordinates(-12.04318, -77.02824), LocalDate.parse("2026-03-20"), ZoneOffset.ofHours(-5))
                .orElseThrow();
        assertEquals(LocalDate.parse("2026-03-20"), set.toLocalDate());
        assertTrue(
                Duration.between(OffsetDateTime.parse("2026-03-20T18:19-05:00"), set)
                                .abs()
                                .getSeconds()
                        <= 75,
                set.toString());
    }

    /** Cologne, 2017-08-10, in local time two hours ahead of the table's UTC; to the nearest minute. */
    @Test
    void aDayHasItsEventsInOrder() {
        List<String> day =
                Sun.of(new Coordinates(50.93806, 6.956944), LocalDate.parse("2017-08-10"), ZoneOffset.ofHours(2))
                        .stream()
                        .map(it -> it.time().toLocalTime() + " " + it.event())
                        .toList();
        assertEquals(
                List.of(
                        "05:34 civil twilight begins",
                        "05:49 golden hour begins",
                        "06:12 sunrise",
                        "06:59 golden hour ends",
                        "20:16 golden hour begins",
                        "21:02 sunset",
                        "21:25 golden hour ends",
                        "21:40 civil twilight ends"),
                day);
    }

    /**
     * Tromsø on 2026-06-01 has neither sunrise nor sunset (the same row of the table), nor twilight; the golden hour
     * may come.
     */
    @Test
    void underTheMidnightSunThereIsNoSunset() {
        Coordinates place = new Coordinates(69.6489, 18.95508);
        assertEquals(Optional.empty(), Sun.set(place, LocalDate.parse("2026-06-01"), ZoneOffset.ofHours(2)));
        assertTrue(Sun.of(place, LocalDate.parse("2026-06-01"), ZoneOffset.ofHours(2)).stream()
                .noneMatch(it -> it.event() == Sun.Event.SUNRISE || it.event() == Sun.Event.CIVIL_DUSK));
    }
}
