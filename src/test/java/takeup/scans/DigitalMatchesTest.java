package takeup.scans;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.roll.RollId;
import takeup.text.ClockText;

/** How far a digital camera's clock is off, and what that makes of its files' times. */
class DigitalMatchesTest {
    /** Each offset is the shown time less the file's, worked out by hand. */
    @ParameterizedTest(name = "file {0} {1}, screen {2}: {4}")
    @CsvSource({
        "2026-09-12T15:04:05, ,      2026-09-12T15:05:18+02:00, 73,    1 min 13 s slow",
        "2026-09-12T15:04:05, ,      2026-09-12T15:03:05+02:00, -60,   1 min fast",
        "2026-09-12T14:05:18, ,      2026-09-12T15:05:18+02:00, 3600,  1 h slow",
        "2026-09-12T14:05:17, +01:00, 2026-09-12T15:05:18+02:00, 1,    1 s slow",
        "2026-09-13T00:00:01, ,      2026-09-12T23:59:59+02:00, -2,    2 s fast",
        "2026-09-12T15:05:18, ,      2026-09-12T15:05:18+02:00, 0,     right"
    })
    void theClockIsOffByWhatTheScreenShowedLessWhatTheFileSays(
            LocalDateTime said, ZoneOffset zone, OffsetDateTime shown, long behind, String words) {
        CameraClock clock =
                CameraClock.of(new DigitalShot("clock.jpg", "camera", said, Optional.ofNullable(zone), ""), shown);
        assertEquals(behind, clock.behindSeconds());
        assertEquals(words, clock.words());
        assertEquals(
                shown.toInstant(),
                clock.trueTime(said, Optional.ofNullable(zone)).toInstant(),
                "the picture itself comes out right");
    }

    @Test
    void aFileOfAnotherZoneIsTakenAtItsWord() {
        CameraClock clock =
                new CameraClock("camera", 10, ZoneOffset.ofHours(2), OffsetDateTime.parse("2026-09-12T15:05:18+02:00"));
        assertEquals(
                OffsetDateTime.parse("2026-09-12T16:00:10+02:00"),
                clock.trueTime(LocalDateTime.parse("2026-09-12T15:00:00"), Optional.of(ZoneOffset.ofHours(1))));
        assertEquals(
                OffsetDateTime.parse("2026-09-12T15:00:10+02:00"),
                clock.trueTime(LocalDateTime.parse("2026-09-12T15:00:00"), Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-09-12T15:05:18+02:00", "2026-01-01T00:00:00Z", "2026-06-30T23:59:59-09:30"})
    void theClockOnTheScreenGoesRound(String at) {
        ScreenClock clock = new ScreenClock(OffsetDateTime.parse(at));
        assertEquals(Optional.of(clock), ScreenClock.read(clock.text()));
        assertEquals(Optional.empty(), Slate.read(clock.text()), "a clock is no slate");
        assertEquals(Optional.empty(), ScreenClock.read(clock.text().replace("TAKEUP:T", "TAKEUP:U")));
    }

    @Test
    void aSlateIsNoClock() {
        assertEquals(Optional.empty(), ScreenClock.read(new Slate(new RollId("T", 7), 12).text()));
        assertEquals(Optional.empty(), ScreenClock.read(ChecksummedCode.text("T:noon:120")));
        assertEquals(Optional.empty(), ScreenClock.read(ChecksummedCode.text("T:1789218318:99999")));
    }

    @Test
    void longTimesAreSaidInTheirLargestParts() {
        assertEquals(
                List.of("0 s", "59 s", "1 min", "2 h 3 s", "25 h 1 min"),
                List.of(
                        ClockText.seconds(0),
                        ClockText.seconds(59),
                        ClockText.seconds(60),
                        ClockText.seconds(7203),
                        ClockText.seconds(90_060)));
    }
}
