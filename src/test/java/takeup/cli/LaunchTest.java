package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the start script has Java compile, as a Java hears it that only writes down what it is told. */
class LaunchTest {
    @TempDir
    Path home;

    @BeforeEach
    void install() throws IOException {
        Files.createDirectory(home.resolve("bin"));
        Files.copy(Path.of("src/main/launch/takeup"), home.resolve("bin/takeup"));
        program("java/bin/java", "#!/bin/sh\nfor word; do echo \"$word\"; done\n");
        program("bin/takeup", Files.readString(home.resolve("bin/takeup")));
    }

    private void program(String name, String text) throws IOException {
        Path file = home.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private List<String> told(String... words) throws IOException {
        List<String> command =
                new ArrayList<>(List.of("sh", home.resolve("bin/takeup").toString()));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    /** The one compiler is for what ends at once; a thousand pictures are matched in half the time with all of them. */
    @ParameterizedTest(name = "takeup {0}: one compiler {1}, from so many usual calls on {2}")
    @CsvSource({
        "'', true, 2",
        "--data day, true, 2",
        "--version, true, 2",
        "paths, true, 2",
        "line --json, true, 0.5",
        "frames --json, true, ''",
        "--data day rolls, true, ''",
        "scans match R0007, false, 4",
        "--data day scans R0007, false, 4",
        "digital R0007, false, 4"
    })
    void whatIsLongIsCompiledAsMuchAsItPays(String words, boolean isOneCompiler, String threshold) throws IOException {
        List<String> told = told(words.isEmpty() ? new String[0] : words.split(" "));
        assertEquals(isOneCompiler, told.contains("-XX:TieredStopAtLevel=1"), told.toString());
        assertEquals(
                threshold.isEmpty() ? List.of() : List.of("-XX:CompileThresholdScaling=" + threshold),
                told.stream().filter(it -> it.contains("CompileThreshold")).toList());
    }

    @Test
    void theVersionIsToldWithoutAJvm() throws IOException {
        program("java/release", "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"17.0.9\"\n");
        program("lib/version.txt", "1.2.3\n2026-09-12T00:00:00Z\n");
        for (String asked : List.of("--version", "-V", "version")) {
            assertEquals(List.of("takeup 1.2.3 of 2026-09-12, Java 17.0.9 in " + home.resolve("java")), told(asked));
        }
    }

    /** A build names its Java by the home, who starts it has a link to it on the path. */
    @Test
    void anArchiveServesItsJavaByEachOfItsNames() throws IOException {
        program("java/release", "JAVA_VERSION=\"17.0.9\"\n");
        program("takeup.jar", "");
        Files.setLastModifiedTime(home.resolve("takeup.jar"), FileTime.fromMillis(0));
        program("lib/a.jar", "");
        program("lib/takeup.jsa", "archive");
        program("lib/version.txt", "1.2.3\n2026-09-12T00:00:00Z\n1c0ffee\n");
        Files.createSymbolicLink(home.resolve("link"), home.resolve("java/bin/java"));
        program("another", "");
        for (String maker : List.of("java/bin/java", "link", "another")) {
            program("lib/archive.txt", home.resolve(maker) + "\n17.0.9 1c0ffee " + home + " a.jar\ntakeup.jsa\n");
            boolean isUsed = told("rolls").contains("-XX:SharedArchiveFile=" + home.resolve("lib/takeup.jsa"));
            assertEquals(!maker.equals("another"), isUsed, maker);
        }
    }

    /** One that is too old would end in a stack trace. */
    @ParameterizedTest(name = "Java {0} is started: {1}")
    @CsvSource({"1.8.0_402, false", "11.0.22, false", "16.0.2, false", "17, true", "17.0.9, true", "25-ea, true"})
    void aJavaThatIsTooOldIsNotStarted(String version, boolean isStarted) throws IOException {
        program("java/release", "JAVA_VERSION=\"" + version + "\"\n");
        List<String> told = told("rolls");
        assertEquals(isStarted, told.contains("rolls"), told.toString());
        assertEquals(
                isStarted ? 0 : 1,
                told.stream()
                        .filter(it -> it.endsWith("let JAVA_HOME name one"))
                        .count());
    }

    /** Java knows a jar by its time and size, and those of two builds can agree. */
    @Test
    void anArchiveOfAnotherBuildIsPassedOverThoughItsJarLooksTheSame() throws IOException {
        program("java/release", "JAVA_VERSION=\"17.0.9\"\n");
        program("takeup.jar", "");
        Files.setLastModifiedTime(home.resolve("takeup.jar"), FileTime.fromMillis(0));
        program("lib/a.jar", "");
        program("lib/takeup.jsa", "archive");
        program("lib/archive.txt", home.resolve("java/bin/java") + "\n17.0.9 1c0ffee " + home + " a.jar\ntakeup.jsa\n");
        String archive = "-XX:SharedArchiveFile=" + home.resolve("lib/takeup.jsa");

        program("lib/version.txt", "1.2.3\n2026-09-12T00:00:00Z\n1c0ffee\n");
        assertTrue(told("rolls").contains(archive), told("rolls").toString());
        program("lib/version.txt", "1.2.3\n2026-09-12T00:00:00Z\n2c0ffee\n");
        assertFalse(told("rolls").contains(archive), told("rolls").toString());

        program("lib/version.txt", "1.2.3\n2026-09-12T00:00:00Z\n1c0ffee\n");
        program("lib/b.jar", "");
        assertFalse(told("rolls").contains(archive), "one jar more: " + told("rolls"));
        Files.delete(home.resolve("lib/b.jar"));
        FileTime later = FileTime.fromMillis(System.currentTimeMillis() + 5000);
        Files.setLastModifiedTime(home.resolve("lib/takeup.jsa"), later);
        assertFalse(told("rolls").contains(archive), "written after its text: " + told("rolls"));
    }

    /** What is no name of a profile or a roll is left out, as the program leaves it out. */
    @Test
    void theWordsForATabAreNamesOfFilesAndNeedNoJvm() throws IOException {
        for (String file : List.of(
                "profiles/stocks/cn400.json",
                "profiles/stocks/bw400.json",
                "day/profiles/stocks/mine.json",
                "day/profiles/stocks/cn400.json",
                "day/profiles/stocks/MINE.json",
                "day/profiles/stocks/a b.json",
                "day/profiles/stocks/-x.json",
                "day/rolls/open/R0002.journal",
                "day/rolls/finished/AB0001.journal",
                "day/rolls/finished/R0001.journal.bad",
                "day/orders/ORD-001.json",
                "day/orders/ORD-001.html")) {
            program(file, "");
        }
        String data = home.resolve("day").toString();
        assertEquals(List.of("bw400", "cn400", "mine"), told("completion", "--words", "stocks", "--data", data));
        assertEquals(List.of("AB0001", "R0002"), told("completion", "--words", "rolls", "--data", data));
        assertEquals(List.of("ORD-001"), told("completion", "--words", "orders", "--data", data));
        assertEquals(List.of(), told("completion", "--words", "rolls", "--data", data + "/nowhere"));
        assertTrue(told("completion", "--words", "days", "--data", data).contains("days"), "the program refuses it");
    }

    @Test
    void theWordsOfTheLineReachTheProgramAsTheyAre() throws IOException {
        List<String> told = told("--data", "a day", "scans", "R0007");
        assertTrue(told.contains("-XX:+UseSerialGC"), told.toString());
        assertEquals(List.of("--data", "a day", "scans", "R0007"), told.subList(told.size() - 4, told.size()));
    }

    /** A pipe has neither modes nor a size; what is handed over is that of a terminal alone. */
    @Test
    void whereThereIsNoTerminalNothingOfItIsHandedOver() throws IOException {
        for (List<String> words : List.of(List.<String>of(), List.of("--data", "day"), List.of("line"))) {
            List<String> told = told(words.toArray(String[]::new));
            assertFalse(told.stream().anyMatch(it -> it.startsWith("-Dtakeup.terminal")), told.toString());
        }
    }
}
