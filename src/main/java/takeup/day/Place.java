package takeup.day;

import java.util.Optional;

/**
 * Where a roll can be: a camera, and the back on it where backs change.
 *
 * @param camera the camera's key
 * @param back the back's name; empty for a fixed one
 */
public record Place(String camera, Optional<String> back) {
    @Override public String toString() {
        return camera + back.map(it -> " back " + it).orElse("");
    }
}
