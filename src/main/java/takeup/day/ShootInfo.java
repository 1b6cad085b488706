package takeup.day;

import java.time.LocalDate;
import java.util.Optional;
import takeup.roll.Assignment;
import takeup.roll.Coordinates;
import takeup.roll.Place;

/**
 * A shoot as the photographer calls it: "Regatta day", on 2026-09-12.
 *
 * @param name the name, not blank
 * @param date the day it is on
 * @param place where it is; the sun's times follow from its coordinates
 * @param client words about whom it is for; they stay on this machine unless they are asked for
 */
public record ShootInfo(String name, LocalDate date, Place place, Optional<String> client) {
    public ShootInfo {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a shoot has a name");
        }
    }

    /** A shoot whose place has no name. */
    public ShootInfo(String name, LocalDate date, Optional<Coordinates> position, Optional<String> client) {
        this(name, date, Place.at(position), client);
    }

    /** Where on earth it is. */
    public Optional<Coordinates> position() {
        return place.coordinates();
    }

    /** As a roll that was loaded for it keeps it: coordinates that are not shared stay with the day. */
    public Assignment assignment() {
        Place ofRoll = place.isShared() ? place : new Place(place.name(), Optional.empty(), false);
        return new Assignment(name, date, client, ofRoll);
    }
}
