package takeup.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.command.Shooting;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.message.Key;
import takeup.message.Message;
import takeup.prompt.RollListParser;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.session.Playing;

/**
 * The end of regatta day, 2026-09-12: three rolls closed, one of them without a frame, one in the camera, one loading
 * taken back.
 */
class DayEndTest {
    private static Shooting day() {
        return Shooting.of(
                "cam 645 1",
                "load cn400",
                "4 125 x16",
                "unload",
                "load",
                "unload yes",
                "cam 35",
                "load bw400 @800 push 1",
                "4 250 x36",
                "unload",
                "cam 645 2",
                "load bw100",
                "8 60 x3",
                "cam 645 1",
                "load cn400",
                "undo");
    }

    private static DayEnd end(Shooting day, String... held) {
        return DayEnd.of(
                day.situation(),
                day.now(),
                "R",
                held.length == 0
                        ? Optional.empty()
                        : Optional.of(RollListParser.read(List.of(held), Optional.empty())));
    }

    private static List<String> questions(DayEnd end) {
        return DayEndText.questions(end);
    }

    private static String where(DayEnd end) {
        return String.join(
                " ",
                end.rolls().stream()
                        .map(it -> it.id() + ":" + it.where().code())
                        .toList());
    }

    @Test
    void everyRollIsSomewhere() {
        assertEquals("R0001:closed R0002:closed R0003:closed R0004:in-camera R0005:withdrawn", where(end(day())));
    }

    @Test
    void theRollThatIsNotInTheHandIsMissingByName() {
        DayEnd end = end(day(), "r1", "r2");
        assertEquals("R0001:closed R0002:closed R0003:missing R0004:in-camera R0005:withdrawn", where(end));
        assertTrue(end.isRollMissing());
        assertTrue(
                DayEndText.sentence(end)
                        .contains("R0003: not in your hand: bw400, 36 of 36 frames, out of 35, finished 15:00"),
                DayEndText.sentence(end));
        assertFalse(end(day(), "r1-r3").isRollMissing());
    }

    @ParameterizedTest(name = "{0} asks: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            R0002 | R0002 has no frame: keep it apart if it is unexposed; if it was shot and not written down, insert r2 1 unlogged x16
            R0004 | R0004 is still in 645 back 2, 13 left: unload it, or let it stay
            """)
    void whatIsOddIsAskedAbout(String roll, String ask) {
        assertTrue(questions(end(day())).contains(ask), questions(end(day())).toString());
    }

    @Test
    void nothingIsAskedAboutAPlainRoll() {
        assertEquals(List.of(), questions(end(Shooting.medium("4 125 x16", "unload"))));
    }

    @Test
    void whatIsHeldAndCannotBeIsAskedAbout() {
        List<String> asks = questions(end(day(), "r1-r4", "r44"));
        assertTrue(
                asks.contains("R0004 is in your hand, and by the log in 645 back 2: cam, then unload"),
                asks.toString());
        assertTrue(asks.contains("R0044 is in your hand and is no roll known here"), asks.toString());
    }

    @Test
    void theLabelSaysNumberFilmAndPushInWords() {
        Shooting day = day();
        day.type("condition r3 torn at the rewind");
        assertEquals(
                "R0003, Black-and-white 400, black-and-white, PUSH 1 STOP (rated 800, box 400), TORN at the rewind",
                RollText.label(day.roll("R0003")));
        assertEquals(
                "R0001, Colour negative 400, C-41, NORMAL (rated 200, box 400)", RollText.label(day.roll("R0001")));
    }

    @Test
    void aFrameThatNobodyWroteDownIsAskedAbout() {
        assertTrue(questions(end(Shooting.medium("4 125", "unlogged x2")))
                .contains("2 frames of R0001 are not written down: fix, or paper r1, while it is fresh"));
    }

    @Test
    void aCounterThatDifferedIsAskedAbout() {
        assertTrue(questions(end(Shooting.medium("4 125 x3", "counter 5")))
                .contains("on R0001 the camera showed 5 where the log came to 4, at 15:00: 1 frame went "
                        + "past that is not in the log"));
        String many = questions(end(Shooting.medium("4 125 x3", "counter 8"))).toString();
        assertTrue(many.contains("4 frames went past that are not in the log"), many);
        String fewer = questions(end(Shooting.medium("4 125 x3", "counter 2"))).toString();
        assertTrue(fewer.contains("the log has 2 frames more than the camera"), fewer);
        String rest = questions(end(Shooting.medium("4 125 x3", "counter 8", "insert 4 8 125 x2")))
                .toString();
        assertTrue(rest.contains("2 frames went past that are not in the log"), rest);
        String none = questions(end(Shooting.medium("4 125 x3", "counter 8", "insert 4 8 125 x4")))
                .toString();
        assertFalse(none.contains("the camera showed"), none);
    }

    @Test
    void untilSixInTheMorningItIsTheEveningBefore() {
        Shooting day = Shooting.medium("4 125 x16", "unload").clock("2026-09-13T05:59+02:00");
        assertEquals("2026-09-12 R0001:closed", end(day).date() + " " + where(end(day)));
        day.clock("2026-09-13T06:00+02:00");
        assertEquals("2026-09-13 ", end(day).date() + " " + where(end(day)));
    }

    @Test
    void aRollOfLastWeekThatIsStillInACameraIsPartOfTheDay() {
        Shooting day = Shooting.medium("4 125").clock("2026-09-19T15:00+02:00");
        assertEquals("R0001:in-camera", where(end(day)));
    }

    /** R0001 finished on the day; R0002 was given and its file is gone; R0003 in the camera. */
    @Test
    void aNumberThatWasGivenAndIsGoneIsMissing() {
        Shooting day = day();
        ShootState all = day.situation();
        List<JournalStep> without = all.history().steps().stream()
                .map(step -> new JournalStep(
                        step.step(),
                        step.at(),
                        step.entries().stream()
                                .filter(it -> !(it instanceof JournalEntry.OnRoll onRoll
                                        && onRoll.roll().number() == 2))
                                .toList()))
                .toList();
        ShootState gone = ShootState.of(all.kit(), without, all.lastJournalDate(), Set.of());
        OffsetDateTime now = day.now();
        assertEquals(Optional.of(new RollId("R", 2)), RollsOfDay.unread(gone, now, "R", Set.of()));
        DayEnd end = DayEnd.of(gone, now, "R", Optional.empty());
        assertTrue(
                DayEndText.sentence(end)
                        .contains("1 MISSING (R0002: its number was given, and its file is not there or cannot be "
                                + "read (takeup check))"),
                DayEndText.sentence(end));
    }

    /** R0001 was finished last week and is not read; R0002 is in the camera since. */
    @Test
    void aRollThatWasFinishedLastWeekIsNotMissingToday() {
        Shooting day = Shooting.medium("4 125 x16", "unload", "load cn400", "4 125");
        ShootState all = day.situation();
        List<JournalStep> later = all.history().steps().stream()
                .map(step -> new JournalStep(
                        step.step(),
                        step.at(),
                        step.entries().stream()
                                .filter(it -> it instanceof JournalEntry.OnRoll onRoll
                                        && onRoll.roll().number() == 2)
                                .toList()))
                .toList();
        ShootState opened =
                ShootState.of(all.kit(), later, all.lastJournalDate(), Set.of(new RollId("R", 1), new RollId("R", 2)));
        day.clock("2026-09-19T22:00+02:00");
        assertEquals(Optional.empty(), RollsOfDay.unread(opened, day.now(), "R", Set.of()));
        assertEquals("R0002:in-camera", where(DayEnd.of(opened, day.now(), "R", Optional.empty())));
    }

    /** A hundred rolls of earlier days and two of today, none of them read at the start. */
    @Test
    void ofAnArchiveOnlyTheRollsOfTheDayAreReadAndOneOfTheDayBefore() {
        Shooting day = Shooting.of("cam 35");
        for (int roll = 1; roll <= 100; roll++) {
            day.type("load bw400");
            day.type("unload yes");
        }
        day.clock("2026-09-19T15:00+02:00");
        day.type("load bw400");
        day.type("unload yes");
        day.type("load bw400");
        day.type("unload yes");
        ShootState all = day.situation();
        ShootState s = ShootState.of(all.kit(), List.of(), all.lastJournalDate(), all.known());
        Set<RollId> read = new LinkedHashSet<>();
        for (Optional<RollId> next = RollsOfDay.unread(s, day.now(), "R", read);
                next.isPresent();
                next = RollsOfDay.unread(s, day.now(), "R", read)) {
            RollId id = next.get();
            assertTrue(read.add(id), "read twice: " + id);
            s = s.with(all.history().steps().stream()
                    .filter(it -> it.entries().stream()
                            .anyMatch(one -> one instanceof JournalEntry.OnRoll onRoll
                                    && onRoll.roll().equals(id)))
                    .toList());
        }
        assertEquals("[R0102, R0101, R0100]", read.toString());
    }

    @Test
    void aMustHaveOnOneRollOnlyIsSaid() {
        Shooting day = Shooting.medium("plan 15:10 Start must").later(11);
        day.type("4 125");
        assertTrue(
                questions(end(day.later(90))).contains("Start is a must, and on R0001 only: guard that roll"),
                questions(end(day)).toString());
    }

    @ParameterizedTest(name = "{0} is refused: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            day-end 7        | 7 is no roll number: r1 r2 r4-r7
            day-end r4-r2    | r4-r2 is no row of rolls
            day-end r1-s4    | r1-s4 is no row of rolls
            day-end frob     | frob is no roll number
            """)
    void whatIsNoRollIsRefused(String line, String why) {
        assertTrue(day().refused(line).contains(why), day().refused(line));
    }

    @Test
    void onAnEmptyDayThereIsNothingToCount() {
        assertEquals(
                "No roll was loaded or finished on 2026-09-12.", Shooting.of().type("day-end"));
    }

    @Test
    void theScreenShowsWhatTheSecondLaptopLoggedIntoTheSameFolder() {
        Roll other = Shooting.of("cam 35", "load bw400", "5.6 125 x12").roll();
        Roll gone =
                Shooting.of("cam 35", "load bw400", "undo").situation().rolls().get(other.id());
        RollSummary open = asOf("B", RollSummary.of(other));
        RollSummary withdrawn = asOf("C", RollSummary.of(gone));
        Playing day = Playing.medium("4 125").press(Key.Name.F6);
        day.send(new Message.Listed(List.of(RollSummary.of(day.roll("R0001")), open, withdrawn), Map.of()));
        List<String> items = DayEndText.sections(day.shoot().dayEnd()).stream()
                .filter(it -> it.title().equals("Logged by another writer in this folder, 1 roll"))
                .flatMap(it -> it.items().stream())
                .map(CheckList.Item::text)
                .toList();
        assertEquals(
                List.of(
                        "B0001  in 35, bw400, 12 of 36 frames",
                        "whether one is missing, and what to write on each, tells takeup day-end"),
                items);
        day.lines("day-end r1 b1");
        day.send(new Message.Listed(List.of(RollSummary.of(day.roll("R0001")), open), Map.of()));
        assertTrue(
                DayEndText.questions(day.shoot().dayEnd()).stream().noneMatch(it -> it.contains("B0001")),
                "a roll of the other laptop is no stranger");
    }

    private static RollSummary asOf(String letters, RollSummary line) {
        return new RollSummary(
                new RollId(letters, 1),
                line.state(),
                line.place(),
                line.film(),
                line.framesUsed(),
                line.loadedAt(),
                line.finishedAt(),
                line.name());
    }
}
