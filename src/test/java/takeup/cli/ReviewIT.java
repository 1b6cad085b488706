package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three rolls judged as if the film had got a stop less than the log says: what is said of them, and what is done after
 * a yes.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReviewIT {
    /**
     * Times at f/5.6 in EV 11 at EI 400, where 1/250 is right: each step is a stop; what the film really got is a stop
     * less.
     */
    private static final int[] TIMES = {500, 250, 125, 60, 250, 125, 250, 500, 250, 125, 250, 500};

    @TempDir
    static Path scratch;

    @BeforeAll
    void shootAndJudge() {
        StringBuilder lines = new StringBuilder();
        for (int roll = 0; roll < 3; roll++) {
            lines.append("cam ")
                    .append(roll == 1 ? "35\nload bw400 135" : "645 1\nload bw400 120")
                    .append(" @400\nm ev 11\n");
            for (int time : TIMES) {
                lines.append("5.6 ").append(time).append(" ; \"<eight>\"\n");
            }
            lines.append("unload yes\n");
        }
        assertEquals(
                0,
                takeup(lines.toString(), "line", "--data", "day", "--clock", "2026-09-12T15:00+02:00")
                        .status());
        for (int roll = 1; roll <= 3; roll++) {
            // bw400 bears a stop under by its file: thin is what the log has at -1 and, of two at 0, one.
            Installed.Ended ended = takeup(
                    "",
                    "scans",
                    String.valueOf(roll),
                    "--data",
                    "day",
                    "--thin",
                    "1,2,5,7,8,12",
                    "--good",
                    "3-4,6,9-11");
            assertEquals(0, ended.status(), ended.toString());
        }
    }

    @Test
    void aConsistentErrorAsksForASlowerRatingWhichIsWrittenAfterAYesOnly() throws IOException {
        Installed.Ended said = takeup("", "review", "--data", "day");
        assertEquals(0, said.status(), said.toString());
        assertTrue(said.out().contains("bw400 rated 400 (36 frames): consistently"), said.out());
        assertTrue(said.out().contains("rate it at 200") || said.out().contains("rate it at 160"), said.out());
        Path own = scratch.resolve("day/profiles/stocks/bw400.json");
        assertEquals(
                1,
                takeup("no\n", "review", "--data", "day", "--rate", "--stock", "bw400")
                        .status());
        assertFalse(Files.exists(own));
        assertEquals(
                0,
                takeup("yes\n", "review", "--data", "day", "--rate", "--stock", "bw400")
                        .status());
        Path shipped = Path.of("profiles/stocks/bw400.json");
        List<String> before = Files.readAllLines(shipped);
        List<String> after = Files.readAllLines(own);
        assertEquals(before.size(), after.size());
        assertEquals(
                1,
                IntStream.range(0, before.size())
                        .filter(it -> !before.get(it).equals(after.get(it)))
                        .count(),
                "one line is another");
        String rated = takeup("", "stock", "bw400", "--data", "day").out();
        assertTrue(rated.contains("usually rated 200") || rated.contains("usually rated 160"), rated);
        Files.delete(own);
    }

    @Test
    void anotherStockIsNotRatedAnew() {
        Installed.Ended ended = takeup("yes\n", "review", "--data", "day", "--rate", "--stock", "cn400");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("propose no other rating for cn400"), ended.err());
    }

    @Test
    void aFreshFolderHasNotEnoughFrames() {
        Installed.Ended ended = takeup("", "review", "--data", "fresh");
        assertEquals(0, ended.status(), ended.toString());
        assertTrue(ended.out().contains("Not enough frames: 0 judged"), ended.out());
    }

    @Test
    void thePageHoldsItsPlotAndFetchesAndRunsNothing() throws IOException {
        assertEquals(
                0,
                takeup("", "review", "--data", "day", "--html", "-o", "lesson.html")
                        .status());
        String page = Files.readString(scratch.resolve("lesson.html"));
        assertTrue(page.contains("<circle class=\"thin\"") && page.contains("bw400 rated 400"), page);
        assertFalse(
                page.contains("<script")
                        || page.contains("http://")
                        || page.contains("https://")
                        || page.contains("url("),
                page);
    }

    @Test
    void eachFrameIsALineOfTheSchemaWithItsVerdict() throws IOException {
        Installed.Ended ended = takeup("", "frames", "--json", "--data", "day");
        assertEquals(36, ended.out().lines().count());
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(takeup("", "schema", "frames").out(), InputFormat.JSON);
        JsonFactory factory = new JsonFactory();
        for (String line : ended.out().lines().toList()) {
            assertEquals(List.of(), schema.validate(line, InputFormat.JSON), line);
            try (var parser = factory.createParser(line)) {
                int depth = 0;
                for (var token = parser.nextToken(); token != null; token = parser.nextToken()) {
                    depth = Math.max(depth, parser.getParsingContext().getNestingDepth());
                }
                assertEquals(1, depth, "flat");
            }
        }
        assertEquals(
                18,
                ended.out()
                        .lines()
                        .filter(it -> it.contains("\"verdict\":\"thin\""))
                        .count());
    }

    @Test
    void itsLibrariesAreLoadedByNoOtherCommand() {
        assertEquals(List.of(), loaded("rolls"));
        assertEquals(List.of(), loaded("frames", "--json"));
        assertFalse(loaded("review").isEmpty(), "the quantiles come from a library");
    }

    /** Classes of the libraries that only this part needs, as the virtual machine loads them. */
    private static List<String> loaded(String... command) {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-jar",
                Path.of(System.getProperty("takeup.home", "target/takeup"), "takeup.jar")
                        .toAbsolutePath()
                        .toString()));
        line.addAll(List.of(command));
        line.addAll(List.of("--data", "day"));
        return Installed.run(Installed.process(scratch, Map.of(), line), "")
                .out()
                .lines()
                .filter(it -> it.contains("com.adobe.")
                        || it.contains("org.apache.commons.")
                        || it.contains("javax.imageio."))
                .toList();
    }

    private static Installed.Ended takeup(String input, String... arguments) {
        return Installed.run(scratch, input, List.of(arguments));
    }
}
