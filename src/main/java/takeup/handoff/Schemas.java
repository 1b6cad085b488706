package takeup.handoff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The JSON Schemas (draft 2020-12) of all that takeup writes for other programs, by name. */
public final class Schemas {
    private static final List<String> NAMES =
            List.of(("roll frames order orders parcels sender rolls line meter stocks "
                            + "stock cameras camera plan prepare day-end scans-proposed scans-accepted slates digital "
                            + "rating review keys themes waiting costs")
                    .split(" "));

    private static final Pattern VERSION = Pattern.compile("\"title\": \"takeup-[a-z-]+, version ([\\d.]+)\"");
    private static final Pattern FIRST_SENTENCE = Pattern.compile("\"description\": \"([^\"]*?)\\. ");

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

    /**
     * The version of the document of that name: 1.1 has all that 1 has, and the fields that its schema names as new.
     */
    public static String version(String name) {
        return first(VERSION, name);
    }

    /** What the document of that name is, in a sentence without its full stop. */
    public static String purpose(String name) {
        return first(FIRST_SENTENCE, name);
    }

    private static String first(Pattern pattern, String name) {
        Matcher found = pattern.matcher(text("/takeup/schema/" + name + ".json"));
        if (!found.find()) {
            throw new IllegalStateException("the schema " + name + " does not say " + pattern);
        }
        return found.group(1);
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
