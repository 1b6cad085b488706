package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.roll.Roll;

/**
 * A 35mm roll comes out before its end and goes in again. 17 frames are on it: 17 blank ones up to what is exposed, and
 * 2 to be safe.
 */
class RewindCommandTest {
    private static Shooting at17() {
        return Shooting.of("cam 35", "load bw400", "4 250 x17");
    }

    @Test
    void rewindingSaysWhatIsWrittenOnTheCassette() {
        Shooting day = at17();
        assertEquals(
                "R0001 rewound after frame 17, 19 left. Leave the tongue out, and write R0001 and 17 on the "
                        + "cassette. Loaded again (load r1), it wants 19 blank frames first.",
                day.type("rewind"));
        assertEquals(Roll.State.REWOUND, day.roll("R0001").state());
        assertTrue(day.situation().rollInHand().isEmpty(), "the camera is empty");
    }

    @Test
    void loadedAgainTheNextFrameStandsBehindTheSpareOnes() {
        Shooting day = at17();
        day.type("rewind");
        String said = day.type("load r1");
        assertTrue(
                said.contains(
                        "Cap the lens and fire 19 blank frames until the counter shows 20: 17 went by, 2 to spare."),
                said);
        assertEquals(20, day.roll().next());
        assertEquals(
                "17 4 18 blank 19 blank",
                "17 "
                        + day.frame(17)
                                .exposure()
                                .setting()
                                .aperture()
                                .map(it -> "4")
                                .orElse("") + " 18 " + day.frame(18).kind() + " 19 "
                        + day.frame(19).kind());
        day.type("4 125");
        assertEquals(20, day.frame().number());
    }

    @Test
    void anotherRollGoesInBetweenAndTheRewoundOneKeepsItsNumber() {
        Shooting day = at17();
        day.type("rewind");
        day.type("load bw400 @1600 push 2");
        assertEquals("R0002", day.roll().id().toString());
        assertTrue(day.refused("load r1").contains("R0002 (Black-and-white 400, 36 left) is in 35: unload it first"));
        day.type("unload yes");
        day.type("load r1");
        assertEquals("R0001 400", day.roll().id() + " " + day.roll().film().index());
    }

    @ParameterizedTest(name = "{0} is refused: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            load r1        | R0001 is exposed: it was finished on 2026-09-12 at 15:00 with 36 frames
            load R0001     | would expose it twice
            load r3        | R0003 is in 645 already, next frame 1
            load r2        | the loading of R0002 was taken back
            load r44       | there is no roll R0044
            """)
    void anExposedRollDoesNotGoInASecondTime(String line, String why) {
        Shooting day = Shooting.of(
                "cam 35",
                "load bw400",
                "4 250 x36",
                "unload",
                "load bw400",
                "undo",
                "cam 645 1",
                "load cn400",
                "cam 35");
        assertTrue(
                day.refused(line).contains(why.replace("in 645 already", "in 645 back 1 already")), day.refused(line));
    }

    @Test
    void aStockThatIsCalledLikeARollIsStillAStock() {
        assertEquals(
                "bw400",
                Shooting.of("cam 35", "load bw400").roll().film().stock().key());
    }

    @Test
    void aCameraOfAnotherFrameSizeDoesNotTakeIt() {
        Shooting day = at17();
        day.type("rewind");
        day.type("cam half");
        assertTrue(day.refused("load r1").contains("frames of 24x36"), day.refused("load r1"));
    }

    @Test
    void rollFilmIsNotRewound() {
        assertTrue(Shooting.medium("4 125").refused("rewind").contains("unload finishes it"));
    }

    @Test
    void aFullRollIsAskedAboutFirst() {
        Shooting day = Shooting.of("cam 35", "load bw400", "4 250 x36");
        assertTrue(day.asked("rewind").contains("unload finishes it"));
        day.type("yes");
        assertEquals(Roll.State.REWOUND, day.roll("R0001").state());
    }

    @Test
    void aRewoundRollIsClosedByItsNumber() {
        Shooting day = at17();
        day.type("rewind");
        assertTrue(day.asked("unload r1").contains("19 left"));
        day.type("yes");
        assertEquals(Roll.State.FINISHED, day.roll("R0001").state());
        assertTrue(day.refused("unload r1").contains("finished already"));
    }

    @Test
    void undoPutsItBackUnlessAnotherRollIsThere() {
        Shooting day = at17();
        day.type("rewind");
        day.type("undo");
        assertEquals("R0001 18", day.roll().id() + " " + day.roll().next());
        day.type("redo");
        assertEquals(Roll.State.REWOUND, day.roll("R0001").state());
        day.type("load r1");
        day.type("undo");
        assertEquals(
                "rewound 18",
                day.roll("R0001").state() + " " + day.roll("R0001").next());
    }

    @Test
    void aRollWithoutAFrameNeedsNoBlankOnes() {
        Shooting day = Shooting.of("cam 35", "load bw400", "rewind", "load r1");
        assertEquals(1, day.roll().next());
    }
}
