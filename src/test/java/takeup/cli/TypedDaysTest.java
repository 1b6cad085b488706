package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole days as a photographer types them, read where other programs read them. {@code src/test/resources/days} holds
 * what is typed, the derivation of each figure, and under each line what its answer must hold; a warning that is not
 * named is one too many.
 */
class TypedDaysTest {
    /** Half of the last digit that the scripts give. */
    private static final double NEAR = 0.01;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"studio", "wedding", "evening", "slides"})
    void noAnswerIsFalseAndNoWarningTooMany(String day) throws IOException {
        List<String> typed = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/days", day + ".txt"))) {
            if (line.startsWith("> ")) {
                typed.add(line.substring(2));
            } else if (!line.isBlank() && !line.startsWith("#")) {
                expected.add(line);
            }
        }
        assertEquals(typed.size(), expected.size());
        List<String> answers = InProcess.run(
                        String.join("\n", typed) + "\n",
                        List.of(
                                "line",
                                "--json",
                                "--clock",
                                "2026-09-12T15:00+02:00",
                                "--data",
                                folder.resolve("folder").toString()))
                .out()
                .lines()
                .toList();
        assertEquals(typed.size(), answers.size());
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            JsonNode answer = new ObjectMapper().readTree(answers.get(i));
            assertTrue(answer.get("ok").asBoolean(), typed.get(i) + ": " + answer);
            for (String field : expected.get(i).split(" \\| ")) {
                if (!holds(answer, field.strip())) {
                    wrong.add(typed.get(i) + ": not " + field + " in " + answer.get("text") + answer.get("warnings"));
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static boolean holds(JsonNode answer, String field) {
        String[] words = field.split(" ", 2);
        if (words[0].equals("warnings")) {
            String codes = String.join(" ", answer.get("warnings").findValuesAsText("code"));
            return codes.equals(words.length == 1 ? "" : words[1]);
        }
        JsonNode value = answer.findValue(words[0]);
        if (value == null || value.isNull()) {
            return false;
        }
        return value.isNumber()
                ? Math.abs(value.asDouble() - Double.parseDouble(words[1])) < NEAR
                : value.asText().equals(words[1]);
    }
}
