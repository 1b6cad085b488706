package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.history.ClockShiftDetector;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.session.Playing;

/** The computer's clock is set while frames are logged: that is said in words, and nothing else comes of it. */
class ClockShiftsOnThePromptTest {
    private static final String ORDER = "; the order of the frames is not touched";

    @Test
    void aClockThatWentBackIsSaidWithTheFrameThatItMeetsAndStandsUntilTheNextLine() {
        Shooting day = Shooting.medium("m 5.6 125", "4 125 x6").later(-120);
        day.type(". ; cox");
        assertEquals("clock", day.warnings());
        assertEquals(
                "the clock went back 2 h since frame 6" + ORDER
                        + "; how old the light reading is cannot be known now: meter again",
                day.answer().warnings().get(0).text());
        assertEquals("clock", day.standing());
        day.type(".");
        assertEquals("", day.warnings());
        assertEquals("", day.standing());
        assertEquals(
                "1 f/4 1/125, 2 f/4 1/125, 3 f/4 1/125, 4 f/4 1/125, 5 f/4 1/125, 6 f/4 1/125, 7 f/4 1/125, 8 "
                        + "f/4 1/125",
                day.frames());
        assertEquals("------C-", marks(day.roll()), "the exports say it of frame 7 alone");
    }

    @ParameterizedTest(name = "{0} s later: {1}")
    @CsvSource({"-1,''", "-2,clock", "0,''", "7200,''", "864000,no-light"})
    void backByMoreThanASecondCountsAndTimeThatGoesByNever(int seconds, String expected) {
        Shooting day = Shooting.medium("m 5.6 125", "4 125");
        day.clock(day.now().plusSeconds(seconds).toString()).type(seconds == 7200 ? "m 5.6 125" : ".");
        // Ten days on it is another day, and the light of this one is gone.
        assertEquals(expected, day.warnings());
    }

    @ParameterizedTest(name = "from 15:00+02:00 to {0}")
    @CsvSource(delimiter = '|', textBlock = """
        2026-09-12T14:05+01:00 | changed its zone from +02:00 to +01:00
        2026-09-12T22:35+09:30 | changed its zone from +02:00 to +09:30
        2026-09-12T12:30+01:00 | went back 1 h 30 min and changed its zone from +02:00 to +01:00
        2026-09-10T14:00+02:00 | went back 2 days 1 h
        2026-09-12T14:59:30+02:00 | went back 30 s
        """)
    void aZoneThatChangedIsToldFromAClockThatWasSet(String now, String words) {
        Shooting day = Shooting.medium("4 125").clock(now);
        day.type(".");
        assertEquals("the clock " + words + " since frame 1" + ORDER, text(day));
    }

    @Test
    void summerTimeEndsInTheNightAndTheSameTimeOfDayComesTwice() {
        // The night of 2026-10-25: 02:30 in summer time, half an hour later it is 02:00 in winter time.
        Shooting day = Shooting.medium().clock("2026-10-25T02:30+02:00");
        day.type("4 125");
        day.clock("2026-10-25T02:00+01:00").type(".");
        assertEquals("the clock changed its zone from +02:00 to +01:00 since frame 1" + ORDER, text(day));
        day.clock("2026-10-25T02:30+01:00").type(".");
        assertEquals("", day.warnings());
        assertEquals("-C-", marks(day.roll()));
    }

    @Test
    void aReadingThatMeetsItSaysItTooAndTheFrameAfterItCarriesItForItsRoll() {
        Shooting day = Shooting.medium("m 5.6 125", "4 125").later(-120);
        day.type("set 8 125");
        assertEquals("", day.warnings(), "a line that is neither frame nor reading");
        day.type("m 5.6 125");
        assertEquals("clock", day.warnings());
        assertEquals("clock", day.standing());
        day.later(1).type("4 125");
        assertEquals("the clock went back 2 h since frame 1" + ORDER, text(day), "the new reading's age is known");
        day.type("m");
        assertTrue(day.answer().text().contains("1 min old"), day.answer().text());
    }

    @Test
    void twoCamerasEachSayItOnceAndTheHoursAreNotAddedUp() {
        Shooting day = Shooting.of("cam 35", "load bw400", "8 125", "cam 645", "load cn400", "4 125")
                .later(-120);
        day.type("4 125 x3");
        assertEquals("clock", day.warnings());
        day.type("cam 35");
        day.type("8 125");
        assertEquals("the clock went back 2 h since frame 1" + ORDER, text(day));
        day.type("cam 645");
        day.type(".");
        assertEquals("", day.warnings());
        assertEquals("-C---", marks(day.roll()));
        assertEquals("-C", marks(day.roll("R0001")));
    }

    @Test
    void theFirstFrameOfARollSaysItToo() {
        Shooting day = Shooting.medium().later(-5);
        day.type("4 125");
        assertEquals("the clock went back 5 min since the line before" + ORDER, text(day));
    }

    @Test
    void undoOfTheFrameThatMetItLeavesItToTheNextOne() {
        Shooting day = Shooting.medium("4 125").later(-120);
        day.type("4 60");
        day.type("undo");
        assertEquals("no-light", day.standing());
        day.type("4 250");
        assertEquals("clock", day.warnings());
        assertEquals("-C", marks(day.roll()));
    }

    @Test
    void aWastedFrameAndADoubleExposureMeetItLikeAnyOther() {
        Shooting day = Shooting.medium("4 125").later(-10);
        day.type("blank x2");
        assertEquals("-C-", marks(day.roll()));
        day.type("fix 2 exposed");
        assertEquals("-C-", marks(day.roll()));
        day.type("4 125");
        day.type("double");
        day.later(-10).type(".");
        assertEquals("-C-C", marks(day.roll()));
    }

    @Test
    void aSilencedNoteIsStillInTheExport() {
        Shooting day = Shooting.medium("quiet clock", "4 125").later(-120);
        day.type(".");
        assertEquals("", day.warnings());
        assertEquals("no-light", day.standing());
        assertEquals("-C", marks(day.roll()));
    }

    @Test
    void lightFromTheFutureIsOfUnknownAgeAndNeverOfANegativeOne() {
        Shooting day = Shooting.medium("m 5.6 125").later(-116);
        day.type("say");
        assertTrue(
                day.answer().text().contains("incident, of unknown age."),
                day.answer().text());
        day.type("m");
        assertTrue(day.answer().text().contains("of unknown age"), day.answer().text());
        assertFalse(day.standing().contains("stale-light"));
    }

    @Test
    void theNewerOfTwoReadingsIsTheOneThatWasTypedLast() {
        Shooting day = Shooting.medium("m flash 8").later(-60);
        day.type("m 5.6 125");
        day.type("m");
        assertTrue(day.answer().text().startsWith("EV"), day.answer().text());
        day.later(-60).type("m flash 8");
        day.type("m");
        assertTrue(day.answer().text().startsWith("Flash: f/8"), day.answer().text());
    }

    @Test
    void aTimerUnderAClockThatWentBackInventsNoTime() {
        Shooting day = Shooting.medium("set 8 b30s", "time").later(-1);
        day.type("time");
        assertTrue(
                day.answer().text().contains("how long it was is not known"),
                day.answer().text());
        assertEquals("f/8 30s", day.pair());
        day.type("time");
        assertTrue(day.answer().text().startsWith("The timer runs"), "it was stopped");
    }

    @Test
    void onTheScreenAJumpAheadIsSeenAgainstTheClockThatOnlyRuns() {
        Playing day = Playing.medium("4 125").clockMoved(Duration.ofDays(1));
        day.lines("set 8 125", "8 125");
        assertEquals(
                "the clock jumped ahead 1 day (it was set, or the computer slept) since frame 1" + ORDER, warning(day));
        day.lines(".");
        assertEquals("", warning(day));
        day.restart().lines(".");
        assertEquals("", warning(day));
        assertEquals("-C--", marks(day.roll("R0001")));
    }

    @Test
    void hoursWithoutAKeyAreNoJumpAndAClockSetBackInThemIsSeen() {
        Playing day = Playing.medium("4 125").later(600);
        day.lines(".");
        assertEquals("", warning(day));
        day.later(600).clockMoved(Duration.ofHours(-2)).later(600).lines(".");
        assertEquals(
                "the clock went back 2 h since frame 2" + ORDER,
                warning(day),
                "18 hours later by its time, 20 in truth");
        day.clockMoved(Duration.ofMinutes(90))
                .clockMoved(Duration.ofMinutes(-90))
                .lines(".");
        assertEquals("", warning(day), "there and back is no move");
    }

    @Test
    void acrossARestartABackwardStepIsKnownAndAForwardOneIsTimeThatWentBy() {
        Playing day = Playing.medium("4 125").clockMoved(Duration.ofHours(-2)).restart();
        day.lines(".");
        assertEquals(
                "the clock went back 2 h since frame 1" + ORDER,
                warning(day),
                "of the restart only the two times of day are known");
        day.restart().clockMoved(Duration.ZERO).lines(".");
        assertEquals("", warning(day));
    }

    @ParameterizedTest(name = "moved by {0} ms while {1} ms went by")
    @CsvSource({
        "1000,1000,0",
        "0,0,0",
        "121000,1000,0",
        "122001,1000,121",
        "-500,500,0",
        "-1500,500,-2",
        "-7200000,1000,-7201",
        "86401000,1000,86400"
    })
    void aSecondBackOrTwoMinutesAheadIsAJump(long moved, long wentBy, long seconds) {
        OffsetDateTime then = OffsetDateTime.parse("2026-09-12T15:00+02:00");
        assertEquals(seconds, ClockShiftDetector.jump(then, 50, then.plusNanos(moved * 1_000_000), 50 + wentBy));
    }

    private static String text(Shooting day) {
        return String.join(
                "|",
                day.answer().warnings().stream()
                        .filter(it -> it.code() == Warning.Code.CLOCK)
                        .map(Warning::text)
                        .toList());
    }

    private static String warning(Playing day) {
        return String.join(
                "|",
                day.shoot().lastAnswer().warnings().stream()
                        .filter(it -> it.code() == Warning.Code.CLOCK)
                        .map(Warning::text)
                        .toList());
    }

    /** A C for each frame that carries the note, a dash for each other. */
    private static String marks(Roll roll) {
        StringBuilder marks = new StringBuilder();
        for (List<Warning> warnings : FrameWarnings.of(roll)) {
            marks.append(warnings.stream().anyMatch(it -> it.code() == Warning.Code.CLOCK) ? 'C' : '-');
        }
        return marks.toString();
    }
}
