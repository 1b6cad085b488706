package takeup.day;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The film at home or in the studio that no bag holds: each lot with its batch and date. It lives as long as film does.
 *
 * @param lots how many rolls of each lot, in the order in which they came in
 * @param kept whether a fridge is kept at all; until the first film is put into it no view mentions it
 */
public record Fridge(Map<FilmLot, Integer> lots, boolean kept) {
    /** No fridge is kept. */
    public static final Fridge NONE = new Fridge(Map.of(), false);

    public Fridge {
        lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
    }

    /** With so many more rolls of a lot; fewer where negative, never less than none. */
    public Fridge plus(FilmLot lot, int rolls) {
        Map<FilmLot, Integer> all = new LinkedHashMap<>(lots);
        all.put(lot, Math.max(0, all.getOrDefault(lot, 0) + rolls));
        all.values().removeIf(it -> it == 0);
        return new Fridge(all, true);
    }

    /** The lots that hold film, those that expire first in front. */
    public List<Map.Entry<FilmLot, Integer>> filled() {
        return Bag.filled(lots);
    }
}
