package takeup.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The version of the program, as the build wrote it down. */
final class Version {
    private Version() {
    }

    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("/takeup/version.txt")) {
            return in == null ? "unknown" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            return "unknown";
        }
    }
}
