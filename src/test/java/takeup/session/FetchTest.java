package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import takeup.command.Outcome;
import takeup.command.Shooting;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** Finished rolls are read when a line speaks of them; the line then does what it says. */
class FetchTest {
    private static final RollId R1 = RollId.parse("R0001").orElseThrow();

    @Test
    void aLineAboutAFinishedRollReadsItAndThenRuns() {
        Playing day = finished().lines("fix r1 2 8 250");
        assertEquals("1 f/4 1/125, 2 f/8 1/250", Shooting.frames(day.roll("R0001")));
        assertEquals("", day.prompt());
        assertTrue(day.said().contains("R0001"), day.said());
    }

    @Test
    void untilItIsReadTheEchoSaysThatItWillBe() {
        assertTrue(finished().type("fix r1 2 8 250").shoot().echo().orElseThrow() instanceof Outcome.NeedsRoll);
    }

    @Test
    void theLinesAfterItRunAfterIt() {
        Playing day = finished()
                .paste("fix r1 1 5.6 60\n8 250\nfix r1 2 ; cox\nnote r1 first eight")
                .press(Key.Name.ENTER);
        assertEquals("1 f/5.6 1/60, 2 f/4 1/125", Shooting.frames(day.roll("R0001")));
        assertEquals(Optional.of("cox"), day.roll("R0001").frames().get(1).note());
        assertEquals(Optional.of("first eight"), day.roll("R0001").note());
        assertEquals("f/8 1/250", day.framePair());
        assertEquals(1, fetches(day));
    }

    @Test
    void whatIsPressedWhileItIsReadComesAfterIt() {
        Playing day = finished()
                .disk(Playing.Disk.SLOW)
                .lines("fix r1 1 5.6 60", "fix r1 2 5.6 60")
                .space();
        assertTrue(day.said().startsWith("reading R0001"), day.said());
        assertEquals(0, day.frames());
        day.disk(Playing.Disk.WELL);
        assertEquals("1 f/5.6 1/60, 2 f/5.6 1/60", Shooting.frames(day.roll("R0001")));
        assertEquals(1, day.frames());
        assertEquals(1, fetches(day));
    }

    @Test
    void aRollThatIsReadTwiceHasItsFramesOnce() {
        Playing day = finished().lines("fix r1 2 8 250");
        day.send(new Message.Fetched(R1, day.stepsOf(R1), List.of()));
        assertEquals(2, day.roll("R0001").frames().size());
    }

    @Test
    void aFrameOnItsWayToTheDiskIsStillCountedOnceTheRollIsThere() {
        Playing day = finished().disk(Playing.Disk.SLOW).space().lines("fix r1 2 8 250");
        day.send(new Message.Fetched(R1, day.stepsOf(R1), List.of()));
        assertEquals(2, day.waiting());
        day.disk(Playing.Disk.WELL);
        assertEquals(1, day.frames());
        assertEquals("1 f/4 1/125, 2 f/8 1/250", Shooting.frames(day.roll("R0001")));
    }

    @Test
    void aRollThatCannotBeReadLeavesTheLinesOnThePrompt() {
        Playing day = finished()
                .disk(Playing.Disk.SLOW)
                .paste("fix r1 2 8 250\n8 250")
                .press(Key.Name.ENTER);
        day.send(new Message.Fetched(R1, List.of(), List.of("R0001.journal cannot be read: no permission")));
        assertEquals("fix r1 2 8 250\n8 250", day.prompt());
        assertEquals("R0001.journal cannot be read: no permission", day.said());
        assertEquals(0, day.frames());
    }

    @Test
    void whatIsBeingTypedByThenIsNotOverwritten() {
        Playing day = finished().disk(Playing.Disk.SLOW).lines("fix r1 2 8 250").type("8 25");
        day.send(new Message.Fetched(R1, List.of(), List.of()));
        assertEquals("8 25", day.prompt());
        assertTrue(day.said().contains("cannot be read") && day.said().contains("PgUp"), day.said());
        assertEquals("fix r1 2 8 250", day.press(Key.Name.PAGE_UP).prompt());
    }

    @Test
    void aRollThatWasReadWithAGapSaysSoBeforeAnythingIsChanged() {
        Playing day = finished().disk(Playing.Disk.SLOW).lines("fix r1 2 8 250");
        day.send(new Message.Fetched(R1, day.stepsOf(R1), List.of("R0001.journal:3: this line is damaged")));
        assertTrue(day.said().startsWith("R0001.journal:3: this line is damaged"), day.said());
        assertEquals("fix r1 2 8 250", day.prompt());
        day.disk(Playing.Disk.WELL).press(Key.Name.ENTER);
        assertEquals("1 f/4 1/125, 2 f/8 1/250", Shooting.frames(day.roll("R0001")));
    }

    @Test
    void escGivesUpWaitingForIt() {
        Playing day = finished()
                .disk(Playing.Disk.SLOW)
                .lines("fix r1 2 8 250")
                .space()
                .press(Key.Name.ESCAPE);
        assertEquals("fix r1 2 8 250", day.press(Key.Name.PAGE_UP).prompt());
        assertEquals(1, day.waiting(), "the Space behind it goes its way");
    }

    @Test
    void undoOfAnUnloadReadsTheRollAndBringsItBack() {
        Playing day = Playing.medium("4 125", "unload yes", "cam 35").restart().press(Key.ctrl('z'));
        assertEquals(Roll.State.OPEN, day.roll("R0001").state());
        assertEquals("645 back 1", day.camera().replace("645 1", "645 back 1"));
        assertEquals(1, day.frames());
    }

    @Test
    void quitLeavesAlsoWhileARollIsBeingRead() {
        Playing day = finished().disk(Playing.Disk.SLOW).lines("fix r1 2 8 250", "quit");
        assertTrue(day.isOver());
        assertTrue(day.farewell().contains("NOT DONE: fix r1 2 8 250"), day.farewell());
        assertFalse(day.farewell().contains("NOT SAVED"), day.farewell());
    }

    /** A finished roll R0001 with two frames, not read since the start, and an open one in hand. */
    private static Playing finished() {
        return Playing.medium("4 125 x2", "unload yes", "load bw400").restart();
    }

    private static long fetches(Playing day) {
        return day.seen().stream().filter(it -> it instanceof Effect.Fetch).count();
    }
}
