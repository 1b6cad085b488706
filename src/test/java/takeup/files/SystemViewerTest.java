package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class SystemViewerTest {
    @TempDir
    Path scratch;

    /** xdg-utils and macOS name their programs so. */
    @Test
    void eachSystemHasItsOwnProgram() {
        assertEquals("xdg-open", SystemViewer.program("Linux"));
        assertEquals("xdg-open", SystemViewer.program("FreeBSD"));
        assertEquals("open", SystemViewer.program("Mac OS X"));
    }

    @Test
    @Timeout(20)
    void theProgramGetsTheFileAsItsOneArgumentWhateverItIsCalled() throws Exception {
        Path seen = scratch.resolve("seen");
        Path program = Files.writeString(
                scratch.resolve("viewer"),
                "#!/bin/sh\nprintf '%s\\n' $# \"$1\" > '" + seen + ".part'; mv '" + seen + ".part' '" + seen + "'\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
        Path scan = Files.writeString(scratch.resolve("-crew $(touch x) \"; 1.jpg"), "");
        assertEquals(Optional.empty(), SystemViewer.open(program.toString(), scan));
        while (!Files.exists(seen)) {
            Thread.sleep(20);
        }
        assertEquals(List.of("1", scan.toString()), Files.readAllLines(seen));
    }

    @Test
    void whatCannotBeOpenedIsSaid() throws IOException {
        Path scan = scratch.resolve("crew_01.jpg");
        assertEquals(Optional.of(scan + " is not there any more"), SystemViewer.open("true", scan));
        Files.writeString(scan, "");
        String none = scratch.resolve("no-program").toString();
        assertTrue(SystemViewer.open(none, scan).orElseThrow().endsWith("open " + scan + " yourself"));
    }
}
