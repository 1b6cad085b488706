package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.advice.LoadChecks;
import takeup.command.Shooting;
import takeup.message.Key;
import takeup.report.LoadCheckText;
import takeup.roll.Roll;

/** Three looks after the first roll of the day in each camera or back. */
class LoadChecksTest {
    /** What was answered on a roll: {@code film yes, meter yes}. */
    private static String answers(Roll roll) {
        return String.join(
                ", ",
                roll.loadChecks().stream()
                        .map(it -> it.what() + " " + it.answer())
                        .toList());
    }

    private static String answers(Playing day) {
        return answers(day.shoot().shown().rollInHand().orElseThrow());
    }

    /** A day on which a frame was logged already, on the 35; the 645 has just been loaded. */
    private static Playing loaded() {
        return Playing.of("cam 35", "load cn400", "4 250", "cam 645", "load cn400");
    }

    private static String asked(Shooting day) {
        return LoadChecks.of(day.situation()).map(LoadCheckText::question).orElse("");
    }

    private static String asked(Playing day) {
        return LoadChecks.of(day.shoot().shown()).map(LoadCheckText::question).orElse("");
    }

    @Test
    void threeYesesAnswerIt() {
        Shooting day = Shooting.medium();
        assertEquals("1 of 3: is it cn400 in 645 back 1, rated 200?", asked(day));
        assertEquals(
                "R0001: the right film at the right index. Next, 2 of 3: does the meter " + "say 200?",
                day.type("yes"));
        assertEquals(
                "R0001: the meter says 200. Next, 3 of 3: does the film advance? Arrows on " + "the marks, slide out",
                day.type("yes"));
        day.type("yes");
        assertEquals("film yes, meter yes, moving yes", answers(day.roll()));
        assertTrue(day.refused("yes").contains("nothing was asked"));
    }

    @ParameterizedTest(name = "after {0} it asks no more, and nothing was recorded")
    @ValueSource(strings = {"4 125", "m 5.6 125", "set 4 125", "filter yellow", "unlogged"})
    void anyOtherLineGoesOnWithoutIt(String line) {
        Shooting day = Shooting.medium(line);
        assertEquals("", asked(day));
        assertEquals(List.of(), day.roll().loadChecks());
    }

    @Test
    void everyLoadingIsAskedAbout() {
        Shooting day = Shooting.medium("4 125 x16", "unload", "load cn400");
        assertTrue(asked(day).startsWith("1 of 3"), asked(day));
        day.type("n");
        assertEquals("", asked(day));
        day.type("back 2");
        day.type("load cn400");
        day.type("y");
        assertTrue(asked(day).startsWith("2 of 3"), asked(day));
        day.type("unload yes");
        day.clock("2026-09-13T09:00+02:00").type("load cn400");
        assertTrue(asked(day).startsWith("1 of 3"), "the next day: " + asked(day));
    }

    @Test
    void aLoadingThatWasTakenBackDoesNotCount() {
        Shooting day = Shooting.medium("undo");
        assertEquals("", asked(day));
        day.type("load cn400");
        assertTrue(asked(day).startsWith("1 of 3"));
    }

    @Test
    void turnedOffItStaysOff() {
        Shooting day = Shooting.of("cam 645", "routine off", "load cn400");
        assertEquals("", asked(day));
        day.clock("2026-09-13T09:00+02:00").type("back 2");
        day.type("load cn400");
        assertEquals("", asked(day));
        day.type("routine on");
        day.type("cam 35");
        day.type("load cn400");
        assertTrue(asked(day).startsWith("1 of 3"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            cam 35      | The rewind knob turns as you wind
            cam 645     | Arrows on the marks, slide out
            cam compact | Its counter has gone on
            """)
    void theLastLookIsThatOfTheCamera(String camera, String look) {
        Shooting day = Shooting.of(camera, "load cn400", "yes", "yes");
        assertEquals("3 of 3: does the film advance? " + look, asked(day));
    }

    @Test
    void aNoSaysWhatToDoAndNeverToOpenTheBack() {
        Shooting day = Shooting.of("cam 35", "load cn400");
        assertTrue(day.type("no").contains("fix roll"));
        day = Shooting.of("cam 35", "load cn400", "yes");
        assertTrue(day.type("no").contains("Set the meter to 200"));
        assertEquals("2 of 3: does the meter say 200?", asked(day));
        day.type("yes");
        String moving = day.type("no");
        assertTrue(moving.contains("Keep the back shut"), moving);
        assertFalse(moving.contains("open"), moving);
        assertEquals("film yes, meter no, meter yes, moving no", answers(day.roll()));
    }

    /** A roll of 36: frames 37 and 38 are usual, 39 is not (36 + 2). */
    @Test
    void pastTheEndByMoreThanTwoTheFilmIsAskedAboutOnce() {
        Shooting day = Shooting.of("cam 35", "load cn400", "4 250 x36", "4 250", "4 250");
        assertEquals("", asked(day));
        day.type("4 250");
        assertEquals("past-end", day.warnings());
        assertEquals("frame 39 of 36: does the film still advance? The rewind knob turns as you wind", asked(day));
        day.type("yes");
        assertEquals("moving yes", answers(day.roll()));
        day.type("4 250");
        assertEquals("", asked(day));
        assertEquals("", day.warnings());
    }

    @Test
    void aBurstAcrossTheLimitIsAskedAboutToo() {
        assertEquals(
                "frame 20 of 16: does the film still advance? Winding has the pull of film",
                asked(Shooting.medium("4 125 x15", ".", ".", "x3")));
        assertEquals("", asked(Shooting.medium("4 125 x16", "4 125", "4 125 x3", "4 125")));
    }

    @Test
    void enterAnswersALookAndSpaceLogsAFrameAsAlways() {
        Playing day = loaded();
        day.press(Key.Name.ENTER);
        assertEquals("2 of 3: does the meter say 200?", asked(day));
        day.press(Key.Name.ENTER).press(Key.Name.ENTER);
        assertEquals(
                "film yes, meter yes, moving yes",
                answers(day.shoot().shown().rollInHand().orElseThrow()));
        Playing straight = loaded().space();
        assertEquals(
                List.of(), straight.shoot().shown().rollInHand().orElseThrow().loadChecks());
        assertEquals(
                1, straight.shoot().shown().rollInHand().orElseThrow().frames().size());
    }

    @Test
    void nAnswersEachLookAtOnce() {
        assertEquals("film no", answers(loaded().press(Key.typed("n"))));
        Playing meter = loaded().press(Key.of(Key.Name.ENTER), Key.typed("n"));
        assertEquals("film yes, meter no", answers(meter));
        assertEquals("2 of 3: does the meter say 200?", asked(meter));
        Playing moving = loaded().press(Key.of(Key.Name.ENTER), Key.of(Key.Name.ENTER), Key.typed("n"));
        assertEquals("film yes, meter yes, moving no", answers(moving));
        assertEquals("", moving.shoot().prompt().text());
    }

    @Test
    void enterAfterNIsNoYesToTheNextLook() {
        Playing day = loaded().press(Key.of(Key.Name.ENTER), Key.typed("n"), Key.of(Key.Name.ENTER));
        assertEquals("film yes, meter no", answers(day));
        assertEquals(
                "film yes, meter no, meter yes",
                answers(day.later(1).press(Key.of(Key.Name.ENTER))),
                "a minute later it is meant");
    }

    @Test
    void aNoteThatBeginsWithNIsTypedOn() {
        Playing day = loaded().type("n Ines, bow seat");
        assertEquals("n Ines, bow seat", day.shoot().prompt().text());
        assertEquals(0, day.shoot().shown().rollInHand().orElseThrow().frames().size());
    }

    @Test
    void nIsALetterWhereNothingIsAsked() {
        assertEquals(
                "n",
                loaded().press(Key.of(Key.Name.ESCAPE), Key.typed("n"))
                        .shoot()
                        .prompt()
                        .text());
        assertEquals(
                "xn", loaded().type("x").press(Key.typed("n")).shoot().prompt().text());
    }

    @Test
    void theFirstRollIsAskedAboutTooBesideTheGuide() {
        Playing day = Playing.medium();
        assertEquals("film yes", answers(day.press(Key.of(Key.Name.ENTER))));
        assertEquals("film yes, meter no", answers(day.press(Key.typed("n"))));
        day.press(Key.of(Key.Name.ESCAPE));
        assertEquals("film yes, meter no, meter skipped", answers(day));
        assertTrue(Guide.of(day.shoot()).isPresent(), "Esc has skipped a look, and nothing more");
        assertTrue(Guide.of(day.press(Key.of(Key.Name.ESCAPE)).shoot()).isEmpty());
    }

    @Test
    void escSkipsItAndThatIsRecorded() {
        Playing day = loaded().press(Key.Name.ESCAPE);
        assertEquals("", asked(day));
        assertEquals("film skipped", answers(day.shoot().shown().rollInHand().orElseThrow()));
    }

    @Test
    void enterNeverAnswersAnotherQuestionByWayOfIt() {
        Playing day = loaded().lines("unload").press(Key.Name.ENTER);
        assertTrue(day.shoot().shown().rollInHand().isPresent(), "the roll is still in");
    }

    @Test
    void theRecordIsTakenBackLikeAnyLine() {
        Shooting day = Shooting.medium("yes", "undo");
        assertEquals(List.of(), day.roll().loadChecks());
        assertEquals("1 of 3: is it cn400 in 645 back 1, rated 200?", asked(day), "and is asked for again");
    }
}
