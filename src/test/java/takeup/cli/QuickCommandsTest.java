package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.console.Console;

/** What the quick commands load: each of these takes as long as the rest of a short answer. */
class QuickCommandsTest {
    private static final List<String> LINES = List.of(
            "paths",
            "check",
            "rolls",
            "rolls --json",
            "frames",
            "frames --json",
            "roll 1",
            "roll 1 --json",
            "review",
            "order",
            "order list",
            "order list --json",
            "find cn400 f4",
            "stock bw400",
            "camera 645",
            "day-end");

    /**
     * The generated equals of records, Java's own comparators made of functions, which no archive holds, and picocli
     * with what describes the commands to it.
     */
    private static final List<String> UNWANTED = List.of(
            "java.lang.runtime.ObjectMethods",
            "java.util.Comparator$$Lambda",
            "picocli.CommandLine ",
            "takeup.cli.Subcommands ",
            "takeup.cli.PartOfDay ");

    @TempDir
    Path scratch;

    @Test
    void nothingIsLoadedThatTakesAsLongAsTheAnswer() throws Exception {
        TypedRolls.type(
                scratch, "cam 645", "load cn400", "m 5.6 125", "4 125 ; bow seat", "8 60", "8 30", "unload yes");
        TypedRolls.run(scratch, "scans", "1", "--good", "1,2", "--thin", "3");
        TypedRolls.type(scratch, "cam 35", "load bw400", "8 125 ; stroke");
        Path log = scratch.resolve("loaded");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load:file=" + log,
                        "-XX:TieredStopAtLevel=1",
                        "-Dtakeup.home=" + System.getProperty("takeup.home", ""),
                        "-cp",
                        System.getProperty("java.class.path"),
                        QuickCommandsTest.class.getName(),
                        scratch.toString())
                .inheritIO()
                .start();
        assertEquals(0, process.waitFor());
        List<String> loaded = Files.readAllLines(log);
        assertTrue(loaded.size() > 1000, "only " + loaded.size() + " classes");
        assertEquals(
                List.of(),
                loaded.stream()
                        .filter(it -> UNWANTED.stream().anyMatch(name -> it.contains(" " + name)))
                        .toList());
    }

    /** Answers each line, which nobody reads. */
    public static void main(String[] arguments) {
        Console nobody = new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Map.of());
        for (String line : LINES) {
            Optional<Integer> status = QuickCommands.run((line + " --data=" + arguments[0]).split(" "), nobody);
            if (!status.equals(Optional.of(0))) {
                System.err.println(line + ": " + status);
                System.exit(1);
            }
        }
    }
}
