package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where the program is started from, and in which locale: on a bare machine none is set, and a name with an accent is a
 * name like any other.
 */
class LocaleIT {
    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(strings = {"LC_ALL=C", "LC_ALL=POSIX", "LC_ALL= LC_CTYPE= LANG="})
    void anAccentInTheNameOfAFolderIsNoTroubleAndTheAnswerStaysPlain(String locale) {
        Installed.Ended ended = sh(
                locale,
                "mkdir \"$Z\" && cd \"$Z\" && printf 'cam 35\\nload bw400\\n8 125 ; Zo\\303\\253 at the "
                        + "oars\\n' | \"$TAKEUP\" --data \"../$Z\" line"
                        + " && \"$TAKEUP\" --data . check && ls rolls/open");
        assertEquals(0, ended.status(), ended.toString());
        assertEquals("", ended.err());
        assertTrue(ended.out().contains("Zo\\u{eb} at the oars"), ended.out());
        assertTrue(ended.out().chars().allMatch(it -> it < 0x7f), ended.out());
        assertTrue(ended.out().endsWith("R0001.journal\n"), ended.out());
    }

    /** Java itself ends without a word there. */
    @Test
    void inAFolderThatWasDeletedTheProgramSaysSo() {
        Installed.Ended ended = sh("LC_ALL=C.UTF-8", "mkdir gone && cd gone && rmdir ../gone && \"$TAKEUP\" rolls");
        assertEquals(1, ended.status(), ended.toString());
        assertTrue(
                ended.err().contains("takeup: the folder that you are in was deleted: go to another (cd)\n"),
                ended.toString());
    }

    private Installed.Ended sh(String locale, String script) {
        ProcessBuilder shell = Installed.process(
                scratch, Map.of(), List.of("sh", "-c", "Z=$(printf 'Zo\\303\\253'); export " + locale + "; " + script));
        shell.environment()
                .put(
                        "TAKEUP",
                        Installed.program(scratch, Map.of(), List.of())
                                .command()
                                .get(0));
        return Installed.run(shell, "");
    }
}
