package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import takeup.roll.RollId;
import takeup.scans.Slate;

/** Two rolls of regatta day, each with its slate first, come back in one folder with one count. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SlateIT {
    private static final String DAY = """
            cam 645 1
            load bw400 120 @400
            slate
            5.6 125 x6
            unload yes
            load bw400 120 @400
            slate ; cox
            5.6 125 x4
            unload yes
            load bw400 120 @400
            5.6 125 x3
            unload yes
            """;

    @TempDir
    static Path scratch;

    @BeforeAll
    void shoot() throws IOException {
        Installed.Ended line =
                logged(scratch, "line.txt", DAY, "line", "--data", "day", "--clock", "2026-09-12T15:00+02:00");
        assertEquals(0, line.status(), line.toString());
        assertTrue(line.out().contains("Frame 1 on R0001: slate. 15 left. Photograph this sheet"), line.out());
        FakeLab both = new FakeLab(scratch.resolve("both"));
        // R0002 lies first, and was scanned from its other end.
        for (int i = 1; i <= 4; i++) {
            both.scan("crew_0" + i + ".jpg", 0.45);
        }
        both.slate("crew_05.jpg", new Slate(new RollId("R", 2), 1), 180)
                .slate("crew_06.jpg", new Slate(new RollId("R", 1), 1), 7);
        for (int i = 7; i <= 12; i++) {
            both.scan("crew_" + (i < 10 ? "0" : "") + i + ".jpg", 0.45);
        }
        FakeLab plain = new FakeLab(scratch.resolve("plain"));
        plain.scan("a1.jpg", 0.45).scan("a2.jpg", 0.45).scan("a3.jpg", 0.45);
    }

    @Test
    void theFolderIsNamedByItsSlates() {
        Installed.Ended read = run("", "slate", "--read", "both", "--data", "day");
        assertEquals(0, read.status(), read.toString());
        assertTrue(read.out().startsWith("crew_05.jpg  R0002, frame 1\ncrew_06.jpg  R0001, frame 1\n"), read.out());
        assertTrue(read.out().contains("takeup scans R0002 FOLDER"), read.out());
        assertTrue(run("", "slate", "--read", "both", "--json", "--data", "day")
                .out()
                .replaceAll("\\s", "")
                .contains("{\"file\":\"crew_05.jpg\",\"roll\":\"R0002\",\"frame\":1}"));
        Installed.Ended none = run("", "slate", "--read", "plain", "--data", "day");
        assertEquals(1, none.status());
        assertTrue(
                none.err().contains("no slate could be read in") && none.err().contains("3 scans looked at"),
                none.err());
    }

    @Test
    void eachRollGetsItsOwnScansAndTheOneThatRunsBackwardsIsSeen() {
        String first = json("1");
        assertTrue(
                first.contains("\"reversed\":false")
                        && first.contains("\"scans\":[{\"file\":\"crew_06.jpg\",\"frames\":[1]}")
                        && first.contains("{\"file\":\"crew_12.jpg\",\"frames\":[7]}"),
                first);
        assertTrue(first.contains("\"others\":[{\"roll\":\"R0002\",\"scans\":5"), first);
        String second = json("2");
        assertTrue(
                second.contains("\"reversed\":true")
                        && second.contains("\"scans\":[{\"file\":\"crew_01.jpg\",\"frames\":[5]}")
                        && second.contains("{\"file\":\"crew_05.jpg\",\"frames\":[1]}"),
                second);
        String third = json("3");
        assertTrue(third.contains("\"scans\":[],") && third.contains("byitsslatesthisfolderisofR0002,R0001"), third);
    }

    @Test
    void theCodeIsPrintedWhereThereIsNoTerminal() {
        Installed.Ended shown = run("", "slate", "2", "--data", "day");
        assertEquals(0, shown.status(), shown.toString());
        assertTrue(shown.out().startsWith("R0002, frame 1\n" + "█".repeat(33) + "\n"), shown.out());
        assertEquals(2, run("", "slate", "--data", "day").status());
    }

    /** The library is loaded by what needs it, and by nothing before. */
    @Test
    void theLibraryOfTheCodeIsLoadedOnlyOnceASlateIsShownOrLookedFor() throws IOException {
        assertFalse(loads("line.txt"), "the word slate in a pipe draws nothing");
        assertEquals(
                0, logged(scratch, "rolls.txt", "", "rolls", "--data", "day").status());
        assertFalse(loads("rolls.txt"));
        logged(scratch, "help.txt", "", "slate", "--help");
        assertFalse(loads("help.txt"));
        logged(scratch, "shown.txt", "", "slate", "1", "--data", "day");
        assertTrue(loads("shown.txt"), "the check would see it");
    }

    private static boolean loads(String file) throws IOException {
        String log = Files.readString(scratch.resolve(file));
        assertTrue(log.contains("takeup.cli.Main"), "the log is there");
        return log.contains("com.google.zxing");
    }

    private static String json(String roll) {
        Installed.Ended ended = run("", "scans", roll, "both", "--data", "day", "--json");
        assertEquals(0, ended.status(), ended.toString());
        return ended.out().replaceAll("\\s", "");
    }

    private static Installed.Ended run(String input, String... arguments) {
        return Installed.run(Installed.program(scratch, Map.of(), List.of(arguments)), input);
    }

    /** Without the start script, which keeps Java's own log shut. */
    static Installed.Ended logged(Path scratch, String file, String input, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + file,
                "-jar",
                Path.of(System.getProperty("takeup.home", "target/takeup"))
                        .toAbsolutePath()
                        .resolve("takeup.jar")
                        .toString()));
        command.addAll(List.of(arguments));
        return Installed.run(Installed.process(scratch, Map.of(), command), input);
    }
}
