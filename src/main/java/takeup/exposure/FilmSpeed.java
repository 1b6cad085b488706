package takeup.exposure;

import takeup.text.Plain;

/**
 * A film speed on the arithmetic scale: ISO 400, or the exposure index that a photographer rates a film at.
 *
 * @param arithmetic 0.1 to 1,000,000; larger needs less light
 */
public record FilmSpeed(double arithmetic) {
    /** ISO 100. */
    public static final FilmSpeed ISO_100 = new FilmSpeed(100);

    public FilmSpeed {
        if (!(arithmetic >= 0.1 && arithmetic <= 1_000_000)) {
            throw new IllegalArgumentException("a film speed lies between 0.1 and 1,000,000, was " + arithmetic);
        }
    }

    /** log2(S / 100): ISO 400 is 2. */
    public double stopsFrom100() {
        return Stops.of(arithmetic / 100);
    }

    /** How many stops more light a film of this box speed gets when it is rated at an index: 400 rated 200 is 1. */
    public double stopsOver(FilmSpeed index) {
        return Stops.of(arithmetic / index.arithmetic);
    }

    /**
     * Degrees of the logarithmic scale, 1 + 10 log10 S, rounded: ISO 400 is 27 (GNU units, function Sdeg, after ISO
     * 6:1993).
     */
    public int degrees() {
        return (int) Math.round(1 + 10 * Math.log10(arithmetic));
    }

    /** APEX Sv = log2(S / 3.125): ISO 100 is 5 (GNU units, definitions.units, the Exif 2.3 choice). */
    public double apex() {
        return Stops.of(arithmetic / 3.125);
    }

    @Override
    public String toString() {
        return Plain.number(arithmetic);
    }
}
