package takeup.roll;

import java.util.List;
import java.util.Optional;

/**
 * What a frame shows, as far as it was said: who is on it, where it was, and for which shoot, where that is another one
 * than its roll was loaded for.
 *
 * @param people names, as they were typed
 * @param place where; unknown where it is that of the shoot
 * @param shoot the shoot, where it is not that of the roll
 */
public record Scene(List<String> people, Place place, Optional<Assignment> shoot) {
    /** Nothing said. */
    public static final Scene NONE = new Scene(List.of(), Place.UNKNOWN, Optional.empty());

    public Scene {
        people = List.copyOf(people);
    }

    /** With other people. */
    public Scene with(List<String> others) {
        return new Scene(others, place, shoot);
    }

    /** At another place. */
    public Scene with(Place other) {
        return new Scene(people, other, shoot);
    }

    /** For a shoot that is not that of the roll. */
    public Scene servingShoot(Optional<Assignment> other) {
        return new Scene(people, place, other);
    }
}
