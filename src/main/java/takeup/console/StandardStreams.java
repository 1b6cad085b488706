package takeup.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Standard input and output, where one of them was closed by whoever started Java without the start script, which
 * refuses that. The first file that Java opens, its own modules, then stands in its place, and would be read as what
 * was typed.
 */
public final class StandardStreams {
    private StandardStreams() {}

    /** What is closed and what to do about it, in the words of the start script. */
    public static Optional<String> closed() {
        if (isJavasOwn(0)) {
            return Optional.of("standard input is closed: start takeup with one, such as </dev/null");
        }
        if (isJavasOwn(1)) {
            return Optional.of("standard output is closed: start takeup with one, such as >/dev/null");
        }
        return Optional.empty();
    }

    private static boolean isJavasOwn(int descriptor) {
        Path modules = Path.of(System.getProperty("java.home"), "lib", "modules");
        try {
            return Files.isSameFile(Path.of("/dev/fd/" + descriptor), modules);
        } catch (IOException e) {
            return false;
        }
    }
}
