package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.dispatch.Dispatcher;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.roll.RollId;

/** What other programs read in an answer, and lines about rolls that are not in memory. */
class AnswerFieldsTest {
    private static Json field(Shooting shooting, String name) {
        return shooting.answer()
                .fields()
                .json()
                .field(name)
                .orElseThrow(() -> new AssertionError(
                        "no " + name + " in " + shooting.answer().fields().json()));
    }

    @Test
    void aFrameAnswerCarriesAllItsFields() {
        Shooting shooting = Shooting.medium("m ev10", "2.8 250", "4 125 x2");
        assertEquals("frame", shooting.answer().event());
        assertEquals(Json.of("R0001"), field(shooting, "roll"));
        assertEquals(Json.of(3), field(shooting, "frame"));
        assertEquals(Json.of(2), field(shooting, "count"));
        assertEquals(Json.of(13), field(shooting, "framesLeft"));
        assertEquals(Json.of("f/4"), field(shooting, "aperture"));
        assertEquals(Json.of("1/125"), field(shooting, "time"));
        assertEquals(Json.of(0), field(shooting, "errorStops"));
    }

    @Test
    void whatIsNotKnownIsNull() {
        Shooting shooting = Shooting.medium(".");
        for (String name : List.of("aperture", "time", "errorStops")) {
            assertEquals(
                    Json.of(Optional.empty()),
                    shooting.answer().fields().json().fields().get(name),
                    name);
        }
    }

    @Test
    void aPlaceAnswersWithItsNameAndWhetherItIsShared() {
        Shooting shooting = Shooting.of("shoot Regatta", "place boathouse at 59.33,18.07");
        assertEquals(Json.of("Regatta"), field(shooting, "name"));
        assertEquals(Json.of("boathouse"), field(shooting, "place"));
        assertEquals(Json.of(false), field(shooting, "shared"));
        shooting.type("place share");
        assertEquals(Json.of(true), field(shooting, "shared"));
    }

    // The events of an answer (files.md), each with the lines that it covers.
    @ParameterizedTest(name = "{0} answers {1}")
    @CsvSource({
        "4 125,frame",
        ".,frame",
        "x2,frame",
        "blank,frame",
        "unlogged x2,frame",
        "m ev10,light",
        "m,light",
        "m flash 8,light",
        "set 4 125,state",
        "hold f4,state",
        "bias +1,state",
        "filter yellow,state",
        "ext 110mm,state",
        "lens 80,state",
        "flash on,state",
        "tripod on,state",
        "meter hand,state",
        "cam 35,state",
        "back 2,state",
        "say,state",
        "quiet sun,state",
        "unload yes,unload",
        "fix 1 8,fix",
        "lost 1,fix",
        "insert 1,fix",
        "drop 1,fix",
        "move 1 cam 35,fix",
        "counter 5,fix",
        "push 1,fix",
        "pull 1,fix",
        "normal,fix",
        "fix roll @400,fix",
        "double,fix",
        "condition torn,fix",
        "undo,undo",
        "n words,note",
        "; words,note",
        "note words,note",
        "help,help",
        "help m,help"
    })
    void everyLineAnswersWithItsEvent(String line, String event) {
        Shooting shooting = Shooting.of("cam 35", "load bw400", "cam 645", "load cn400", "m ev11", "4 125");
        shooting.type(line);
        assertEquals(event, shooting.answer().event());
    }

    @Test
    void aStateAnswerIsAllThatIsInHand() {
        Shooting shooting =
                Shooting.medium("m ev10", "4 125 3m", "filter yellow", "hold f4", "meter preset 125", "bias +1/3");
        Set<String> names =
                new TreeSet<>(shooting.answer().fields().json().fields().keySet());
        for (String name : List.of(
                "camera",
                "back",
                "roll",
                "stock",
                "exposureIndex",
                "frame",
                "framesLeft",
                "lens",
                "aperture",
                "time",
                "distanceM",
                "filters",
                "biasStops",
                "hold",
                "flash",
                "tripod",
                "meter")) {
            assertTrue(names.contains(name), name + " in " + names);
        }
        assertEquals(Json.of("f/4"), field(shooting, "hold"));
        assertEquals(Json.of(200.0), field(shooting, "exposureIndex"));
    }

    @ParameterizedTest
    @CsvSource({
        "fix r7 1 8",
        "note r7 words",
        "condition r7 torn",
        "lost r7 1",
        "insert r7 1 4 125",
        "drop r7 1",
        "fix roll r7 @400"
    })
    void aFinishedRollThatIsNotInMemoryIsAskedForFirst(String line) {
        Shooting shooting = Shooting.medium("4 125");
        ShootState known = ShootState.of(
                shooting.situation().kit(),
                shooting.situation().history().steps(),
                Optional.empty(),
                Set.of(RollId.parse("r7").orElseThrow()));
        assertEquals(
                new Outcome.NeedsRoll(RollId.parse("r7").orElseThrow()),
                Dispatcher.read(known, line, shooting.now(), "R"));
    }
}
