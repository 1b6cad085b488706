package takeup;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Says what a test needs besides a JDK, such as {@code tmux}. Asked for in {@code @BeforeAll}, so that a class that
 * cannot run is skipped with one line.
 */
public final class Outside {

    private Outside() {}

    /** Skips the class if one of these programs is missing, and names it; with {@code -Doutside=required} it fails. */
    public static void needs(String... programs) {
        for (String program : programs) {
            if (!isOnThePath(program)) {
                String sentence = program + " is not installed";
                if ("required".equals(System.getProperty("outside"))) {
                    fail(sentence + ", and -Doutside=required asks for it");
                }
                System.out.println("skipped: " + sentence);
                abort(sentence);
            }
        }
    }

    private static boolean isOnThePath(String program) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            if (Files.isExecutable(Path.of(folder, program))) {
                return true;
            }
        }
        return false;
    }
}
