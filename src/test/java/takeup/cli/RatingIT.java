package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rating test from the prompt to the photographer's own profile. */
class RatingIT {
    private static final String SHOT = "load bw400 120 @400\nm ev11\n" + "rating\n".repeat(7) + "unload yes\n";

    @TempDir
    Path scratch;

    @Test
    void bestAtOneStopOverIsHalfTheBoxSpeedAndMixedAnswersAreNoRating() throws IOException {
        assertEquals(
                0,
                run("cam 645 1\n" + SHOT + SHOT, "line", "--data", "day", "--clock", "2026-09-12T15:00+02:00")
                        .status());
        String asked = run("", "rating", "1", "--data", "day").out();
        assertTrue(
                asked.contains("   5  1 STOP OVER       1.0 over box") && asked.contains("Which one is the best"),
                asked);
        String best = run("", "rating", "1", "--best", "5", "--data", "day").out();
        // 400 / 2 = 200; half the way to the cards beside it: 400 / 2^1.5 = 141 and 400 / 2^0.75 = 238, in thirds 125
        // or 160 and 250.
        assertTrue(
                best.contains("Rate bw400 at 200 (") && best.contains(" to 250), by 1 answer; the box says 400."),
                best);
        assertEquals(1, run("no\n", "rating", "1", "--rate", "--data", "day").status());
        Installed.Ended written = run("yes\n", "rating", "1", "--rate", "--data", "day");
        assertEquals(0, written.status(), written.toString());
        assertTrue(Files.readString(scratch.resolve("day/profiles/stocks/bw400.json"))
                .contains("\"usualEI\": 200"));
        Installed.Ended mixed = run("", "rating", "2", "--best", "3", "--data", "day");
        assertTrue(mixed.out().contains("by 2 answers") && mixed.out().contains("too far apart"), mixed.out());
        assertEquals(1, run("yes\n", "rating", "2", "--rate", "--data", "day").status());
        assertTrue(run("", "rating", "2", "--json", "--data", "day")
                .out()
                .replaceAll("\\s", "")
                .contains("\"sure\":false"));
        assertEquals(2, run("", "rating", "1", "--best", "7", "--data", "day").status());
        String export = Files.readString(scratch.resolve("day/exports/R0001.json"));
        assertTrue(export.contains("no density correction"), "the lab is told");
    }

    private Installed.Ended run(String input, String... arguments) {
        return Installed.run(Installed.program(scratch, Map.of(), List.of(arguments)), input);
    }
}
