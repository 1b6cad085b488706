package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.roll.Frame;
import takeup.roll.Setting;

/** Lines that put frames right: fix, insert, drop, move, counter. */
class CorrectionCommandsTest {
    private static Shooting five() {
        return Shooting.medium("4 125", "5.6 125", "8 125 ; start", "8 60", "11 60");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "fix 2 4            | 1 f/4 1/125, 2 f/4 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 f/11 1/60",
                "fix 2 1/30         | 1 f/4 1/125, 2 f/5.6 1/30, 3 f/8 1/125, 4 f/8 1/60, 5 f/11 1/60",
                "fix 2-4 16 250     | 1 f/4 1/125, 2 f/16 1/250, 3 f/16 1/250, 4 f/16 1/250, 5 f/11 1/60",
                "fix r1 5 22        | 1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 f/22 1/60",
                "fix 3 blank        | 1 f/4 1/125, 2 f/5.6 1/125, 3 blank, 4 f/8 1/60, 5 f/11 1/60",
                "fix 1-2 unlogged   | 1 unlogged, 2 unlogged, 3 f/8 1/125, 4 f/8 1/60, 5 f/11 1/60",
                "insert 2 4 500     | 1 f/4 1/125, 2 f/4 1/500, 3(2) f/5.6 1/125, 4(3) f/8 1/125, 5(4) f/8 "
                        + "1/60, 6(5) f/11 1/60",
                "insert 1 blank     | 1 blank, 2(1) f/4 1/125, 3(2) f/5.6 1/125, 4(3) f/8 1/125, 5(4) f/8 1/60, "
                        + "6(5) f/11 1/60",
                "insert 5 x2        | 1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5, 6, 7(5) f/11 1/60",
                "insert 6 4 500     | 1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 f/11 1/60, 6 f/4 1/500",
                "insert r1 5 unlogged x2 | 1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 unlogged, 6 "
                        + "unlogged, 7(5) f/11 1/60",
                "drop 2             | 1 f/4 1/125, 2(3) f/8 1/125, 3(4) f/8 1/60, 4(5) f/11 1/60",
                "drop r1 5          | 1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60"
            })
    void correctionsChangeWhatTheySayAndNothingElse(String line, String frames) {
        Shooting shooting = five();
        shooting.type(line);
        assertEquals(frames, shooting.frames());
        assertEquals("fix", shooting.answer().event());
        assertEquals(shooting.roll().frames().size() + 1, shooting.roll().next());
        assertEquals("f/11 1/60", shooting.pair());
        shooting.type("undo");
        assertEquals("1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 f/11 1/60", shooting.frames());
        shooting.type("redo");
        assertEquals(frames, shooting.frames());
    }

    @Test
    void fixTakesWhatAFrameLineTakesAndTheStatesOfACamera() {
        Shooting shooting = five();
        shooting.type("fix 2 4 250 3m lens 150 filter yellow 3x and nd0.9 tube 30mm flash on tripod on bias -1/3 ; "
                + "crew of four");
        Frame frame = shooting.frame(2);
        Setting setting = frame.exposure().setting();
        assertEquals("f/4 1/250", Shooting.pair(frame));
        assertEquals(3, setting.distanceM().orElseThrow());
        assertEquals("150", setting.lens().orElseThrow().key());
        assertEquals(
                List.of("yellow", "nd0.9"),
                setting.filters().stream().map(it -> it.name()).toList());
        assertEquals("tube 30mm", setting.extension().toString());
        assertTrue(setting.flash() && setting.tripod());
        assertEquals(-1 / 3.0, setting.biasStops(), 1e-9);
        assertEquals(Optional.of("crew of four"), frame.note());
        shooting.type("fix 2 filter off tube off flash off tripod off bias 0 8");
        setting = shooting.frame(2).exposure().setting();
        assertEquals("f/8 1/250", Shooting.pair(setting));
        assertTrue(setting.filters().isEmpty()
                && setting.extensionStops() == 0
                && !setting.flash()
                && !setting.tripod()
                && setting.biasStops() == 0);
        assertTrue(shooting.setting().filters().isEmpty());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "fix 2 filter yellow     | Frame 2 of R0001: f/5.6 1/125, filter yellow.",
                "fix 2 lens 150 8        | Frame 2 of R0001: f/8 1/125, 150mm f/3.5.",
                "fix 2 blank             | Frame 2 of R0001: blank.",
                "fix 2-4 filter yellow   | Frames 2 to 4 of R0001: filter yellow.",
                "fix 2-4 8 3m bias -1    | Frames 2 to 4 of R0001: f/8, 3 m, bias -1 stop.",
                "fix 2-3 lens 45 ; heat  | Frames 2 to 3 of R0001: 45mm f/2.8, heat.",
                "insert 2 4 60           | Frame 2 put into R0001: f/4 1/60. Next is frame 7, 10 left.",
                "drop 2                  | Frame 2 of R0001 dropped; later ones are renumbered. Next is frame "
                        + "5, 12 left.",
                "lost 2                  | Frame 2 of R0001 marked lost; what was set is kept."
            })
    void theAnswerSaysWhatWasPutRight(String line, String words) {
        assertEquals(words, five().type(line));
    }

    @Test
    void aFixedNoteTakesThePlaceOfTheOneBefore() {
        Shooting shooting = five();
        shooting.type("fix 3 ; false start");
        assertEquals(Optional.of("false start"), shooting.frame(3).note());
    }

    @Test
    void exposedTakesBlankAndLostBackAndANamedPairDoesSoToo() {
        Shooting shooting = five();
        shooting.type("lost 1");
        shooting.type("fix 1 exposed");
        assertEquals(Frame.Kind.EXPOSED, shooting.frame(1).kind());
        shooting.type("unlogged x2");
        shooting.type("blank");
        shooting.type("fix 5-7 4 125");
        shooting.type("fix 8 4");
        assertEquals(
                "1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4 f/8 1/60, 5 f/4 1/125, 6 f/4 1/125, 7 f/4 1/125, 8 f/4 .",
                shooting.frames());
        shooting.type("lost 1");
        shooting.type("fix 1 8");
        assertEquals(Frame.Kind.LOST, shooting.frame(1).kind());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fix",
                "fix 2",
                "fix 9 4",
                "fix 0 4",
                "fix 2 x5",
                "fix 2 4 125 3x",
                "fix 4-2 8",
                "fix 4-9 8",
                "fix 2-",
                "fix r2 1 8",
                "fix 2 7",
                "fix 2 8 11",
                "fix 2 @400",
                "fix 2 hold f4",
                "fix 2 filter",
                "fix 2 filter violet",
                "fix 2 lens 300",
                "fix 2 lens",
                "fix 2 bias 1",
                "fix 2 flash",
                "fix 2 blank 4 125",
                "fix 2 unlogged filter yellow",
                "fix x5 4",
                "fix f8 4",
                "fix 2.5 4",
                "fix 300 4",
                "insert",
                "insert 9 4 125",
                "insert 0 4",
                "insert 2 7",
                "insert 2 x100",
                "insert r2 2 4",
                "insert 2 blank 4 125",
                "drop",
                "drop 9",
                "drop 2 4",
                "drop 2 ; words",
                "drop r2 2",
                "counter",
                "counter x",
                "counter 300",
                "counter 3 4",
                "counter 3.5",
                "counter -1",
                "lost 9"
            })
    void aCorrectionThatCannotBeFollowedIsRefused(String line) {
        five().refused(line);
    }

    @Test
    void aRefusalNamesTheFramesThatThereAre() {
        assertEquals("R0001 has no frame 9; it holds frames 1 to 5", five().refused("fix 9 4"));
    }

    /**
     * The camera was wound on or shot without a word: those frames are known by number only, until somebody remembers
     * one.
     */
    @Test
    void aFrameThatTheCounterWentPastIsWrittenDownWhereItBelongs() {
        Shooting shooting = five();
        shooting.type("counter 9");
        assertEquals(
                "R0001 has no frame 7, which the counter went past: insert 7 and what was set writes it down",
                shooting.refused("fix 7 8 125"));
        shooting.type("insert 7 8 125 ; stroke");
        shooting.type("insert 6 4 60");
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6, 7),
                shooting.roll("R1").frames().stream().map(Frame::number).toList());
        assertEquals(
                "f/8",
                shooting.frame(7).exposure().setting().aperture().orElseThrow().toString());
        assertEquals(9, shooting.roll("R1").next());
        shooting.type(".");
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6, 7, 9),
                shooting.roll("R1").frames().stream().map(Frame::number).toList());
        assertEquals("the counter went past 1 frame from 8 on, not 2", shooting.refused("insert 8 8 125 x2"));
        shooting.type("insert 8 unlogged");
        assertEquals(10, shooting.roll("R1").next());
        shooting.type("undo");
        assertEquals(-1, shooting.roll("R1").indexOf(8));
        shooting.type("insert 7 4 125");
        assertEquals(
                List.of(1, 2, 3, 4, 5, 6, 7, 8, 10),
                shooting.roll("R1").frames().stream().map(Frame::number).toList(),
                "a frame was forgotten before 7, as ever");
    }

    @Test
    void aFinishedRollTakesCorrectionsAndItsRevisionGrows() {
        Shooting shooting = five();
        shooting.type("unload yes");
        int revision = shooting.roll("R1").revision();
        shooting.type("fix r1 2 16");
        shooting.type("insert r0001 1 4 125");
        shooting.type("drop R1 6");
        assertEquals(
                "1 f/4 1/125, 2(1) f/4 1/125, 3(2) f/16 1/125, 4(3) f/8 1/125, 5(4) f/8 1/60",
                Shooting.frames(shooting.roll("R1")));
        assertEquals(revision + 3, shooting.roll("R1").revision());
        assertEquals(
                "no film in 645 back 1: load a stock first, or name the roll (fix r7 2 8)",
                shooting.refused("fix 2 8"));
    }

    @Test
    void anInsertedFrameHasNoTimeOfDayAndNoLight() {
        Shooting shooting = Shooting.medium("m ev10", "4 125", "insert 1 2.8 250");
        assertEquals(Optional.empty(), shooting.frame(1).exposure().at());
        assertEquals(Optional.empty(), shooting.frame(1).exposure().light());
        assertTrue(shooting.frame(2).exposure().light().isPresent());
    }

    @Test
    void movedFramesBecomeTheNextOnesOfTheOtherRoll() {
        Shooting shooting = Shooting.of(
                "cam 35", "load bw400", "4 125", "cam 645", "load cn400", "4 125", "5.6 125", "8 125", "8 60");
        assertEquals(
                "Frames 2 to 3 of R0002 moved to 35 as frames 2 to 3 of R0001. R0002: 14 left, R0001: 33 left.",
                shooting.type("move 2-3 cam 35"));
        assertEquals("1 f/4 1/125, 2(4) f/8 1/60", shooting.frames());
        assertEquals("1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125", Shooting.frames(shooting.roll("R1")));
        assertEquals(3, shooting.roll().next());
        assertEquals(4, shooting.roll("R1").next());
        shooting.type("move 1 cam 35");
        assertEquals("1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125, 4(1) f/4 1/125", Shooting.frames(shooting.roll("R1")));
        assertEquals("Undone: moving frame 1 of R0002 in 645 back 1. Next is frame 3, 14 left.", shooting.type("undo"));
        assertEquals("1 f/4 1/125, 2(4) f/8 1/60", shooting.frames());
        assertEquals("1 f/4 1/125, 2 f/5.6 1/125, 3 f/8 1/125", Shooting.frames(shooting.roll("R1")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "move",
                "move 1",
                "move 1 35",
                "move 1 cam",
                "move 1 cam 645 2",
                "move 1 cam 645 1",
                "move 1 cam 6x6",
                "move 9 cam 35",
                "move 1-9 cam 35",
                "move 2-1 cam 35",
                "move 1 cam 35 1",
                "move r1 1 cam 35",
                "move 1 cam 66",
                "move 1 cam 35 ; words"
            })
    void aMoveToWhereNoRollIsOrOfNoFrameIsRefused(String line) {
        Shooting.of("cam 35", "load bw400", "4 125", "cam 645", "load cn400", "4 125", "5.6 125")
                .refused(line);
    }

    @Test
    void theCameraIsRightAboutTheNextFrameAndTheDifferenceIsRecorded() {
        Shooting shooting = five();
        assertEquals(
                "The camera shows 8, the log came to 6: 2 more on the camera; it came about between "
                        + "15:00 (loaded) and 15:00. Next is frame 8.",
                shooting.type("counter 8"));
        assertEquals(8, shooting.roll().counterChecks().get(0).shown());
        assertEquals(6, shooting.roll().counterChecks().get(0).expected());
        shooting.type(".");
        assertEquals(8, shooting.frame().number());
        assertEquals(8, shooting.roll().framesLeft());
        assertEquals("The camera shows 9, as the log does.", shooting.type("counter 9"));
        assertEquals(2, shooting.roll().counterChecks().size());
    }

    @Test
    void aFrameNumberedZeroCanOccur() {
        Shooting shooting = Shooting.medium("counter 0", "4 125", ".");
        assertEquals("0 f/4 1/125, 1 f/4 1/125", shooting.frames());
        assertEquals(2, shooting.roll().framesUsed());
        shooting.type("fix 0 8");
        assertEquals("f/8 1/125", Shooting.pair(shooting.frame(0)));
    }

    @Test
    void aFixSaysWhatIsNewlyWrongAndNothingTwice() {
        Shooting shooting = Shooting.medium("4 8");
        assertEquals("hand-held no-light", shooting.warnings());
        shooting.type("fix 1 5.6");
        assertEquals("", shooting.warnings());
        shooting.type("fix 1 f32");
        assertEquals("out-of-range", shooting.warnings());
    }

    @Test
    void anInsertedFrameTakesLensPeopleAndPlace() {
        Shooting day = Shooting.of("cam 35", "load bw400", "8 125 with Anna", "5.6 250");
        assertEquals(
                "Frame 2 put into R0001: f/4 1/500, with Anna, Ben, at boathouse, stroke seat. Next is frame 4, 33 left.",
                day.type("insert 2 4 500 lens 28 with anna, Ben at boathouse; stroke seat"));
        Frame frame = day.situation().rollInHand().orElseThrow().frames().get(1);
        assertEquals("28", frame.exposure().setting().lens().orElseThrow().key());
        assertEquals(List.of("Anna", "Ben"), frame.scene().people());
        day.type("insert r1 2 4 1000 at slip");
        assertEquals(
                Optional.of("slip"),
                day.situation()
                        .rollInHand()
                        .orElseThrow()
                        .frames()
                        .get(1)
                        .scene()
                        .place()
                        .name());
    }
}
