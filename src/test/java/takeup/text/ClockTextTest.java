package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalTime;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTextTest {
    @ParameterizedTest(name = "{0} is shown as {1}")
    @CsvSource({"09:05:59, 09:05", "16:30, 16:30", "00:00, 00:00"})
    void aClockShowsTwoDigitsAndNoSeconds(LocalTime time, String shown) {
        assertEquals(shown, ClockText.clock(time));
    }

    @Test
    void aTimeIsShownAsItWasReadWhereItWasLogged() {
        assertEquals("15:16", ClockText.clock(OffsetDateTime.parse("2026-09-12T15:16:04+02:00")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-09-12T09:16:00+02:00",
                "2026-09-12T00:00:00+02:00",
                "2026-09-12T09:16:04.5-03:30",
                "2026-09-12T09:16:00.000001Z",
                "1999-12-31T23:59:59.999999999-18:00",
                "0001-01-01T00:00Z"
            })
    void aPointInTimeIsPrintedAsJavaPrintsIt(OffsetDateTime at) {
        assertEquals(at.toInstant().toString(), ClockText.instant(at));
    }

    @ParameterizedTest(name = "{0} minutes are {1}")
    @CsvSource({"0, 0 min", "59, 59 min", "60, 1 h", "84, 1 h 24 min", "1500, 25 h"})
    void minutesBecomeHoursFromSixtyOn(long minutes, String words) {
        assertEquals(words, ClockText.minutes(minutes));
    }

    @ParameterizedTest(name = "{0} seconds are {1}")
    @CsvSource({"0, 0 s", "45, 45 s", "60, 1 min", "73, 1 min 13 s", "7201, 2 h 1 s", "7381, 2 h 3 min 1 s"})
    void secondsAreGivenInAllUnitsThatAreNotZero(long seconds, String words) {
        assertEquals(words, ClockText.seconds(seconds));
    }
}
