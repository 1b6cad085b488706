package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the data folder is. XDG: Base Directory Specification 0.8, "Environment variables"; a relative path there is to be ignored. */
class FolderTest {

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

    @Test
    void theFolderThatWasAskedForGoesFirst() {
        check("/regatta", Optional.of("/boathouse/../regatta"), Map.of("XDG_DATA_HOME", "/data"), "Linux");
    }

    @Test
    void theShippedProfilesAreFoundWhileTheProgramIsBuilt() {
        assertTrue(Files.exists(Folder.profiles().resolve("cameras/645.json")), Folder.profiles().toString());
    }

    private static void check(String expected, Optional<String> asked, Map<String, String> environment, String system) {
        assertEquals(Path.of(expected), Folder.data(asked, environment, system, "/home/ines"));
    }
}
