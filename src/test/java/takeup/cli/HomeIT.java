package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whose home the rolls go to where no data folder was named: that of the environment, not of the account. */
class HomeIT {
    @TempDir
    Path scratch;

    @Test
    void homeIsFollowed() {
        assumeTrue(System.getProperty("os.name").equals("Linux"), "elsewhere it is another folder of the home");
        ProcessBuilder program = Installed.program(scratch, Map.of(), List.of("line"));
        program.environment().remove("XDG_DATA_HOME");
        Installed.Ended ended = Installed.run(program, "cam 35\nload bw400\n8 125 ; Tarek, cox\n");
        assertEquals(0, ended.status(), ended.toString());
        assertTrue(Files.exists(scratch.resolve(".local/share/takeup/rolls/open/R0001.journal")), ended.toString());
    }

    @ParameterizedTest(name = "takeup {0}")
    @ValueSource(strings = {"", "line", "rolls"})
    void withoutAHomeThereIsNoFolderAndTheProgramSaysWhatToDo(String arguments) {
        List<String> words = arguments.isEmpty() ? List.of() : List.of(arguments);
        // As Java has it for an account that the system does not know; Java notes the option in a line of its own.
        ProcessBuilder program = Installed.program(scratch, Map.of("JDK_JAVA_OPTIONS", "-Duser.home=?"), words);
        program.environment().keySet().removeAll(List.of("HOME", "XDG_DATA_HOME"));
        Installed.Ended ended = Installed.run(program, "cam 35\n");
        assertEquals(2, ended.status(), ended.toString());
        assertEquals("", ended.out());
        String said = "takeup: you have no home folder to keep the data in: set HOME, or name a folder with --data";
        assertEquals(
                List.of(said),
                ended.err().lines().filter(it -> !it.startsWith("NOTE: ")).toList());
    }
}
