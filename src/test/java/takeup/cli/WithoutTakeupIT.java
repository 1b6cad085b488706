package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;

/**
 * The line of the page on files that reads a roll's frames without the program, run by a shell as it is printed there.
 */
class WithoutTakeupIT {
    @TempDir
    Path scratch;

    @BeforeAll
    static void asks() {
        Outside.needs("sh", "grep", "awk");
    }

    private static String printed() throws IOException {
        String page = Files.readString(Path.of("src/docs/files.md"));
        int from = page.indexOf("\ngrep '\"event\":\"frame\"'");
        assertTrue(from > 0, "the page has no such line");
        return page.substring(from + 1, page.indexOf("\n```", from));
    }

    @Test
    void printsNumberApertureTimeAndNoteOfEachFrame() throws IOException {
        String lines = """
                cam 35
                load bw400
                .
                8 125 ; Ines, bow seat
                5.6 60 x2
                f5.6.3 1/1000 ; "the eight"}, "number":99, \\ and Jørn; twice
                2.8 1 ; dusk
                b4m10s
                flash on
                8 60
                fix 2 11 125
                undo
                lost 8
                """;
        Installed.Ended typed =
                Installed.run(scratch, lines, List.of("line", "--data", "data", "--clock", "2026-09-12T15:00+02:00"));
        assertEquals("", typed.err());
        Path open = scratch.resolve("data/rolls/open");
        Installed.Ended read = Installed.run(Installed.process(open, Map.of(), List.of("sh", "-c", printed())), "");
        assertEquals("", read.err());
        assertEquals("""
                1 - -\s
                2 f/8 1/125 Ines, bow seat
                3 f/5.6 1/60\s
                4 f/5.6 1/60\s
                5 f/5.6 1/1000 \\"the eight\\"}, \\"number\\":99, \\\\ and Jørn; twice
                6 f/2.8 1s dusk
                7 f/2.8 250s\s
                8 f/8 1/60\s
                """, read.out());
    }
}
