package takeup.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The tables that are printed for all films of a kind, and so for none in particular (digitaltruth.com, Reciprocity;
 * the starts at 1/2 s are assumed). A film that carries one of them is answered with a caution: such tables differ from
 * a film's own, and among each other, by up to two stops at a minute.
 */
enum GenericReciprocity {
    BLACK_AND_WHITE(new Reciprocity.Table(points(0.5, 0.5, 1, 2, 10, 60, 100, 1200))),
    COLOUR_NEGATIVE(new Reciprocity.Opening(points(0.5, 0, 1, 1, 10, 2, 100, 2.5))),
    COLOUR_REVERSAL(new Reciprocity.Opening(points(0.5, 0, 1, 0.5, 10, 1.5, 100, 2.5)));

    /** The mildest of the printed tables, for modern film (paladix.cz, "Schwarzschilduv efekt"). */
    private static final Reciprocity.Opening MILD =
            new Reciprocity.Opening(points(1, 0, 2, 0.3333, 8, 0.5, 15, 0.6667, 30, 1, 60, 1.5, 120, 2));

    private final Reciprocity table;

    GenericReciprocity(Reciprocity table) {
        this.table = table;
    }

    private static List<Reciprocity.Point> points(double... numbers) {
        List<Reciprocity.Point> points = new ArrayList<>();
        for (int at = 0; at < numbers.length; at += 2) {
            points.add(new Reciprocity.Point(numbers[at], numbers[at + 1]));
        }
        return points;
    }

    /** Which of them a film carries; empty for figures of its own. */
    static Optional<GenericReciprocity> of(Reciprocity film) {
        Reciprocity times = film instanceof DevelopmentChange changed ? changed.times() : film;
        for (GenericReciprocity generic : values()) {
            if (generic.table.equals(times)) {
                return Optional.of(generic);
            }
        }
        return Optional.empty();
    }

    /**
     * Of reversal film, which bears no error, the least that may be needed; empty where the table's own figure is said.
     */
    OptionalDouble leastCorrected(double metered) {
        return this == COLOUR_REVERSAL ? MILD.corrected(metered) : OptionalDouble.empty();
    }

    /** The same for stops to open instead. */
    double leastOpened(double metered) {
        return MILD.lost(metered);
    }
}
