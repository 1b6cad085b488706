package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.message.Key;
import takeup.message.Message;
import takeup.report.RollSummary;
import takeup.session.Playing;

/** What costs money or film is whole also in a small window. */
class NarrowViewsTest {
    private static Playing rolls() {
        return Playing.of("cam 35", "load bw400 @800 push 1", "cam 645 2", "load bw100 @80");
    }

    @ParameterizedTest(name = "at {0}x{1}")
    @CsvSource({"80,24", "100,30", "120,40"})
    void theWordsForTheLabAreNotCutInTheListOfRolls(int columns, int rows) {
        shows("black-and-white, PUSH 1 STOP (rated 800, box 400)", rolls().press(Key.Name.F3), columns, rows);
    }

    @Test
    void theyAreWrappedAt40Columns() {
        shows("NORMAL (rated 80, box 100)", rolls().press(Key.Name.F3), 40, 12);
    }

    @Test
    void aRollThatWasHandedOverIsWhereItsOrderSays() {
        Playing day = Playing.medium("4 125", "unload yes", "load cn400").press(Key.Name.F3);
        List<RollSummary> all = List.of(RollSummary.of(day.roll("R0001")), RollSummary.of(day.roll("R0002")));
        day.send(new Message.Listed(all, Map.of("R0001", "negatives back")));
        shows("R0001  negatives back  645 back 1", day, 80, 24);
        shows("R0002  open            645 back 1", day, 80, 24);
        shows("R0001  negatives back  645", day, 40, 12);
    }

    @Test
    void aLongListInASmallWindowCanBeScrolledToItsEnd() {
        Playing day =
                rolls().lines("bag add 2 bw100 120", "bag add 3 bw400 135").press(Key.Name.F5);
        assertFalse(text(day, 40, 12).contains("that are exposed"));
        for (int i = 0; i < 60; i++) {
            day.press(Key.Name.PAGE_DOWN);
        }
        shows("that are exposed", day, 40, 12);
    }

    @Test
    void aPageSkipsNoFrame() {
        Playing day = Playing.of("cam 35", "load bw400", "4 125 x36").press(Key.Name.F2);
        String first = text(day, 40, 12);
        String second = text(day.press(Key.Name.PAGE_DOWN), 40, 12);
        for (int frame = 36; frame > 29; frame--) {
            String line = frame + "  f/4";
            assertTrue(first.contains(line) || second.contains(line), line + " is on neither page:\n" + first + second);
        }
    }

    @Test
    void theWarningsOfAFrameAreWordsAndNotAColourAlone() {
        shows("3.0 under  thin", Playing.medium("m 5.6 125", "11 250").press(Key.Name.F2), 40, 12);
    }

    @Test
    void thePlanSaysWhatAndHowSoonAt40Columns() {
        Playing day = Playing.medium("plan 16:30 Prize-giving on the long pontoon wants 12 must cam 645")
                .press(Key.Name.F4);
        day.press(Key.Name.DOWN);
        day.press(Key.Name.DOWN);
        shows("16:30  Prize-giving on the long", day, 40, 12);
        shows("in 1 h 30 min", day, 40, 12);
        shows("wants 12 MUST  645", day, 40, 12);
    }

    @Test
    void theNextMomentIsToldWithoutItsEndCut() {
        Playing day = Playing.medium("plan 15:20 Both eights on the landing stage with the cup wants 12 must");
        day.press(Key.Name.F9);
        shows("wants 12, MUST: 645 back 1 has 16 left", day, 80, 24);
        Playing near = Playing.medium("plan 15:08 Both eights on the landing stage wants 12 must");
        near.lines("routine skip", "set 8 250").press(Key.Name.F9);
        shows("15:08 in 8 min, wants 12, MUST", near, 40, 14);
        Playing few = Playing.medium("plan 15:06 Both eights on the landing stage wants 12", "4 125 x12");
        shows(
                "change now: 4 left, in 6 min wants 12",
                few.lines("routine skip", "set 8 250").press(Key.Name.F9),
                40,
                14);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "plan      | Plan · Regatta day, 2026-09-12 |",
                "bag       | Bag                            |",
                "frames    | Frames of R0001                |"
            })
    void titlesLoseWholePartsAndTheFramesLeftStay(String line, String title) {
        Playing day = Playing.medium("shoot Regatta day", "4 125", line);
        String top = text(day, 40, 12).lines().findFirst().orElseThrow();
        assertTrue(title.startsWith(top.substring(0, 8).strip()), top);
        assertFalse(top.contains("…"), top);
        assertTrue(top.contains("15 left"), top);
    }

    @Test
    void aRowOfAListGoesOnBelow() {
        Playing day =
                Playing.medium("4 125").press(Key.Name.F2).press(Key.Name.DOWN).press(Key.Name.ENTER);
        for (int i = 0; i < 5; i++) {
            day.press(Key.Name.DOWN);
        }
        shows("it never happened; later ones are", day, 40, 12);
        shows("renumbered", day, 40, 12);
    }

    @Test
    void halfAFigureIsNeverShownBelowALongAnswer() {
        Playing day = Playing.medium("m 5.6 125", "routine skip", "4 125", "why", "more");
        shows("frame 2 · 15 left · f/4 1/125", day, 40, 12);
        assertFalse(LargeLetters.isDrawn(Screen.render(day.shoot(), 40, 12), "2"));
        assertFalse(text(day, 40, 12).contains("█▀   █▀"), text(day, 40, 12));
    }

    @Test
    void theBigViewNamesCameraAndFilm() {
        Playing big = Playing.medium("4 125").press(Key.Name.F10);
        LargeLetters.assertDrawn(Screen.render(big.shoot(), 40, 12), "645", "CN400");
    }

    @Test
    void wordsThatAreNotNeutralGoOnInTheNextRow() {
        Playing day = Playing.medium("m 5.6 125", "filter yellow", "bias +1/3", "tripod on");
        shows("FILTER yellow  BIAS +1/3  TRIPOD", day, 40, 12);
        shows("FILTER yellow  BIAS +1/3", day, 40, 17);
        shows("TRIPOD", day, 40, 17);
    }

    @Test
    void whatIsRefusedIsSaidWhole() {
        shows("help lists them", Playing.medium().type("frobnicate").press(Key.Name.ENTER), 40, 12);
    }

    @Test
    void theRollIsDrawnWhereRowsAreFree() {
        shows("◇", Playing.medium("m 5.6 125", "routine skip", "4 125"), 40, 14);
    }

    private static void shows(String fact, Playing day, int columns, int rows) {
        String text = text(day, columns, rows);
        assertTrue(text.contains(fact), "\"" + fact + "\" is missing at " + columns + "x" + rows + ":\n" + text);
    }

    private static String text(Playing day, int columns, int rows) {
        return Screen.render(day.shoot(), columns, rows).text();
    }

    @ParameterizedTest(name = "at {0} columns")
    @ValueSource(ints = {40, 60, 80})
    void whoIsOnAFrameAndWhereIsThereWholeOnTheHighlightedRow(int columns) {
        Playing day = Playing.medium(
                        "m 5.6 125", "4 125 with Ines Dahl, Tarek Omar at boathouse ; the eight, one step back")
                .press(Key.Name.F2)
                .press(Key.Name.DOWN);
        String text = Screen.render(day.shoot(), columns, 24).text().replaceAll("\\s+", " ");
        assertTrue(text.contains("with Ines Dahl, Tarek Omar, at boathouse the eight, one step back"), text);
    }
}
