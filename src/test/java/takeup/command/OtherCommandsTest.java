package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.dispatch.CommandTable;
import takeup.dispatch.Dispatcher;
import takeup.session.Playing;

/** Lines that log nothing, and those that are no lines. */
class OtherCommandsTest {
    @Test
    void sayIsTheStateInWords() {
        assertEquals(
                "645 reflex, back 1: R0001, Colour negative 400 at EI 200, C-41, NORMAL (rated 200, box 400). "
                        + "Next frame 2, 15 left. "
                        + "Set: f/4 1/125, 80mm f/2.8, filter yellow, bias +1/3. EV 10.0 at ISO 100, incident, "
                        + "5 min old. For this light 1.3 under.",
                Shooting.medium("m ev10", "4 125", "filter yellow", "bias +1/3")
                        .later(5)
                        .type("say"));
        assertEquals(
                "No camera in hand yet: type cam and one of 35, 35af, 35b, 645, 645leaf, 66, 66slr, 67, 69, compact, half, pan.",
                Shooting.of().type("say"));
        assertEquals(
                "645 reflex, back 1: no film. Set: 80mm f/2.8. No light reading today. Warnings that stand: no-film.",
                Shooting.of("cam 645").type("say"));
    }

    @Test
    void sayNamesAllThatIsInUse() {
        assertEquals(
                "645 reflex, back 2: R0002, Black-and-white 100 at EI 80, black-and-white, NORMAL (rated 80, "
                        + "box 100). Next frame 1, 16 left. Set: 80mm f/2.8. "
                        + "EV 10.0 at ISO 100, incident, just now. Meter in hand: hand. Also in use: 35, R0001, "
                        + "Black-and-white 400 at EI 400, 35 left; 645 back 1, no film. "
                        + "Load routine, 1 of 3: is it bw100 in 645 back 2, rated 80? yes or no.",
                Shooting.of(
                                "cam 35",
                                "load bw400",
                                "meter hand",
                                "m ev10",
                                "4 125",
                                "cam 645 1",
                                "cam 645 2",
                                "load bw100 @80")
                        .type("say"));
    }

    @Test
    void framesAreReadOutInGroupsThatAreTheSame() {
        assertEquals(
                "R0001: frame 1, f/4 1/125, bow seat; frames 2 to 4, f/4 1/125; frame 5, blank; frames 6 to 7, "
                        + "f/8 1/250.",
                Shooting.medium("4 125 ; bow seat", ". x3", "blank", "8 250 x2").type("frames"));
    }

    @Test
    void finishedRollsOfEarlierRunsAreCountedWhereRollsAreReadOut() {
        Playing day = Playing.of(
                        "cam 645",
                        "load cn400",
                        "4 125",
                        "unload yes",
                        "load cn400",
                        "4 125",
                        "unload yes",
                        "cam 35",
                        "load bw400")
                .restart();
        Outcome.Accepted rolls = (Outcome.Accepted) day.shoot().outcome("rolls");
        assertEquals(
                "R0003, Black-and-white 400 in 35, open, 36 left. Not read here, since finished before: 2 "
                        + "rolls; takeup rolls lists all.",
                rolls.answer().text());
    }

    @ParameterizedTest
    @CsvSource({
        "shoot,Show[view=SHOOT]",
        "frames,Show[view=FRAMES]",
        "rolls,Show[view=ROLLS]",
        "plan,Show[view=PLAN]",
        "bag,Show[view=BAG]",
        "help,ShowHelp[word=Optional.empty]",
        "theme,ChangeTheme[name=Optional.empty]",
        "theme mono,ChangeTheme[name=Optional[mono]]",
        "big,ToggleBigCounter[]",
        "quit,Quit[leaving=WHEN_SAVED]",
        "quit yes,Quit[leaving=ANYWAY]",
        "say,NOTHING",
        "help fix,ShowHelp[word=Optional[fix]]",
        "HELP FIX,ShowHelp[word=Optional[fix]]"
    })
    void aViewLogsNothing(String line, String action) {
        Shooting shooting = Shooting.medium("4 125");
        Outcome outcome = Dispatcher.read(shooting.situation(), line, shooting.now(), "R");
        Outcome.Accepted does = (Outcome.Accepted) outcome;
        assertEquals(action, does.screenAction().map(Object::toString).orElse("NOTHING"));
        assertEquals(List.of(), does.entries());
        assertEquals(shooting.situation(), does.after());
    }

    @Test
    void helpKnowsEveryWordThatItNames() {
        Shooting shooting = Shooting.medium();
        for (String word : CommandTable.firstWords()) {
            assertTrue(shooting.type("help " + word).contains(word), word);
            assertEquals("help", shooting.answer().event());
        }
        assertTrue(shooting.type("help u").contains("undo"));
    }

    @Test
    void scansTakesARollAndAFolder() {
        assertTrue(Shooting.medium("4 125").refused("scans").contains("scans r7 FOLDER"));
        assertTrue(Shooting.medium("4 125").refused("scans r7 back").contains("which roll?"));
        assertTrue(Shooting.medium("4 125").refused("scans 1").contains("scans r1 FOLDER"));
    }

    @ParameterizedTest
    @CsvSource({
        "+1,bias +1,push 1",
        "-1,bias -1,pull 1",
        "+1/3,bias +1/3,push 1/3",
        "@400,m 5.6 125 @400,fix roll @400",
        "@ 400,m 5.6 125 @400,load cn400 @400",
        "ei400,m 5.6 125 ei400,load cn400 ei400",
        "filter 2,filter,+2"
    })
    void whatCouldMeanTwoThingsIsRefusedWithBoth(String line, String one, String other) {
        String why = Shooting.medium("4 125").refused(line);
        assertTrue(why.contains(one) && why.contains(other), why);
    }

    @ParameterizedTest
    @CsvSource({
        "laod cn400,load",
        "unlaod,unload",
        "fliter yellow,filter",
        "bakc 2,back",
        "undoo,undo",
        "framse,frames",
        "cma 645,cam"
    })
    void anUnknownWordIsRefusedWithTheNearestKnown(String line, String known) {
        assertTrue(Shooting.medium("4 125").refused(line).contains("did you mean " + known + "?"), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shoot 645",
                "frames 1",
                "rolls all",
                "say it",
                "help wrong",
                "help fix drop",
                "big 2",
                "theme dark mono",
                "quit now",
                "quit yes yes",
                "yes",
                "yes please",
                "bag as B-12",
                "bag batch 4711",
                "🚣",
                "say ; words",
                "push 1 ; words",
                "/",
                "?!",
                "f",
                "f/",
                "b",
                "nonsense",
                "-",
                "+",
                "@"
            })
    void whatIsNoLineIsRefused(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @Test
    void lightTypedWithoutItsWordIsAReadingButNotInAFrame() {
        assertTrue(Shooting.medium().type("ev11").contains("EV 11.0"));
        assertTrue(Shooting.medium().type("2500lx").contains("EV 10.0"));
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
        assertEquals(
                "R0001: frame 1, f/4 1/125, start; frame 2, blank; frame 3, f/4 1/250, 1.0 under.",
                shooting.type("frames"));
        assertEquals("R0001, Colour negative 400 in 645 back 1, open, 13 left.", shooting.type("rolls"));
        assertEquals("No roll yet.", Shooting.of().type("rolls"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "delete 4 | drop 7 a frame",
                "iso 400 | fix roll (@400)",
                "film | load cn400",
                "save | is on disk already"
            })
    void aWordOfHabitIsToldItsOwnHere(String line, String ours) {
        String why = Shooting.medium().refused(line);
        assertTrue(why.contains("is no word known here: ") && why.contains(ours), why);
    }

    @Test
    void aSkyWithoutItsWordIsUnderstoodAndAskedFor() {
        String why = Shooting.medium().refused("m sun");
        assertTrue(why.contains("did you mean m sky sun?"), why);
    }
}
