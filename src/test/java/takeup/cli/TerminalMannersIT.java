package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;

/** The installed screen in a bare terminal: torn keys, pastes, no answers, and what it leaves behind. */
class TerminalMannersIT {
    @TempDir
    Path scratch;

    @BeforeAll
    static void needs() {
        Outside.needs("python3");
    }

    @Test
    void keysThatArriveByteByByteUpToATenthOfASecondApartAreTheKeysAndNothingElse() throws IOException {
        roll();
        List<String> steps = new ArrayList<>(List.of("see 15 left", type("4 12"), "pause 200"));
        for (int gap : new int[] {0, 5, 60, 100}) {
            for (String key : List.of("[A", "[D", "OC", "[F", "[15~")) {
                steps.add("torn " + gap + " " + hex("\u001b" + key));
            }
        }
        steps.addAll(List.of(type("5\r"), "see Frame 2 on R0001: f/4 1/125", type("quit\r"), "pause 5000"));
        Installed.Ended ended = ended(0, screen(steps));
        assertEquals(List.of("f/4 1/125", "f/4 1/125"), frames());
        nothingIsAskedOfTheTerminalAndItsMouseIsLeftAlone(ended.out());
    }

    private static void nothingIsAskedOfTheTerminalAndItsMouseIsLeftAlone(String out) {
        assertFalse(Pattern.compile("\u001b\\[\\?100[0236]h").matcher(out).find(), "the mouse is switched on");
        assertFalse(
                Pattern.compile(
                                "\u001b\\[[>?=]?[0-9;]*[cn]|\u001b\\][0-9;]*\\?|\u001b\\[[0-9]*t|\u001bP\\+q|\u001b\\[\\?[0-9]+\\$p")
                        .matcher(out)
                        .find(),
                "a query was sent");
        int on = out.lastIndexOf("\u001b[?1049h");
        assertTrue(
                on >= 0 && out.lastIndexOf("\u001b[?1049l") > on && out.lastIndexOf("\u001b[?2004l") > on,
                "the screen is given back");
    }

    @Test
    void tenKilobytesPastedMarkedOrNotLogNoFrameOnAnyView() throws IOException {
        roll();
        String text =
                "4 125\r8 250 ; bow seat\r x9\r. \runload yes\r".repeat(250).substring(0, 10_000);
        List<String> steps = new ArrayList<>(List.of("see 15 left"));
        for (String view : List.of("", "\u001bOP", "\u001bOQ", "\u001bOR")) {
            for (String paste : view.isEmpty() ? List.of("\u001b[200~" + text + "\u001b[201~", text) : List.of(text)) {
                steps.addAll(List.of(
                        "bytes " + hex(view),
                        "pause 150",
                        "bytes " + hex(paste),
                        "pause 400",
                        "bytes 1b",
                        "pause 160",
                        "bytes 1b",
                        "pause 160"));
            }
        }
        steps.addAll(List.of("bytes 03", "pause 200", "bytes 03", "pause 5000"));
        ended(0, screen(steps));
        assertEquals(List.of("f/4 1/125"), frames());
    }

    /**
     * Beside each export of an archive of years there may be half a one; the first picture does not wait for it to be
     * looked for.
     */
    @Test
    void aScreenLeftInPeaceClearsUpWhatADeadProgramLeftBesideTheExports() throws IOException {
        roll();
        Path half = scratch.resolve("day/exports/.R0009.json.part");
        Files.writeString(half, "{");
        ended(0, screen(List.of("see 15 left", "pause 4000", type("quit\r"), "pause 5000")));
        assertFalse(Files.exists(half));
    }

    @Test
    void theDemoWritesInATemporaryFolderAlone() throws IOException {
        Path temporary = Files.createDirectory(scratch.resolve("temporary"));
        Installed.Ended ended = screen(
                Map.of("JDK_JAVA_OPTIONS", "-Djava.io.tmpdir=" + temporary, "TMPDIR", temporary.toString()),
                List.of("demo"),
                List.of("see meter at", "bytes 20", "pause 400", type("quit\r"), "pause 5000"));
        assertTrue(ended.out().contains("The demo is in " + temporary), ended.out());
        try (Stream<Path> all = Files.walk(scratch)) {
            assertEquals(
                    List.of(),
                    all.filter(it -> Files.isRegularFile(it) && !it.startsWith(temporary))
                            .toList());
        }
    }

    /** A folder lies in the place of the file: the roll is out, its export is not said to be there, and why is. */
    @Test
    void anExportThatFailedIsNotClaimed() throws IOException {
        roll();
        Path export = Files.createDirectory(scratch.resolve("day/exports/R0001.json"));
        List<String> steps = List.of(
                "see 15 left",
                type("unload yes\r"),
                "see the export of R0001 could not be written",
                type("quit\r"),
                "pause 5000");
        Installed.Ended failed = ended(0, screen(steps));
        assertFalse(failed.out().contains("Its JSON is"), failed.out());
        Files.delete(export);
        ended(0, screen(List.of("see NO FILM", type("quit\r"), "pause 5000")));
        assertTrue(Files.readString(export).contains("\"R0001\""), "the next start writes it");
    }

    private static Installed.Ended ended(int status, Installed.Ended ended) {
        assertTrue(
                ended.out().endsWith("status " + status + "\n") && !ended.out().contains("waited in vain"),
                ended.out());
        return ended;
    }

    /** A folder with one frame on a roll. */
    private void roll() {
        Installed.Ended typed =
                Installed.run(scratch, "cam 645\nload cn400\n4 125\n", List.of("--data", "day", "line"));
        assertEquals(0, typed.status(), typed.toString());
    }

    private List<String> frames() {
        Installed.Ended printed = Installed.run(scratch, "frames\n", List.of("--data", "day", "line"));
        List<String> pairs = new ArrayList<>();
        Matcher frame = Pattern.compile("frames? (\\d+)(?: to (\\d+))?, (f/\\S+ [^;,.]+)")
                .matcher(printed.out());
        while (frame.find()) {
            int many = frame.group(2) == null
                    ? 1
                    : Integer.parseInt(frame.group(2)) - Integer.parseInt(frame.group(1)) + 1;
            for (int i = 0; i < many; i++) {
                pairs.add(frame.group(3));
            }
        }
        return pairs;
    }

    private Installed.Ended screen(List<String> steps) {
        return screen(Map.of(), List.of("--data", "day"), steps);
    }

    private Installed.Ended screen(Map<String, String> environment, List<String> arguments, List<String> steps) {
        List<String> command = new ArrayList<>(List.of(
                "python3",
                Path.of("src/test/outside/manners.py").toAbsolutePath().toString(),
                "80x24"));
        command.addAll(Installed.program(scratch, environment, arguments).command());
        return Installed.run(Installed.process(scratch, environment, command), String.join("\n", steps) + "\n");
    }

    private static String type(String text) {
        return "bytes " + hex(text);
    }

    private static String hex(String text) {
        return HexFormat.of().formatHex(text.getBytes(StandardCharsets.UTF_8));
    }
}
