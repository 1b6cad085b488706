package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.PaperInput;
import takeup.framing.FrameDescription;
import takeup.message.Key;
import takeup.report.StatusText;
import takeup.roll.Frame;
import takeup.session.Playing;

/**
 * The form that was written while the laptop was dead, read back a line a frame: R0001 in the 645, 16 frames, 80 mm in
 * half stops.
 */
class PaperCommandTest {
    private static Shooting reading(String... lines) {
        Shooting day = Shooting.medium();
        day.type("paper");
        for (String line : lines) {
            day.type(line);
        }
        return day;
    }

    private static List<String> aside(Shooting day) {
        return day.situation().day().paper().map(PaperInput::aside).orElse(List.of());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1 5.6 125 veil            | f/5.6 1/125, veil
            1. 5,6 125 Ines, bow seat | f/5.6 1/125, Ines, bow seat
            1) 125 5.6                | f/5.6 1/125
            1 f8 1/60 ; 2 boats       | f/8 1/60, 2 boats
            1 4 60 lost torn          | lost, f/4 1/60, torn
            1 blank                   | blank
            1 veil at the Jetty       | unlogged, veil at the Jetty
            1                         | unlogged
            """)
    void aLineIsTheFrameThatItSays(String line, String frame) {
        Shooting day = reading(line);
        assertEquals(List.of(), aside(day));
        assertEquals(frame, FrameDescription.of(day.roll(), day.frame(1)));
        assertEquals(Optional.empty(), day.frame(1).exposure().at(), "when it was is not known");
        assertEquals(Optional.empty(), day.frame(1).exposure().light(), "nor in which light");
    }

    /** Shot without a word while the laptop was shut: the counter told of them, the paper says what they were. */
    @Test
    void aFrameThatTheCounterWentPastIsFilledInFromPaper() {
        Shooting day = Shooting.medium("4 125", "counter 5", "paper", "3 5.6 125 veil", "2 8 60", "done");
        assertEquals(
                List.of(1, 2, 3),
                day.roll().frames().stream().map(Frame::number).toList());
        assertEquals("f/5.6 1/125, veil", FrameDescription.of(day.roll(), day.frame(3)));
        assertEquals(5, day.roll().next());
    }

    @ParameterizedTest(name = "{0} is set aside: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1 5.7 125            | 5.7
            1 5.6 125 8 veil     | 8
            1 5.6 11             | 11
            veiled               | begins with the frame's number
            3-1 5.6 125          | runs backwards
            125 5.6              | past the end of R0001, which has 16
            20 5.6 125           | past the end of R0001, which has 16
            1 "                  | nothing stands above
            1 5.6 125 x3         | several frames are 7-9
            1 5.6 125 blank      | there is no setting
            """)
    void whatDoesNotFitIsKeptAndNamed(String line, String why) {
        Shooting day = reading();
        assertTrue(day.type(line).contains(why), day.answer().text());
        assertEquals(List.of(line), aside(day));
        assertEquals(List.of(), day.roll().frames());
        String done = day.type("done");
        assertTrue(done.contains("1 line did not fit") && done.contains(line), done);
    }

    /** 38 lines for a roll of 36: 36 frames that fit, and 2 that do not. */
    @Test
    void aWholeRollOfPaperComesBack() {
        List<String> lines = new ArrayList<>(List.of("cam 35", "load bw400", "paper r1"));
        for (int frame = 1; frame <= 36; frame++) {
            lines.add(frame + (frame % 2 == 0 ? " 8 250" : " 5.6 125 seat " + frame));
        }
        lines.add("seat of the cox");
        lines.add("12 2 8");
        lines.add("done");
        Shooting day = Shooting.of(lines.toArray(String[]::new));
        assertEquals(36, day.roll().frames().size());
        assertEquals(37, day.roll().next());
        assertEquals(
                "f/5.6 1/125 seat 35",
                Shooting.pair(day.frame(35)) + " " + day.frame(35).note().orElse(""));
        assertTrue(
                day.answer()
                        .text()
                        .contains("2 lines did not fit, and are kept in the day's journal: seat of the cox / 12 2 8."),
                day.answer().text());
    }

    @Test
    void aFrameThatIsLoggedIsNotWrittenOver() {
        Shooting day = Shooting.medium("4 125", "paper");
        assertTrue(day.type("1 8 60").contains("frame 1 of R0001 is logged: f/4 1/125"));
        assertEquals("f/4 1/125", Shooting.pair(day.frame(1)));
    }

    @Test
    void whatWasTalliedKeepsItsTimeAndGetsItsValues() {
        Shooting day = Shooting.medium("tally x3", "paper", "2 5.6 60 veil", "done");
        assertEquals("1 unlogged, 2 f/5.6 1/60, 3 unlogged", day.frames());
        assertTrue(day.frame(2).exposure().at().isPresent(), "it was tallied at 15:00");
        assertTrue(
                day.answer().text().contains("2 of them not written down"),
                day.answer().text());
    }

    @Test
    void numbersThatAreLeftOutWaitForTheirLine() {
        Shooting day = reading("3 5.6 125");
        assertEquals("1 unlogged, 2 unlogged, 3 f/5.6 1/125", day.frames());
        day.type("1 8 60");
        assertEquals("1 f/8 1/60, 2 unlogged, 3 f/5.6 1/125", day.frames());
    }

    @Test
    void aDittoMarkStandsForWhatIsAbove() {
        Shooting day = reading("1 5.6 125", "2 \" bow", "3 \" 60", "4 8 \"", "5-6 \"");
        assertEquals("1 f/5.6 1/125, 2 f/5.6 1/125, 3 f/5.6 1/60, 4 f/8 1/60, 5 f/8 1/60, 6 f/8 1/60", day.frames());
    }

    @ParameterizedTest(name = "{0} is refused while paper is read")
    @ValueSource(strings = {".", "cam 35", "load cn400", "m 5.6 125", "; bow seat", "fix 1 4 60"})
    void noOtherLineIsTakenForPaper(String line) {
        assertTrue(reading("1 5.6 125").refused(line).contains("done ends it"));
    }

    @Test
    void undoTakesBackALineOfPaper() {
        Shooting day = reading("1 5.6 125", "2 8 60", "undo");
        assertEquals("1 f/5.6 1/125", day.frames());
        day.type("2 11 60");
        assertEquals("1 f/5.6 1/125, 2 f/11 1/60", day.frames());
    }

    @Test
    void theSettingInHandIsNotThatOfThePaper() {
        Shooting day = Shooting.medium("set 4 250", "paper", "1 8 60", "done");
        assertEquals("f/4 1/250", day.pair());
    }

    @Test
    void aFinishedRollTakesPaperToo() {
        Shooting day = Shooting.medium("4 125", "tally x2", "unload yes", "paper r1", "2 5.6 125", "3 \"", "done");
        assertEquals("1 f/4 1/125, 2 f/5.6 1/125, 3 f/5.6 1/125", Shooting.frames(day.roll("R0001")));
    }

    @Test
    void onANewDayNothingIsReadAnyMore() {
        Shooting day = reading("1 5.6 125").clock("2026-09-13T09:00+02:00");
        assertTrue(day.refused("done").contains("no paper is being read"));
        day.type("m 5.6 125");
        assertFalse(day.situation().day().paper().isPresent());
    }

    @Test
    void theScreenSaysThatPaperIsRead() {
        assertTrue(StatusText.words(reading().situation(), reading().now())
                .contains("The paper of R0001 is being read; done ends it."));
    }

    @Test
    void theKeyOfTheTallyCountsOneFrame() {
        Playing day = Playing.medium().press(Key.ctrl('t')).pass(500);
        assertEquals(
                Frame.Kind.UNLOGGED,
                day.shoot()
                        .shown()
                        .rollInHand()
                        .orElseThrow()
                        .newest()
                        .orElseThrow()
                        .kind());
    }

    @Test
    void aLineOfTheFormTakesLensPeopleAndPlaceDirectlyBehindTheSetting() {
        Shooting day = Shooting.of("cam 35", "load bw400", "paper");
        assertEquals(
                "Frame 1 of R0001: f/8 1/125, with Anna, Ben, at boathouse, veil.",
                day.type("1 8 125 lens 28 with Anna, Ben at boathouse; veil"));
        assertEquals(
                "Frame 2 of R0001: f/8 1/250, talking with Anna at the start.",
                day.type("2 8 250 talking with Anna at the start"));
        assertEquals("Frame 3 of R0001: blank, at boathouse.", day.type("3 blank at Boathouse"), "spelled as before");
        assertTrue(
                day.type("4 8 125 lens 999").startsWith("Set aside"),
                day.answer().text());
        List<Frame> frames = day.situation().rollInHand().orElseThrow().frames();
        assertEquals(
                "28", frames.get(0).exposure().setting().lens().orElseThrow().key());
        assertEquals(List.of("Anna", "Ben"), frames.get(0).scene().people());
        assertEquals(Optional.of("veil"), frames.get(0).note());
        assertEquals(List.of(), frames.get(1).scene().people());
    }
}
