package takeup.exposure;

import takeup.text.Plain;

/**
 * Aperture and time together in stops: EV 12 is f/8 at 1/60. Larger asks for less light on the film.
 *
 * <p>2^EV = N^2 / t = L S / K = E S / C, L in cd/m2, E in lux, S the speed (GNU units, definitions.units, section
 * "Photographic Exposure Value", after ANSI PH3.49-1971). An EV of light without more said is the one at ISO 100.
 *
 * @param stops the value; may be negative
 */
public record ExposureValue(double stops) {
    public ExposureValue {
        if (!Double.isFinite(stops)) {
            throw new IllegalArgumentException("an exposure value is a number, was " + stops);
        }
    }

    // Written by hand: a flash reading is compared at the start, where the generated ones take 3 ms to be made ready.
    @Override
    public boolean equals(Object other) {
        return other instanceof ExposureValue value && Double.compare(stops, value.stops) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(stops);
    }

    /** The value of a pair of settings. */
    public static ExposureValue of(Aperture aperture, ExposureTime time) {
        return new ExposureValue(aperture.stops() - time.stops());
    }

    /** The light, at ISO 100, that this value is right for on film of that speed. */
    public ExposureValue at100(FilmSpeed speed) {
        return new ExposureValue(stops - speed.stopsFrom100());
    }

    /** EV at ISO 100 of an illuminance in lux; the incident constant is C, 250 for a flat receptor. */
    public static ExposureValue ofLux(double lux, double incidentConstant) {
        return new ExposureValue(Stops.of(lux * 100 / incidentConstant));
    }

    /** EV at ISO 100 of a luminance in cd/m2; the reflected constant is K, most often 12.5. */
    public static ExposureValue ofLuminance(double candelas, double reflectedConstant) {
        return new ExposureValue(Stops.of(candelas * 100 / reflectedConstant));
    }

    /** Lux in one footcandle: one lumen on a square foot (0.3048 m a foot). */
    public static final double LUX_PER_FOOTCANDLE = 1 / (0.3048 * 0.3048);

    @Override
    public String toString() {
        return "EV " + Plain.decimals(stops, 1);
    }
}
