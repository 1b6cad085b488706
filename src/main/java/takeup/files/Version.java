package takeup.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
        try (InputStream in = Version.class.getResourceAsStream("/takeup/version.txt")) {
            return in == null
                    ? new String[] {"unknown"}
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .strip()
                            .split("\\s+");
        } catch (IOException e) {
            return new String[] {"unknown"};
        }
    }
}
