package takeup.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import takeup.handoff.MadeBy;
import takeup.journal.Archive;

/** The version of the program and its date, as the build wrote them down. */
public final class Version {
    private Version() {}

    public static String number() {
        return words()[0];
    }

    /** What is handed over from that data folder. */
    public static MadeBy madeBy(Archive archive) {
        return new MadeBy(number(), archive.id());
    }

    /** The day it was made, {@code 2026-09-12}. */
    public static String date() {
        String[] words = words();
        return words.length > 1 && words[1].length() >= 10 ? words[1].substring(0, 10) : "unknown";
    }

    /** What {@code --version} says: the version, its date, and the Java that it runs with. */
    public static String text() {
        return "takeup " + number() + " of " + date() + ", Java " + System.getProperty("java.version") + " in "
                + System.getProperty("java.home");
    }

    private static String[] words() {
        String home = System.getProperty("takeup.home", "");
        try {
            // Beside an installed program they lie in a file too: to look into its jar takes 10 ms.
            return home.isEmpty() ? wordsInJar() : words(Files.readString(Path.of(home, "lib", "version.txt")));
        } catch (IOException e) {
            return wordsInJar();
        }
    }

    private static String[] words(String text) {
        return text.replace("\r", "").strip().split("\n");
    }

    private static String[] wordsInJar() {
        try (InputStream in = Version.class.getResourceAsStream("/takeup/version.txt")) {
            return in == null ? new String[] {"unknown"} : words(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return new String[] {"unknown"};
        }
    }
}
