package takeup.files;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The program with which this system shows a picture: {@code xdg-open} (freedesktop.org) or, on a Mac, {@code open}. It
 * is started directly, with the file as its one argument, and not waited for.
 */
public final class SystemViewer {
    private static final Path NOTHING = Path.of("/dev/null");

    private SystemViewer() {}

    /** Opens a file; why that cannot be, or nothing. */
    public static Optional<String> open(Path file) {
        return open(program(System.getProperty("os.name", "")), file);
    }

    static String program(String system) {
        return system.toLowerCase(Locale.ROOT).startsWith("mac") ? "open" : "xdg-open";
    }

    static Optional<String> open(String program, Path file) {
        // A whole path begins with a slash, so it is never read as an option.
        Path whole = file.toAbsolutePath().normalize();
        if (!Files.isRegularFile(whole)) {
            return Optional.of(whole + " is not there any more");
        }
        try {
            new ProcessBuilder(List.of(program, whole.toString()))
                    .redirectInput(NOTHING.toFile())
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(program + " cannot be started here: open " + whole + " yourself");
        }
    }
}
