package takeup.files;

import java.util.HashMap;
import java.util.Map;

/**
 * The environment variables as the user has them. In the locale C Java cannot name a file with an accent in it, so
 * there the start script gives Java another {@code LC_ALL}, and tells here which one the user's was.
 */
public final class ProcessEnvironment {
    private ProcessEnvironment() {}

    /** All variables of this run. */
    public static Map<String, String> variables() {
        return variables(System.getenv(), System.getProperty("takeup.locale", ""));
    }

    /** All variables, with this locale where it is not empty. */
    static Map<String, String> variables(Map<String, String> given, String locale) {
        if (locale.isEmpty()) {
            return given;
        }
        Map<String, String> all = new HashMap<>(given);
        all.put("LC_ALL", locale);
        return all;
    }
}
