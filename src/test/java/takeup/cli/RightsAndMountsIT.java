package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.Outside;

/**
 * As {@link OtherHandsIT}: what the installed program makes of a data folder in which it may not read or write, or over
 * whose files something is mounted. To root everything is permitted, so that there the program runs as another user.
 */
@Tag("long")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RightsAndMountsIT {
    private static final String LINES = "cam 645 1\nload cn400\n4 125\ncam 35\n8 125\nunload yes\n";

    @TempDir
    static Path scratch;

    private boolean isRoot;
    private Path program;

    @BeforeAll
    void aDayUnderWay() throws Exception {
        isRoot = "root".equals(System.getProperty("user.name"));
        Installed.Ended day = OtherHandsIT.line(scratch, "honest", OtherHandsIT.DAY);
        assertEquals(0, day.status(), day.toString());
        Path home = Path.of(Installed.program(scratch, Map.of(), List.of())
                        .command()
                        .get(0))
                .getParent()
                .getParent();
        OtherHandsIT.shell(scratch, "cp -a " + home + " takeup");
        program = scratch.resolve("takeup/bin/takeup");
        // The archive of a copy is its own; without one each of some fifty starts takes three times the work.
        Installed.Ended warm =
                Installed.run(Installed.process(scratch, Map.of(), List.of(program.toString(), "--warm")), "");
        assertEquals("", warm.all(), warm.toString());
        OtherHandsIT.shell(scratch, "chmod -R a+rX takeup");
        Files.setPosixFilePermissions(scratch, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private Path prepared(String deed) throws Exception {
        Path home = Files.createTempDirectory(scratch, "deed");
        Path out = Files.createDirectories(home.resolve("out"));
        OtherHandsIT.shell(scratch, "cp -a honest " + home.resolve("day") + "; chmod 755 " + home);
        Files.writeString(out.resolve("letter"), "Dear Harriet,\nthe boathouse is booked.\n");
        Files.copy(home.resolve("day/rolls/open/R0002.journal"), out.resolve("R0002.journal"));
        Files.copy(home.resolve("day/days/2026-09-12.journal"), out.resolve("2026-09-12.journal"));
        if (isRoot) {
            OtherHandsIT.shell(home, "chown -R 65534:65534 .");
        }
        return home;
    }

    private Installed.Ended run(Path home, List<String> under, String input, String... arguments) {
        List<String> command = new ArrayList<>(under);
        command.add(program.toString());
        command.addAll(List.of(arguments));
        return Installed.run(Installed.process(home, Map.of("HOME", home.toString()), command), input);
    }

    private void toldAndNothingOutsideChanged(Path home, List<String> under, String deed, String words)
            throws IOException {
        Map<String, String> before = OtherHandsIT.sums(home.resolve("out"));
        Installed.Ended check = run(home, under, "", "check", "day");
        Installed.Ended line = run(home, under, LINES, "line", "--data", "day", "--clock", "2026-09-12T15:10+02:00");
        assertEquals(before, OtherHandsIT.sums(home.resolve("out")), deed + ": " + line);
        String said = check.all() + line.all();
        assertTrue(said.contains(words), deed + ": " + check + line);
        assertTrue(check.status() < 2 && line.status() < 2, deed + ": " + check + line);
        assertFalse(said.contains("Exception"), deed + ": " + check + line);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            chmod 000 rolls/open/R0002.journal             | R0002.journal:1: cannot be read: no permission for
            chmod 400 rolls/open/R0002.journal             | NOT SAVED: no permission for
            chmod 500 rolls/open                           | NOT SAVED: no permission for
            chmod 000 rolls/open                           | day: no permission for day/rolls/open; make it yours
            chmod 000 rolls/finished/R0001.journal         | R0001.journal:1: cannot be read: no permission for
            chmod 500 rolls/finished                       | takeup: the export could not be written: no permission for
            chmod 400 days/2026-09-12.journal              | NOT SAVED: no permission for
            chmod 000 days                                 | day: no permission for day/days; make it yours
            chmod 500 exports                              | takeup: the export could not be written: no permission for
            chmod 400 lock                                 | cannot be used: no permission for
            chmod 500 .                                    | NOT SAVED: no permission for
            chmod 000 .                                    | cannot be used: no permission for
            echo {} > settings.json; chmod 000 settings.json | settings.json:1: it cannot be read: no permission for
            echo {} > clocks.json; chmod 000 clocks.json   | clocks.json cannot be read: no permission for
            mkdir -p profiles/stocks; chmod 000 profiles/stocks | profiles/stocks cannot be read: no permission for
            """)
    void whatIsNotPermittedIsSaid(String deed, String words) throws Exception {
        if (isRoot) {
            Outside.needs("setpriv");
        }
        List<String> under =
                isRoot ? List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups") : List.of();
        Path home = prepared(deed);
        OtherHandsIT.shell(home.resolve("day"), deed);
        if (isRoot) {
            OtherHandsIT.shell(home, "chown -R 65534:65534 day");
        }
        toldAndNothingOutsideChanged(home, under, deed, words);
        OtherHandsIT.shell(home, "chmod -R u+rwX day");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            mount --bind ../out/letter lock                               | lock is mounted there, and lies elsewhere
            mount --bind ../out/R0002.journal rolls/open/R0002.journal    | R0002.journal is mounted there, and lies elsewhere
            mount --bind ../out/2026-09-12.journal days/2026-09-12.journal | 2026-09-12.journal is mounted there, and lies elsewhere
            mount -t tmpfs none exports; echo 1 > exports/x; mount --bind exports/x lock | lock lies on another disk than its folder
            mount -t tmpfs none exports                                   | exports/R0001.json is missing; the next start writes it
            mount -t tmpfs none rolls/open                                | R0002.journal is gone: put it back
            mount -t tmpfs none days                                      | the journal of 2026-09-12 is gone
            mount --bind /dev/null exports/R0001.json                     | exports/R0001.json: it is no plain file
            mount --bind . .; mount -o remount,bind,ro .; cd .            | the disk can only be read; choose another data folder
            """)
    void whatIsMountedThereIsSaidAndLeftAlone(String deed, String words) throws Exception {
        Outside.needs("unshare", "mount");
        if (Installed.run(
                                Installed.process(
                                        scratch,
                                        Map.of(),
                                        List.of("unshare", "-rm", "mount", "-t", "tmpfs", "none", "/mnt")),
                                "")
                        .status()
                != 0) {
            abort("this system lets nobody mount anything");
        }
        String script = "cd day; " + deed + "; cd ..; exec \"$@\"";
        Path home = prepared(deed);
        if (isRoot) {
            OtherHandsIT.shell(home, "chown -R 0:0 .");
        }
        toldAndNothingOutsideChanged(home, List.of("unshare", "-rm", "sh", "-ec", script, "sh"), deed, words);
    }
}
