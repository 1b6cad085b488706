package takeup.day;

import java.time.LocalDate;
import java.util.Optional;
import takeup.roll.Coordinates;

/**
 * A shoot as the photographer calls it: "Regatta day", on 2026-09-12.
 *
 * @param name the name, not blank
 * @param date the day it is on
 * @param position where it is; the sun's times follow from it
 * @param client words about whom it is for; they stay on this machine unless they are asked for
 */
public record ShootInfo(String name, LocalDate date, Optional<Coordinates> position, Optional<String> client) {
    public ShootInfo {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a shoot has a name");
        }
    }
}
