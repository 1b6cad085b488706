package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.Scale;

/**
 * The aperture ring of a lens: its marks, widest first, and the scale that its prints are read on.
 *
 * @param marks at least one, widest first
 * @param scale full, half or third stops; empty where the marks are irregular
 */
public record Ring(List<Aperture> marks, Optional<Scale> scale) {
    public Ring {
        marks = List.copyOf(marks);
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("a ring has at least one mark");
        }
    }

    /** The marks of a scale between two ends, which are marks in any case. */
    public static Ring between(double widest, double narrowest, Scale scale) {
        Aperture first = scale.apertureOrAny(widest);
        Aperture last = scale.apertureOrAny(narrowest);
        if (!(first.stops() < last.stops())) {
            throw new IllegalArgumentException("the widest aperture has the smaller number");
        }
        List<Aperture> marks = new ArrayList<>();
        marks.add(first);
        for (Aperture mark : scale.apertures()) {
            if (mark.stops() > first.stops() + 1e-9 && mark.stops() < last.stops() - 1e-9) {
                marks.add(mark);
            }
        }
        marks.add(last);
        return new Ring(marks, Optional.of(scale));
    }

    /** Irregular marks as they are engraved; a print on no scale is taken at face value. */
    public static Ring of(List<Double> prints) {
        List<Aperture> marks = new ArrayList<>();
        for (double print : prints) {
            Aperture mark = Scale.anyAperture(print);
            if (!marks.isEmpty() && mark.stops() <= marks.get(marks.size() - 1).stops()) {
                throw new IllegalArgumentException("the marks run from the widest to the narrowest");
            }
            marks.add(mark);
        }
        return new Ring(marks, Optional.empty());
    }

    /** The mark of this ring with that print, also by another print of it (f/6.8 for f/6.7). */
    public Optional<Aperture> mark(double print) {
        Optional<Aperture> onScale = onScale(print);
        double known = onScale.isPresent() ? onScale.get().fNumber() : print;
        for (Aperture mark : marks) {
            if (Math.abs(mark.fNumber() - known) < 1e-6 * known) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** What a print stands for here: a mark of the ring, a mark of its scale beyond the ends, or its face value. */
    public Aperture read(double print) {
        Optional<Aperture> mark = mark(print);
        return mark.isPresent() ? mark.get() : onScale(print).orElse(Aperture.literal(print));
    }

    private Optional<Aperture> onScale(double print) {
        return scale.isPresent() ? scale.get().aperture(print) : Optional.empty();
    }

    /** The mark next to a number of stops. */
    public Aperture nearest(double stops) {
        Aperture best = marks.get(0);
        for (Aperture mark : marks) {
            if (Math.abs(mark.stops() - stops) < Math.abs(best.stops() - stops) - 1e-9) {
                best = mark;
            }
        }
        return best;
    }

    /** The most open mark. */
    public Aperture widest() {
        return marks.get(0);
    }

    /** The most closed mark. */
    public Aperture narrowest() {
        return marks.get(marks.size() - 1);
    }

    // Written by hand as in RollId: the generated equals costs time at its first use, before the first paint.
    @Override
    public boolean equals(Object other) {
        return other instanceof Ring ring && marks.equals(ring.marks) && scale.equals(ring.scale);
    }

    @Override
    public int hashCode() {
        return 31 * marks.hashCode() + scale.hashCode();
    }
}
