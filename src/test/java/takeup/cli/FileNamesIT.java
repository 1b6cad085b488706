package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files that are not UTF-8, as an old disk or an archive of another system brings them. */
class FileNamesIT {
    @TempDir
    Path scratch;

    private Installed.Ended sh(String script) {
        String program =
                Installed.program(scratch, Map.of(), List.of()).command().get(0);
        return Installed.run(
                Installed.process(
                        scratch,
                        Map.of("TAKEUP", program, "CLOCK", "--clock=2026-09-12T15:10+02:00"),
                        List.of("sh", "-ec", script)),
                "");
    }

    private Installed.Ended day() {
        return sh("printf 'cam 35\\nload bw400\\n8 125\\nunload yes\\n' | \"$TAKEUP\" line --data day $CLOCK");
    }

    /** Java hands on a sign of its own for what it cannot read; a file of that name would be another one. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "echo say | \"$TAKEUP\" line --data \"$NAME\"",
                "\"$TAKEUP\" roll 1 --csv --data day -o \"$NAME\"",
                "\"$TAKEUP\" roll 1 --json --data day -o \"$NAME.json\"",
                "\"$TAKEUP\" check \"$NAME\"",
                "echo say | XDG_DATA_HOME=\"$PWD/$NAME\" \"$TAKEUP\" line"
            })
    void anArgumentThatCannotBeReadIsRefusedAndNoFileOfAnotherNameIsMade(String command) {
        assertEquals(0, day().status());
        Installed.Ended ended = sh("NAME=$(printf 'caf\\351'); export NAME; set +e; " + command
                + "; status=$?; ls | grep -v '^day$'; exit $status");
        assertEquals(2, ended.status(), ended.toString());
        assertEquals("", ended.out());
        assertTrue(ended.err().contains("is not UTF-8: "), ended.toString());
        assertFalse(ended.err().contains("Exception"), ended.toString());
    }

    @Test
    void whatLiesInTheDataFolderUnderSuchANameIsToldOfAndInNobodysWay() throws Exception {
        assertEquals(0, day().status());
        assertEquals(
                0,
                sh("mkdir -p day/profiles/stocks day/orders; cd day; for f in rolls/open/R0002 days/2026-09-12 exports/"
                                + " profiles/stocks/ orders/; do : > \"$f$(printf '\\351').journal\"; "
                                + ": > \"$f$(printf '\\351').json\"; done")
                        .status());
        Installed.Ended check = sh("\"$TAKEUP\" check day || true");
        assertTrue(
                check.out().contains("by its name no journal") && check.out().contains("conflicting copy"),
                () -> check.toString());
        assertTrue(check.err().isEmpty() || !check.err().contains("Exception"), check.toString());
        Installed.Ended next = sh("printf 'load bw400\\n8 125\\nunload yes\\n' | \"$TAKEUP\" line --data day $CLOCK");
        assertEquals(0, next.status(), next.toString());
        assertTrue(Files.exists(scratch.resolve("day/exports/R0002.json")));
    }

    /** A scan with such a name is a scan like another, or is named. */
    @Test
    void aScanOfSuchANameEndsNoCommand() {
        assertEquals(0, day().status());
        Installed.Ended scans = sh("mkdir film; : > film/1.jpg; : > \"film/$(printf '\\351')2.jpg\"; set +e; "
                + "\"$TAKEUP\" scans 1 film --data day; exit $?");
        assertTrue(scans.status() < 2 && scans.err().contains("2.jpg cannot be read"), scans.toString());
        assertFalse(scans.all().contains("Exception"), scans.toString());
    }
}
