package takeup.exposure;

import java.util.OptionalDouble;

/**
 * What lies between the light and the film: the index it is rated at, the losses on the way, the deviation wanted, and
 * the film's own failure in long exposures. The order is settled: light at the index, then bias, filters and extension,
 * which give the metered time; then reciprocity, once.
 *
 * @param index the exposure index
 * @param filterStops what the filters take, not below 0
 * @param extensionStops what the distance from lens to film takes, not below 0
 * @param biasStops deliberate deviation; + is more light on the film
 * @param reciprocity the film's behaviour in long exposures
 */
public record LightPath(
        FilmSpeed index, double filterStops, double extensionStops, double biasStops, Reciprocity reciprocity) {
    /** The metered time in seconds that the light asks for at an aperture. */
    public double metered(ExposureValue ev100, Aperture aperture) {
        return Stops.factor(
                aperture.stops() - ev100.stops() - index.stopsFrom100() + filterStops + extensionStops + biasStops);
    }

    /** The time to set for it, in seconds, after reciprocity; empty where no time is long enough. */
    public OptionalDouble corrected(ExposureValue ev100, Aperture aperture) {
        return reciprocity.corrected(metered(ev100, aperture));
    }

    /**
     * Light on the film against light asked for (bias included in what is asked), in stops; + is more. The set time is
     * first turned back through reciprocity.
     */
    public double error(ExposureValue ev100, Aperture aperture, ExposureTime time) {
        return Stops.of(reciprocity.worth(time.exactSeconds()) / metered(ev100, aperture));
    }

    /**
     * Whether an error would be made up: in light that asks for a time past ten times the film's last published point,
     * of a time that lies past that point itself.
     */
    public boolean isMadeUp(ExposureValue ev100, Aperture aperture, ExposureTime time) {
        return reciprocity.beyond(metered(ev100, aperture), 10)
                && reciprocity.beyond(reciprocity.worth(time.exactSeconds()));
    }

    /** The same for flash, where the time does not count: the set aperture against the flash meter's. */
    public double flashError(FlashLight flash, Aperture aperture) {
        double asked = flash.stops()
                + index.stopsFrom100()
                - flash.index().stopsFrom100()
                - filterStops
                - extensionStops
                - biasStops;
        return asked - aperture.stops();
    }
}
