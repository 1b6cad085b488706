package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A number without letters means the roll of this laptop's own writer, in every command that takes one. */
class BareRollNumbersTest {
    @TempDir
    Path scratch;

    @BeforeEach
    void shootARollAsTheSecondPhotographer() throws IOException {
        Files.createDirectories(scratch.resolve("data"));
        Files.createDirectories(scratch.resolve("jpegs"));
        Files.writeString(scratch.resolve("data/settings.json"), "{\"writer\": \"AB\"}\n");
        check(0, "", """
                cam 645
                load cn400
                m 5.6 125
                rating
                rating
                unload yes
                """, "line", "--clock", "2026-09-12T15:00+02:00");
    }

    private Installed.Ended check(int status, String piece, String input, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--data", scratch.resolve("data").toString()));
        Installed.Ended ended = InProcess.run(input, all);
        String said = ended.all();
        assertEquals(status, ended.status(), said);
        assertTrue(said.contains(piece), "nothing says " + piece + " in " + said);
        assertFalse(said.contains("R0001"), said);
        return ended;
    }

    @ParameterizedTest(name = "takeup {0} means AB0001")
    @CsvSource(delimiter = '|', textBlock = """
            roll 1           | AB0001, finished
            order new 1      | ORD-001 for The lab, 1 roll
            order new 01     | AB0001  120
            scans 1          | AB0001 · Colour negative 400
            slate 1          | AB0001
            paper 1          | AB0001
            paper 1-1        | AB0001
            day-end 1        | AB0001
            digital 1 JPEGS  | AB0001 · Colour negative 400
            rating 1         | AB0001
            """)
    void everyCommandThatTakesARollTakesItsBareNumber(String words, String piece) {
        String jpegs = scratch.resolve("jpegs").toString();
        check(0, piece, "", words.replace("JPEGS", jpegs).split(" "));
    }

    @Test
    void anOrderTakesBareNumbersOfItsRolls() {
        check(0, "ORD-001 for", "", "order", "new", "1");
        check(0, "AB0001 is C-4711 at The lab", "", "order", "number", "1", "1", "C-4711");
        check(0, "ORD-001, AB0001: at the lab since", "", "order", "mark", "1", "sent", "1");
        check(1, "no finished roll waits for an order", "", "order", "new", "1", "--without", "1");
    }

    @Test
    void lettersStillNameTheRollOfAnother() {
        Installed.Ended ended = InProcess.run(
                "",
                List.of("order", "new", "r1", "--data", scratch.resolve("data").toString()));
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("there is no roll R0001"), ended.err());
    }
}
