package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.Outside;

/**
 * A shell may start a program without standard input, output or errors ({@code <&-}); takeup then refuses before it
 * touches a file.
 */
class ClosedStreamsIT {
    private static final String INPUT = "takeup: standard input is closed: start takeup with one, such as </dev/null\n";
    private static final String OUTPUT =
            "takeup: standard output is closed: start takeup with one, such as >/dev/null\n";

    @TempDir
    Path scratch;

    @ParameterizedTest(name = "takeup {0}")
    @ValueSource(strings = {"", "line --data day", "--data day rolls", "demo", "order list", "--help", "--version"})
    void eachCommandRefusesWithOneSentence(String arguments) {
        refuses("\"$TAKEUP\" " + arguments);
    }

    /** Some systems have it as sh. It opens the script in the place of closed errors. */
    @Test
    void theSameWhereTheShellIsBash() {
        Outside.needs("bash");
        refuses("bash \"$TAKEUP\" line --data day");
        refuses("bash --posix \"$TAKEUP\" rolls --data day");
    }

    private void refuses(String command) {
        assertEquals(new Installed.Ended(2, "", INPUT), sh(command + " <&-"));
        assertEquals(new Installed.Ended(2, "", OUTPUT), sh(command + " >&-"));
        assertEquals(new Installed.Ended(2, "", ""), sh(command + " 2>&-"));
        assertEquals(new Installed.Ended(2, "", INPUT), sh(command + " <&- >&-"));
        assertEquals(new Installed.Ended(2, "", ""), sh(command + " <&- >&- 2>&-"));
        assertFalse(Files.exists(scratch.resolve("day")), "a data folder was made");
    }

    @Test
    void whatIsEmptyOrThrownAwayIsNotClosed() {
        assertEquals(
                new Installed.Ended(0, "", ""), sh("\"$TAKEUP\" line --data day </dev/null >/dev/null 2>/dev/null"));
    }

    @Test
    void withoutTheStartScriptNoLineIsReadOutOfAFileOfJavas() {
        String line = "\"$JAVA_HOME/bin/java\" -jar \"${TAKEUP%/bin/takeup}/takeup.jar\" line --data day";
        assertEquals(new Installed.Ended(2, "", INPUT), sh(line + " <&-"));
        assertEquals(new Installed.Ended(2, "", OUTPUT), sh(line + " >&-"));
        assertFalse(Files.exists(scratch.resolve("day")), "a data folder was made");
    }

    private Installed.Ended sh(String script) {
        String program =
                Installed.program(scratch, Map.of(), List.of()).command().get(0);
        ProcessBuilder shell = Installed.process(scratch, Map.of("TAKEUP", program), List.of("sh", "-c", script));
        return Installed.run(shell, "cam 35\n");
    }
}
