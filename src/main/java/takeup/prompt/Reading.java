package takeup.prompt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.kit.MeteredPair;

/**
 * A light reading as it was typed, understood.
 *
 * @param light the light; empty for a flash reading
 * @param flash the flash meter's aperture
 * @param fill the same of a second light
 * @param flashIndex the speed that the flash meter was set to
 * @param lowestEv the lowest of several readings, EV at ISO 100; empty for a single one
 * @param preset the time that an aperture meter is preset to from now on
 * @param shown the pair that the meter showed, where it was a single one and nothing was made of it
 */
public record Reading(
        Optional<Light> light,
        Optional<Aperture> flash,
        Optional<Aperture> fill,
        Optional<FilmSpeed> flashIndex,
        OptionalDouble lowestEv,
        Optional<ExposureTime> preset,
        Optional<MeteredPair> shown) {
    /** The same with another light. */
    public Reading with(Optional<Light> other) {
        return new Reading(other, flash, fill, flashIndex, lowestEv, preset, shown);
    }

    /** Of one light, or of key and fill. */
    static Reading ofFlash(List<Aperture> read, FilmSpeed index) {
        return new Reading(
                Optional.empty(),
                Optional.of(read.get(0)),
                read.stream().skip(1).findFirst(),
                Optional.of(index),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
