package takeup.records;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.journal.RandomEvents;

/** Times as the class library writes them, read without its formats: it is the judge of both. */
class FastIsoParserTest {
    @Test
    void everyTimeThatIsWrittenIsReadBackEqual() {
        RandomEvents events = new RandomEvents(3);
        for (int i = 0; i < 5000; i++) {
            OffsetDateTime at = events.at();
            check(at.toString(), Optional.of(at));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-09-12T15:10Z",
                "2026-09-12T15:10:03+02:00",
                "2026-09-12T15:10:03.1-00:30",
                "2026-09-12T15:10:03.123456789-12:34:56",
                "2024-02-29T00:00+00:00",
                "2026-09-12T23:59:59.999999999+18:00"
            })
    void aTimeIsWhatTheLibrarySaysItIs(String text) {
        check(text, Optional.of(OffsetDateTime.parse(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Z",
                "2026-09-12",
                "2026-09-12T15:10",
                "2026-02-29T15:10Z",
                "2026-09-12T24:10Z",
                "2026-09-12T15:60Z",
                "2026-09-12T15:10:60Z",
                "2026-09-12T15:10:Z",
                "2026-09-12T15:10:0Z",
                "2026-09-12T15:10:03.Z",
                "2026-09-12T15:10:03.1234567890Z",
                "2026-09-12T15:10:03,5Z",
                "2026-09-12 15:10Z",
                "2026-09-12T15:10+2:00",
                "2026-09-12T15:10+0200",
                "2026-09-12T15:10+19:00",
                "2026-09-12T15:10ZZ",
                "2026-09-12T15:10Z000000",
                "2026-09-12T15:10+02:00:",
                "2026-09-12T15:10+02:00x",
                "2026/09/12T15:10Z",
                "202a-09-12T15:10Z",
                "2026-09-12T15:10+02.00",
                "2026-09-12T1५:10Z"
            })
    void whatIsNoTimeIsNone(String text) {
        check(text, Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-9-12",
                "2026-09-31",
                "20260912",
                "2026-09-1x",
                "+026-09-12",
                "2026-09-123",
                "2026_09-12",
                "2026-09_12"
            })
    void whatIsNoDateIsNone(String text) {
        assertEquals(Optional.empty(), FastIsoParser.date(text));
    }

    @Test
    void aDateIsRead() {
        assertEquals(Optional.of(LocalDate.of(2026, 9, 12)), FastIsoParser.date("2026-09-12"));
    }

    @Test
    void aTimeWithoutAZoneAndAMonthAreReadLikewise() {
        for (String text : List.of("2026-09-12T15:10", "2026-09-12T15:10:03", "2024-02-29T00:00:00.5")) {
            assertEquals(Optional.of(LocalDateTime.parse(text)), FastIsoParser.dateTime(text));
        }
        for (String text :
                List.of("", "2026-09-12", "2026-09-12T15:10Z", "2026-09-12T15:10+02:00", "2026-09-31T15:10")) {
            assertEquals(Optional.empty(), FastIsoParser.dateTime(text), text);
        }
        assertEquals(Optional.of(YearMonth.parse("2027-03")), FastIsoParser.month("2027-03"));
        for (String text : List.of("", "2027", "2027-13", "2027-3", "2027-03-01")) {
            assertEquals(Optional.empty(), FastIsoParser.month(text), text);
        }
    }

    private static void check(String text, Optional<OffsetDateTime> time) {
        assertEquals(time, FastIsoParser.time(text));
    }
}
