package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.demo.DemoExhibits;
import takeup.files.StepFiles;
import takeup.grid.Size;
import takeup.journal.Archive;

class DemoDayTest {
    private static final OffsetDateTime AFTERNOON = Clock.parse("2026-09-12T16:17+02:00");

    @TempDir
    Path elsewhere;

    private Path folder() {
        return elsewhere.resolve("demo");
    }

    /** Midnight between start and now, or between now and the last moment of the plan; leap day; far zones. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-09-12T16:17+02:00",
                "2026-01-01T00:20+13:00",
                "2026-06-12T23:55-09:30",
                "2028-02-29T12:00Z",
                "2026-11-29T01:34Z"
            })
    void theDayCanBeMadeAtAnyTime(String now) throws IOException {
        new DemoDay(folder(), Clock.parse(now), Subcommands::run).make();
        assertTrue(printed("check").contains("9 rolls"), printed("check"));
        assertTrue(printed("check").contains("all in order"), printed("check"));
    }

    @Test
    void theWholeProductIsInIt() throws IOException {
        new DemoDay(folder(), AFTERNOON, Subcommands::run).make();
        try (Stream<Path> all = Files.list(elsewhere)) {
            assertEquals(List.of(folder()), all.toList(), "it is made in its own folder and nowhere else");
        }
        String rolls = printed("rolls");
        assertEquals(3, rolls.split("negatives back", -1).length - 1, rolls);
        assertEquals(1, rolls.split("at the lab", -1).length - 1, rolls);
        assertEquals(4, rolls.lines().filter(it -> it.contains("  open ")).count(), rolls);
        assertEquals(
                Map.of(
                        "R0001", "negatives back",
                        "R0002", "negatives back",
                        "R0003", "negatives back",
                        "R0004", "at the lab"),
                new StepFiles(new Archive(folder()), Optional.empty()).list().ordered());
        String plan = printed("plan", "--clock", AFTERNOON.toString());
        assertTrue(plan.contains("sunset") && plan.contains("MUST"), plan);
        String night = printed("prepare", "--clock", AFTERNOON.toString());
        assertTrue(night.contains("9 × cn400 120, expires 2027-03, 6.20 a roll"), night);
        assertTrue(printed("review").contains("rate it at 160"), printed("review"));
        String lesson = printed("review", "--json");
        assertEquals("160.0", lesson.replaceFirst("(?s).*?\"proposedIndex\" *: *([^,\\s]*),.*", "$1"), lesson);
        assertTrue(printed("rating", "3").contains("Rate bw400 at 200"), printed("rating", "3"));
    }

    @Test
    void itsScansAreFoundBesideTheirFrames() throws IOException {
        new DemoDay(folder(), AFTERNOON, Subcommands::run).make();
        DemoExhibits exhibits = new DemoExhibits(folder(), Subcommands::run);
        exhibits.finish();
        String scans = printed("scans", "1", exhibits.scansFolder().toString(), "--text");
        assertTrue(scans.contains("frame 13 most likely left out"), scans);
        assertTrue(exhibits.scans(new Size(80, 24)).orElseThrow().text().contains("1 thin f/5.6 1/250"));
        assertTrue(
                exhibits.lesson().get(0).startsWith("cn400 rated 400"),
                exhibits.lesson().toString());
        assertTrue(exhibits.lesson().stream().anyMatch(it -> it.startsWith("Rate bw400 at 200")));
    }

    /** The page runs and fetches nothing: its policy allows its own style and the pictures that stand in it. */
    @Test
    void itsScansStandOnOnePageBesideFrameVerdictAndWarnings() throws IOException {
        new DemoDay(folder(), AFTERNOON, Subcommands::run).make();
        DemoExhibits exhibits = new DemoExhibits(folder(), Subcommands::run);
        exhibits.finish();
        Path file = elsewhere.resolve("page.html");
        String said = printed("scans", "1", exhibits.scansFolder().toString(), "--html", "-o", file.toString());
        assertTrue(said.contains("The page is " + file + "."), said);
        String page = Files.readString(file);
        assertEquals(36, page.split("<figure>", -1).length - 1);
        assertEquals(
                35, page.split("<img src=\"data:image/jpeg;base64,/9j/", -1).length - 1, "JPEG begins with FFD8FF");
        assertTrue(page.contains("default-src 'none'; style-src 'sha256-"), page.substring(0, 400));
        assertTrue(page.contains("img-src data:; base-uri 'none'; form-action 'none'\""), page.substring(0, 400));
        assertTrue(!page.contains("clock went back"), "the days come in their order");
        assertTrue(!page.contains("unsafe") && !page.contains("<script") && !page.contains("http:"));
        String missing = page.substring(page.indexOf("<b>Frame 13</b>"));
        assertTrue(page.contains("no scan</div><figcaption><b>Frame 13</b>"), "the frame that was left out");
        assertTrue(
                missing.substring(0, missing.indexOf("</figure>")).contains("class=\"warning\""),
                missing.substring(0, 300));
        assertTrue(page.contains("<span class=\"verdict\">thin</span>") && page.contains("Ines at the bow rope"));
    }

    private String printed(String... words) {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        List<String> arguments = new ArrayList<>(List.of("--data=" + folder()));
        arguments.addAll(List.of(words));
        Console console = new Console(printed, OutputStream.nullOutputStream(), Map.of("LC_ALL", "C.UTF-8"));
        assertEquals(0, Subcommands.run(arguments.toArray(String[]::new), console), String.join(" ", words));
        return printed.toString(StandardCharsets.UTF_8);
    }
}
