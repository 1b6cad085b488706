package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.report.SetupText;

/** Warnings are given when what they warn of begins, and no oftener. */
class WarningsTest {
    @Test
    void overADayAtTheRegattaEachIsGivenWhereItBeginsAndNowhereElse() {
        Shooting shooting = Shooting.of();
        says(shooting, "cam 645", "no-film");
        says(shooting, "load cn400 @400", "");
        says(shooting, "4 125", "no-light");
        says(shooting, ".", "");
        says(shooting, "m camera 8 500 @400", "camera-meter");
        says(shooting, "m camera 5.6 250 @400", "");
        says(shooting, "m 5.6 250 @200", "meter-speed");
        says(shooting, "m 5.6 250 @200", "");
        says(shooting, "m 5.6 250", "");
        says(shooting, ".", "");
        shooting.later(31);
        says(shooting, ".", "stale-light");
        says(shooting, ".", "");
        says(shooting, "cam 35", "no-film");
        says(shooting, "load bw400", "");
        says(shooting, "5.6 250", "");
        assertEquals("stale-light", shooting.standing());
        says(shooting, "cam 645", "");
        says(shooting, "m low 5.6 15 and 5.6 1/1000", "span");
        says(shooting, "m ev16", "sun");
        says(shooting, "m ev16.2", "");
        says(shooting, "m ev10", "");
        says(shooting, "m ev16", "sun");
        says(shooting, "m ev12", "");
        says(shooting, "push 1", "push-mismatch");
        says(shooting, "normal", "");
        says(shooting, "flash on", "flash-voltage");
        says(shooting, "5.6 250", "sync-speed");
        says(shooting, "flash off", "");
        shooting.asked("5.6 8");
        says(shooting, "yes", "dense hand-held");
        says(shooting, "tripod on", "");
        shooting.asked("f32 1/500");
        says(shooting, "yes", "out-of-range thin");
        says(shooting, "m ev1", "reciprocity");
        shooting.asked("5.6 500 x3");
        says(shooting, "yes", "thin reciprocity");
        says(shooting, "m ev10", "");
        says(shooting, "f5.6 1/125", "frames-left");
        says(shooting, ".", "");
        says(shooting, ".", "frames-left");
        says(shooting, ".", "frames-left");
        says(shooting, ".", "frames-left");
        says(shooting, ".", "past-end");
        says(shooting, ".", "");
        assertEquals("past-end", shooting.standing());
        says(shooting, "unload", "no-film");
    }

    private static void says(Shooting shooting, String line, String codes) {
        shooting.type(line);
        assertEquals(codes, shooting.warnings(), line + ": " + shooting.answer().text());
    }

    @ParameterizedTest(name = "{0} on {1}: at {2}")
    @CsvSource({
        "load cn400,645,4 2 1 0",
        "load cn400,35,5 2 1 0",
        "load cn400 frames 24,35,5 2 1 0",
        "load cn400,66,3 2 1 0",
        "load cn400,69,2 1 0",
        "load cn400 frames 15,645,3 2 1 0"
    })
    void fewFramesLeftIsSaidAtAQuarterOfTheRollButAtMostFiveThenAtTwoOneAndNone(String load, String camera, String at) {
        Shooting shooting = Shooting.of("cam " + camera, load);
        StringBuilder said = new StringBuilder();
        while (shooting.roll().framesLeft() > 0) {
            shooting.type(".");
            if (shooting.warnings().contains("frames-left")) {
                said.append(said.isEmpty() ? "" : " ").append(shooting.roll().framesLeft());
            }
        }
        assertEquals(at, said.toString());
    }

    @Test
    void aBurstPastTheQuarterSaysHowManyAreLeftBehindIt() {
        Shooting shooting = Shooting.medium("4 125 x11", "x2");
        assertEquals("frames-left", shooting.warnings());
        assertEquals("3 left", shooting.answer().warnings().get(0).text());
        assertEquals("past-end", Shooting.medium("4 125 x14", ".", ".", ".").warnings());
    }

    @Test
    void fewFramesLeftIsSaidAlsoWhereABurstOrTheCounterJumpsOverTheQuarter() {
        assertTrue(Shooting.medium("4 125 x13").warnings().contains("frames-left"));
        Shooting shooting = Shooting.medium("4 125", "counter 13", ".");
        assertEquals("frames-left", shooting.warnings());
        assertEquals(3, shooting.roll().framesLeft());
        shooting = Shooting.medium("m ev10", "4 125 x11", "insert 1 4 125 x3", ".");
        assertEquals("frames-left", shooting.warnings());
    }

    @Test
    void aMeterLeftAtTheOtherCamerasSpeedIsSaidWhenThatCameraComesInHand() {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "cam 645", "load cn400", "m 5.6 125");
        assertEquals("", shooting.warnings());
        shooting.type("cam 35");
        assertEquals("meter-speed", shooting.warnings());
        assertEquals("meter-speed", shooting.standing());
        assertEquals(
                "the meter was set to 200, R0001 is rated 400: set it to 400",
                shooting.answer().warnings().get(0).text());
        shooting.type("cam 645");
        assertEquals("", shooting.warnings() + shooting.standing());
        shooting.type("cam 35");
        assertEquals("", shooting.warnings());
        shooting.type("m 5.6 125");
        assertEquals("", shooting.warnings() + shooting.standing());
        shooting.type("cam 645");
        assertEquals("meter-speed", shooting.warnings());
        shooting.type("m ev10");
        assertEquals("", shooting.warnings() + shooting.standing());
    }

    // cn400: one stop under, three over, reckoned from box speed 400; the roll is rated 200, a stop over. EV 10: f/4
    // 1/125 at EI 200.
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "m ev10,4 125,''",
        "m ev10,4 500,''",
        "m ev10,4 1000,thin",
        "m ev10,4 30,''",
        "m ev10,4 15,dense",
        "m ev10,2.8 15,dense"
    })
    void thinAndDenseAreReckonedFromBoxSpeed(String reading, String frame, String codes) {
        assertEquals(codes, Shooting.medium("tripod on", reading, frame).warnings());
    }

    @Test
    void pushIsCountedIn() {
        assertEquals("thin", Shooting.medium("m ev10", "4 1000").warnings());
        assertEquals(
                "",
                Shooting.of("cam 645", "load cn400 @800 push 1", "m ev8", "4 250")
                        .warnings()
                        .replace("hand-held", ""));
    }

    @Test
    void aBurstSaysEachOfThemOnce() {
        assertEquals(
                "frames-left hand-held",
                Shooting.medium("m ev10", "2.8 1/30 x16").warnings().replace("dense ", ""));
    }

    @Test
    void quietSilencesOneForTheDayAndOnlyThat() {
        Shooting shooting = Shooting.medium();
        assertEquals("no-light is silenced for the day, and that is recorded.", shooting.type("quiet no-light"));
        assertEquals("", shooting.standing());
        shooting.type("4 8");
        assertEquals("hand-held", shooting.warnings());
        shooting.later(24 * 60);
        assertEquals("no-light", shooting.standing());
        assertTrue(Shooting.medium().refused("quiet hand-hel").contains("did you mean hand-held?"));
    }

    @Test
    void theCautionAboutACamerasMeterIsGivenOnceADay() {
        Shooting shooting = Shooting.medium("m camera 4 500 @400");
        assertEquals("camera-meter", shooting.warnings());
        shooting.later(60);
        shooting.type("m camera 4 250 @400");
        assertEquals("", shooting.warnings());
        shooting.later(24 * 60);
        shooting.type("m camera 4 250 @400");
        assertEquals("camera-meter", shooting.warnings());
    }

    @Test
    void lightOfYesterdayIsForgottenAndWhatIsOnTheCameraIsNot() {
        Shooting shooting =
                Shooting.medium("m ev10", "filter yellow", "set 4 125").later(24 * 60);
        assertEquals("no-light", shooting.standing());
        shooting.type(".");
        assertEquals("no-light", shooting.warnings());
        assertEquals("f/4 1/125", shooting.pair());
        assertEquals("[FILTER yellow]", SetupText.marks(shooting.inHand()).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"quiet", "quiet everything", "quiet no-light no-film", "quiet 3"})
    void anUnknownCodeIsNotSilenced(String line) {
        Shooting shooting = Shooting.medium();
        shooting.refused(line);
        assertFalse(shooting.standing().isEmpty());
    }

    @Test
    void aReadingIsOldAfterHalfAnHourAndNotBefore() {
        assertEquals("", Shooting.medium("m ev10").later(30).standing());
        assertEquals("stale-light", Shooting.medium("m ev10").later(31).standing());
    }

    @Test
    void noFilmIsNotSaidByAFreshBeginning() {
        assertEquals("", Shooting.of().standing());
    }
}
