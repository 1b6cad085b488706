package takeup.day;

import java.util.Optional;
import takeup.roll.Roll;

/**
 * Where a roll can be: a camera, and the back on it where backs change.
 *
 * @param camera the camera's key
 * @param back the back's name; empty for a fixed one
 */
public record CameraPlace(String camera, Optional<String> back) {
    /** Where a roll is or was. */
    public static CameraPlace of(Roll roll) {
        return new CameraPlace(roll.camera().key(), roll.back());
    }

    /** As it is typed behind {@code cam}: {@code 645 2}. */
    public String typed() {
        return camera + (back.isPresent() ? " " + back.get() : "");
    }

    // Written by hand, here and in RollId: the generated equals of a record costs time at its first use, before the
    // first paint.
    @Override
    public boolean equals(Object other) {
        return other instanceof CameraPlace place && camera.equals(place.camera) && back.equals(place.back);
    }

    @Override
    public int hashCode() {
        return 31 * camera.hashCode() + back.hashCode();
    }

    @Override
    public String toString() {
        return camera + (back.isPresent() ? " back " + back.get() : "");
    }
}
