package takeup.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import takeup.console.CommandFailed;

/** Where things are: the data folder after the system's custom, the installed program, its profiles. */
public final class DataFolder {
    private DataFolder() {}

    /**
     * The data folder: as it was asked for, else after XDG, or the custom of macOS or Windows.
     *
     * @param account the home folder that the system has for the account; it counts where no variable names one
     */
    static Path data(Optional<String> asked, Map<String, String> environment, String system, String account) {
        if (asked.isPresent()) {
            return Path.of(asked.get()).toAbsolutePath().normalize();
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return home(environment, "HOME", account).resolve(Path.of("Library", "Application Support", "takeup"));
        }
        boolean isWindows = name.startsWith("windows");
        Optional<Path> custom = absolute(environment.get(isWindows ? "APPDATA" : "XDG_DATA_HOME"));
        if (custom.isPresent()) {
            return custom.get().resolve("takeup");
        }
        return isWindows
                ? home(environment, "USERPROFILE", account).resolve(Path.of("AppData", "Roaming", "takeup"))
                : home(environment, "HOME", account).resolve(Path.of(".local", "share", "takeup"));
    }

    private static Path home(Map<String, String> environment, String variable, String account) {
        Optional<Path> named = absolute(environment.get(variable));
        Optional<Path> home = named.isPresent() ? named : absolute(account);
        if (home.isEmpty()) {
            // Java says ? of an account that the system does not know, as in a container.
            throw new CommandFailed(
                    2,
                    "you have no home folder to keep the data in: set " + variable + ", or name a folder with --data");
        }
        return home.get();
    }

    /** A relative path in the environment is to be ignored (XDG Base Directory Specification 0.8). */
    private static Optional<Path> absolute(String value) {
        if (value == null || value.isBlank()) {
            return Optional.empty();
        }
        try {
            Path path = Path.of(value);
            return path.isAbsolute() ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The data folder of this run. */
    public static Path data(Optional<String> asked) {
        Path folder = data(asked, System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home"));
        if (folder.toString().indexOf('\ufffd') >= 0) {
            throw new CommandFailed(
                    2, "the name of the data folder " + folder + " is not UTF-8: name another one with --data");
        }
        return folder;
    }

    /** The folder of the shipped profiles: beside the jar, or above the classes while the program is being built. */
    public static Path profiles() {
        String first = System.getProperty("takeup.home", "");
        if (!first.isEmpty()) {
            return Path.of(first, "profiles");
        }
        String classPath = System.getProperty("java.class.path", "");
        int end = classPath.indexOf(System.getProperty("path.separator", ":"));
        Path at = Path.of(end < 0 ? classPath : classPath.substring(0, end))
                .toAbsolutePath()
                .getParent();
        for (int up = 0; at != null && up < 4; up++, at = at.getParent()) {
            if (Files.isDirectory(at.resolve("profiles"))) {
                return at.resolve("profiles");
            }
        }
        return Path.of("profiles").toAbsolutePath();
    }
}
