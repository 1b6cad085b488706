package takeup.exposure;

import java.util.Objects;
import takeup.text.Plain;

/**
 * A lens opening, named by the f-number on the ring: f/2.8, f/11, or by a meter's tenths past a mark: f/5.6+3/10.
 *
 * <p>Ring marks are rounded names (the ring says 11 where the optics mean 11.31), so the printed {@link #fNumber()} and
 * the exact {@link #stops()} are kept side by side. Larger stops let in less light.
 *
 * @param fNumber the number as printed, above 0
 * @param tenths tenths of a stop past the printed mark, 0 to 9
 * @param stops stops from f/1, tenths included. Av = 2 log2 N: optyczne.pl, dictionary, "Wartość ekspozycji"
 */
public record Aperture(double fNumber, int tenths, double stops) {
    public Aperture {
        if (!(fNumber > 0 && Double.isFinite(fNumber))) {
            throw new IllegalArgumentException("an f-number is above 0, was " + fNumber);
        }
        if (tenths < 0 || tenths > 9) {
            throw new IllegalArgumentException("tenths of a stop run from 0 to 9, was " + tenths);
        }
    }

    /** A mark of a ring: its print, and the stops that it stands for. */
    public static Aperture mark(double fNumber, double stops) {
        return new Aperture(fNumber, 0, stops);
    }

    /** An f-number at face value, such as f/7.7. */
    public static Aperture literal(double fNumber) {
        return new Aperture(fNumber, 0, 2 * Stops.of(fNumber));
    }

    /** This mark and so many tenths of a stop less light. */
    public Aperture plusTenths(int more) {
        return new Aperture(fNumber, more, stops - tenths / 10.0 + more / 10.0);
    }

    /** The f-number on the exact scale: 11.31 for the mark f/11. */
    public double exactFNumber() {
        return Math.pow(2, stops / 2);
    }

    /** Whether it lets in the same light as another, however both were worked out. */
    public boolean isSameMark(Aperture other) {
        return Math.abs(stops - other.stops) < Stops.TOLERANCE;
    }

    /** The number without its sign, as it is typed: {@code 5.6} or {@code 5.6.3}. */
    public String print() {
        return Plain.number(fNumber) + (tenths == 0 ? "" : "+" + tenths + "/10");
    }

    @Override
    public String toString() {
        return "f/" + print();
    }

    // Written by hand, here and in a few records of other rooms: the generated equals costs time at its first use,
    // before
    // the first paint.
    @Override
    public boolean equals(Object other) {
        return other instanceof Aperture aperture
                && Double.compare(fNumber, aperture.fNumber) == 0
                && tenths == aperture.tenths
                && Double.compare(stops, aperture.stops) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(fNumber, tenths, stops);
    }
}
