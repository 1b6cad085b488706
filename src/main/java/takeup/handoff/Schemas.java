package takeup.handoff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The JSON Schemas (draft 2020-12) of the files that takeup hands over, by name: {@code roll}, {@code order},
 * {@code frames}.
 */
public final class Schemas {
    private static final List<String> NAMES = List.of("roll", "order", "frames");

    private Schemas() {}

    /** The names that there are, in order. */
    public static List<String> names() {
        return NAMES;
    }

    /** The schema of that name as text; empty for a name that is not among {@link #names()}. */
    public static Optional<String> named(String name) {
        // Only a name of our own list becomes a path.
        return NAMES.contains(name) ? Optional.of(text("/takeup/schema/" + name + ".json")) : Optional.empty();
    }

    private static String text(String path) {
        try (InputStream in = Schemas.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program: install it again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
