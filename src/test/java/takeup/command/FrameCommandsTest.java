package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.json.Json;

/** Lines that log frames, and those that write on them. */
class FrameCommandsTest {
    @Test
    void aFrameLineSaysTheFrameThePairAndWhatIsLeft() {
        Shooting shooting = Shooting.medium();
        assertEquals("Frame 1 on R0001: f/4 1/125; bow seat. 15 left.", shooting.type("4 125 ; bow seat"));
        assertEquals("frame", shooting.answer().event());
        assertEquals("Frames 2 to 6 on R0001: f/4 1/125. 10 left.", shooting.type("x5"));
        assertEquals(
                Json.of(5), shooting.answer().fields().json().field("count").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {".", ",", ". ; words", ",;words", ". x1"})
    void aPointIsOneMoreFrameWithTheSettingInHand(String line) {
        Shooting shooting = Shooting.medium("4 125 3m ; first", line);
        assertEquals("1 f/4 1/125, 2 f/4 1/125", shooting.frames());
        assertEquals(3, shooting.frame().exposure().setting().distanceM().orElseThrow());
        assertEquals(
                line.contains("words") ? Optional.of("words") : Optional.empty(),
                shooting.frame().note());
    }

    @Test
    void withNothingInHandAFrameIsLoggedWithNulls() {
        Shooting shooting = Shooting.medium(".");
        assertEquals(". .", Shooting.pair(shooting.frame()));
        assertEquals(OptionalDouble.empty(), shooting.error());
        assertEquals(
                "80", shooting.frame().exposure().setting().lens().orElseThrow().key());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 125",
                ".",
                ",",
                "x5",
                "; words",
                "n words",
                "blank",
                "unlogged",
                "double",
                "lost 1",
                "fix 1 4",
                "insert 1 4 125",
                "drop 1",
                "move 1 cam 35",
                "counter 3",
                "unload",
                "push 1",
                "pull 1",
                "normal",
                "note words",
                "condition torn",
                "frames",
                "fix roll @400"
            })
    void withoutARollEveryLineAboutFilmIsRefused(String line) {
        Shooting shooting = Shooting.of("cam 645");
        assertTrue(shooting.refused(line).contains("no film in 645 back 1"), line);
        assertEquals("no-film", shooting.standing());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 125",
                ".",
                "set 4 125",
                "hold f4",
                "bias 0",
                "filter yellow",
                "load cn400",
                "lens 80",
                "back 2",
                "flash on"
            })
    void withoutACameraItIsRefusedWithTheCamerasThatThereAre(String line) {
        assertTrue(Shooting.of().refused(line).contains("35, 35af, 35b, 645"), line);
    }

    @Test
    void aNoteGoesToEachFrameOfABurst() {
        Shooting shooting = Shooting.medium("4 125 x3 ; start");
        shooting.roll().frames().forEach(it -> assertEquals(Optional.of("start"), it.note()));
    }

    @Test
    void aSecondNoteStandsBehindTheFirstAndLogsNoFrame() {
        Shooting shooting = Shooting.medium("4 125 ; start", "; false start", "n Boot 2");
        assertEquals("1 f/4 1/125", shooting.frames());
        assertEquals(Optional.of("start; false start; Boot 2"), shooting.frame().note());
        assertEquals("note", shooting.answer().event());
    }

    @ParameterizedTest
    @ValueSource(strings = {";", "; ", "n", "n ;"})
    void anEmptyNoteIsRefused(String line) {
        assertTrue(Shooting.medium("4 125").refused(line).contains("empty"));
    }

    @Test
    void aNoteBeforeTheFirstFrameIsRefused() {
        assertTrue(Shooting.medium().refused("; words").contains("no frame on R0001 yet"));
    }

    @ParameterizedTest
    @CsvSource({"blank,1,blank", "blank x3,3,blank", "unlogged,1,unlogged", "unlogged 3x,3,unlogged"})
    void wastedAndUnrecordedFramesCountButHaveNoSetting(String line, int count, String kind) {
        Shooting shooting = Shooting.medium("4 125", line);
        assertEquals("frame", shooting.answer().event());
        assertEquals(1 + count, shooting.roll().frames().size());
        assertEquals(kind, shooting.frame().kind().toString());
        assertEquals(". .", Shooting.pair(shooting.frame()));
        assertEquals(15 - count, shooting.roll().framesLeft());
        assertEquals(kind.equals("blank") ? 1 : 1 + count, shooting.roll().framesExposed());
        assertEquals("f/4 1/125", shooting.pair());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "blank 3",
                "unlogged 3",
                "blank x0",
                "blank 4 125",
                "unlogged x3 x3",
                "double x2",
                "double 1",
                "double 100",
                "double ; words",
                "lost x1",
                "lost",
                "lost 2",
                "lost 1 1"
            })
    void otherWordsBehindThemAreRefused(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @Test
    void aLostFrameKeepsItsValues() {
        Shooting shooting = Shooting.medium("m ev10", "2.8 250", "4 125", "lost 1");
        assertEquals("fix", shooting.answer().event());
        assertEquals("1 lost f/2.8 1/250, 2 f/4 1/125", shooting.frames());
        assertEquals(2, shooting.roll().framesExposed());
        shooting.type("lost 2 ; fogged");
        assertEquals(Optional.of("fogged"), shooting.frame(2).note());
    }

    @Test
    void aFrameOfAFinishedRollCanBeLost() {
        Shooting shooting = Shooting.medium("4 125", "unload yes", "lost r1 1");
        assertEquals("1 lost f/4 1/125", Shooting.frames(shooting.roll("R1")));
    }

    @Test
    void afterDoubleTheNextExposureGoesOnTheSameFrame() {
        Shooting shooting = Shooting.medium("m ev10", "4 250", "double");
        assertEquals("fix", shooting.answer().event());
        assertEquals(OptionalDouble.empty(), shooting.error());
        assertEquals(
                "Frame 1 exposed again on R0001: f/4 1/250, right; both crews. 15 left.",
                shooting.type("4 250 ; both crews"));
        assertEquals(1, shooting.roll().frames().size());
        assertEquals(2, shooting.roll().next());
        // EV 10 at EI 200 asks for f/4 1/128; each exposure is a stop under, both together are right: log2(2^-1 + 2^-1)
        // = 0.
        assertEquals(0, shooting.error().orElseThrow(), 1e-9);
        shooting.type(".");
        assertEquals("1 f/4 1/250, 2 f/4 1/250", shooting.frames());
    }

    @Test
    void aNoteOrACorrectionDoesNotEndTheWaitingForTheSecondExposure() {
        Shooting shooting = Shooting.medium(
                "4 250", "4 125", "double", "; crew of eight", "fix 1 8", "lost 1", "insert 1 4 60", "drop 1");
        assertEquals("Frame 2 exposed again on R0001: f/4 1/125. 14 left.", shooting.type("."));
    }

    @Test
    void aBurstAfterDoubleBeginsOnTheSameFrame() {
        Shooting shooting = Shooting.medium("4 250", "double", "4 125 x3");
        assertEquals("1 f/4 1/250, 2 f/4 1/125, 3 f/4 1/125", shooting.frames());
        assertEquals(1, shooting.frame(1).further().size());
    }

    @Test
    void doubleIsRefusedWithoutAFrameOnABlankOneAndTwice() {
        assertTrue(Shooting.medium().refused("double").contains("no frame"));
        assertTrue(Shooting.medium("blank").refused("double").contains("blank"));
        assertTrue(Shooting.medium(".", "double").refused("double").contains("already"));
    }

    @Test
    void aFrameIsRemarkedOnAndNeverRefusedPastTheEnd() {
        Shooting shooting = Shooting.medium("4 125 x16");
        assertEquals("Frame 17 on R0001: f/4 1/125. 1 past the end.", shooting.type("."));
        assertTrue(shooting.warnings().contains("past-end"));
        assertEquals("Frames 18 to 19 on R0001: f/4 1/125. 3 past the end.", shooting.type("x2"));
    }

    @Test
    void twoMetresAreQuestionedWhileTheTimeInHandIsOneSecondOrLonger() {
        Shooting shooting = Shooting.medium("8 2s");
        assertEquals(
                "2m is a distance in metres; the time in hand is 2s, and minutes are typed 2min. Take it as typed? y/n",
                shooting.asked("8 2m"));
        assertEquals(1, shooting.roll().frames().size());
        shooting.type("yes");
        assertEquals(2, shooting.frame().exposure().setting().distanceM().orElseThrow());
        assertEquals("f/8 2s", shooting.pair());
    }

    @ParameterizedTest
    @CsvSource({"8 1s,8 2m", "8 1s,set 3m", "8 4m10s,4m", "8 125,8 1m 30s", "8 1s,fix 1 2m", "8 1s,2 m"})
    void metresThatCouldBeMinutesAreQuestioned(String before, String line) {
        assertTrue(Shooting.medium(before).asked(line).contains("distance in metres"));
    }

    @ParameterizedTest
    @CsvSource({"8 1/2,8 2m", "8 125,3m", "8 2s,10ft", "8 2s,8 2min"})
    void otherDistancesAndTimesAreNot(String before, String line) {
        Shooting.medium(before).type(line);
    }

    @Test
    void anotherLineWithdrawsTheQuestion() {
        Shooting shooting = Shooting.medium("8 2s");
        shooting.asked("8 2m");
        shooting.type(".");
        assertTrue(shooting.refused("yes").contains("nothing was asked"));
        assertEquals("1 f/8 2s, 2 f/8 2s", shooting.frames());
    }

    @Test
    void onAFixedLensAnotherFocalLengthIsQuestioned() {
        Shooting shooting = Shooting.medium();
        assertEquals(
                "the lens in hand is 80mm f/2.8 (80 mm), not 85mm. Take it as typed? y/n",
                shooting.asked("4 125 85mm"));
        shooting.type("yes");
        assertEquals(85, shooting.frame().exposure().setting().focalMm().orElseThrow());
        Shooting.medium().type("4 125 80mm");
    }

    @ParameterizedTest
    @CsvSource({"28,true", "50,true", "90,true", "27,false", "105,false"})
    void aZoomTakesTheFocalLengthsThatItHas(int mm, boolean reaches) {
        Shooting shooting = Shooting.of("cam 35af", "load cn400", "lens 28-90");
        assertEquals(OptionalDouble.empty(), shooting.setting().focalMm());
        if (reaches) {
            shooting.type("8 125 " + mm + "mm");
            assertEquals(mm, shooting.setting().focalMm().orElseThrow());
        } else {
            assertTrue(shooting.asked("8 125 " + mm + "mm").contains("28 to 90 mm"));
        }
    }

    /** It is what a hand does before the shot: nothing was exposed. */
    @Test
    void anApertureAloneIsNoFrameWhereTheTimeIsNotSet() {
        Shooting shooting = Shooting.of("cam 645", "load cn400");
        String said = shooting.type("f8");
        assertTrue(said.contains("nothing was logged"), said);
        assertEquals("", shooting.frames());
        shooting.type("1/60");
        assertTrue(shooting.type("f5.6").startsWith("Frame 2"), "both are set by now");
    }
}
