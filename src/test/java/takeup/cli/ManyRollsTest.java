package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.ShippedShelf;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/**
 * So many rolls that several are read at once: what is said of them stands in their order, and a damaged one keeps its
 * place.
 */
@Tag("slow")
class ManyRollsTest {
    private static final int ROLLS = 90;
    private static final String DAMAGED = "R0041";

    @TempDir
    static Path folder;

    /**
     * Each roll has a frame with its own number for a note; of one the record of a frame is damaged, of another that of
     * its loading.
     */
    @BeforeAll
    static void shoot() throws IOException {
        List<String> lines = new ArrayList<>(List.of("cam 35"));
        for (int roll = 1; roll <= ROLLS; roll++) {
            lines.addAll(List.of("load bw400", "8 125 ; roll " + roll, "5.6 60", "unload yes"));
        }
        Archive archive = new Archive(folder);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (JournalStore disk = JournalStore.take(archive)) {
            new PromptPipe(
                            disk,
                            StartupState.of(disk, new Kit(new ShippedShelf())).state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            new Console(said, said, Map.of("LC_ALL", "C.UTF-8")),
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
        }
        damage(DAMAGED, "5.6");
        // Once in the first line, once in the record itself.
        damage("R0077", "\"loaded\"");
        damage("R0077", "\"loaded\"");
    }

    private static void damage(String roll, String what) throws IOException {
        Path file = folder.resolve("rolls/finished").resolve(roll + ".journal");
        String text = Files.readString(file);
        assertTrue(text.contains(what), text);
        Files.writeString(file, text.replaceFirst(Pattern.quote(what), "#".repeat(what.length())));
    }

    @Test
    void framesStandInTheOrderOfTheRolls() {
        List<String> expected = new ArrayList<>();
        for (int roll = 1; roll <= ROLLS; roll++) {
            if (roll != 77) {
                expected.add(roll + " exposed roll " + roll);
                expected.addAll(roll == 41 ? List.of() : List.of(roll + " exposed null"));
            }
        }
        assertEquals(
                expected,
                found("\"roll\":\"R00(\\d+)\".*\"kind\":\"(\\w+)\".*\"note\":\"?([^\",]+)", 1, "frames", "--json"));
        assertEquals(
                expected.stream().filter(it -> !it.endsWith("null")).toList(),
                found("(?s)R00(\\d+).*?(expose)d.*?(roll \\d+)", 1, "frames").stream()
                        .map(it -> it.replace("expose", "exposed"))
                        .toList());
    }

    @Test
    void rollsStandInTheOrderOfLoading() {
        List<String> expected = IntStream.rangeClosed(1, ROLLS)
                .filter(it -> it != 77)
                .mapToObj(it -> it + " finished " + (it == 41 ? 1 : 2))
                .toList();
        assertEquals(
                expected,
                found(
                        "\"roll\" : \"R00(\\d+)\",\\s+\"state\" : \"(\\w+)\",[^{]*?\"framesUsed\" : (\\d+)",
                        1,
                        "rolls",
                        "--json"));
        assertEquals(expected, found("R00(\\d+)  (\\w+) .*?(\\d+) of 36", 1, "rolls"));
    }

    /** What the answer says, as its groups; what is damaged is said beside it, in the same order. */
    private static List<String> found(String pattern, int status, String... command) {
        ByteArrayOutputStream answer = new ByteArrayOutputStream();
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        List<String> arguments = new ArrayList<>(List.of("--data", folder.toString()));
        arguments.addAll(List.of(command));
        assertEquals(
                status,
                Subcommands.run(
                        arguments.toArray(String[]::new), new Console(answer, errors, Map.of("LC_ALL", "C.UTF-8"))));
        List<String> told = errors.toString(StandardCharsets.UTF_8)
                .lines()
                .map(it -> it.substring(8, 13))
                .distinct()
                .toList();
        assertEquals(List.of(DAMAGED, "R0077"), told, errors.toString(StandardCharsets.UTF_8));
        return Pattern.compile(pattern)
                .matcher(answer.toString(StandardCharsets.UTF_8))
                .results()
                .map(ManyRollsTest::words)
                .toList();
    }

    private static String words(MatchResult found) {
        return Integer.parseInt(found.group(1)) + " " + found.group(2) + " " + found.group(3);
    }
}
