package takeup.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import takeup.disk.Folders;
import takeup.files.Version;
import takeup.text.Hidden;

/**
 * A mistake in the program itself: three lines for the photographer, and a file with the stack trace for whoever mends
 * it.
 *
 * @param folder the data folder, in which all is safe that was acknowledged
 * @param where where the file is, or that there is none
 */
record CrashReport(Path folder, String where) {
    private static final String WHAT = "made a mistake and had to stop.";

    /**
     * Writes the file into {@code reports} of the data folder, or among the system's temporary files where there is no
     * such folder.
     */
    static CrashReport write(Throwable mistake, Path folder, OffsetDateTime at) {
        try {
            // Other users can create temporary files too, so there the name must be one that they cannot foresee.
            Path file = Files.isDirectory(folder)
                    ? folder.resolve("reports")
                            .resolve("report-" + at.toLocalDateTime().toString().replace(':', '-') + ".txt")
                    : Files.createTempFile("takeup-report-", ".txt");
            Folders.replace(file, text(mistake).getBytes(StandardCharsets.UTF_8));
            return new CrashReport(folder, "The report is " + file + ".");
        } catch (IOException | RuntimeException second) {
            return new CrashReport(folder, "No report could be written.");
        }
    }

    /** Three lines on the terminal that the screen left: what happened, what is safe, where the report is. */
    List<String> forTerminal() {
        return lines("takeup " + WHAT);
    }

    /** The same for a console, which names the program before each line. */
    List<String> forConsole() {
        return lines(WHAT);
    }

    private List<String> lines(String what) {
        return List.of(what, "Everything that was acknowledged is safe in " + folder + ".", where);
    }

    /** The words of an exception may hold what was typed. */
    private static String text(Throwable mistake) {
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new PrintWriter(trace));
        StringBuilder lines = new StringBuilder("takeup ")
                .append(Version.number())
                .append(" on Java ")
                .append(System.getProperty("java.version"))
                .append('\n');
        trace.toString()
                .lines()
                .forEach(it -> lines.append(Hidden.shown(it.replace('\t', ' '))).append('\n'));
        return lines.toString();
    }
}
