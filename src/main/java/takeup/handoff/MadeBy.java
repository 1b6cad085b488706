package takeup.handoff;

import java.util.Optional;

/**
 * Where something that is handed over comes from.
 *
 * @param version of the program, such as 1.0.0
 * @param folder the id of the data folder; empty where there is none
 */
public record MadeBy(String version, Optional<String> folder) {
    /** By that version, from no data folder. */
    public static MadeBy version(String version) {
        return new MadeBy(version, Optional.empty());
    }
}
