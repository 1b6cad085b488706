package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrashReportTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");

    @TempDir
    Path folder;

    @Test
    void theReportHoldsTheMistakeAndNothingThatSteersATerminal() throws IOException {
        CrashReport told = CrashReport.write(new IllegalStateException("bow \u001b[2J seat"), folder, AT);
        Path report = folder.resolve("reports/report-2026-09-12T15-10-03.txt");
        assertEquals(
                List.of(
                        "takeup made a mistake and had to stop.",
                        "Everything that was acknowledged is safe in " + folder + ".",
                        "The report is " + report + "."),
                told.forTerminal());
        assertEquals("made a mistake and had to stop.", told.forConsole().get(0));
        assertTrue(Files.readString(report).contains("bow \\u{1b}[2J seat"), Files.readString(report));
    }

    /** No data folder is made for a report, and no name among the passing files can be taken before. */
    @Test
    void withoutADataFolderEachReportHasANameOfItsOwn() throws IOException {
        Path none = folder.resolve("none");
        Path first = report(CrashReport.write(new IllegalStateException("one"), none, AT));
        Path second = report(CrashReport.write(new IllegalStateException("two"), none, AT));
        assertFalse(Files.exists(none));
        assertTrue(Files.readString(first).contains("one")
                && Files.readString(second).contains("two"));
        Files.delete(first);
        Files.delete(second);
    }

    private static Path report(CrashReport told) {
        return Path.of(
                told.where().substring("The report is ".length(), told.where().length() - 1));
    }
}
