package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.dispatch.CommandTable;
import takeup.dispatch.Completion;
import takeup.message.Key;

/** Tab on a half typed word. */
class CompletionTest {
    @ParameterizedTest(name = "\"{0}\" becomes \"{1}\"")
    @CsvSource(quoteCharacter = '"', textBlock = """
            lo,              lo
            loa,             "load "
            LOA,             "LOAd "
            load cn4,        "load cn400 "
            load cn400 pu,   load cn400 pu
            load cn400 push, "load cn400 push "
            cam 35a,         "cam 35af "
            cam 645 ,        cam 645
            meter pre,       "meter preset "
            lens 4,          "lens 45 "
            filter yel,      filter yellow
            fix 3 filter yel, fix 3 filter yellow
            fix 3 lens 4,    "fix 3 lens 45 "
            fix 3 flash of,  "fix 3 flash off "
            move 3 cam 3,    move 3 cam 35
            m sky ha,        "m sky hazy "
            m refl,          "m reflected "
            theme mo,        "theme mono "
            help tri,        "help tripod "
            tripod on,       "tripod on "
            quiet hand,      "quiet hand-held "
            condition to,    "condition torn "
            """)
    void theWordIsCompletedAsFarAsItIsClear(String typed, String completed) {
        assertEquals(
                completed.strip(),
                Playing.two().type(typed).press(Key.Name.TAB).prompt().strip());
    }

    @Test
    void whereSeveralFitTheyAreShown() {
        Playing day = Playing.medium().type("lo").press(Key.Name.TAB);
        assertTrue(day.said().contains("load") && day.said().contains("lost"), day.said());
        assertTrue(Playing.medium().type("cam 645 ").press(Key.Name.TAB).said().contains("1  2"));
    }

    @ParameterizedTest(name = "\"{0}\" cannot be completed, and that is said")
    @ValueSource(strings = {"4 12", "zz", "4 125 ; bo", "n bo", "tripod on of", "\u0130", "; n"})
    void whereNothingFitsThatIsSaid(String typed) {
        Playing day = Playing.medium().type(typed).press(Key.Name.TAB);
        assertEquals(typed, day.prompt());
        assertFalse(day.said().isEmpty());
    }

    /** Three notes of the day on two cameras; the newest is "bow rope, wet". */
    private static Playing noted() {
        return Playing.two("4 125 ; bow seat", "cam 35", "8 250 ; Cox on the quay")
                .later(1)
                .lines("cam 645", "; bow rope, wet", "4 125 ; bow seat")
                .later(1)
                .lines("8 250 ; bow rope, wet");
    }

    @ParameterizedTest(name = "\"{0}\" becomes \"{1}\"")
    @CsvSource(quoteCharacter = '"', textBlock = """
            "8 125 ; co",      "8 125 ; cox on the quay"
            "n co",            "n cox on the quay"
            "n c",             "n cox on the quay"
            "; bow s",         "; bow seat"
            "; b",             "; bow "
            ". ;BOW R",        ". ;BOW Rope, wet"
            "fix 1 ; bow s",   "fix 1 ; bow seat"
            "; ",              "; "
            """)
    void aNoteOfTheDayIsCompletedAsFarAsItIsClear(String typed, String completed) {
        assertEquals(
                completed.toLowerCase(Locale.ROOT),
                noted().type(typed).press(Key.Name.TAB).prompt().toLowerCase(Locale.ROOT));
    }

    @Test
    void notesAreShownEachOnceAndTheNewestFirst() {
        assertEquals(
                "bow rope, wet · bow seat · Cox on the quay",
                noted().type("; ").press(Key.Name.TAB).said());
        assertEquals(
                "bow rope, wet · bow seat",
                noted().type("n bo").press(Key.Name.TAB).said());
    }

    @Test
    void theNotesOfAnotherDayStayWithTheirRoll() {
        Playing nextDay = noted().later(24 * 60);
        assertEquals(
                "bow rope, wet · bow seat",
                nextDay.type("; ").press(Key.Name.TAB).said());
        assertTrue(nextDay.press(Key.Name.ESCAPE)
                .lines("unload yes")
                .type("; bo")
                .press(Key.Name.TAB)
                .said()
                .contains("no other note"));
    }

    @Test
    void inTheMiddleOfALineTheWordInFrontOfTheCursorIsCompleted() {
        Playing day = Playing.medium().type("loa cn400");
        for (int i = 0; i < 6; i++) {
            day.press(Key.Name.LEFT);
        }
        assertEquals("load  cn400", day.press(Key.Name.TAB).prompt());
    }

    @Test
    void everyFirstWordCompletesToItself() {
        for (String word : CommandTable.firstWords()) {
            assertTrue(
                    Completion.of(Playing.medium().shoot().afterPending(), word).contains(word), word);
        }
    }
}
