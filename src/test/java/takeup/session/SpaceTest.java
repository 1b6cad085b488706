package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import takeup.kit.Suggestion;
import takeup.message.Key;

/** The space bar is the shutter button; a held one is not. */
class SpaceTest {
    private static final Key SPACE = Key.typed(" ");

    @Test
    void oneSpaceIsOneFrameWithTheSettingInHandAtOnce() {
        Playing day = Playing.medium("4 125").after(500, SPACE).pass(0);
        assertEquals(2, day.frames());
        assertEquals("f/4 1/125", day.framePair());
        assertTrue(day.said().startsWith("Frame 2 on R0001: f/4 1/125"), day.said());
        assertEquals("", day.prompt());
    }

    @Test
    void aSecondSpaceSoonAfterTheFirstWaitsToSeeWhetherTheKeyIsHeld() {
        Playing day =
                Playing.medium("4 125").after(800, SPACE).after(300, SPACE).pass(59);
        assertEquals(2, day.frames());
        assertEquals(3, day.pass(1).frames());
        assertEquals(4, day.after(800, SPACE).pass(0).frames());
    }

    @ParameterizedTest(name = "two Spaces {0} ms apart: {1} frames, \"{2}\" on the prompt")
    @CsvSource({"1, 1, x1", "30, 1, x1", "59, 1, x1", "60, 2, ''", "61, 2, ''", "100, 2, ''"})
    void nearerThanSixtyMillisecondsIsAHeldKey(int apart, int frames, String prompt) {
        Playing day = Playing.medium().after(500, SPACE).after(apart, SPACE).pass(500);
        assertEquals(frames, day.frames());
        assertEquals(prompt, day.prompt());
    }

    @Test
    void aHeldKeyIsCountedOnThePromptEnterLogsThemAndSaysSo() {
        Playing day = held(7);
        assertEquals(1, day.frames());
        assertEquals("x6", day.prompt());
        assertEquals("Space was held. Enter logs 6 frames more, Esc none", day.said());
        day.press(Key.Name.ENTER);
        assertEquals(7, day.frames());
        assertEquals("", day.prompt());
    }

    /** EI 200, EV 12: f/4 1/15 is 5 over. The line is asked about, the shutter that Space follows was pressed. */
    @Test
    void aFrameFarOutsideTheLatitudeIsAskedAboutWhenTypedAndLoggedBySpace() {
        Playing day = Playing.medium("m ev12", "set 4 1/15").after(500, SPACE).pass(500);
        assertEquals(1, day.frames());
        Playing typed = Playing.medium("m ev12", "4 1/15");
        assertEquals(0, typed.frames());
        assertTrue(typed.said().contains("5.0 over"), typed.said());
        typed.type("yes").press(Key.Name.ENTER).pass(500);
        assertEquals(1, typed.frames());
    }

    @Test
    void escDropsWhatAHeldKeyCounted() {
        Playing day = held(7).press(Key.Name.ESCAPE).pass(500);
        assertEquals(1, day.frames());
        assertEquals("", day.prompt());
        assertEquals(2, day.space().frames());
    }

    @Test
    void aSpaceAfterAHeldOneDropsWhatThatCounted() {
        Playing day = held(7).pass(700).space();
        assertEquals(2, day.frames());
        assertEquals("", day.prompt());
    }

    /** Two refused lines, each of which once ate what was typed after it. */
    @Test
    void aRefusedLineGivesWayToWhatComesNext() {
        Playing day = Playing.medium("4 125").lines("x9 9").type("4 500");
        assertEquals("4 500", day.prompt());
        day.press(Key.Name.ENTER);
        assertEquals("f/4 1/500", day.framePair());
        assertEquals(2, day.frames());
        day.lines("4 501");
        assertEquals("4 501", day.prompt());
        day.space().space();
        assertEquals(4, day.frames());
        assertEquals("", day.prompt());
        day.press(Key.Name.PAGE_UP);
        assertEquals("4 501", day.prompt());
    }

    @Test
    void aRefusedLineIsEditedByArrowsAndBackspaceAndClearedByEsc() {
        Playing day = Playing.medium("4 125").lines("4 5000");
        day.press(Key.Name.BACKSPACE).type(" ; sun").press(Key.Name.ENTER);
        assertEquals("f/4 1/500", day.framePair());
        day.lines("8 501").press(Key.Name.LEFT).type("x");
        assertEquals("8 50x1", day.prompt());
        day.press(Key.Name.ENTER).press(Key.Name.ESCAPE);
        assertEquals("", day.prompt());
        assertEquals(2, day.frames());
    }

    @Test
    void aKeyHeldForSecondsCountsToTheMostThatALineCanLogAndSaysThatMoreCame() {
        Playing day = held(250);
        assertEquals("x99", day.prompt());
        assertTrue(day.said().contains("249"), day.said());
    }

    @Test
    void aSlowLineThatDeliversSpacesLateButTogetherLogsNothing() {
        Playing day = Playing.medium()
                .pass(5_000)
                .burst(SPACE)
                .burst(SPACE)
                .burst(SPACE)
                .pass(500);
        assertEquals(0, day.frames());
        assertEquals("x3", day.prompt());
    }

    @Test
    void aSpaceAndADigitRightBehindItAreAFrameAndADigit() {
        Playing day = Playing.medium("4 125").after(500, SPACE).after(20, Key.typed("5"));
        assertEquals(2, day.frames());
        assertEquals("5", day.prompt());
        day.type(".6").press(Key.Name.ENTER);
        assertEquals("f/5.6 1/125", day.framePair());
        assertEquals(3, day.frames());
    }

    @Test
    void aSpaceAmongTypedWordsIsABlank() {
        Playing day =
                Playing.medium().type("4").after(10, SPACE).after(10, SPACE).after(10, Key.typed("8"));
        assertEquals("4  8", day.prompt());
        assertEquals(0, day.pass(500).frames());
    }

    @Test
    void aPromptThatWasDeletedBackToBlanksIsEmptyAndItsSpaceLogs() {
        Playing day = Playing.medium("4 125")
                .type("8 ")
                .press(Key.Name.LEFT)
                .press(Key.Name.BACKSPACE)
                .space();
        assertEquals(2, day.frames());
        assertEquals("", day.prompt());
    }

    @ParameterizedTest(name = "on the page of {0} a Space turns the page and logs nothing")
    @EnumSource(value = Session.Page.class, names = "SHOOT", mode = EnumSource.Mode.EXCLUDE)
    void inOtherViewsSpacePages(Session.Page page) {
        Playing day = Playing.medium("4 125 x12").press(key(page));
        day.lines(); // the page is listed
        assertEquals(page, day.page());
        day.space();
        assertEquals(12, day.frames());
        assertEquals(page, day.page());
        assertTrue(
                page == Session.Page.ROLLS
                        || day.prompt().startsWith("find ")
                        || day.shoot().view().scroll() > 0
                        || day.shoot().view().chosen() >= 5
                        || day.shoot().view().menu().map(it -> it.chosen()).orElse(0) >= 5,
                "a long list moves on");
    }

    @Test
    void withoutAFilmSpaceSaysWhyNot() {
        Playing day = Playing.of("cam 645").space();
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertTrue(day.said().contains("no film in 645"), day.said());
        assertTrue(Playing.of().space().said().contains("no camera"));
    }

    @Test
    void withAHighlightedSuggestionSpaceTakesItAndSaysSo() {
        Playing day = Playing.medium("m 5.6 125").press(Key.Name.DOWN).press(Key.Name.DOWN);
        String row = day.shoot().choices().get(day.shoot().view().chosen()).aperture() + " "
                + day.shoot().choices().get(day.shoot().view().chosen()).time().orElseThrow();
        assertNotEquals(row, day.pair());
        day.space();
        assertEquals(1, day.frames());
        assertEquals(row, day.framePair());
        assertEquals(row, day.pair());
        assertTrue(
                day.said().startsWith("The highlighted setting was taken.")
                        && day.said().contains(row),
                day.said());
        assertEquals(-1, day.shoot().view().chosen());
        assertEquals(row, day.space().framePair());
        assertFalse(day.said().contains("highlighted"), day.said());
    }

    @Test
    void aHeldSpaceOnAHighlightedSuggestionCountsFramesWithThatOne() {
        Playing day = Playing.medium("m 5.6 125").press(Key.Name.DOWN).press(Key.Name.DOWN);
        String row = day.shoot().choices().get(day.shoot().view().chosen()).aperture() + " "
                + day.shoot().choices().get(day.shoot().view().chosen()).time().orElseThrow();
        day.burst(SPACE).after(30, SPACE).after(30, SPACE).pass(500);
        assertEquals(row + " x3", day.prompt());
        day.press(Key.Name.ENTER);
        assertEquals(3, day.frames());
        assertEquals(row, day.framePair());
    }

    @ParameterizedTest(name = "at EV {1} the {0} at {2}: a time of the dial {3}, and a Space takes just that")
    @CsvSource({
        "35, 3, f/8, false",
        "35af, 3, f/4, true",
        "35af, 4, f/8, true",
        "35af, 0, f/8, false",
        "645, 4, f/8, false",
        "66, 9, f/8, true"
    })
    void aHighlightedTimeIsTakenAsItStandsOnTheDialOrByTheWatch(
            String camera, int ev, String aperture, boolean isOnDial) {
        Playing day = Playing.of("cam " + camera, "load cn400 @100", "m ev" + ev);
        Suggestion row = highlight(day, aperture);
        assertEquals(aperture, row.aperture().toString());
        day.space();
        assertEquals(row.time(), day.shoot().shown().inHand().setting().time(), day.said());
        assertEquals(
                isOnDial,
                day.shoot()
                        .shown()
                        .cameraInHand()
                        .orElseThrow()
                        .shutter()
                        .orElseThrow()
                        .marks()
                        .contains(row.time().orElseThrow()),
                row.toString());
    }

    /** Down until the row with that aperture is highlighted. */
    private static Suggestion highlight(Playing day, String aperture) {
        day.press(Key.Name.DOWN);
        for (int i = 0; i < 40; i++) {
            day.press(Key.Name.UP);
        }
        for (int i = 0;
                i < 40
                        && !day.shoot()
                                .highlighted()
                                .orElseThrow()
                                .aperture()
                                .toString()
                                .equals(aperture);
                i++) {
            day.press(Key.Name.DOWN);
        }
        return day.shoot().highlighted().orElseThrow();
    }

    @Test
    void theFirstSpaceOnAnotherCameraNamesItLarge() {
        Playing day = Playing.two("4 125").space().press(Key.Name.TAB).pass(0);
        assertEquals("35", day.camera());
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
        assertTrue(day.said().contains("R0001"), day.said());
        assertEquals(LastAnswer.Tone.ANSWER, day.space().tone());
        day.lines("cam 645 2", "load cn400");
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
        day.lines("back 1");
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
        assertEquals(LastAnswer.Tone.ANSWER, day.space().tone());
    }

    @Test
    void aCameraThatUndoBroughtBackIsNamedLargeToo() {
        Playing day =
                Playing.two("4 125", "cam 35").space().space().lines("cam 645").space();
        day.press(Key.ctrl('z')).press(Key.ctrl('z'));
        assertEquals("35", day.camera());
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
    }

    @Test
    void aTypedFrameInBetweenDoesNotSpendTheLargeName() {
        Playing day = Playing.two("4 125").space().lines("cam 35", "8 250");
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
    }

    @Test
    void afterARestartAChangeOfCameraIsNamedLarge() {
        Playing day = Playing.two("4 125").restart().lines("cam 35");
        assertEquals(LastAnswer.Tone.LARGE, day.space().tone());
    }

    @Test
    void enterOnAnEmptyPromptShowsWhatCanBeDoneAndLogsNothing() {
        Playing day = Playing.medium("4 125").press(Key.Name.ENTER);
        assertEquals(1, day.frames());
        assertEquals(Session.Page.ACTIONS, day.page());
    }

    private static Playing held(int spaces) {
        Playing day = Playing.medium().pass(500);
        for (int i = 0; i < spaces; i++) {
            day.after(30, SPACE);
        }
        return day.pass(500);
    }

    private static Key key(Session.Page page) {
        return Playing.keyTo(page);
    }

    @Test
    void aHeldTallyKeyCountsNoFramesBeforeEnter() {
        Playing day = Playing.medium().after(500, Key.ctrl('t'));
        for (int i = 1; i < 7; i++) {
            day.after(30, Key.ctrl('t'));
        }
        day.pass(500);
        assertEquals(0, day.frames());
        assertEquals("tally x7", day.prompt());
        assertTrue(day.said().contains("Enter counts 7 frames, Esc none"), day.said());
        day.press(Key.Name.ENTER);
        assertEquals(7, day.frames());
        assertEquals(8, day.after(500, Key.ctrl('t')).pass(60).frames());
    }

    @Test
    void aTallyAndASpaceRightBehindItAreTwoFrames() {
        Playing day = Playing.medium("4 125")
                .after(500, Key.ctrl('t'))
                .after(20, SPACE)
                .pass(500);
        assertEquals(3, day.frames());
        assertEquals("", day.prompt());
    }
}
