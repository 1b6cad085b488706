package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;

/**
 * What the screen must stand, as a small part of the full figures; {@code -Dendurance=1} is the whole, and takes an
 * hour.
 */
@Tag("long")
class EnduranceIT {
    private static final String SHARE = System.getProperty("endurance", "0.03");

    @TempDir
    Path scratch;

    @BeforeAll
    static void needs() {
        Outside.needs("python3", "strace", "bash");
    }

    @ParameterizedTest
    @ValueSource(strings = {"undo", "drafts", "paste", "torn", "suspend", "windows", "saved", "first_run", "faults"})
    void holds(String goal) throws IOException, InterruptedException {
        List<String> command = List.of(
                "python3",
                Path.of("src/test/outside/endurance.py").toAbsolutePath().toString(),
                "--share",
                SHARE,
                "--only",
                goal,
                Installed.program(scratch, Map.of(), List.of()).command().get(0));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertTrue(said.startsWith(goal + ": "), said);
    }
}
