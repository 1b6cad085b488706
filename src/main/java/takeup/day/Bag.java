package takeup.day;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.kit.FilmSize;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * The film in the bag: what is there, and from which lot each roll in a camera came.
 *
 * @param lots how many rolls of each lot, in the order in which they came in; those used up are 0
 * @param loaded the lot of each roll that was taken for a camera and is still in it
 * @param kept whether the photographer keeps a bag at all; until the first {@code bag add} no view mentions it
 */
public record Bag(Map<FilmLot, Integer> lots, Map<RollId, FilmLot> loaded, boolean kept) {
    /** No bag is kept. */
    public static final Bag NONE = new Bag(Map.of(), Map.of(), false);

    public Bag {
        lots = Collections.unmodifiableMap(new LinkedHashMap<>(lots));
        loaded = Collections.unmodifiableMap(new LinkedHashMap<>(loaded));
    }

    /** With so many more rolls of a lot; fewer where negative, never less than none. */
    public Bag plus(FilmLot lot, int rolls) {
        Map<FilmLot, Integer> all = new LinkedHashMap<>(lots);
        all.put(lot, Math.max(0, all.getOrDefault(lot, 0) + rolls));
        return new Bag(all, loaded, true);
    }

    /** With a roll of a lot gone into a camera. */
    public Bag into(RollId roll, FilmLot lot) {
        Map<RollId, FilmLot> all = new LinkedHashMap<>(loaded);
        all.put(roll, lot);
        return new Bag(plus(lot, -1).lots, all, true);
    }

    /** With a roll out of its camera again. */
    Bag finished(RollId roll) {
        if (!loaded.containsKey(roll)) {
            return this;
        }
        Map<RollId, FilmLot> all = new LinkedHashMap<>(loaded);
        all.remove(roll);
        return new Bag(lots, all, kept);
    }

    /** How many rolls of a stock and size there are. */
    public int rolls(String stock, FilmSize size) {
        int count = 0;
        for (Map.Entry<FilmLot, Integer> lot : lots.entrySet()) {
            count += lot.getKey().is(stock, size) ? lot.getValue() : 0;
        }
        return count;
    }

    /** The lot that a roll is taken from: what expires first goes first, what has no date last. */
    public Optional<FilmLot> next(String stock, FilmSize size) {
        Optional<FilmLot> best = Optional.empty();
        for (Map.Entry<FilmLot, Integer> lot : lots.entrySet()) {
            if (lot.getValue() > 0
                    && lot.getKey().is(stock, size)
                    && (best.isEmpty() || month(lot.getKey()).isBefore(month(best.get())))) {
                best = Optional.of(lot.getKey());
            }
        }
        return best;
    }

    /** A lot of that batch that holds film. */
    public Optional<FilmLot> ofBatch(String stock, FilmSize size, String batch) {
        return lots.entrySet().stream()
                .filter(it -> it.getValue() > 0 && it.getKey().is(stock, size))
                .map(Map.Entry::getKey)
                .filter(it -> it.batch().filter(batch::equalsIgnoreCase).isPresent())
                .findFirst();
    }

    private static YearMonth month(FilmLot lot) {
        return lot.expires().orElse(YearMonth.of(9999, 12));
    }

    /**
     * What the frames that are left on a roll in a camera cost: 4 of 16 on a roll of 24.80 are 6.20. Empty without a
     * price, and past the end.
     */
    public Optional<BigDecimal> costLeft(Roll roll) {
        return Optional.ofNullable(loaded.get(roll.id()))
                .flatMap(FilmLot::price)
                .filter(it -> roll.framesLeft() > 0)
                .map(it -> it.multiply(BigDecimal.valueOf(
                                Math.min(roll.framesLeft(), roll.film().framesNominal())))
                        .divide(BigDecimal.valueOf(roll.film().framesNominal()), 2, RoundingMode.HALF_UP));
    }

    /** On a new day, without the lots that are used up. */
    Bag carried() {
        Map<FilmLot, Integer> all = new LinkedHashMap<>(lots);
        all.values().removeIf(it -> it == 0);
        return new Bag(all, loaded, kept);
    }

    /** The lots that hold film, those that expire first in front. */
    public List<Map.Entry<FilmLot, Integer>> filled() {
        return filled(lots);
    }

    static List<Map.Entry<FilmLot, Integer>> filled(Map<FilmLot, Integer> lots) {
        List<Map.Entry<FilmLot, Integer>> all = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : lots.entrySet()) {
            if (lot.getValue() > 0) {
                all.add(Map.entry(lot.getKey(), lot.getValue()));
            }
        }
        if (all.size() > 1) {
            all.sort((a, b) -> inOrder(a.getKey(), b.getKey()));
        }
        return all;
    }

    /** By stock and size, and then by the month of expiry. */
    private static int inOrder(FilmLot one, FilmLot other) {
        if (!one.stock().equals(other.stock())) {
            return one.stock().compareTo(other.stock());
        }
        return one.size() == other.size()
                ? month(one).compareTo(month(other))
                : one.size().compareTo(other.size());
    }
}
