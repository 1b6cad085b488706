package takeup.roll;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The shoot that a roll belongs to: "Regatta day", 2026-09-12.
 *
 * @param name as the photographer calls it
 * @param date the day it is on
 * @param client words about whom it is for; no export holds them unless they are asked for
 * @param place where it is
 */
public record Assignment(String name, LocalDate date, Optional<String> client, Place place) {
    /** A shoot of which nobody said where it is. */
    public Assignment(String name, LocalDate date, Optional<String> client) {
        this(name, date, client, Place.UNKNOWN);
    }

    /** Whether both are the same shoot, whatever else is known of it. */
    public boolean isSameShoot(Assignment other) {
        return name.equalsIgnoreCase(other.name) && date.equals(other.date);
    }
}
