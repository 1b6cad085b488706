package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.console.CommandFailed;

/**
 * Where the data folder is. XDG: Base Directory Specification 0.8, "Environment variables"; a relative path there is to
 * be ignored.
 */
class DataFolderTest {

    @ParameterizedTest(name = "{0}, {1}={2}: {3}")
    @CsvSource(textBlock = """
        Linux,      XDG_DATA_HOME, /data/ines,     /data/ines/takeup
        Linux,      XDG_DATA_HOME, ines,           /home/ines/.local/share/takeup
        Linux,      XDG_DATA_HOME, '',             /home/ines/.local/share/takeup
        Linux,      NOTHING,       /data,          /home/ines/.local/share/takeup
        FreeBSD,    NOTHING,       /data,          /home/ines/.local/share/takeup
        Mac OS X,   XDG_DATA_HOME, /data/ines,     /home/ines/Library/Application Support/takeup
        Windows 11, APPDATA,       /roaming/ines,  /roaming/ines/takeup
        Windows 11, NOTHING,       /data,          /home/ines/AppData/Roaming/takeup
        WINDOWS,    NOTHING,       /data,          /home/ines/AppData/Roaming/takeup
        """)
    void theDataFolderIsWhereTheSystemKeepsSuchThings(String system, String variable, String value, String expected) {
        check(expected, Optional.empty(), Map.of(variable, value), system);
    }

    @ParameterizedTest(name = "{0}, {1}={2}: {3}")
    @CsvSource(textBlock = """
        Linux,      HOME,        /boathouse, /boathouse/.local/share/takeup
        Linux,      HOME,        boathouse,  /home/ines/.local/share/takeup
        Linux,      HOME,        '',         /home/ines/.local/share/takeup
        Linux,      USERPROFILE, /boathouse, /home/ines/.local/share/takeup
        Mac OS X,   HOME,        /boathouse, /boathouse/Library/Application Support/takeup
        Windows 11, USERPROFILE, /boathouse, /boathouse/AppData/Roaming/takeup
        Windows 11, HOME,        /boathouse, /home/ines/AppData/Roaming/takeup
        """)
    void theHomeThatAVariableNamesGoesBeforeThatOfTheAccount(
            String system, String variable, String value, String expected) {
        check(expected, Optional.empty(), Map.of(variable, value), system);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"Linux, HOME", "Mac OS X, HOME", "Windows 11, USERPROFILE"})
    void anAccountWithoutAHomeIsToldWhatToSet(String system, String variable) {
        Optional<String> nothing = Optional.empty();
        CommandFailed unfit = assertThrows(CommandFailed.class, () -> DataFolder.data(nothing, Map.of(), system, "?"));
        assertEquals(
                "you have no home folder to keep the data in: set " + variable + ", or name a folder with --data",
                unfit.getMessage());
        assertEquals(2, unfit.status());
        assertEquals(Path.of("/regatta"), DataFolder.data(Optional.of("/regatta"), Map.of(), system, "?"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"Linux, XDG_DATA_HOME", "Windows 11, APPDATA"})
    void withoutAHomeTheFolderOfTheEnvironmentIsEnough(String system, String variable) {
        Map<String, String> environment = Map.of(variable, "/data");
        assertEquals(Path.of("/data/takeup"), DataFolder.data(Optional.empty(), environment, system, "?"));
    }

    @Test
    void theFolderThatWasAskedForGoesFirst() {
        check("/regatta", Optional.of("/boathouse/../regatta"), Map.of("XDG_DATA_HOME", "/data"), "Linux");
    }

    @Test
    void theShippedProfilesAreFoundWhileTheProgramIsBuilt() {
        assertTrue(
                Files.exists(DataFolder.profiles().resolve("cameras/645.json")),
                DataFolder.profiles().toString());
    }

    private static void check(String expected, Optional<String> asked, Map<String, String> environment, String system) {
        assertEquals(Path.of(expected), DataFolder.data(asked, environment, system, "/home/ines"));
    }
}
