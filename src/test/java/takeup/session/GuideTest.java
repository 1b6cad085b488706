package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.action.PickList;
import takeup.message.Key;

/** The first minute in an empty folder: a guide that only speaks, and lists to pick from. */
class GuideTest {
    private static final Key SPACE = Key.typed(" ");

    /** So many keys, the Space among them, pressed one after the other by somebody who reads. */
    private static int keys(Playing day, Key... keys) {
        for (Key key : keys) {
            day.press(key).pass(400);
        }
        return keys.length;
    }

    @Test
    void fromAnEmptyFolderToTheFirstFrameItIsTenKeysAtMost() {
        Playing day = Playing.of();
        Key down = Key.of(Key.Name.DOWN);
        Key enter = Key.of(Key.Name.ENTER);
        int pressed = keys(day, down, enter, down, enter, down, enter, SPACE);
        assertTrue(pressed <= 10, pressed + " keys");
        assertEquals(1, day.frames());
        assertEquals(15, day.shoot().shown().day().light().orElseThrow().ev100().stops());
        assertTrue(day.roll("R0001")
                .newest()
                .orElseThrow()
                .exposure()
                .setting()
                .aperture()
                .isPresent());
        assertEquals("none", step(day));
    }

    @Test
    void theThirdCameraTakesTenKeysToo() {
        Playing day = Playing.of();
        Key down = Key.of(Key.Name.DOWN);
        Key enter = Key.of(Key.Name.ENTER);
        int pressed = keys(day, down, down, down, enter, down, enter, down, enter, SPACE);
        assertTrue(pressed <= 10, pressed + " keys");
        assertEquals("35b", day.camera());
        assertEquals(1, day.frames());
    }

    @ParameterizedTest(name = "after \"{0}\" it is at {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 1",
                "cam 645 | 2",
                "cam 645; load cn400 | 3",
                "cam 645; load cn400; m 5.6 125 | 4",
                "cam 645; m 5.6 125 | 2",
                "cam compact; load cn400 | 4",
                "cam 645; load cn400; set 4 125 | 3",
                "cam 645; load cn400; 4 125 | none",
                "cam 645; load cn400; blank | none",
                "cam 645; load cn400; unload yes | none",
                "cam 645; load cn400; 4 125; undo | none",
                "cam 645; load cn400; undo | 2",
                "cam 645; load cn400; m 5.6 125; cam 35 | 2"
            })
    void theStepFollowsFromWhatWasDoneHoweverItWasDone(String lines, String step) {
        assertEquals(step, step(Playing.of(lines.isBlank() ? new String[0] : lines.split("; "))));
    }

    @ParameterizedTest(name = "after \"{0}\" each row does what its words do when they are typed")
    @ValueSource(strings = {"", "cam 645", "cam 35", "cam 67", "cam compact", "cam 645; load cn400"})
    void aRowIsALineOfThePrompt(String lines) {
        String[] before = lines.isEmpty() ? new String[0] : lines.split("; ");
        List<PickList.Row> rows = Playing.of(before).shoot().picks().rows();
        assertTrue(rows.size() >= 5, rows.toString());
        for (int i = 0; i < rows.size(); i++) {
            Playing picked = Playing.of(before);
            for (int down = 0; down <= i; down++) {
                picked.press(Key.Name.DOWN);
            }
            picked.press(Key.Name.ENTER);
            Playing typed = Playing.of(before).lines(rows.get(i).line());
            assertEquals(
                    typed.shoot().saved().placeInHand(), picked.shoot().saved().placeInHand());
            assertEquals(typed.said(), picked.said(), rows.get(i).line());
            assertEquals(
                    entries(typed, before.length),
                    entries(picked, before.length),
                    rows.get(i).line());
            assertEquals(LastAnswer.Tone.ANSWER, picked.tone(), rows.get(i).line());
        }
    }

    /** What was written behind the lines of before, but for the moment of a reading. */
    private static List<String> entries(Playing day, int before) {
        List<String> entries = new ArrayList<>();
        day.written()
                .subList(before, day.written().size())
                .forEach(it -> entries.add(it.entries().toString().replaceAll("at=[^,\\]]*", "at")));
        return entries;
    }

    @Test
    void enterWithoutAHighlightChangesNothingAndShowsWhatCanBeDone() {
        for (String[] lines : new String[][] {{}, {"cam 645"}, {"cam 645", "load cn400", "routine skip"}}) {
            Playing day = Playing.of(lines);
            day.press(Key.Name.ENTER);
            assertEquals(lines.length, day.written().size());
            assertEquals(Session.Page.ACTIONS, day.page());
        }
    }

    @Test
    void escSendsItAwayForGood() {
        Playing day = Playing.of("cam 645").press(Key.Name.ESCAPE);
        assertEquals("none", step(day));
        assertTrue(day.said().contains("?"), day.said());
        assertEquals("none", step(day.restart()));
        assertEquals("none", step(Playing.of().press(Key.Name.ESCAPE).restart()));
        assertEquals(
                "none",
                step(Playing.of().press(Key.Name.ESCAPE).press(Key.ctrl('z')).lines("cam 645")),
                "undo does not bring it back");
        assertEquals(
                "none",
                step(Playing.of()
                        .press(Key.Name.ESCAPE)
                        .lines("cam 645")
                        .later(24 * 60)
                        .lines("cam 35")
                        .restart()));
    }

    @Test
    void escFirstClearsThePromptTakesTheHighlightAwayOrComesBack() {
        assertEquals("1", step(Playing.of().type("cam").press(Key.Name.ESCAPE)));
        assertEquals("1", step(Playing.of().press(Key.Name.DOWN).press(Key.Name.ESCAPE)));
        assertEquals("1", step(Playing.of().press(Key.Name.F1).press(Key.Name.ESCAPE)));
        assertEquals("1", step(Playing.of().press(Key.Name.F10).press(Key.Name.ESCAPE)));
    }

    @Test
    void itGoesOnWhereItStoodAfterARestartAndNeverComesOnceAFrameWasLogged() {
        assertEquals("2", step(Playing.of("cam 645").restart()));
        assertEquals("3", step(Playing.medium().restart()));
        assertEquals("none", step(Playing.medium("4 125").restart()));
        assertEquals("none", step(Playing.medium("4 125", "unload yes").restart()));
        assertEquals("none", step(Playing.medium("4 125", "undo").restart()));
    }

    @Test
    void whileItIsThereThePromptWorksAsAlways() {
        Playing day = Playing.of("cam 645", "load cn400 @200", "8 250 ; first");
        assertEquals("f/8 1/250", day.framePair());
        assertEquals(1, Playing.medium().space().frames(), "Space logs also before a reading was taken");
    }

    @Test
    void whereNothingCanBeWrittenThereIsNoGuide() {
        assertEquals("none", step(Playing.readOnly()));
    }

    @Test
    void anEmptyCameraOffersTheFilmOfTheRollBeforeAlsoLater() {
        Playing day = Playing.of("cam 645", "load cn400 @100", "4 125", "unload yes");
        assertEquals("load", day.shoot().picks().rows().get(0).line());
        assertEquals(
                "Colour negative 400 again, EI 100",
                day.shoot().picks().rows().get(0).text());
        day.press(Key.Name.DOWN).press(Key.Name.ENTER);
        assertEquals("cn400", day.roll("R0002").film().stock().key());
        assertEquals("100", day.roll("R0002").film().index().toString());
    }

    @Test
    void aHighlightDoesNotOutliveTheListItWasSetOn() {
        Playing day = Playing.of()
                .disk(Playing.Disk.SLOW)
                .press(Key.Name.DOWN)
                .press(Key.Name.ENTER)
                .press(Key.Name.DOWN);
        assertFalse(day.shoot().highlightedPick().isEmpty());
        day.disk(Playing.Disk.WELL);
        assertTrue(day.shoot().highlightedPick().isEmpty(), "the second list came while the first was still shown");
    }

    private static String step(Playing day) {
        return Guide.of(day.shoot()).map(it -> Integer.toString(it.step())).orElse("none");
    }
}
