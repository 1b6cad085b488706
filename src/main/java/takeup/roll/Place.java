package takeup.roll;

import java.util.Optional;

/**
 * Where something was photographed. Where somebody was is private: the coordinates leave the data folder only where
 * that was asked for.
 *
 * @param name as people call it: boathouse
 * @param coordinates where on earth
 * @param isShared whether exports and sidecars may hold the coordinates
 */
public record Place(Optional<String> name, Optional<Coordinates> coordinates, boolean isShared) {
    /** Not known. */
    public static final Place UNKNOWN = new Place(Optional.empty(), Optional.empty(), false);

    /** A place by its name alone. */
    public static Place named(String name) {
        return new Place(Optional.of(name), Optional.empty(), false);
    }

    /** Coordinates without a name, for this machine alone. */
    public static Place at(Optional<Coordinates> coordinates) {
        return new Place(Optional.empty(), coordinates, false);
    }

    public boolean isUnknown() {
        return name.isEmpty() && coordinates.isEmpty();
    }

    /** The same, with coordinates that may leave the folder or not. */
    public Place sharing(boolean share) {
        return new Place(name, coordinates, share);
    }

    /** The coordinates as far as they may leave the folder. */
    public Optional<Coordinates> shared() {
        return isShared ? coordinates : Optional.empty();
    }
}
