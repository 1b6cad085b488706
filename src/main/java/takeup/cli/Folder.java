package takeup.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where things are: the data folder after the system's custom, the installed program, its profiles. */
final class Folder {
    private Folder() {
    }

    /** The data folder: as it was asked for, else after XDG, or the custom of macOS or Windows. */
    static Path data(Optional<String> asked, Map<String, String> environment, String system, String home) {
        if (asked.isPresent()) {
            return Path.of(asked.get()).toAbsolutePath().normalize();
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", "takeup");
        }
        if (name.startsWith("windows")) {
            return absolute(environment.get("APPDATA")).orElse(Path.of(home, "AppData", "Roaming")).resolve("takeup");
        }
        return absolute(environment.get("XDG_DATA_HOME")).orElse(Path.of(home, ".local", "share")).resolve("takeup");
    }

    /** A relative path in the environment is to be ignored (XDG Base Directory Specification 0.8). */
    private static Optional<Path> absolute(String value) {
        try {
            return Optional.ofNullable(value).filter(it -> !it.isBlank()).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The data folder of this run. */
    static Path data(Optional<String> asked) {
        return data(asked, System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));
    }

    /** The folder of the shipped profiles: beside the jar, or above the classes while the program is being built. */
    static Path profiles() {
        String first = System.getProperty("takeup.home", "");
        if (!first.isEmpty()) {
            return Path.of(first, "profiles");
        }
        String classPath = System.getProperty("java.class.path", "");
        int end = classPath.indexOf(System.getProperty("path.separator", ":"));
        Path at = Path.of(end < 0 ? classPath : classPath.substring(0, end)).toAbsolutePath().getParent();
        for (int up = 0; at != null && up < 4; up++, at = at.getParent()) {
            if (Files.isDirectory(at.resolve("profiles"))) {
                return at.resolve("profiles");
            }
        }
        return Path.of("profiles").toAbsolutePath();
    }
}
