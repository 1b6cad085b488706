package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;
import takeup.json.Json;
import takeup.json.JsonText;

/** However the screen ends, the shell has its terminal back as it was, and reads in one line what was saved. */
class SignalsIT {
    private static final Path HOME =
            Path.of(System.getProperty("takeup.home", "target/takeup")).toAbsolutePath();

    @TempDir
    static Path scratch;

    private static final Map<String, CompletableFuture<Installed.Ended>> RUNS = new HashMap<>();

    /** All at once: they wait more than they work. */
    @BeforeAll
    static void needsATerminal() throws IOException {
        Outside.needs("python3");
        withoutAClass(scratch.resolve("broken"));
        ExecutorService few = Executors.newFixedThreadPool(4);
        for (String action :
                List.of("quit", "ctrl-c", "TERM", "HUP", "INT", "gone", "error", "STOP", "TSTP", "keys", "no-java")) {
            Path home = action.equals("error") ? scratch.resolve("broken") : HOME;
            RUNS.put(
                    action,
                    CompletableFuture.supplyAsync(
                            () -> Installed.run(
                                    Installed.process(
                                            scratch,
                                            action.equals("no-java") ? Map.of("JAVA_TOOL_OPTIONS", "-Xmx1k") : Map.of(),
                                            List.of(
                                                    "python3",
                                                    Path.of("src/test/outside/terminal.py")
                                                            .toAbsolutePath()
                                                            .toString(),
                                                    action,
                                                    action,
                                                    home.resolve("bin")
                                                            .resolve("takeup")
                                                            .toString(),
                                                    "--data",
                                                    scratch.resolve(action).toString())),
                                    ""),
                            few));
        }
        few.shutdown();
    }

    /**
     * A copy of the program without two of its classes, missed when frames are listed or printed as a table: a mistake
     * of our own.
     */
    private static void withoutAClass(Path broken) throws IOException {
        try (Stream<Path> all = Files.walk(HOME)) {
            for (Path path : all.filter(it -> !it.toString().matches(".*(\\.jsa|\\.aot|/archive\\.txt)"))
                    .toList()) {
                Files.copy(path, broken.resolve(HOME.relativize(path).toString()));
            }
        }
        try (FileSystem jar = FileSystems.newFileSystem(
                URI.create("jar:" + broken.resolve("takeup.jar").toUri()), Map.of())) {
            Files.delete(jar.getPath("takeup/screen/FramesView.class"));
            Files.delete(jar.getPath("takeup/handoff/RollCsv.class"));
        }
    }

    @ParameterizedTest(name = "{0}: status {1}")
    @CsvSource({"quit,0", "ctrl-c,0", "TERM,143", "HUP,129", "INT,130"})
    void theTerminalIsGivenBackAndWhatWasSavedIsSaid(String action, int status) throws JsonText.NotJson {
        Json.Obj ended = ended(action);
        assertEquals(status, number(ended, "status"), ended.toString());
        givenBack(ended);
        String after = afterTheScreen(ended);
        assertTrue(
                after.contains("takeup: saved in " + scratch.resolve(action))
                        && after.contains("R0001 in 35: 1 logged"),
                after);
        assertEquals(1, after.strip().lines().count(), after);
        assertEquals(1, number(ended, "frames"));
    }

    @Test
    void aTerminalThatIsGoneEndsTheProgramAndLosesNothing() throws JsonText.NotJson {
        Json.Obj ended = ended("gone");
        assertEquals(1, number(ended, "frames"));
        Installed.Ended check = Installed.run(scratch, "", List.of("check", "gone"));
        assertEquals(0, check.status(), check.all());
        assertEquals(
                0,
                Installed.run(scratch, "8 125\n", List.of("line", "--data", "gone"))
                        .status(),
                "nobody holds the folder any more");
    }

    @Test
    void anErrorOfOurOwnGivesTheTerminalBackAndNamesAReport() throws IOException, JsonText.NotJson {
        Json.Obj ended = ended("error");
        assertEquals(1, number(ended, "status"), ended.toString());
        givenBack(ended);
        String after = afterTheScreen(ended);
        assertTrue(
                after.contains("takeup made a mistake and had to stop.")
                        && after.contains("The report is ")
                        && !after.contains("\tat "),
                after);
        try (Stream<Path> reports = Files.list(scratch.resolve("error/reports"))) {
            assertTrue(Files.readString(reports.findFirst().orElseThrow()).contains("takeup/screen/FramesView"));
        }
        assertEquals(1, number(ended, "frames"));
    }

    /** An error, and not an exception only: a class or a library of the system that is not there, or no memory. */
    @Test
    void anErrorOfOurOwnInACommandIsThreeLinesAndAReport() throws IOException {
        Path folder = scratch.resolve("commanded");
        Installed.run(scratch, "cam 35\nload bw400\n8 125\n", List.of("line", "--data", folder.toString()));
        Installed.Ended ended = Installed.run(
                Installed.process(
                        scratch,
                        Map.of(),
                        List.of(
                                scratch.resolve("broken/bin/takeup").toString(),
                                "roll",
                                "R0001",
                                "--csv",
                                "--data",
                                folder.toString())),
                "");
        assertEquals(1, ended.status(), ended.toString());
        List<String> lines = ended.err().lines().toList();
        assertEquals(3, lines.size(), ended.toString());
        assertEquals("takeup: made a mistake and had to stop.", lines.get(0));
        assertEquals("takeup: Everything that was acknowledged is safe in " + folder + ".", lines.get(1));
        try (Stream<Path> reports = Files.list(folder.resolve("reports"))) {
            Path report = reports.findFirst().orElseThrow();
            assertEquals("takeup: The report is " + report + ".", lines.get(2));
            assertTrue(Files.readString(report).contains("takeup/handoff/RollCsv"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"STOP", "TSTP"})
    void afterAStopItPaintsAndTakesKeysAgain(String signal) throws JsonText.NotJson {
        Json.Obj ended = ended(signal);
        assertEquals(0, number(ended, "status"), ended.toString());
        assertEquals(2, number(ended, "frames"));
        givenBack(ended);
    }

    /** The start script has looked at the terminal already, and changed nothing. */
    @Test
    void aJavaThatDoesNotStartLeavesTheTerminalAsItWas() throws JsonText.NotJson {
        Json.Obj ended = ended("no-java");
        assertEquals(1, number(ended, "status"), ended.toString());
        assertEquals("true", word(ended, "modes"), ended.toString());
    }

    @Test
    void theKeysOfTheTerminalAreHarmlessAndCtrlZIsUndo() throws JsonText.NotJson {
        Json.Obj ended = ended("keys");
        assertEquals(0, number(ended, "status"), ended.toString());
        assertEquals(3, number(ended, "frames"));
        assertEquals(1, number(ended, "undos"));
        assertEquals("false", word(ended, "dump"), "no list of threads is written over the screen");
        givenBack(ended);
    }

    private static Json.Obj ended(String action) throws JsonText.NotJson {
        Installed.Ended ended = RUNS.get(action).join();
        assertEquals(0, ended.status(), ended.toString());
        return (Json.Obj) JsonText.readExported(ended.out());
    }

    private static void givenBack(Json.Obj ended) {
        assertEquals("true", word(ended, "modes"), "the modes of the terminal are as they were before");
        String after = word(ended, "after");
        assertTrue(after.lastIndexOf("\u001b[?1049l") > after.lastIndexOf("\u001b[?1049h"), "the main screen");
        assertTrue(after.lastIndexOf("\u001b[?25h") > after.lastIndexOf("\u001b[?25l"), "the cursor");
        assertTrue(after.lastIndexOf("\u001b[?2004l") > after.lastIndexOf("\u001b[?2004h"), "plain pastes");
    }

    private static String afterTheScreen(Json.Obj ended) {
        String after = word(ended, "after");
        return after.substring(after.lastIndexOf("\u001b[?1049l") + "\u001b[?1049l".length());
    }

    private static int number(Json.Obj ended, String field) {
        return (int) ((Json.Num) ended.field(field).orElseThrow()).value();
    }

    private static String word(Json.Obj ended, String field) {
        Json json = ended.field(field).orElseThrow();
        return json instanceof Json.Text text ? text.value() : String.valueOf(((Json.Bool) json).value());
    }
}
