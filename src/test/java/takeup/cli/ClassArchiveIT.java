package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive of loaded classes makes the start quicker; whatever becomes of it, nobody sees it. */
class ClassArchiveIT {
    @TempDir
    Path scratch;

    /**
     * Each damage done to the archive of a copy of the program; the answer to a line stays the same, and nothing else
     * is printed.
     */
    @Test
    void anArchiveThatDoesNotFitIsPassedOverWithoutAWord() throws IOException {
        Path home = copied("here");
        assertEquals("status 0\n--- stdout\n--- stderr\n", warm(home).toString());
        Path archive = archive(home);
        byte[] whole = Files.readAllBytes(archive);
        assertTrue(whole.length > 1_000_000, "the archive holds next to nothing: " + whole.length);
        String right = answer(home, "whole");
        assertTrue(
                right.contains("\n--- stderr\n") && right.startsWith("status 0") && right.contains("645 reflex"),
                right);

        assertEquals(right, answer(home, "cut", archive, Arrays.copyOf(whole, whole.length / 2)));
        assertEquals(right, answer(home, "empty", archive, new byte[0]));
        byte[] garbage = whole.clone();
        Arrays.fill(garbage, 0, 4096, (byte) 0x55);
        assertEquals(right, answer(home, "garbage", archive, garbage));
        FileTime made = Files.getLastModifiedTime(home.resolve("takeup.jar"));
        // of another build: the program's own jar is newer than what the archive remembers
        Files.setLastModifiedTime(home.resolve("takeup.jar"), FileTime.fromMillis(System.currentTimeMillis() + 5000));
        assertEquals(right, answer(home, "stale", archive, whole));
        Files.delete(archive);
        assertEquals(right, answer(home, "missing"));
        Files.setLastModifiedTime(home.resolve("takeup.jar"), made);
        Path text = home.resolve("lib").resolve("archive.txt");
        String fits = Files.readString(text);
        Files.writeString(text, fits.replaceFirst("[0-9.]+ ", "99.0.1 "));
        assertEquals(right, answer(home, "made for another Java", archive, whole));
        Files.writeString(text, fits);
        Path moved = scratch.resolve("there");
        Files.move(home, moved);
        assertEquals(right, answer(moved, "moved"));
        assertEquals("status 0\n--- stdout\n--- stderr\n", warm(moved).toString());
        assertEquals(right, answer(moved, "warm again"));
    }

    /** From an archive the program runs on the boot class path, where some libraries do not find what they look for. */
    @Test
    void sidecarsAreWrittenWhereThereIsAnArchive() throws IOException {
        Path home = Path.of(System.getProperty("takeup.home"));
        archive(home);
        new FakeLab(scratch.resolve("back")).scan("crew_01.tif", 0.4);
        run(home, "cam 645\nload cn400\nm 8 125\n8 125 ; bow\nunload yes\n", "line");

        Installed.Ended ended = run(home, "yes\n", "scans", "1", "back", "--accept", "--sidecars", "full");

        assertTrue(ended.out().contains("1 sidecar written"), ended.toString());
        assertEquals(0, ended.status(), ended.toString());
    }

    private Installed.Ended run(Path home, String input, String... arguments) {
        List<String> command =
                new ArrayList<>(List.of(home.resolve("bin").resolve("takeup").toString()));
        command.addAll(List.of(arguments));
        command.addAll(List.of("--data", "day"));
        return Installed.run(Installed.process(scratch, Map.of(), command), input);
    }

    /** The scripts for shells lie ready, and the words for a Tab are the names of files: as the program has them. */
    @Test
    void completionAndVersionAreAnsweredAsTheProgramAnswersThemWithoutAJvm() {
        Path home = Path.of(System.getProperty("takeup.home"));
        Installed.run(scratch, "cam 645\nload cn400\nunload yes\nload cn400\n", List.of("line", "--data", "day"));
        List<String> asked = List.of(
                "completion bash",
                "completion zsh",
                "completion fish",
                "completion --words stocks --data day",
                "completion --words cameras",
                "completion --words meters",
                "completion --words labs",
                "completion --words rolls --data day",
                "completion --words orders --data day",
                "--help",
                "-h",
                "help",
                "help order new",
                "help help",
                "help --help",
                "rolls --help",
                "stock new -h");
        for (String words : asked) {
            List<String> java = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC",
                    "-jar",
                    home.resolve("takeup.jar").toString()));
            java.addAll(List.of(words.split(" ")));
            Installed.Ended program = Installed.run(Installed.process(scratch, Map.of(), java), "");
            // Where a JVM is asked for, a JAVA_HOME that is not there ends the start script.
            Installed.Ended script = Installed.run(
                    Installed.program(scratch, Map.of("JAVA_HOME", "/nowhere"), List.of(words.split(" "))), "");
            assertEquals(program.toString(), script.toString(), words);
        }
    }

    /** The packages hold the installed folder and nothing that fits one machine only. */
    @Test
    void thePackageHoldsAllButTheArchive() throws IOException {
        Path home = Path.of(System.getProperty("takeup.home"));
        Path zip;
        try (Stream<Path> packages = Files.list(home.getParent())) {
            zip = packages.filter(it -> it.getFileName().toString().matches("takeup-[0-9.]+\\.zip"))
                    .findFirst()
                    .orElseThrow();
        }
        try (ZipFile file = new ZipFile(zip.toFile());
                Stream<Path> installed = Files.walk(home)) {
            List<String> packed = file.stream()
                    .filter(it -> !it.isDirectory())
                    .map(it -> it.getName())
                    .sorted()
                    .toList();
            assertEquals(
                    installed
                            .filter(Files::isRegularFile)
                            .map(it -> "takeup/" + home.relativize(it))
                            .filter(it -> !it.matches(".*(\\.jsa|\\.aot|/archive\\.txt|/lib/completion\\..*)"))
                            .sorted()
                            .toList(),
                    packed);
        }
    }

    private Installed.Ended warm(Path home) {
        return Installed.run(
                Installed.process(
                        scratch,
                        Map.of(),
                        List.of(home.resolve("bin").resolve("takeup").toString(), "--warm")),
                "");
    }

    private String answer(Path home, String data, Path archive, byte[] bytes) throws IOException {
        Files.deleteIfExists(archive);
        Files.write(archive, bytes);
        return answer(home, data);
    }

    private String answer(Path home, String data) {
        return Installed.run(
                        Installed.process(
                                scratch,
                                Map.of(),
                                List.of(
                                        home.resolve("bin").resolve("takeup").toString(),
                                        "--data",
                                        scratch.resolve(data).toString(),
                                        "line")),
                        "cam 645\nload cn400\n.\n")
                .toString();
    }

    private Path copied(String name) throws IOException {
        Path from = Path.of(System.getProperty("takeup.home"));
        Path to = scratch.resolve(name);
        try (Stream<Path> all = Files.walk(from)) {
            all.forEach(it -> {
                try {
                    Files.copy(it, to.resolve(from.relativize(it).toString()), StandardCopyOption.COPY_ATTRIBUTES);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        Files.delete(archive(to));
        return to;
    }

    /** The one archive; its name stands in the text beside it. */
    private static Path archive(Path home) throws IOException {
        try (Stream<Path> lib = Files.list(home.resolve("lib"))) {
            List<Path> archives =
                    lib.filter(it -> it.toString().matches(".*\\.(jsa|aot)")).toList();
            assertEquals(1, archives.size(), archives::toString);
            List<String> lines = Files.readAllLines(home.resolve("lib").resolve("archive.txt"));
            assertEquals(archives.get(0).getFileName().toString(), lines.get(2));
            return archives.get(0);
        }
    }
}
