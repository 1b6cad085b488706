package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.history.ShootState;
import takeup.roll.Roll;

/** Undo and redo: one line is one step, on whichever camera it was. */
class UndoCommandsTest {
    @Test
    void undoTakesBackTheFrameAndTheSettingThatItLeftInHand() {
        Shooting shooting = Shooting.medium("4 125", "8 60");
        assertEquals("Undone: frame 2 of R0001 in 645 back 1. Next is frame 2, 15 left.", shooting.type("undo"));
        assertEquals("undo", shooting.answer().event());
        assertEquals("f/4 1/125", shooting.pair());
        assertEquals("1 f/4 1/125", shooting.frames());
        assertEquals("Done again: frame 2 of R0001 in 645 back 1. Next is frame 3, 14 left.", shooting.type("redo"));
        assertEquals("redo", shooting.answer().event());
        assertEquals("f/8 1/60", shooting.pair());
    }

    @Test
    void aBurstIsOneStep() {
        Shooting shooting = Shooting.medium("4 125", "x5 ; start");
        assertEquals("Undone: frames 2 to 6 of R0001 in 645 back 1. Next is frame 2, 15 left.", shooting.type("u"));
        assertEquals("1 f/4 1/125", shooting.frames());
    }

    @Test
    void undoRightAfterUndoGoesFurtherBack() {
        Shooting shooting = Shooting.medium("4 125", "8", "11", "undo", "undo");
        assertEquals("1 f/4 1/125", shooting.frames());
        shooting.type("redo");
        assertEquals("1 f/4 1/125, 2 f/8 1/125", shooting.frames());
        shooting.type("redo");
        assertEquals("1 f/4 1/125, 2 f/8 1/125, 3 f/11 1/125", shooting.frames());
        assertTrue(shooting.refused("redo").contains("nothing to redo"));
    }

    @Test
    void aNewLineEndsWhatCouldBeDoneAgain() {
        Shooting shooting = Shooting.medium("4 125", "8", "undo", "11");
        shooting.refused("redo");
        shooting.type("undo");
        assertEquals("1 f/4 1/125", shooting.frames());
        shooting.type("cam 35");
        shooting.type("say");
        shooting.type("rolls");
        shooting.type("redo");
        assertEquals("1 f/4 1/125, 2 f/11 1/125", shooting.frames());
    }

    @Test
    void undoReachesTheOtherCameraAndTakesItUp() {
        Shooting shooting = Shooting.medium("4 125", "cam 35", "load bw400", "cam 645", "back 2", "cam 35");
        assertEquals(
                "Undone: loading R0002 in 35. R0002 is withdrawn; its number is not given again.",
                shooting.type("undo"));
        assertEquals("no-film", shooting.standing());
        assertEquals("no-film", shooting.warnings());
        shooting.type("undo");
        assertEquals(
                "645 back 1", shooting.situation().placeInHand().orElseThrow().toString());
        assertEquals("", shooting.frames());
    }

    @Test
    void camBackAndViewsAreNoSteps() {
        Shooting shooting = Shooting.medium(
                "4 125", "back 2", "cam 35", "say", "rolls", "help", "big", "theme", "shoot", "m ev10", "m");
        assertEquals("Undone: the reading m ev10.", shooting.type("undo"));
        assertEquals("35", shooting.situation().placeInHand().orElseThrow().toString());
        assertEquals("Undone: frame 1 of R0001 in 645 back 1. Next is frame 1, 16 left.", shooting.type("undo"));
    }

    @Test
    void aRefusedLineAndAQuestionAreNoSteps() {
        Shooting shooting = Shooting.medium("4 125");
        shooting.refused("8 11");
        shooting.asked("unload");
        shooting.type("undo");
        assertEquals("", shooting.frames());
    }

    @Test
    void aWithdrawnRollNumberIsNeverGivenAgainUnlessItIsDoneAgain() {
        Shooting shooting = Shooting.of("cam 645", "load cn400", "undo");
        assertEquals(Roll.State.WITHDRAWN, shooting.roll("R1").state());
        shooting.type("redo");
        assertEquals("R0001", shooting.roll().id().toString());
        shooting.type("undo");
        shooting.type("load bw400");
        assertEquals("R0002", shooting.roll().id().toString());
        assertEquals(Roll.State.WITHDRAWN, shooting.roll("R1").state());
    }

    @Test
    void undoingUnloadNeedsAnEmptyBack() {
        Shooting shooting = Shooting.medium("4 125", "unload yes", "undo");
        assertEquals(Roll.State.OPEN, shooting.roll().state());
        assertEquals("1 f/4 1/125", shooting.frames());
        assertEquals("f/4 1/125", shooting.pair());
        shooting.type("redo");
        assertEquals(Roll.State.FINISHED, shooting.roll("R1").state());
        assertEquals("no-film", shooting.warnings());
        shooting.type("back 2");
        shooting.type("load bw400");
        shooting.type("undo");
        shooting.type("undo");
        assertEquals("R0001", shooting.roll().id().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "set 8 60",
                "lens 150",
                "filter yellow",
                "hold f4",
                "bias +1/3",
                "tube 30mm",
                "flash on",
                "tripod on",
                "meter preset 125",
                "m ev10",
                "m flash 8",
                "push 1",
                "note words",
                "condition torn",
                "; words",
                "blank",
                "double",
                "lost 1",
                "fix 1 8",
                "fix roll @400",
                "insert 1 8 125",
                "drop 1",
                "counter 5",
                "quiet hand-held",
                "unload yes",
                "move 1 cam 35"
            })
    void everyLineThatChangesSomethingCanBeTakenBackAndDoneAgain(String line) {
        // The caution about old flash units is given by then; it is no part of a step.
        Shooting shooting =
                Shooting.of("cam 35", "load bw400", "cam 645", "load cn400", "flash on", "flash off", "4 125");
        ShootState before = shooting.situation();
        shooting.type(line);
        ShootState after = shooting.situation();
        shooting.type("undo");
        same(before, shooting.situation());
        shooting.type("redo");
        same(after, shooting.situation());
    }

    /** The same but for the record of how it came about. */
    private static void same(ShootState expected, ShootState found) {
        assertEquals(expected.day(), found.day());
        assertEquals(expected.rolls().keySet(), found.rolls().keySet());
        expected.rolls().forEach((id, roll) -> {
            Roll other = found.rolls().get(id);
            assertEquals(
                    new Roll(
                            roll.id(),
                            roll.life(),
                            roll.loadedIn(),
                            roll.film(),
                            roll.log(),
                            roll.handling(),
                            roll.notes(),
                            other.revision()),
                    other);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"filter yellow", "set 8 60", "8 60", "m ev12", "quiet sun"})
    void aLineOfBeforeMidnightCanBeTakenBackAfterIt(String line) {
        Shooting shooting = Shooting.medium("4 125").later(8 * 60 + 55);
        ShootState before = shooting.situation();
        shooting.type(line);
        ShootState after = shooting.situation();
        shooting.later(10);
        shooting.type("undo");
        assertEquals(before.day().carried(shooting.now()), shooting.situation().day());
        shooting.type("redo");
        assertEquals(after.day().carried(shooting.now()), shooting.situation().day());
        shooting.type("tripod on");
        shooting.type("undo");
        shooting.type("undo");
        assertEquals(before.day().carried(shooting.now()), shooting.situation().day());
    }

    @Test
    void undoAndRedoStandAloneAndHaveSomethingToDo() {
        assertTrue(Shooting.of().refused("undo").contains("nothing to undo"));
        assertTrue(Shooting.of("cam 35").refused("undo").contains("nothing to undo"));
        assertTrue(Shooting.medium().refused("redo").contains("nothing to redo"));
        Shooting.medium("4 125").refused("undo 2");
        Shooting.medium("4 125", "undo").refused("redo x2");
        Shooting.medium("4 125").refused("u ; words");
    }

    @Test
    void aCorrectionOfAFinishedRollCanBeTakenBack() {
        Shooting shooting = Shooting.medium("4 125", "unload yes", "cam 35", "fix r1 1 8");
        assertEquals(
                "Undone: the correction of frame 1 of R0001 in 645 back 1. R0001 is finished.", shooting.type("undo"));
        assertEquals("1 f/4 1/125", Shooting.frames(shooting.roll("R1")));
        assertEquals(
                "645 back 1", shooting.situation().placeInHand().orElseThrow().toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "; the cox laughs | the note on frame 2 of R0001",
                "n veil | the note on frame 2 of R0001",
                "fix 1 8 125 | the correction of frame 1 of R0001",
                "fix 1 8 ; veil | the correction of frame 1 of R0001",
                "fix 1 ; veil | the note on frame 1 of R0001",
                "lost 1 | the correction of frame 1 of R0001"
            })
    void aNoteThatIsTakenBackIsCalledANote(String line, String what) {
        Shooting shooting = Shooting.medium("4 125", ".", line);
        assertTrue(
                shooting.type("undo").startsWith("Undone: " + what + " in "),
                shooting.answer().text());
    }
}
