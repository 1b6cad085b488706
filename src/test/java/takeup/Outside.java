package takeup;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

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
                missing(program + " is not installed");
            }
        }
    }

    private static void missing(String sentence) {
        if ("required".equals(System.getProperty("outside"))) {
            fail(sentence + ", and -Doutside=required asks for it");
        }
        System.out.println("skipped: " + sentence);
        abort(sentence);
    }

    /**
     * A Python that has this module, on the path or that of the system; without one the test is skipped or fails as
     * above.
     */
    public static String pythonWith(String module) {
        for (String python : List.of("python3", "/usr/bin/python3")) {
            try {
                Process asked = new ProcessBuilder(python, "-c", "import " + module)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
                if (asked.waitFor() == 0) {
                    return python;
                }
            } catch (IOException e) {
                // There is no such Python: the next one is asked.
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        missing("Python's " + module + " is not installed");
        return "";
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
