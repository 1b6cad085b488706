package takeup.shoot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
        assertEquals(completed.strip(), Playing.two().type(typed).press(Key.Name.TAB).prompt().strip());
    }

    @Test
    void whereSeveralFitTheyAreShown() {
        Playing day = Playing.medium().type("lo").press(Key.Name.TAB);
        assertTrue(day.said().contains("load") && day.said().contains("lost"), day.said());
        assertTrue(Playing.medium().type("cam 645 ").press(Key.Name.TAB).said().contains("1  2"));
    }

    @ParameterizedTest(name = "\"{0}\" cannot be completed, and that is said")
    @ValueSource(strings = {"4 12", "zz", "4 125 ; bo", "tripod on of", "\u0130", "; n"})
    void whereNothingFitsThatIsSaid(String typed) {
        Playing day = Playing.medium().type(typed).press(Key.Name.TAB);
        assertEquals(typed, day.prompt());
        assertFalse(day.said().isEmpty());
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
        for (String word : Lexicon.firstWords()) {
            assertTrue(Completion.of(Playing.medium().shoot().ahead(), word).contains(word), word);
        }
    }
}
