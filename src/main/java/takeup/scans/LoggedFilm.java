package takeup.scans;

import java.util.List;

/**
 * What a film has to show, by its log.
 *
 * @param slots in the order of the scanner
 * @param room how many pictures beside those it may hold
 */
record LoggedFilm(List<Slot> slots, int room) {
    LoggedFilm {
        slots = List.copyOf(slots);
    }
}
