package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.roll.Film;
import takeup.roll.Roll;

/** Lines about a roll as a whole. */
class LoadCommandTest {
    /** A film as one line of words. */
    private static String words(Roll roll) {
        Film film = roll.film();
        return film.stock().key() + " " + film.size() + " " + film.framesNominal() + " " + film.developmentWords();
    }

    @ParameterizedTest(name = "{0} on {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "load cn400                 | 645 | cn400 120 16 C-41, NORMAL (rated 200, box 400)",
                "load bw400 @800 push 1     | 645 | bw400 120 16 black-and-white, PUSH 1 STOP (rated 800, box 400)",
                "load push 1 @800 bw400     | 645 | bw400 120 16 black-and-white, PUSH 1 STOP (rated 800, box 400)",
                "load @ 800 push 1 bw400    | 645 | bw400 120 16 black-and-white, PUSH 1 STOP (rated 800, box 400)",
                "load ei800 push 1.5 bw400  | 645 | bw400 120 16 black-and-white, PUSH 1.5 STOPS (rated 800, box 400)",
                "load 120 bw400             | 645 | bw400 120 16 black-and-white, NORMAL (rated 400, box 400)",
                "load frames 15 bw400       | 645 | bw400 120 15 black-and-white, NORMAL (rated 400, box 400)",
                "load cr100 pull 1 @50      | 645 | cr100 120 16 E-6, PULL 1 STOP (rated 50, box 100)",
                "load CN160                 | 645 | cn160 120 16 C-41, NORMAL (rated 80, box 160)",
                "load cn400                 | 35  | cn400 135 36 C-41, NORMAL (rated 200, box 400)",
                "load cn400 frames 24       | 35  | cn400 135 24 C-41, NORMAL (rated 200, box 400)",
                "load cn400 @400            | 66  | cn400 120 12 C-41, NORMAL (rated 400, box 400)",
                "load bw400 process MQ Stock; 1+1, 20 mm | 645 | bw400 120 16 MQ Stock; 1+1, 20 mm, NORMAL "
                        + "(rated 400, box 400)",
                "load cn400 push 1 @800 process As usual | 645 | cn400 120 16 As usual, PUSH 1 STOP (rated 800, "
                        + "box 400)"
            })
    void loadTakesItsWordsInAnyOrder(String line, String camera, String film) {
        Shooting shooting = Shooting.of("cam " + camera, line);
        assertEquals(film, words(shooting.roll()));
        assertEquals("load", shooting.answer().event());
        assertTrue(
                shooting.answer()
                        .text()
                        .contains("The meter must be set to "
                                + shooting.roll().film().index()),
                shooting.answer().text());
    }

    @Test
    void withoutAStockItIsStockIndexAndDevelopmentOfTheRollBeforeThere() {
        Shooting shooting = Shooting.of(
                "cam 645", "load bw400 @800 push 1 frames 15", "unload yes", "cam 35", "load cn400", "cam 645", "load");
        assertEquals("bw400 120 16 black-and-white, PUSH 1 STOP (rated 800, box 400)", words(shooting.roll()));
        shooting.type("unload yes");
        shooting.type("load @400 normal");
        assertEquals("bw400 120 16 black-and-white, NORMAL (rated 400, box 400)", words(shooting.roll()));
        shooting.type("unload yes");
        shooting.type("load cn400");
        assertEquals("cn400 120 16 C-41, NORMAL (rated 200, box 400)", words(shooting.roll()));
        shooting.type("back 2");
        assertTrue(shooting.refused("load").contains("no roll was in 645 back 2 before"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "load",
                "load wrong",
                "load cn400 bw400",
                "load 200",
                "load cn400 200",
                "load cn400 135",
                "load cn400 220",
                "load cn400 120 120",
                "load cn400 @200 @400",
                "load cn400 @0",
                "load cn400 @200000",
                "load cn400 push",
                "load cn400 push 0",
                "load cn400 push 6",
                "load cn400 push 1 pull 1",
                "load cn400 push +1",
                "load cn400 frames",
                "load cn400 frames 0",
                "load cn400 frames 251",
                "load cn400 frames 24 frames 36",
                "load cn400 process",
                "load cn400 +1",
                "load cn400 f8",
                "load cn400 ; words",
                "load 645"
            })
    void aLoadThatCannotBeFollowedIsRefused(String line) {
        Shooting.of("cam 645").refused(line);
    }

    @ParameterizedTest
    @CsvSource({"load 200,@200", "load cn400 400,@400", "load cn40,cn400", "load cn400 push +1,push 1"})
    void theRefusalNamesWhatWasProbablyMeant(String line, String meant) {
        assertTrue(
                Shooting.of("cam 645").refused(line).contains(meant),
                Shooting.of("cam 645").refused(line));
    }

    @Test
    void aLoadOnTopOfARollIsRefused() {
        assertEquals(
                "R0001 (Colour negative 400, 15 left) is in 645 back 1: unload it first",
                Shooting.medium("4 125").refused("load bw400"));
    }

    @Test
    void rollsAreNumberedInTheOrderOfLoading() {
        Shooting shooting = Shooting.of("cam 35", "load cn400", "cam 645", "load cn400", "back 2", "load bw400");
        assertEquals(
                "[R0001, R0002, R0003]", shooting.situation().rolls().keySet().toString());
        assertEquals("R0003", shooting.roll().id().toString());
    }

    @Test
    void unloadAsksWhileFramesAreLeftAndYesAnswers() {
        Shooting shooting = Shooting.medium("4 125");
        assertEquals("15 left on R0001. Unload anyway? y/n", shooting.asked("unload"));
        assertEquals(Roll.State.OPEN, shooting.roll().state());
        assertEquals(
                "R0001 finished: 1 of 16 frames, C-41, NORMAL (rated 200, box 400). Its JSON is exports/R0001.json.",
                shooting.type("yes"));
        assertEquals("unload", shooting.answer().event());
        assertEquals("no-film", shooting.warnings());
        assertEquals(Roll.State.FINISHED, shooting.roll("R1").state());
        assertEquals(Optional.empty(), shooting.situation().rollInHand());
    }

    @Test
    void anyOtherLineWithdrawsTheQuestion() {
        Shooting shooting = Shooting.medium("4 125");
        shooting.asked("unload");
        shooting.type(".");
        shooting.refused("yes");
        shooting.asked("unload");
        shooting.refused("nonsense");
        shooting.refused("yes");
        assertEquals(Roll.State.OPEN, shooting.roll().state());
    }

    @Test
    void unloadYesAndAFullRollAreNotAsked() {
        assertEquals(
                Roll.State.FINISHED,
                Shooting.medium("4 125", "unload yes").roll("R1").state());
        assertEquals(
                Roll.State.FINISHED,
                Shooting.medium("4 125 x16", "unload").roll("R1").state());
        assertEquals(
                Roll.State.FINISHED,
                Shooting.medium("4 125 x16", ".", "unload").roll("R1").state());
        assertEquals(
                "1 left on R0001. Unload anyway? y/n",
                Shooting.medium("4 125 x15").asked("unload"));
        Shooting.medium().refused("unload now");
        Shooting.medium("unload yes").refused("unload");
    }

    @Test
    void developmentIsSaidOfTheWholeRollInWords() {
        Shooting shooting = Shooting.medium("4 125 x3");
        assertEquals("R0001, the whole roll: C-41, PUSH 1 STOP (rated 200, box 400).", shooting.type("push 1"));
        assertEquals("fix", shooting.answer().event());
        assertEquals("R0001, the whole roll: C-41, PULL 0.5 STOPS (rated 200, box 400).", shooting.type("pull 0.5"));
        assertEquals("R0001, the whole roll: C-41, NORMAL (rated 200, box 400).", shooting.type("normal"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"push", "pull", "push 0", "push -1", "push 6", "push 1 stop", "normal 1", "push @400", "pull f8"
            })
    void developmentIsInStopsAboveZero(String line) {
        Shooting.medium().refused(line);
    }

    // push_pull.csv: 400 at 800 is push 1, rated 200 developed normally is no pull. Limit: a third of a
    // stop.
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "load bw400,''",
        "load bw400 @200,''",
        "load bw400 @500,''",
        "load bw400 @640,push-mismatch",
        "load bw400 @800,push-mismatch",
        "load bw400 @800 push 1,''",
        "load bw400 @1600 push 1,push-mismatch",
        "load bw400 @400 push 1,push-mismatch",
        "load bw400 @200 pull 1,''",
        "load bw400 pull 1,push-mismatch",
        "load bw400 @800 pull 1,push-mismatch",
        "load bw400 @1600 push 2,''"
    })
    void ratingAndDevelopmentThatDoNotGoTogetherAreSaidAtLoad(String line, String warnings) {
        Shooting shooting = Shooting.of("cam 645", line);
        assertEquals(warnings, shooting.warnings());
        assertEquals(!warnings.isEmpty(), shooting.standing().contains("push-mismatch"));
    }

    @Test
    void theMismatchIsSaidAgainWhenALineCausesItAndOnlyThen() {
        Shooting shooting = Shooting.medium("push 1");
        assertEquals("push-mismatch", shooting.warnings());
        shooting.type("fix roll frames 15");
        assertEquals("", shooting.warnings());
        shooting.type("normal");
        assertEquals("", shooting.warnings());
        shooting.type("fix roll @800");
        assertEquals("push-mismatch", shooting.warnings());
        shooting.type("push 1");
        assertEquals("", shooting.warnings());
        assertFalse(shooting.standing().contains("push-mismatch"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "fix roll @400 | cn400 120 16 C-41, NORMAL (rated 400, box 400)",
                "fix roll r1 @ 400 | cn400 120 16 C-41, NORMAL (rated 400, box 400)",
                "fix roll bw400 | bw400 120 16 black-and-white, NORMAL (rated 200, box 400)",
                "fix roll push 1 @800 bw400 | bw400 120 16 black-and-white, PUSH 1 STOP (rated 800, box 400)",
                "fix roll frames 15 | cn400 120 15 C-41, NORMAL (rated 200, box 400)",
                "fix roll process ECN-2 Cold | cn400 120 16 ECN-2 Cold, NORMAL (rated 200, box 400)"
            })
    void fixRollCorrectsWhatLoadTakes(String line, String film) {
        Shooting shooting = Shooting.medium("4 125");
        shooting.type(line);
        assertEquals(film, words(shooting.roll()));
        assertEquals("fix", shooting.answer().event());
        Shooting finished = Shooting.medium("4 125", "unload yes");
        finished.type(line.contains("r1") ? line : line.replace("roll", "roll R0001"));
        assertEquals(film, words(finished.roll("R1")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fix roll",
                "fix roll r1",
                "fix roll r2 @400",
                "fix roll 400",
                "fix roll 135",
                "fix roll 220",
                "fix roll wrong",
                "fix roll 4 125",
                "fix roll @400 ; words"
            })
    void fixRollRefusesTheRest(String line) {
        Shooting.medium("4 125").refused(line);
    }

    @Test
    void notesOnARollAreJoinedAndKeptLetterForLetter() {
        Shooting shooting = Shooting.medium("note Heat 1; Lane 3", "note r1 زورق", "unload yes");
        shooting.type("note R0001 F8 and be there");
        assertEquals(
                Optional.of("Heat 1; Lane 3; زورق; F8 and be there"),
                shooting.roll("R1").note());
        assertEquals("note", shooting.answer().event());
        assertTrue(shooting.refused("note r2 words").contains("no roll R0002"));
        shooting.refused("note r1");
        shooting.type("load cn400");
        shooting.type("note f8 all day");
        assertEquals(Optional.of("f8 all day"), shooting.roll().note());
        shooting.refused("note");
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "condition torn | torn | ",
                "condition torn At the Leader | torn | At the Leader",
                "condition r1 opened 2 s | opened | 2 s",
                "condition stuck ; really | stuck | really",
                "condition Partial | partial | ",
                "condition wet, 5 min | other | wet, 5 min"
            })
    void theConditionIsWhatTheLabMustKnow(String line, String kind, String words) {
        Shooting shooting = Shooting.medium("4 125", line);
        assertEquals(kind, shooting.roll().conditions().get(0).kind().toString());
        assertEquals(
                Optional.ofNullable(words), shooting.roll().conditions().get(0).words());
        assertEquals("fix", shooting.answer().event());
    }

    @Test
    void theConditionOfAFinishedRollIsTakenToo() {
        Shooting shooting = Shooting.medium("unload yes", "condition r1 torn");
        assertEquals(1, shooting.roll("R1").conditions().size());
        shooting.refused("condition r1");
        shooting.refused("condition r9 torn");
    }
}
