package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A lab's file, and what is wrong with one. */
class LabTest {
    @Test
    void theShippedExampleHasNothingToBeSaidOfIt() throws IOException {
        assertEquals(
                List.of(),
                Lab.of("lab", "labs/lab.json", Files.readString(Path.of("profiles/labs/lab.json")))
                        .problems());
    }

    @Test
    void aNameIsEnough() {
        Lab lab = Labs.lab("own", "{\"name\": \"Boathouse lab\"}");
        assertEquals(14, lab.deadlines().sendWithin());
        assertEquals(Optional.empty(), lab.whyNot(Wish.SCAN_SIZE, "anything"));
        assertEquals(FormColumn.fields(), lab.form().asks());
    }

    @Test
    void aFieldThatIsNotKnownIsToldAndTheRestIsUsed() {
        Lab.Read read = Lab.of("own", "labs/own.json", "{\"name\": \"Boathouse lab\",\n \"scanSises\": [\"big\"]}");
        assertTrue(read.lab().isPresent());
        assertTrue(
                read.problems()
                        .get(0)
                        .startsWith("labs/own.json:2: scanSises is no field known here, and is left out; known: "),
                read.problems().get(0));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        {}                                                                 | labs/own.json:1: name is missing
        {"name": ""}                                                       | labs/own.json:1: name is a name of 1 to 100 characters
        {"name": "a", "paper": "A5"}                                       | labs/own.json:1: paper is one of A4, Letter
        {"name": "a", "asks": ["colour"]}                                  | labs/own.json:1: asks does not know colour; known: labNumber, frameSize
        {"name": "a", "needs": ["money"]}                                  | labs/own.json:1: needs does not know money; known: service
        {"name": "a", "scansKeptDays": 0}                                  | labs/own.json:1: scansKeptDays is a number from 1 to 3650
        {"name": "a", "scanSizes": "big"}                                  | labs/own.json:1: scanSizes is no list
        {"name": "a", "processes": {"C-41": 1}}                            | labs/own.json:1: processes.C-41 is no text
        {"name": "a", "scanSizes": ["big"], "usual": {"scanSize": "huge"}} | labs/own.json:1: usual asks for what the lab does not offer: huge is no scan size of a: big
        [1]                                                                | labs/own.json:1: this is no JSON object
        """)
    void aWrongValueTakesTheFileOut(String json, String why) {
        Lab.Read read = Lab.of("own", "labs/own.json", json);
        assertEquals(Optional.empty(), read.lab());
        assertTrue(
                read.problems().get(read.problems().size() - 1).startsWith(why),
                read.problems().toString());
    }

    @Test
    void theLabsOwnWordIsFoundHoweverTheProcessIsSpelt() {
        Lab lab = Labs.lab(
                "own",
                "{\"name\": \"a\", \"processes\": {\"C-41\": \"colour\", \"black-and-white\": \"mono\", "
                        + "\"soup\": \"special\"}}");
        assertEquals(Optional.of("colour"), lab.wordFor("c 41"));
        assertEquals(Optional.of("mono"), lab.wordFor("B&W"));
        assertEquals(Optional.of("special"), lab.wordFor("Soup"));
        assertEquals(Optional.empty(), lab.wordFor("E-6"));
        assertEquals(Optional.empty(), lab.wordFor("broth"));
    }
}
