package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.message.Message;
import takeup.roll.Setting;
import takeup.session.Playing;

/** Metered and corrected side by side, the bulb timer, and what is sharp. */
class LongExposuresTest {
    private static String text(Playing day, int columns, int rows) {
        return Screen.render(day.shoot(), columns, rows).text();
    }

    // bw400: 1 s needs 2 s, 10 s needs 60 s, points up to 100 s (its profile). At EI 400, f/5.6 asks for 1 s in EV 3.
    // cn400: 1 s loses 1 stop; t = 1 x 2^n(t), n = 1 + log10 t: t = 2^(1 / (1 - log10 2)) = 2.7 s. At EI 200, EV 4.
    @ParameterizedTest(name = "{0} in {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "load bw400 @400 | m ev3 | metered 1s, needs 2s",
                "load cn400 | m ev4 | metered 1s, needs 2.7s, or 1s and open 1 stop",
                "load bw400 @400 | m ev-5 | metered 4m15s, needs",
                "load bw400 @400 | m ev-5 | PAST THE TABLE"
            })
    void whatAFilmNeedsStandsBesideWhatWasMetered(String load, String light, String fact) {
        Playing day = Playing.of("cam 645", load, "tripod on", "set 5.6", light, "set 5.6");
        assertTrue(text(day, 80, 24).contains(fact), text(day, 80, 24));
        assertTrue(text(day, 120, 40).contains(fact), text(day, 120, 40));
    }

    @Test
    void whereNothingIsLostNothingIsSaid() {
        assertFalse(text(Playing.medium("m 5.6 125"), 80, 24).contains("metered"));
        assertFalse(text(Playing.medium("m ev4", "set 5.6", "flash on"), 80, 24).contains("metered 1s"));
    }

    @ParameterizedTest
    @CsvSource({"80,24", "120,40"})
    void theTimerStandsLargeWithItsEnd(int columns, int rows) {
        Playing day = Playing.medium("set 8 b30s", "time").pass(12_000);
        day.send(new Message.Ticked(
                OffsetDateTime.parse("2026-09-12T15:00:00+02:00").plusMinutes(2), 200_000));
        String text = text(day, columns, rows);
        assertTrue(text.contains("CLOSE +84 s · 30s are over"), text);
        Playing fresh = Playing.medium("set 8 b30s", "time");
        assertTrue(text(fresh, columns, rows).contains("of 30s · Space closes"), text(fresh, columns, rows));
        fresh.lines("time");
        assertFalse(text(fresh, columns, rows).contains("Space closes"));
    }

    @Test
    void spaceClosesTheShutterAndLogsTheTimeThatItWasOpen() {
        Playing day = Playing.medium("set 8 b30s", "time").pass(12_000).space();
        Setting logged = day.shoot()
                .shown()
                .rollInHand()
                .orElseThrow()
                .newest()
                .orElseThrow()
                .exposure()
                .setting();
        assertEquals(12, logged.time().orElseThrow().seconds(), 0.5);
        assertTrue(day.shoot().shown().timerInHand().isEmpty(), "the timer runs on");
    }

    /** Rows between the first and the last that hold a block of a figure. */
    @Test
    void theSecondsThatAreLeftAreTwelveRowsHigh() {
        List<String> rows = text(Playing.medium("set 8 b30s", "time"), 80, 24)
                .lines()
                .limit(15)
                .toList();
        assertEquals(12, rows.stream().filter(it -> it.matches(".*[█▀▄].*")).count(), String.join("\n", rows));
    }

    @Test
    void onceItIsOverASmallWindowSaysSoInLargeLettersToo() {
        Playing day = Playing.medium("set 8 b30s", "time").clockMoved(java.time.Duration.ofSeconds(33));
        LargeLetters.assertDrawn(Screen.render(day.shoot(), 40, 12), "CLOSE");
        LargeLetters.assertDrawn(Screen.render(day.shoot(), 80, 20), "CLOSE");
    }

    @Test
    void aSmallScreenShowsTheTimerToo() {
        String text = text(Playing.medium("set 8 b30s", "time"), 40, 12);
        assertTrue(text.contains("0s of 30s") && text.contains("Space closes"), text);
    }

    // 80 mm at f/2.8 and 3 m on 6x4.5: near 2.83, far 3.19 (the formulas of the depth of field, circle diagonal /
    // 1500).
    @Test
    void withADistanceAndRoomTheListSaysWhatIsSharp() {
        Playing day = Playing.medium("set 3m", "hold f2.8", "m ev10");
        assertTrue(text(day, 120, 40).contains("2.83 m to 3.19 m"), text(day, 120, 40));
        assertTrue(text(day, 100, 24).contains(" sharp"), text(day, 100, 24));
        assertFalse(text(day, 99, 24).contains(" sharp"), "the answer says it, the list has no room");
        assertFalse(text(Playing.medium("hold f2.8", "m ev10"), 120, 40).contains("sharp"));
    }
}
