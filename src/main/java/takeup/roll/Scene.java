package takeup.roll;

import java.util.List;
import java.util.Optional;
import takeup.kit.Camera;

/**
 * What a frame shows, as far as it was said: who is on it, where it was, and for which shoot, where that is another one
 * than its roll was loaded for.
 *
 * @param people names, as they were typed
 * @param place where; unknown where it is that of the shoot
 * @param shoot the shoot, where it is not that of the roll
 * @param body the camera that took it, where the back with the roll was moved to another one since; worked out, and in
 *     no journal
 */
public record Scene(List<String> people, Place place, Optional<Assignment> shoot, Optional<Camera> body) {
    /** Nothing said. */
    public static final Scene NONE = new Scene(List.of(), Place.UNKNOWN, Optional.empty());

    /** A frame of the camera that its roll is in. */
    public Scene(List<String> people, Place place, Optional<Assignment> shoot) {
        this(people, place, shoot, Optional.empty());
    }

    public Scene {
        people = List.copyOf(people);
    }

    /** Whether nothing was said; without the generated {@code equals}, which takes milliseconds of the start. */
    public boolean isNone() {
        return people.isEmpty() && place.isUnknown() && !place.isShared() && shoot.isEmpty() && body.isEmpty();
    }

    /** With other people. */
    public Scene with(List<String> others) {
        return new Scene(others, place, shoot, body);
    }

    /** At another place. */
    public Scene with(Place other) {
        return new Scene(people, other, shoot, body);
    }

    /** For a shoot that is not that of the roll. */
    public Scene servingShoot(Optional<Assignment> other) {
        return shoot.isEmpty() && other.isEmpty() ? this : new Scene(people, place, other, body);
    }

    /** Taken with the camera that its roll is in. */
    public Scene onRoll() {
        return new Scene(people, place, shoot);
    }

    Scene takenWith(Camera camera) {
        return new Scene(people, place, shoot, Optional.of(camera));
    }
}
