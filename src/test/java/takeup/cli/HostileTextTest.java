package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.disk.Folders;
import takeup.files.AllRolls;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.handoff.MadeBy;
import takeup.handoff.RollCsv;
import takeup.handoff.RollJson;
import takeup.journal.Archive;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Kit;
import takeup.message.Key;
import takeup.message.Message;
import takeup.message.SaveError;
import takeup.roll.Condition;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.screen.Screen;
import takeup.session.Session;
import takeup.session.Update;
import takeup.text.CsvFormat;

/**
 * Every text that a photographer or a file can bring in, times every character that steers a terminal or hides from the
 * eye, on every way out: none comes out raw, and what is stored is what was typed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class HostileTextTest {
    private static final String TIME = "2026-09-12T15:00+02:00";

    @TempDir
    static Path folder;

    private final List<String> hostile = hostile();
    private final List<String> typed = new ArrayList<>();
    private final Map<String, String> outputs = new LinkedHashMap<>();

    /**
     * C0, DEL, C1; sequences that rename a window, fill a clipboard, make a link; direction; no width; separators;
     * blanks by another name.
     */
    private static List<String> hostile() {
        List<String> all = new ArrayList<>();
        for (int point = 0; point < 0xa0; point += point == 0x1f ? 0x60 : 1) {
            if (point != '\n') {
                all.add(Character.toString(point));
            }
        }
        all.addAll(List.of(
                "\u001b[2J\u001b[H",
                "\u001b]0;title\u0007",
                "\u001b]52;c;cm0gLXJm\u0007",
                "\u001b]8;;http://127.0.0.1/\u001b\\link\u001b]8;;\u001b\\",
                "\u009b31m",
                "\u001bP1$r\u001b\\",
                "\u001b]52;c;never ended",
                "saved\rNOT SAVED",
                "\b\b\b\b",
                "\u001b[?1049l",
                "\u001bc"));
        for (int point : new int[] {
            0x61c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069, 0xad, 0x180e,
            0x200b, 0x200c, 0x200d, 0x2060, 0x2064, 0x206a, 0xfeff, 0xfff9, 0xfffb, 0x2028, 0x2029, 0x115f, 0x3164,
            0xe000, 0xf0000, 0xe0001, 0xe0041
        }) {
            all.add(Character.toString(point));
        }
        return all;
    }

    @BeforeAll
    void aDayOfThem() throws IOException {
        Folders.make(folder.resolve("profiles/cameras"));
        Folders.make(folder.resolve("profiles/stocks"));
        profiles();
        StringBuilder day = new StringBuilder("cam odd\nload odd process C\u001b]0;x\u0007-41\nm 5.6 125\n");
        for (String one : hostile) {
            String words = "bow" + one + "seat";
            day.append("4 125 ; ").append(words).append('\n');
            typed.add(words);
        }
        for (String one : hostile) {
            String words = "a" + one + "z";
            day.append("note ")
                    .append(words)
                    .append('\n')
                    .append("condition torn ")
                    .append(words)
                    .append('\n');
            // No words of the program: refused, and said back.
            day.append(words)
                    .append('\n')
                    .append("cam ")
                    .append(words)
                    .append('\n')
                    .append("fix ")
                    .append(words)
                    .append('\n')
                    .append("m ")
                    .append(words)
                    .append('\n')
                    .append("theme ")
                    .append(words)
                    .append('\n')
                    .append("help ")
                    .append(words)
                    .append('\n')
                    .append("filter ")
                    .append(words)
                    .append(" 2x\n")
                    .append("fix roll process ")
                    .append(words)
                    .append('\n')
                    .append("lens ")
                    .append(words)
                    .append('\n')
                    .append("quiet ")
                    .append(words)
                    .append('\n');
        }
        outputs.put("line", line(day.toString(), false));
        outputs.put("line --json", line(day.toString() + "unload yes\n", true));
        for (String command : List.of(
                "roll 1",
                "roll 1 --csv",
                "roll 1 --json",
                "rolls",
                "rolls --json",
                "check",
                "camera odd",
                "camera odd --json",
                "stock odd",
                "stock odd --json",
                "meter ev10 --camera odd --stock odd",
                "meter ev10 --camera odd --stock odd --json",
                "stock bad",
                "camera bad",
                "paths")) {
            outputs.put(command, command((command + " --data " + folder).split(" ")));
        }
        for (int from = 0; from < hostile.size(); from += 16) {
            String word = "a" + String.join("", hostile.subList(from, Math.min(hostile.size(), from + 16))) + "z";
            for (List<String> arguments : List.of(
                    List.of("stock", word),
                    List.of("roll", word),
                    List.of(word),
                    List.of("--" + word),
                    List.of("schema", word),
                    List.of("meter", word),
                    List.of("roll", "1", "-o", "/nowhere/" + word.replace('/', '_')),
                    List.of("line", "--clock", word),
                    List.of("check", folder + "/" + word.replace('\0', '0')),
                    List.of("camera", "new", word),
                    List.of("--theme", word))) {
                List<String> all = new ArrayList<>(arguments);
                all.addAll(List.of("--data", folder.toString()));
                outputs.merge(
                        arguments.get(0).contains("a") ? "arguments" : arguments.get(0),
                        command(all.toArray(String[]::new)),
                        String::concat);
            }
        }
        command("roll", "1", "--text", "-o", folder.resolve("roll.txt").toString(), "--data", folder.toString());
        outputs.put("paths of an odd folder", command("paths", "--data", folder + "/a\u001b[2J\u009b\u202eb"));
        outputs.put("a text file", Files.readString(folder.resolve("roll.txt")));
        outputs.put("the export", Files.readString(folder.resolve("exports/R0001.json")));
        outputs.put("the journal", Files.readString(folder.resolve("rolls/finished/R0001.journal")));
    }

    /**
     * Profiles whose names hold all of them that fit into 80 letters, half characters too, and one of each sort that is
     * wrong.
     */
    private void profiles() throws IOException {
        String odd = escaped("C\u001b]52;c;eA==\u0007\r\n\u009b\u202e\u200b\u2028\u0000\u007f") + "\\ud800x\\udfff";
        Files.writeString(folder.resolve("profiles/cameras/odd.json"), """
            {"name": "ODD", "frameSize": "24x36", "frames": {"135": 200}, "times": {"step": "full", "longest": "1s", "fastest": "1/1000"}, "\\u001b[2J\\u202e": 1,
             "lenses": [{"key": "50", "name": "ODD", "focalMm": 50, "widest": 2, "narrowest": 16, "step": "half"}]}
            """.replace("ODD", odd));
        Files.writeString(folder.resolve("profiles/stocks/odd.json"), """
            {"name": "ODD", "kind": "colour-negative", "process": "ODD", "boxSpeed": 400, "usualEI": 400, "filmSizes": ["135"],
             "latitude": {"underStops": 1, "overStops": 3, "source": "ODD"}, "source": "ODD"}
            """.replace("ODD", odd));
        Files.writeString(
                folder.resolve("profiles/stocks/bad.json"),
                "{\"name\": \"" + odd + "\", \"\\u009b\": \"\u001b[2J\u009b\", }");
        Files.writeString(
                folder.resolve("profiles/cameras/bad.json"),
                "{\"name\": \"A\", \"frameSize\": \"24x36\", \"frames\": {\"a\\u001b]0;x\\u0007\\r\": 36}}");
        Files.writeString(folder.resolve("profiles/cameras/a\u001b[2J\nb\u202e.json"), "{}");
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.chars()
                .forEach(it -> out.append("\\u")
                        .append(Integer.toHexString(it | 0x10000).substring(1)));
        return out.toString();
    }

    @Test
    void noneOfThemComesOutRaw() {
        assertTrue(outputs.size() > 20, outputs.keySet().toString());
        List<String> wrong = new ArrayList<>();
        outputs.forEach((name, text) -> {
            assertTrue(!text.isEmpty(), name + " says nothing");
            boolean csv = name.endsWith("--csv");
            boolean forOthers = csv || name.equals("a text file");
            TreeSet<String> raw =
                    new TreeSet<>(dangerous(csv ? text.replace("\r\n", "\n").replace("\t", " ") : text));
            if (forOthers) {
                // Persian and joined emoji are written with these, and nobody's words are rewritten for other programs.
                raw.removeIf(HostileTextTest::isHarmlessInAFile);
            }
            if (!raw.isEmpty()) {
                wrong.add(name + ": " + raw);
            }
        });
        assertEquals(List.of(), wrong);
        for (String name : List.of(
                "line",
                "roll 1",
                "roll 1 --csv",
                "check",
                "camera odd",
                "arguments",
                "a text file",
                "paths of an odd folder")) {
            assertTrue(outputs.get(name).contains("\\u{1b}"), name + " shows it");
        }
        for (String name : List.of("line --json", "roll 1 --json", "camera odd --json", "the export", "the journal")) {
            assertTrue(
                    outputs.get(name).contains("\\u001b") || outputs.get(name).contains("\\u001B"),
                    name + " keeps it as JSON does");
        }
    }

    @Test
    void eachAnswerIsOneLine() {
        long lines = 3 + hostile.size() + 12L * hostile.size();
        assertEquals(
                lines,
                outputs.get("line")
                        .lines()
                        .filter(it -> !it.startsWith("takeup: "))
                        .count());
        assertEquals(
                lines + 1,
                outputs.get("line --json")
                        .lines()
                        .filter(it -> it.startsWith("{"))
                        .count());
    }

    @Test
    void theNotesAreStoredLetterForLetter() throws IOException, JsonText.NotJson {
        Roll roll = AllRolls.of(new Archive(folder)).rolls().get(0);
        // They were typed twice: once into the pipe with sentences, once into the one with JSON.
        List<String> twice = new ArrayList<>(typed);
        twice.addAll(typed);
        assertEquals(
                twice,
                roll.frames().stream()
                        .map(Frame::note)
                        .map(Optional::orElseThrow)
                        .toList());
        Json.Obj json = (Json.Obj) JsonText.read(RollJson.text(roll, MadeBy.version("0")));
        List<String> exported = ((Json.Arr) json.field("frames").orElseThrow())
                .items().stream()
                        .map(it -> ((Json.Text) ((Json.Obj) it).field("note").orElseThrow()).value())
                        .toList();
        assertEquals(twice, exported);
        List<String> conditions = roll.conditions().stream()
                .map(Condition::words)
                .map(Optional::orElseThrow)
                .toList();
        assertEquals(2 * hostile.size(), conditions.size());
        assertEquals("a" + hostile.get(27) + "z", conditions.get(27));
        assertEquals(
                "C\u001b]52;c;eA==\u0007\r\n\u009b\u202e\u200b\u2028\u0000\u007f\ud800x\udfff",
                roll.camera().name(),
                "half characters too");
        String csv = RollCsv.of(roll, MadeBy.version("1.0.0"), CsvFormat.PLAIN);
        assertEquals(2 * typed.size() + 1, csv.split("\r\n").length, "a row a frame");
    }

    @ParameterizedTest(name = "{0} columns")
    @ValueSource(ints = {30, 80, 132, 300})
    void noneOfThemIsOnTheScreen(int columns) throws IOException {
        StartupState opening = StartupState.of(new Archive(folder), kit());
        OffsetDateTime now = OffsetDateTime.parse(TIME);
        Session begun = Session.begin(
                opening.state(),
                new Session.Settings("R", folder + "/\u001b[2J\u202e", Optional.of("\u009b\u0007")),
                "dark",
                List.of("a\u001b]0;x\u0007.json:1: \r\u202e"),
                now,
                0);
        List<Session> shown = new ArrayList<>(List.of(begun, begun.offering("dra\u001b[2J\u009bft")));
        for (String one : hostile) {
            Session shoot = Update.update(begun, new Message.Pressed(Key.pasted("4 125 ; a" + one + "z"), now, 1))
                    .session();
            shown.add(shoot);
            shown.add(Update.update(shoot, new Message.Pressed(Key.of(Key.Name.ENTER), now, 2))
                    .session());
            shown.add(Update.update(begun, new Message.SaveFailed(1, new SaveError(one, one)))
                    .session());
            shown.add(Update.update(begun, new Message.Notice("a" + one)).session());
            shown.add(Update.update(begun, new Message.Pressed(Key.pasted("a" + one + "z\nb" + one), now, 1))
                    .session());
        }
        for (Key.Name key : List.of(Key.Name.F1, Key.Name.F2, Key.Name.F3, Key.Name.F4)) {
            shown.add(Update.update(begun, new Message.Pressed(Key.of(key), now, 1))
                    .session());
        }
        TreeSet<String> raw = new TreeSet<>();
        for (Session shoot : shown) {
            raw.addAll(dangerous(Screen.render(shoot, columns, 30).toString()));
        }
        assertEquals(new TreeSet<>(), raw);
    }

    @Test
    void allThatIsMadeIsForItsOwnerAlone() throws IOException {
        List<String> open = new ArrayList<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(it -> !it.startsWith(folder.resolve("profiles"))
                            && !it.equals(folder)
                            && !it.endsWith("roll.txt"))
                    .toList()) {
                String mode = PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
                if (!mode.equals(Files.isDirectory(path) ? "rwx------" : "rw-------")) {
                    open.add(path + " " + mode);
                }
            }
        }
        assertEquals(List.of(), open);
    }

    private static Kit kit() {
        return new Kit(new ProfileFiles(folder.resolve("profiles"), Path.of("profiles")));
    }

    private static String line(String lines, boolean json) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Archive archive = new Archive(folder);
        try (JournalStore disk = JournalStore.take(archive)) {
            StartupState opening = StartupState.of(archive, kit());
            new PromptPipe(
                            disk,
                            opening.state(),
                            Clock.of(Optional.of(Clock.parse(TIME))),
                            out(out),
                            json ? PromptPipe.Format.JSON : PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static String command(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Subcommands.run(arguments, out(out));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static Console out(ByteArrayOutputStream to) {
        return new Console(to, to, Map.of("LC_ALL", "C.UTF-8"));
    }

    /** What is seen by nobody and turns nothing round, as the hexadecimal number of a character. */
    private static boolean isHarmlessInAFile(String hex) {
        int character = Integer.parseInt(hex, 16);
        boolean turnsTheLine = character == 0x61c
                || character == 0x200e
                || character == 0x200f
                || character >= 0x2028 && character <= 0x202e
                || character >= 0x2066 && character <= 0x2069;
        return character > 0x9f && !turnsTheLine;
    }

    /**
     * A definition of the test's own, wider than the Unicode categories where they are known to mislead. A line feed
     * ends a line.
     */
    static List<String> dangerous(String text) {
        List<String> found = new ArrayList<>();
        text.codePoints()
                .filter(it -> it < ' ' && it != '\n'
                        || it >= 0x7f && it <= 0x9f
                        || it == 0xad
                        || it == 0x61c
                        || it == 0x180e
                        || it == 0xfeff
                        || it == 0x115f
                        || it == 0x3164
                        || it >= 0x200b && it <= 0x200f
                        || it >= 0x2028 && it <= 0x202e
                        || it >= 0x2060 && it <= 0x206f
                        || it >= 0xd800 && it <= 0xf8ff
                        || it >= 0xfff0 && it <= 0xffff
                        || it >= 0xe0000)
                .forEach(it -> found.add(Integer.toHexString(it)));
        return found;
    }
}
