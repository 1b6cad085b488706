package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every line of some long scripts is answered as version 1.0.0 answered it, in words and as JSON, byte for byte. The
 * scripts hold every word of the prompt, most of what is refused or asked, and two days of a regatta.
 *
 * <p>{@code src/test/resources/answers} holds for each script what was typed, behind {@code >}, and under it the
 * answer. The answers were taken from the installed program of version 1.0.0 (built from the commit whose id begins
 * with d7636ce), in an empty folder with the clock at 15:00 on regatta day and in the zone Europe/Stockholm. They are
 * its word, and are never taken again from newer code: where a sentence is changed on purpose, change its lines by
 * hand, in the commit that changes the program, and read each of them. A line that is added to a script is answered by
 * that version too, as long as it knows the word; what is newer has tests of its own.
 *
 * <p>When a test fails, what the program says now lies in {@code target/answers}, to be compared by {@code diff -r
 * src/test/resources/answers target/answers}.
 */
class AnsweredBeforeTest {
    private static final Path ANSWERS = Path.of("src/test/resources/answers");
    private static final Path NOW = Path.of("target/answers");

    @TempDir
    Path scratch;

    @ParameterizedTest(name = "{0}.{1}")
    @CsvSource(textBlock = """
            answers/every-word,  plain
            answers/every-word,  json
            answers/rarely-said, plain
            answers/rarely-said, json
            outside/regatta-day, plain
            outside/regatta-day, json
            outside/whole-roll,  plain
            outside/whole-roll,  json
            """)
    void everyLineIsAnsweredAsBefore(String script, String kind) throws IOException {
        List<String> typed = typed(Path.of("src/test/resources", script + ".txt"));
        List<String> arguments = new ArrayList<>(List.of(
                "line",
                "--clock",
                "2026-09-12T15:00+02:00",
                "--data",
                scratch.resolve("folder").toString()));
        if (kind.equals("json")) {
            arguments.add("--json");
        }
        Installed.Ended ended = InProcess.run(String.join("\n", typed) + "\n", arguments);
        List<String> answers = ended.out().lines().toList();
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < typed.size() && i < answers.size(); i++) {
            all.append("> ")
                    .append(typed.get(i))
                    .append('\n')
                    .append(answers.get(i))
                    .append('\n');
        }
        String name = script.substring(script.indexOf('/') + 1) + "." + kind + ".txt";
        Files.createDirectories(NOW);
        Files.writeString(NOW.resolve(name), all);
        assertEquals(
                "",
                FirstDifference.of(name, Files.readString(ANSWERS.resolve(name)), all.toString())
                        .orElse(""));
        assertEquals(typed.size(), answers.size(), "answers");
        assertEquals("", ended.err());
    }

    /** What stands behind {@code >}, or, in a table, in the first column. */
    private static List<String> typed(Path script) throws IOException {
        List<String> lines = Files.readAllLines(script);
        List<String> typed = lines.stream()
                .filter(it -> it.startsWith("> "))
                .map(it -> it.substring(2))
                .toList();
        if (typed.isEmpty()) {
            typed = lines.stream()
                    .filter(it -> !it.isBlank() && !it.startsWith("#"))
                    .map(it -> it.split(" \\| ", 2)[0].stripTrailing())
                    .toList();
        }
        assertTrue(typed.size() > 80, script::toString);
        return typed;
    }
}
