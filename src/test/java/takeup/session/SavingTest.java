package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.command.Outcome;
import takeup.command.Shooting;
import takeup.history.JournalStep;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.message.SaveError;

/** The counter shows what the disk holds; what it does not hold yet is in plain sight. */
class SavingTest {
    @Test
    void theCounterMovesWhenTheDiskHasTheFrameAndNotWithTheKey() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.SLOW).space();
        assertEquals(1, day.frames());
        assertEquals(1, day.waiting());
        assertTrue(day.said().startsWith("Frame 1 "), day.said());
        day.answerOne();
        assertEquals(2, day.frames());
        assertEquals(0, day.waiting());
        assertTrue(day.said().startsWith("Frame 2 "), day.said());
    }

    @Test
    void whatIsPressedWhileTheDiskIsBusyIsKeptAfterItInOrder() {
        Playing day = Playing.medium("4 125")
                .disk(Playing.Disk.SLOW)
                .space()
                .lines("8 250")
                .space();
        assertEquals(3, day.waiting());
        assertEquals(1, keeps(day, 4), "one thing at a time is handed over");
        day.answerOne().answerOne();
        assertEquals("f/8 1/250", day.framePair());
        assertEquals(3, day.frames());
        day.answerOne();
        assertEquals(4, day.frames());
        assertEquals("f/8 1/250", day.framePair());
        assertEquals(
                List.of(1L, 2L, 3L, 4L, 5L, 6L),
                day.written().stream().map(JournalStep::step).toList());
    }

    @Test
    void whatCouldNotBeWrittenStaysInPlainSightUntilItIs() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space();
        notSaved(day, 1);
        day.type("8").press(Key.Name.F9).press(Key.Name.ESCAPE).press(Key.Name.ESCAPE);
        notSaved(day, 1);
        day.disk(Playing.Disk.SLOW).press(Key.Name.ESCAPE);
        notSaved(day, 1);
        day.disk(Playing.Disk.WELL);
        assertEquals(Optional.empty(), day.shoot().saveError());
        assertEquals(2, day.frames());
        assertTrue(day.said().startsWith("Frame 2 "), day.said());
    }

    @Test
    void itIsTriedAgainAtEachKeyAndNeverTwiceAtOnce() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space();
        int before = keeps(day, 4);
        day.press(Key.Name.F9);
        assertEquals(before + 1, keeps(day, 4));
        day.press(Key.of(Key.Name.UNKNOWN));
        assertEquals(before + 2, keeps(day, 4));
        day.disk(Playing.Disk.SLOW).press(Key.Name.F9).press(Key.Name.F9).press(Key.Name.F9);
        assertEquals(before + 3, keeps(day, 4));
    }

    @Test
    void framesLoggedWhileTheDiskIsFullWaitAndAreWrittenInOrder() {
        Playing day = Playing.medium("4 125")
                .disk(Playing.Disk.FULL)
                .space()
                .lines("8 250 ; bow seat")
                .space();
        notSaved(day, 3);
        day.disk(Playing.Disk.WELL).press(Key.Name.F9);
        assertEquals(0, day.waiting());
        assertEquals("1 f/4 1/125, 2 f/4 1/125, 3 f/8 1/250, 4 f/8 1/250", Shooting.frames(day.roll("R0001")));
        assertEquals(Optional.of("bow seat"), day.roll("R0001").frames().get(2).note());
    }

    @Test
    void undoCanTakeBackWhatIsNotSavedYet() {
        Playing day =
                Playing.medium("4 125").disk(Playing.Disk.FULL).lines("8 250").press(Key.ctrl('z'));
        notSaved(day, 2);
        day.disk(Playing.Disk.WELL).press(Key.Name.F9);
        assertEquals("1 f/4 1/125", Shooting.frames(day.roll("R0001")));
    }

    @Test
    void anAnswerAboutAnotherStepChangesNothing() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.SLOW).space();
        Session before = day.shoot();
        day.send(new Message.Saved(99)).send(new Message.SaveFailed(3, new SaveError("late", "late")));
        assertEquals(before, day.shoot());
    }

    @Test
    void ctrlCDoesNotLeaveWhileSomethingIsNotSavedAndSaysSo() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space().press(Key.ctrl('c'));
        refusesToLeave(day);
        day.press(Key.ctrl('c')).press(Key.ctrl('c'));
        refusesToLeave(day);
        day.type("8").press(Key.ctrl('c')).press(Key.ctrl('c'));
        refusesToLeave(day);
        day.disk(Playing.Disk.WELL).press(Key.Name.F9).pass(500).press(Key.Name.F9);
        assertFalse(day.isOver(), "a disk that recovers later does not throw anybody out");
        assertEquals(2, day.frames());
    }

    @Test
    void quitDoesNotLeaveWhileSomethingIsNotSavedAndStaysOnThePrompt() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space().lines("quit");
        refusesToLeave(day);
        assertEquals("quit", day.prompt());
        day.disk(Playing.Disk.WELL).press(Key.Name.F9);
        assertFalse(day.isOver());
        day.press(Key.Name.ENTER);
        assertTrue(day.isOver());
        assertFalse(day.farewell().contains("NOT SAVED"), day.farewell());
    }

    @Test
    void quitThatMeetsAFailingDiskOnTheWayOutStays() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.SLOW).space().lines("quit");
        assertFalse(day.isOver());
        day.disk(Playing.Disk.FULL);
        refusesToLeave(day);
        assertEquals("quit", day.prompt());
        day.disk(Playing.Disk.WELL).press(Key.Name.ESCAPE);
        assertFalse(day.isOver());
    }

    @Test
    void quitWaitsForTheDisk() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.SLOW).space().lines("quit");
        assertFalse(day.isOver());
        day.answerOne();
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("2 logged, 14 left"), day.farewell());
    }

    @Test
    void ctrlCTwiceWaitsForTheDiskToo() {
        Playing day = Playing.medium("4 125")
                .disk(Playing.Disk.SLOW)
                .space()
                .press(Key.ctrl('c'))
                .press(Key.ctrl('c'));
        assertFalse(day.isOver());
        assertTrue(day.answerOne().isOver());
    }

    @Test
    void quitYesLeavesAndPrintsWhatWasNotSaved() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space().lines("8 250 ; bow seat", "quit yes");
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("NOT SAVED: Frame 2 on R0001: f/4 1/125"), day.farewell());
        assertTrue(
                day.farewell().contains("NOT SAVED: Frame 3 on R0001: f/8 1/250")
                        && day.farewell().contains("bow seat"),
                day.farewell());
        assertFalse(day.farewell().contains("Frame 1"), day.farewell());
    }

    @ParameterizedTest(name = "\"{0}\" that is not saved is called \"{1}\"")
    @CsvSource(delimiter = '|', textBlock = """
            tripod on                | tripod on 645
            flash on                 | flash on 645
            bias +1/3                | bias +1/3 on 645
            .                        | Frame 2 on R0001
            m ev11                   | EV 11.0 at ISO 100, incident, just now
            condition torn           | Condition of R0001
            push 1                   | correction of R0001
            undo                     | Undone: frame 1 of R0001
            cam 35                   | 35mm mechanical reflex
            """)
    void whatIsNotSavedIsCalledByWhatWasDone(String line, String name) {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).lines(line);
        assertEquals(name, day.shoot().waiting().get(0).name());
    }

    @Test
    void quitYesIsTheLastTryAndDoesNotCallUnsavedWhatWasSavedWithIt() {
        Playing day = Playing.medium("4 125")
                .disk(Playing.Disk.FULL)
                .space()
                .type("quit yes")
                .disk(Playing.Disk.WELL)
                .press(Key.Name.ENTER);
        assertTrue(day.isOver());
        assertFalse(day.farewell().contains("NOT SAVED"), day.farewell());
        assertTrue(day.farewell().contains("2 logged"), day.farewell());
    }

    @Test
    void aDiskThatNeverAnswersCanBeLeft() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.SLOW).space().lines("quit");
        assertFalse(day.isOver());
        day.press(Key.ctrl('c')).press(Key.ctrl('c'));
        assertFalse(day.isOver(), "a frame is still on its way");
        day.lines("quit yes", "quit yes");
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("NOT SAVED: Frame 2"), day.farewell());
    }

    @Test
    void whenTheTerminalGoesAwayWhatWasPressedIsStillWritten() {
        Playing day =
                Playing.medium("4 125").disk(Playing.Disk.SLOW).space().space().after(500, Key.typed(" "));
        day.send(new Message.Ended("the terminal was closed"));
        assertFalse(day.isOver());
        day.answerOne().answerOne();
        assertFalse(day.isOver());
        day.answerOne();
        assertTrue(day.isOver());
        assertEquals(4, day.frames());
    }

    @Test
    void whenTheTerminalGoesAwayWithAFullDiskItEndsAllTheSame() {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).space();
        day.send(new Message.Ended("the terminal was closed"));
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("NOT SAVED: Frame 2"), day.farewell());
        assertTrue(Playing.medium()
                .send(new Message.Ended("the terminal was closed"))
                .isOver());
    }

    @Test
    void readOnlyRefusesInWordsBeforeAndAfterEnter() {
        Playing day = Playing.readOnly().type("cam 645");
        assertTrue(day.shoot().echo().orElseThrow() instanceof Outcome.Rejected, "the echo says it already");
        day.press(Key.Name.ENTER);
        assertEquals("read only: another takeup has the folder open", day.said());
        assertEquals("cam 645", day.prompt());
        assertEquals(List.of(), day.seen());
    }

    @Test
    void readOnlyStillShowsWhatThereIs() {
        Playing day = Playing.medium("4 125").restartReadOnly();
        for (String line : List.of(".", "undo", "unload", "m 5.6 125", "lens 45")) {
            day.lines(line);
            assertTrue(day.said().startsWith("read only: "), line + ": " + day.said());
            day.press(Key.Name.ESCAPE);
        }
        assertTrue(day.space().said().startsWith("read only: "));
        assertTrue(day.press(Key.ctrl('z')).said().startsWith("read only: "));
        assertEquals(Session.Page.FRAMES, day.press(Key.Name.F2).page());
        assertEquals(1, day.frames());
        assertTrue(day.lines("quit").isOver());
    }

    @Test
    void whatCouldNotBeReadIsSaidAtTheStart() {
        assertEquals(
                "R0002.journal:41: the last line stops in the middle (and 1 more: takeup check)",
                Playing.troubled("R0002.journal:41: the last line stops in the middle", "another")
                        .said());
    }

    @Test
    void theAlarmSaysWhatWasDoneAndNotWhatItWasDoneTo() {
        Playing day = Playing.medium().disk(Playing.Disk.FULL).lines("tripod on");
        String name = day.shoot().waiting().get(0).name();
        assertTrue(name.contains("tripod"), name);
    }

    @ParameterizedTest(name = "{0} has a name where it is not saved")
    @ValueSource(
            strings = {
                "m 5.6 125",
                "set 4 125",
                "4 125 ; bow seat",
                "hold f5.6",
                "filter yellow",
                "lens 150",
                "bias +1/3",
                "tube 30mm",
                "blank x2",
                "tally",
                "n cox",
                "fix 1 8 250",
                "insert 1 8 250",
                "drop 1",
                "lost 1",
                "counter 9",
                "note eights",
                "condition torn",
                "push 1",
                "double",
                "slate",
                "cam 645 2",
                "undo",
                "unload yes",
                "shoot Regatta day",
                "plan 16:30 Prize-giving wants 12 must",
                "bag add 2 cn400",
                "quiet hand-held"
            })
    void whateverIsNotSavedHasAName(String line) {
        Playing day = Playing.medium("4 125").disk(Playing.Disk.FULL).lines(line);
        assertEquals(1, day.waiting(), day.said());
        assertFalse(day.shoot().waiting().get(0).name().isBlank(), line);
    }

    private static void notSaved(Playing day, int waiting) {
        assertEquals(
                "the disk is full; free some space",
                day.shoot().saveError().orElseThrow().text());
        assertEquals(waiting, day.waiting());
        assertEquals(1, day.allFrames());
    }

    private static void refusesToLeave(Playing day) {
        assertFalse(day.isOver());
        assertTrue(day.said().contains("NOT SAVED"), day.said());
        assertTrue(day.said().contains("quit yes"), day.said());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
    }

    /** How often a step was handed to the disk. */
    private static int keeps(Playing day, long step) {
        return (int) day.seen().stream()
                .filter(it -> it instanceof Effect.Save keep && keep.step().step() == step)
                .count();
    }
}
