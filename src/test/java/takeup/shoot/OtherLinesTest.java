package takeup.shoot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that log nothing, and those that are no lines. */
class OtherLinesTest {
    @Test
    void sayIsTheStateInWords() {
        assertEquals("645 reflex, back 1: R0001, Colour negative 400 at EI 200, C-41, NORMAL (rated 200, box 400). Next frame 2, 15 left. "
                + "Set: f/4 1/125, 80mm f/2.8, filter yellow, bias +1/3. EV 10.0 at ISO 100, incident, 5 min old.",
                Shooting.medium("m ev10", "4 125", "filter yellow", "bias +1/3").later(5).type("say"));
        assertEquals("No camera in hand yet: type cam and its key.", Shooting.of().type("say"));
        assertEquals("645 reflex, back 1: no film. Set: 80mm f/2.8. No light reading today. Standing: no-film.", Shooting.of("cam 645").type("say"));
    }

    @ParameterizedTest
    @CsvSource({"shoot,SHOW_SHOOT", "frames,SHOW_FRAMES", "rolls,SHOW_ROLLS", "help,SHOW_HELP", "theme,NEXT_THEME", "theme mono,NEXT_THEME", "big,BIG", "quit,QUIT",
        "quit yes,QUIT_ANYWAY", "say,NOTHING", "help fix,EXPLAIN", "HELP FIX,EXPLAIN"})
    void aViewLogsNothing(String line, Outcome.Act act) {
        Shooting shooting = Shooting.medium("4 125");
        Outcome outcome = Interpreter.read(shooting.situation(), line, shooting.now(), "R");
        Outcome.Does does = (Outcome.Does) outcome;
        assertEquals(act, does.act());
        assertEquals(List.of(), does.entries());
        assertEquals(shooting.situation(), does.after());
    }

    @Test
    void helpKnowsEveryWordThatItNames() {
        Shooting shooting = Shooting.medium();
        for (String word : Lexicon.firstWords()) {
            assertTrue(shooting.type("help " + word).contains(word), word);
            assertEquals("help", shooting.answer().event());
        }
        assertTrue(shooting.type("help u").contains("undo"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "bag", "paper", "done", "routine", "slate", "rewind", "tally", "scans", "plan 1"})
    void aReservedWordDoesNothingYet(String line) {
        assertTrue(Shooting.medium("4 125").refused(line).contains("reserved"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"order", "order new", "ORDER 7"})
    void theOrderIsMadeOutsideTheScreenAndThePromptSaysWhere(String line) {
        String why = Shooting.medium("4 125").refused(line);
        assertTrue(why.contains("takeup order new") && !why.contains("reserved"), why);
    }

    @ParameterizedTest
    @CsvSource({"+1,bias +1,push 1", "-1,bias -1,pull 1", "+1/3,bias +1/3,push 1/3", "@400,m … @400,fix roll @400", "@ 400,m … @400,load … @400", "ei400,m … ei400,load … ei400",
        "filter 2,filter,+2"})
    void whatCouldMeanTwoThingsIsRefusedWithBoth(String line, String one, String other) {
        String why = Shooting.medium("4 125").refused(line);
        assertTrue(why.contains(one) && why.contains(other), why);
    }

    @ParameterizedTest
    @CsvSource({"laod cn400,load", "unlaod,unload", "fliter yellow,filter", "bakc 2,back", "undoo,undo", "framse,frames", "cma 645,cam"})
    void anUnknownWordIsRefusedWithTheNearestKnown(String line, String known) {
        assertTrue(Shooting.medium("4 125").refused(line).contains("did you mean " + known + "?"), line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"shoot 645", "frames 1", "rolls all", "say it", "help wrong", "help fix drop", "big 2", "theme dark mono", "quit now", "quit yes yes", "yes", "yes please", "🚣", "ev11",
        "2500lx", "say ; words", "push 1 ; words", "/", "?!", "f", "f/", "b", "nonsense", "-", "+", "@"})
    void whatIsNoLineIsRefused(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @Test
    void lightTypedWithoutItsWordIsPointedToM() {
        assertTrue(Shooting.medium().refused("ev11").contains("m ev11"));
        assertTrue(Shooting.medium().refused("2500lx").contains("m 2500lx"));
        assertTrue(Shooting.medium().refused("4 125 ev11").contains("m ev11"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"LOAD CN400 PUSH 1 @800", "Load Cn400 Push 1 @800"})
    void caseDoesNotMatter(String line) {
        Shooting shooting = Shooting.of("CAM 645", line, "F4 1/125 X2", "M EV10", "FILTER YELLOW AND ND0.9", "Undo");
        assertEquals("1 f/4 1/125, 2 f/4 1/125", shooting.frames());
    }

    @Test
    void theFramesAndRollsAreSaidInWords() {
        Shooting shooting = Shooting.medium("frames", "4 125 ; start", "blank", "m ev10", "4 250");
        assertEquals("R0001: 1 f/4 1/125, start; 2 blank; 3 f/4 1/250, 1.0 under.", shooting.type("frames"));
        assertEquals("R0001 cn400 in 645 back 1, open, 13 left.", shooting.type("rolls"));
        assertEquals("No roll yet.", Shooting.of().type("rolls"));
    }
}
