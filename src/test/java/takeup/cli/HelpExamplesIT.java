package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.roll.RollId;
import takeup.scans.Slate;

/** Every help page ends in examples, and each of them does what it says when it is typed as it stands. */
class HelpExamplesIT {
    private static final Path BIN = Path.of(System.getProperty("takeup.home", "target/takeup"))
            .toAbsolutePath()
            .resolve("bin");

    /** What opens on a terminal, and how it is left. */
    private static final Map<String, String> ON_A_TERMINAL = Map.of(
            "takeup demo", "quit\r",
            "takeup demo --data regatta", "quit\r",
            "takeup --theme night", "quit\r",
            "takeup slate 1", "q",
            "takeup rating 3", "2\r");

    private static final String DAY = """
            cam 645 1
            load cn400
            m 5.6 125
            4 125 ; Ines, bow seat
            .
            unload yes
            cam 35
            load bw400
            8 125
            .
            unload yes
            load bw400 @400
            m ev11
            """ + "rating\n".repeat(7) + "unload yes\n";

    @TempDir
    static Path scratch;

    private static Path template;

    /** A home in which everything that the examples name is there. */
    @BeforeAll
    static void shootADay() throws IOException {
        Outside.needs("bash", "python3", "man");
        template = Files.createDirectory(scratch.resolve("template"));
        Files.createDirectories(template.resolve(".config/fish/completions"));
        Files.createDirectories(template.resolve(".local/share/man/man1"));
        Files.writeString(template.resolve("day.csv"), "time,moment,wants\n16:30,Prize-giving,12\n");
        Files.writeString(template.resolve("day.txt"), "say\n");
        new FakeLab(template.resolve("scans"))
                .scan("a.jpg", 0.4)
                .scan("b.jpg", 0.5)
                .slate("c.jpg", new Slate(new RollId("R", 1), 2), 0);
        DigitalFile.write(
                Files.createDirectory(template.resolve("card")).resolve("clock.jpg"),
                new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB),
                "Digital reflex",
                "2026:09:12 15:04:01",
                "");
        Installed.Ended shot = Installed.run(
                shell(template, "takeup line --clock 2026-09-12T15:00+02:00 && takeup order new 1 2 --lab lab"), DAY);
        assertEquals(0, shot.status(), shot.toString());
        Installed.Ended copied = Installed.run(shell(template, "cp -r .local/share/takeup backup"), "");
        assertEquals(0, copied.status(), copied.toString());
    }

    private static ProcessBuilder shell(Path home, String command) {
        return Installed.process(
                home,
                Map.of(
                        "HOME",
                        home.toString(),
                        "XDG_DATA_HOME",
                        home.resolve(".local/share").toString(),
                        "PATH",
                        BIN + ":" + System.getenv("PATH"),
                        "MANPAGER",
                        "cat"),
                onATerminal(command));
    }

    private static List<String> onATerminal(String command) {
        List<String> shell = List.of("bash", "-o", "pipefail", "-c", command);
        if (!ON_A_TERMINAL.containsKey(command)) {
            return shell;
        }
        return Stream.concat(
                        Stream.of(
                                "python3",
                                Path.of("src/test/outside/manners.py")
                                        .toAbsolutePath()
                                        .toString(),
                                "80x24"),
                        shell.stream())
                .toList();
    }

    private static String typedInto(String command) {
        String keys = ON_A_TERMINAL.get(command);
        if (keys == null) {
            return "yes\n";
        }
        // The day of the demo is made first.
        String ready = command.startsWith("takeup demo") ? "see leaves the tour\npause 200\n" : "pause 1500\n";
        return ready + "bytes " + HexFormat.of().formatHex(keys.getBytes(StandardCharsets.UTF_8)) + "\npause 5000\n";
    }

    /** The path of every help page, the program's own first. */
    private static Map<List<String>, String> pages() {
        Map<List<String>, String> pages = new LinkedHashMap<>();
        collect(List.of(), pages);
        return pages;
    }

    private static void collect(List<String> path, Map<List<String>, String> pages) {
        String help = InProcess.run(
                        "", Stream.concat(path.stream(), Stream.of("--help")).toList())
                .out();
        pages.put(path, help);
        int commands = help.indexOf("\nCommands:\n");
        if (commands >= 0) {
            Matcher row = Pattern.compile("(?m)^  ([a-z-]+) ")
                    .matcher(help.substring(commands, Math.max(commands, help.indexOf("\nFor example:\n"))));
            while (row.find()) {
                if (!row.group(1).equals("takeup")) {
                    collect(
                            Stream.concat(path.stream(), Stream.of(row.group(1)))
                                    .toList(),
                            pages);
                }
            }
        }
    }

    private static List<String> examples(String help) {
        int start = help.indexOf("\nFor example:\n");
        return start < 0
                ? List.of()
                : help.substring(start + 14).lines().map(String::strip).toList();
    }

    @Test
    void everyHelpPageEndsInOneOrTwoExamplesOfItsCommand() {
        Map<List<String>, String> pages = pages();
        assertTrue(pages.size() > 35, pages.keySet().toString());
        pages.forEach((path, help) -> {
            List<String> examples = examples(help);
            assertTrue(examples.size() == 1 || examples.size() == 2, path + " has " + examples);
            String command = String.join(
                    " ", Stream.concat(Stream.of("takeup"), path.stream()).toList());
            assertTrue(examples.stream().anyMatch(it -> it.contains(command)), command + " is in none of " + examples);
        });
    }

    @Tag("long")
    @Test
    void everyExampleDoesWhatItSays() throws IOException {
        ExecutorService two = Executors.newFixedThreadPool(2);
        Map<String, CompletableFuture<Installed.Ended>> ran = new LinkedHashMap<>();
        for (String help : pages().values()) {
            for (String example : examples(help)) {
                ran.computeIfAbsent(example, it -> {
                    Path home = scratch.resolve("home" + ran.size());
                    return CompletableFuture.supplyAsync(() -> run(home, it), two);
                });
            }
        }
        List<Executable> checks = new ArrayList<>();
        ran.forEach((example, ended) -> checks.add(() -> {
            Installed.Ended end = ended.join();
            assertEquals(0, end.status(), example + "\n" + end);
            assertEquals("", end.err(), example);
            assertTrue(!ON_A_TERMINAL.containsKey(example) || end.out().endsWith("status 0\n"), example + "\n" + end);
        }));
        two.shutdown();
        assertAll(checks);
    }

    private static Installed.Ended run(Path home, String example) {
        Installed.Ended copied = Installed.run(
                Installed.process(scratch, Map.of(), List.of("cp", "-a", template.toString(), home.toString())), "");
        return copied.status() == 0 ? Installed.run(shell(home, example), typedInto(example)) : copied;
    }
}
