package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.text.Plain;

/** What the installed program says to a command line, on which stream, and the status that a script sees. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CommandLineIT {
    @TempDir
    static Path scratch;

    private static final String SAMPLE =
            "meter ev10 --camera 645 --lens 80 --stock cn400 --meter hand --hold f2.8 --distance 3m --json";

    private final Map<String, CompletableFuture<Installed.Ended>> ran = new HashMap<>();

    /** A row of command-lines.txt; whether the start script runs it in a process of its own. */
    record Row(boolean alone, String command, int status, String stream, String piece) {
        @Override
        public String toString() {
            return "takeup " + command + ", " + status;
        }
    }

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (String line : Installed.resource("command-lines.txt")) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] cells = Arrays.stream((line + " ").split("\\|"))
                        .map(String::strip)
                        .toArray(String[]::new);
                boolean alone = cells[0].startsWith("* ");
                rows.add(new Row(
                        alone,
                        alone ? cells[0].substring(2) : cells[0],
                        Integer.parseInt(cells[1]),
                        cells[2],
                        cells[3]));
            }
        }
        return rows;
    }

    @BeforeAll
    void prepareAndRunAll() throws IOException {
        takeup(
                "cam 645 1\nload cn400\nm 5.6 125\n4 125 ; Ines, bow seat\n.\nunload yes\ncam 35\nload bw400\n8 "
                        + "125 ; Tarek, cox\n",
                "line",
                "--data",
                "day",
                "--clock",
                "2026-09-12T15:00+02:00");
        takeup(
                "cam 645 1\nload bw400\nbag add 2 cn400 120 expires 2027-03\nshoot Regatta day on 2026-09-13 at "
                        + "59.33,18.07 client Harriet\nplan 16:30 Prize-giving wants 20\nback 2\nload cn400\n"
                        + "unload yes\n",
                "line",
                "--data",
                "prepared",
                "--clock",
                "2026-09-12T20:00+02:00");
        Files.writeString(scratch.resolve("plan.csv"), "time,moment,wants\n16:30,Prize-giving,12\n");
        Files.writeString(scratch.resolve("wrong.csv"), "time,moment,wants\n16:30,Prize-giving,twelve\n");
        Files.createDirectory(scratch.resolve("empty"));
        Files.createDirectories(scratch.resolve("damaged/rolls/open"));
        String journal = Files.readString(scratch.resolve("day/rolls/open/R0002.journal"));
        Files.writeString(scratch.resolve("damaged/rolls/open/R0002.journal"), journal.replace("Tarek", "Torek"));
        profile("bad/profiles/stocks/mine.json", """
                {"name": "Mine", "kind": "colour-negative",
                 "proces": "C-41", "process": "C-41", "boxSpeed": 400, "usualEI": 200, "filmSizes": ["135"],
                 "latitude": {"underStops": 1, "overStops": 3}, "reciprocity": {"model": "none", "upToSeconds": 1}}
                """);
        profile(
                "bad/profiles/stocks/cn400.json",
                "{\"name\": \"Mine\", \"kind\": \"colour-negatif\", \"process\": \"C-41\"}\n");
        Files.writeString(scratch.resolve("bad/settings.json"), "{\"theme\": \"suny\",\n \"framesleft\": 4}\n");
        profile("bad/profiles/cameras/box.json", "{\"name\": \"Box\",\n");
        Files.writeString(scratch.resolve("400"), "ev3\n");
        Files.writeString(scratch.resolve("@400"), "ev3\n");
        List<String> together = rows().stream()
                .filter(it -> !it.alone)
                .map(Row::command)
                .distinct()
                .toList();
        ManyCommandLines.run(scratch, together)
                .forEach((command, ended) -> ran.put(command, CompletableFuture.completedFuture(checked(ended))));
        ExecutorService two = Executors.newFixedThreadPool(2);
        rows().stream()
                .filter(Row::alone)
                .forEach(it -> ran.put(
                        it.command, CompletableFuture.supplyAsync(() -> takeup("", it.command.split(" ")), two)));
        ran.put(SAMPLE, CompletableFuture.supplyAsync(() -> takeup("", SAMPLE.split(" ")), two));
        two.shutdown();
    }

    private static void profile(String path, String json) throws IOException {
        Files.createDirectories(scratch.resolve(path).getParent());
        Files.writeString(scratch.resolve(path), json);
    }

    private static Installed.Ended takeup(String input, String... arguments) {
        return checked(Installed.run(scratch, input, List.of(arguments)));
    }

    private static Installed.Ended shell(String script) {
        ProcessBuilder shell = Installed.process(scratch, Map.of(), List.of("sh", "-c", script));
        shell.environment()
                .put(
                        "TAKEUP",
                        Installed.program(scratch, Map.of(), List.of())
                                .command()
                                .get(0));
        return checked(Installed.run(shell, ""));
    }

    /** Whatever was asked: no escape byte, no stack trace. */
    private static Installed.Ended checked(Installed.Ended ended) {
        assertFalse(ended.all().indexOf('\u001b') >= 0, "an escape byte: " + ended);
        assertFalse(ended.all().contains("\tat ") || ended.all().contains("Exception"), "a stack trace: " + ended);
        return ended;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void aCommandLineEndsWithItsStatusAndSaysSoWhereItBelongs(Row row) {
        Installed.Ended ended = ran.get(row.command).join();
        String said = row.stream.equals("out") ? ended.out() : ended.err();
        assertAll(
                row.command + " " + ended,
                () -> assertEquals(row.status, ended.status()),
                () -> assertTrue(said.contains(row.piece), "nothing says " + row.piece),
                () -> assertTrue(
                        row.status != 0
                                || row.stream.equals("err")
                                || ended.err().isEmpty(),
                        "all went well, and there is something on stderr"),
                () -> assertTrue(
                        row.status != 2 || ended.out().isEmpty(),
                        "it was not understood, and there is something on stdout"));
    }

    @ParameterizedTest(name = "takeup {0}, TERM={1}")
    @CsvSource(quoteCharacter = '`', textBlock = """
        ``,            xterm-256color
        ``,            dumb
        --data day,    xterm-256color
        --data=day,    dumb
        --ascii,       xterm-256color
        demo,          xterm-256color
        """)
    void withoutATerminalASentencePointsAtTheWayWithoutOne(String arguments, String term) {
        List<String> words = arguments.isEmpty() ? List.of() : List.of(arguments.split(" "));
        Installed.Ended ended = checked(Installed.run(Installed.program(scratch, Map.of("TERM", term), words), ""));
        assertEquals(2, ended.status(), ended.toString());
        assertEquals("", ended.out());
        assertTrue(ended.err().contains("takeup line"), ended.err());
        assertEquals(1, ended.err().lines().count());
        assertTrue(!term.equals("dumb") || ended.err().contains("TERM says dumb"), ended.err());
    }

    /**
     * A sample of takeup meter (shoot.md), field by field; numbers to as many decimals as stand there. EV 10 at EI 200
     * is 11: f/2.8 (3) and 1/250 (8). Box 400 against EI 200 is a stop.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(quoteCharacter = '`', textBlock = """
        ev100,                        10.0
        method,                       incident
        spanStops,                    null
        exposureIndex,                200
        camera,                       645
        lens,                         80
        stock,                        cn400
        meter,                        hand
        lossStops.filters,            0.0
        lossStops.extension,          0.0
        biasStops,                    0.0
        warnings,                     []
        suggestions.0.aperture,       f/2.8
        suggestions.0.fNumber,        2.8
        suggestions.0.exactFNumber,   2.828427
        suggestions.0.time,           1/250
        suggestions.0.seconds,        0.004
        suggestions.0.exactSeconds,   0.00390625
        suggestions.0.meteredSeconds, 0.00390625
        suggestions.0.correctedSeconds, 0.00390625
        suggestions.0.openStops,      null
        suggestions.0.errorStops,     0.0
        suggestions.0.overBoxStops,   1.0
        suggestions.0.depth.nearM,    2.83
        suggestions.0.depth.farM,     3.19
        suggestions.0.depth.hyperfocalM, 48.8
        suggestions.0.warnings,       []
        suggestions.0.best,           true
        """)
    void theSampleReadingIsAnsweredFieldByField(String field, String expected) throws JsonText.NotJson {
        Installed.Ended meter = ran.get(SAMPLE).join();
        assertEquals(0, meter.status(), meter.toString());
        Json value = at(JsonText.read(meter.out()), field);
        int point = expected.indexOf('.');
        String shown = value instanceof Json.Num number && point >= 0
                ? Plain.decimals(number.value(), expected.length() - point - 1)
                : value instanceof Json.Num number
                        ? Plain.number(number.value())
                        : value instanceof Json.Text text
                                ? text.value()
                                : value instanceof Json.Bool bool
                                        ? String.valueOf(bool.value())
                                        : value instanceof Json.Nil ? "null" : JsonText.line(value);
        assertEquals(expected, shown);
    }

    private static Json at(Json json, String path) {
        Json value = json;
        for (String name : path.split("\\.")) {
            value = value instanceof Json.Arr array
                    ? array.items().get(Integer.parseInt(name))
                    : ((Json.Obj) value).fields().get(name);
        }
        return value;
    }

    @Test
    void aSuggestionStandsForEachApertureOfTheLensWidestFirst() throws JsonText.NotJson {
        List<String> apertures = ((Json.Arr)
                        at(JsonText.read(ran.get(SAMPLE).join().out()), "suggestions"))
                .items().stream()
                        .map(it -> ((Json.Text) at(it, "aperture")).value())
                        .toList();
        assertEquals(
                List.of(
                        "f/2.8", "f/3.3", "f/4", "f/4.8", "f/5.6", "f/6.7", "f/8", "f/9.5", "f/11", "f/13", "f/16",
                        "f/19", "f/22"),
                apertures);
    }

    @Test
    void theKeysAreReadableByOtherPrograms() throws JsonText.NotJson {
        Json keys = JsonText.read(ran.get("keys --json").join().out());
        List<String> names = ((Json.Arr) at(keys, "keys"))
                .items().stream().map(it -> ((Json.Text) at(it, "key")).value()).toList();
        assertTrue(names.containsAll(List.of("Space", "Tab", "Ctrl-Z", "F2", "Esc")), names.toString());
        assertTrue(((Json.Arr) at(keys, "words")).items().size() > 30);
    }

    @Test
    void aRollGoesToAFileInTheFormThatWasAskedFor() throws IOException {
        for (String form : List.of("--json", "--csv", "--text")) {
            Installed.Ended written = takeup("", "roll", "1", form, "-o", "roll.out", "--data", "day");
            assertEquals(new Installed.Ended(0, "", ""), written);
            assertEquals(
                    takeup("", "roll", "1", form, "--data", "day").out(),
                    Files.readString(scratch.resolve("roll.out")));
        }
    }

    @Test
    void aRollGoesIntoWhatIsNoFileAndLeavesItThere() {
        Installed.Ended piped =
                shell("mkfifo pipe && { cat pipe & \"$TAKEUP\" roll 1 --csv -o pipe --data day; echo \"status $?\"; "
                        + "wait; test -p pipe; }");
        assertEquals(0, piped.status(), piped.toString());
        assertTrue(
                piped.out().contains("status 0\n") && piped.out().contains("\"roll\",\"camera\",\"back\","),
                piped.toString());
    }

    @Test
    void aLineThatIsRefusedMakesTheStatusOneAndTheNextOnesAreDone() {
        Installed.Ended ended = takeup("cam 35\nload bw400\n8 11\n8 125\n", "line", "--data", "refused");
        assertEquals(1, ended.status());
        assertEquals("Not done: ", ended.out().lines().toList().get(2).substring(0, 10));
        assertTrue(ended.out().lines().toList().get(3).startsWith("Frame 1 on R0001: f/8 1/125"), ended.out());
        assertEquals(
                0,
                takeup("# nothing but this\n\n.\n", "line", "--data", "refused").status());
    }

    @Test
    void whatIsNoTextIsRefusedAndNothingElseHappens() {
        Installed.Ended ended = shell(
                "printf 'cam 35\\n\\377\\376 ; bow\\nload bw400\\n. ; a\\033[2Jb\\n' | \"$TAKEUP\" line --data bytes");
        assertEquals(1, ended.status());
        assertEquals(4, ended.out().lines().count(), ended.out());
        assertTrue(ended.out().contains("this line is not UTF-8"), ended.out());
    }

    @ParameterizedTest(name = "takeup {0} > /dev/full")
    @CsvSource(textBlock = """
        roll 1 --data day
        roll 1 --json --data day
        rolls --data day
        --help
        --version
        version
        keys --json
        line --data full
        """)
    void anAnswerThatCannotBeWrittenIsAFailure(String command) {
        assumeTrue(Files.exists(Path.of("/dev/full")));
        Installed.Ended ended = shell("echo cam 35 | \"$TAKEUP\" " + command + " > /dev/full");
        assertEquals(1, ended.status(), ended.toString());
        assertTrue(ended.err().contains("could not be written: the disk is full"), ended.err());
    }

    @Test
    void aReaderThatHasHadEnoughIsToldNothing() {
        assertEquals("Keys\n", shell("\"$TAKEUP\" keys | head -n 1").all());
    }

    @Test
    void aSecondWriterIsTurnedAwayWithTheNumberOfTheFirst() throws IOException, InterruptedException {
        Process first = Installed.program(scratch, Map.of(), List.of("line", "--data", "busy"))
                .start();
        try (BufferedReader answers =
                new BufferedReader(new InputStreamReader(first.getInputStream(), StandardCharsets.UTF_8))) {
            first.getOutputStream().write("cam 35\n".getBytes(StandardCharsets.UTF_8));
            first.getOutputStream().flush();
            assertTrue(answers.readLine().startsWith("35mm mechanical reflex"));
            Installed.Ended second = takeup("cam 645\n", "line", "--data", "busy");
            assertEquals(1, second.status());
            assertEquals("", second.out());
            assertTrue(second.err().contains("(process " + first.pid() + ")"), second.err());
            assertEquals(0, takeup("", "rolls", "--data", "busy").status(), "reading needs no lock");
        } finally {
            first.getOutputStream().close();
            first.waitFor();
        }
        assertEquals(0, first.exitValue());
        assertEquals(0, takeup("cam 645\n", "line", "--data", "busy").status());
    }

    @Test
    void theFolderIsMadeForItsOwnerAlone() throws IOException {
        ran.get("line --data made").join();
        assertEquals(
                "[OWNER_EXECUTE, OWNER_READ, OWNER_WRITE]",
                Files.getPosixFilePermissions(scratch.resolve("made")).stream()
                        .map(Object::toString)
                        .sorted()
                        .toList()
                        .toString());
    }
}
