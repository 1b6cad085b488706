package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program with 64 MB of memory in data folders of an honest day beside which one hostile file lies: each is told of
 * in one line with file and place, soon; the day's rolls are read all the same; nothing on the disk has changed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileFilesIT {
    private static final String DAY = """
        cam 645 1
        load cn400
        4 125
        unload yes
        cam 35
        load bw400
        m 5.6 125
        8 125 x2 ; bow seat
        """;

    @TempDir
    static Path scratch;

    private final Map<HostileFiles.Hostile, String> folders = new LinkedHashMap<>();
    private final Map<String, List<String>> told = new LinkedHashMap<>();
    private Installed.Ended check;
    private long millis;
    private Map<String, String> before;

    @BeforeAll
    void checkThemAll() throws IOException, InterruptedException {
        line("honest", DAY);
        line("other", "cam 35\nload bw400\nm 5.6 125 @200\n8 125 x2\n");
        for (String folder : List.of("honest", "other")) {
            Files.delete(scratch.resolve(folder).resolve("reserve"));
        }
        HostileFiles files = new HostileFiles(
                Files.readAllLines(scratch.resolve("other/rolls/open/R0001.journal")).stream()
                        .map(it -> it.startsWith("{\"n\":0,")
                                ? HostileFiles.sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":1}")
                                : it)
                        .map(it -> it.contains("\"event\":\"loaded\"")
                                ? HostileFiles.sealed(
                                        it.substring(0, it.lastIndexOf(",\"crc\""))
                                                        .replace("R0001", "R0003") + "}")
                                : it)
                        .toList(),
                Files.readAllLines(scratch.resolve("other/days/2026-09-12.journal")));
        for (HostileFiles.Hostile hostile : files.all()) {
            String folder = "h" + folders.size();
            copy(scratch.resolve("honest"), scratch.resolve(folder));
            Path path = scratch.resolve(folder).resolve(hostile.path());
            Files.createDirectories(path.getParent());
            hostile.maker().make(path);
            folders.put(hostile, folder);
        }
        before = sums();
        List<String> command = new ArrayList<>(List.of("check"));
        command.addAll(folders.values());
        long start = System.nanoTime();
        check = small("", command);
        millis = (System.nanoTime() - start) / 1_000_000;
        List<String> lines = new ArrayList<>();
        for (String line : check.out().split("\n")) {
            int at = line.indexOf(": ");
            String folder = at < 0 ? "" : line.substring(line.lastIndexOf('/', at) + 1, at);
            if (folders.containsValue(folder)) {
                lines.add(line);
                told.put(folder, lines);
                lines = new ArrayList<>();
            } else {
                lines.add(line);
            }
        }
    }

    @Test
    void thereAreOverAHundredAndTheCheckEndsWithStatusOneAndSoon() {
        assertTrue(folders.size() > 100, folders.size() + "");
        assertEquals(1, check.status(), check.err());
        assertEquals("", check.err());
        assertEquals(folders.size(), told.size());
        System.out.println(folders.size() + " hostile files were checked in " + millis + " ms");
        assertTrue(millis < 2000L * folders.size(), millis + " ms");
    }

    /** By hand, since it starts the program for each of them: {@code -Dhostile=each}. */
    @Test
    @EnabledIfSystemProperty(named = "hostile", matches = "each")
    void eachAloneIsToldOfWithinTwoSeconds() {
        long slowest = 0;
        String name = "";
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<HostileFiles.Hostile, String> folder : folders.entrySet()) {
            long start = System.nanoTime();
            Installed.Ended alone = small("", List.of("check", folder.getValue()));
            long took = (System.nanoTime() - start) / 1_000_000;
            if (took > slowest) {
                slowest = took;
                name = folder.getKey().toString();
            }
            if (took > 2000
                    || alone.status() != (folder.getKey().lines() == 0 ? 0 : 1)
                    || alone.out().lines().count() != folder.getKey().lines() + 1
                    || !alone.err().isEmpty()) {
                wrong.add(folder.getKey() + " took " + took + " ms: " + alone);
            }
        }
        System.out.println(folders.size() + " hostile files, each in a program of its own: the slowest, " + name
                + ", took " + slowest + " ms");
        assertEquals(List.of(), wrong);
    }

    @Test
    void eachIsToldOfInOneLineWithFileAndPlaceAndTheHonestRollsAreReadAllTheSame() {
        List<String> wrong = new ArrayList<>();
        folders.forEach((hostile, folder) -> {
            List<String> lines = told.getOrDefault(folder, List.of("nothing"));
            // A roll that can still be read is one too many in the camera of R0002, which is told of besides.
            List<String> problems = lines.subList(0, lines.size() - 1).stream()
                    .filter(it -> !it.startsWith("R0002 and R0003 are all in 35: "))
                    .toList();
            String last = lines.get(lines.size() - 1);
            boolean counted = last.contains(folder + ": 2 rolls, 3 frames, 1 day")
                    || last.contains(folder + ": 3 rolls, ")
                    || last.contains(folder + ": 2 rolls, 3 frames, 2 days");
            boolean placed = hostile.lines() == 0
                    ? problems.isEmpty() && last.endsWith("all in order")
                    : !problems.isEmpty() && problems.get(0).startsWith(hostile.place());
            boolean shortEnough = problems.stream().allMatch(it -> it.length() < 400);
            if (!counted || !placed || problems.size() != hostile.lines() || !shortEnough) {
                wrong.add(hostile + ", wanted " + hostile.lines() + " at " + hostile.place() + ":\n    "
                        + String.join(
                                "\n    ",
                                lines.stream()
                                        .map(it -> it.length() > 300 ? it.substring(0, 300) + "..." : it)
                                        .toList()));
            }
        });
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void noneLetsARawControlCharacterOrAStackTraceOut() {
        assertEquals(List.of(), dangerous(check.all()));
        assertTrue(!check.all().contains("Exception") && !check.all().contains("\tat "), check.all());
    }

    @Test
    void readingChangesNothingOnTheDisk() throws IOException {
        assertEquals(before, sums());
    }

    /**
     * All hostile profiles and rolls of one sort at once, where they do not lie in each other's way: a day goes on
     * among them.
     */
    @Test
    void aDayGoesOnAmongThem() throws IOException, InterruptedException {
        copy(scratch.resolve("honest"), scratch.resolve("among"));
        int number = 10;
        Map<String, String> names = new LinkedHashMap<>();
        for (HostileFiles.Hostile hostile : folders.keySet()) {
            String name = hostile.path()
                    .replace("bad.json", "bad" + number + ".json")
                    .replace("R0003.journal", "R00" + number + ".journal");
            Path path = scratch.resolve("among").resolve(name);
            Files.createDirectories(path.getParent());
            if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS) && number < 99) {
                hostile.maker().make(path);
                names.put(name, hostile.name());
                number++;
            }
        }
        assertTrue(names.size() > 80, names.size() + "");
        Map<String, String> there = sums("among");
        Installed.Ended day = small(
                "say\n8 125\ncam bad10\ncam 645\nload bad11\nmeter bad12\nload cn400\nyes\n4 125\nunload yes\nundo\n",
                List.of("line", "--data", "among", "--clock", "2026-09-12T16:00+02:00"));
        List<String> said = day.out().lines().toList();
        assertEquals(11, said.size(), day.toString());
        assertTrue(said.get(1).startsWith("Frame 3 on R0002"), said.get(1));
        for (int i : new int[] {2, 4, 5}) {
            assertTrue(
                    said.get(i).startsWith("Not done: ")
                            && said.get(i).contains("/bad1" + (i == 2 ? 0 : i - 3) + ".json:"),
                    said.get(i));
        }
        assertTrue(said.get(6).contains("cannot be read, and may be in 645"), said.get(6));
        String roll = said.get(8).substring("Frame 1 on ".length(), "Frame 1 on R0000".length());
        assertTrue(
                said.get(8).startsWith("Frame 1 on R")
                        && there.keySet().stream().noneMatch(it -> it.contains(roll)),
                "the numbers of hostile rolls are taken, and no new roll gets one: " + said.get(8));
        assertTrue(said.get(10).contains(roll), said.get(10));
        assertEquals(List.of(), dangerous(day.all()));
        Map<String, String> after = sums("among");
        names.keySet()
                .forEach(it -> assertEquals(there.get("among/" + it), after.get("among/" + it), it + " is as it was"));
        for (List<String> command : List.of(
                List.of("rolls"),
                List.of("rolls", "--json"),
                List.of("roll", "2"),
                List.of("meter", "ev10"),
                List.of("paths"))) {
            List<String> all = new ArrayList<>(command);
            all.addAll(List.of("--data", "among"));
            Installed.Ended ended = small("", all);
            assertTrue(ended.status() < 2 && !ended.all().contains("Exception"), ended.toString());
            assertEquals(List.of(), dangerous(ended.all()));
        }
    }

    private void line(String folder, String lines) {
        Installed.Ended ended =
                Installed.run(scratch, lines, List.of("line", "--data", folder, "--clock", "2026-09-12T15:00+02:00"));
        assertEquals(0, ended.status(), ended.toString());
    }

    /** The program as it is started by its script, but in 64 MB. */
    static Installed.Ended small(String input, List<String> arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx64m",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-jar",
                Path.of(System.getProperty("takeup.home", "target/takeup"))
                        .toAbsolutePath()
                        .resolve("takeup.jar")
                        .toString()));
        command.addAll(arguments);
        return Installed.run(Installed.process(scratch, Map.of(), command), input);
    }

    /** Characters that steer a terminal, or hide from the eye. */
    static List<String> dangerous(String text) {
        List<String> found = new ArrayList<>();
        text.codePoints()
                .filter(it -> it < ' ' && it != '\n'
                        || it >= 0x7f && it <= 0x9f
                        || it == 0x61c
                        || it == 0xfeff
                        || it >= 0x200b && it <= 0x200f
                        || it >= 0x2028 && it <= 0x202e
                        || it >= 0x2060 && it <= 0x206f
                        || it >= 0xd800 && it <= 0xdfff
                        || it == 0xfffd)
                .forEach(it -> found.add(Integer.toHexString(it)));
        return found;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
    }

    private static Map<String, String> sums() throws IOException {
        return sums("");
    }

    /** Kind, length, time and, where it is a file of a bearable size, checksum of all that lies there. */
    private static Map<String, String> sums(String under) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> all = Files.walk(scratch.resolve(under))) {
            all.forEach(path -> {
                try {
                    var attributes = Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
                    String kind = attributes.isRegularFile()
                            ? "file"
                            : attributes.isDirectory() ? "folder" : attributes.isSymbolicLink() ? "link" : "other";
                    sums.put(
                            scratch.relativize(path).toString(),
                            kind + " " + (attributes.isDirectory() ? "" : attributes.size()) + " "
                                    + attributes.lastModifiedTime()
                                    + (attributes.isRegularFile() && attributes.size() < 100_000_000
                                            ? " " + sum(path)
                                            : ""));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        return sums;
    }

    private static String sum(Path path) throws IOException {
        CRC32 crc = new CRC32();
        try (InputStream in = Files.newInputStream(path)) {
            byte[] buffer = new byte[1 << 16];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                crc.update(buffer, 0, read);
            }
        }
        return Long.toHexString(crc.getValue());
    }
}
