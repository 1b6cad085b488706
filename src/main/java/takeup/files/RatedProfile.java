package takeup.files;

import java.util.Optional;
import takeup.json.Json;
import takeup.json.JsonText;

/** A stock's profile with another usual index: that one number is replaced, and all else stays letter for letter. */
public final class RatedProfile {
    private static final String FIELD = "\"usualEI\"";

    private RatedProfile() {}

    /** The changed text; empty where the number cannot be found for sure. */
    public static Optional<String> of(String text, String index) {
        for (int at = text.indexOf(FIELD); at >= 0; at = text.indexOf(FIELD, at + 1)) {
            int from = at + FIELD.length();
            while (from < text.length() && (Character.isWhitespace(text.charAt(from)) || text.charAt(from) == ':')) {
                from++;
            }
            int to = from;
            while (to < text.length() && "0123456789.eE+-".indexOf(text.charAt(to)) >= 0) {
                to++;
            }
            String changed = text.substring(0, from) + index + text.substring(to);
            if (to > from && says(changed, index)) {
                return Optional.of(changed);
            }
        }
        return Optional.empty();
    }

    private static boolean says(String text, String index) {
        try {
            return JsonText.read(text) instanceof Json.Obj profile
                    && profile.field("usualEI")
                            .filter(it -> it instanceof Json.Num number && number.value() == Double.parseDouble(index))
                            .isPresent();
        } catch (JsonText.NotJson e) {
            return false;
        }
    }
}
