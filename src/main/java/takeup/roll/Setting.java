package takeup.roll;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.kit.Filter;
import takeup.kit.Lens;

/**
 * How a camera is set: aperture and time, the lens, and what is on it. What is not known is empty.
 *
 * @param aperture the lens opening
 * @param time the exposure time
 * @param lens the lens on the camera
 * @param zoomMm the focal length that was named; a lens of one focal length needs none
 * @param distanceM the distance of the subject in metres
 * @param filters what is on the lens
 * @param extension how far it is drawn out
 * @param biasStops deliberate deviation; + is more light on the film
 * @param flash whether flash is on
 * @param tripod whether the camera stands on one
 */
public record Setting(
        Optional<Aperture> aperture,
        Optional<ExposureTime> time,
        Optional<Lens> lens,
        OptionalDouble zoomMm,
        OptionalDouble distanceM,
        List<Filter> filters,
        Extension extension,
        double biasStops,
        boolean flash,
        boolean tripod) {
    /** Nothing known. */
    public static final Setting NONE = new Setting(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(),
            Extension.NONE,
            0,
            false,
            false);

    public Setting {
        filters = List.copyOf(filters);
        if (!(Math.abs(biasStops) <= 20)) {
            throw new IllegalArgumentException("a bias goes up to 20 stops");
        }
    }

    /** The focal length in use, in mm; empty for a zoom whose setting was not named. */
    public OptionalDouble focalMm() {
        if (zoomMm.isPresent()) {
            return zoomMm;
        }
        return lens.isPresent() && !lens.get().isZoom()
                ? OptionalDouble.of(lens.get().shortestMm())
                : OptionalDouble.empty();
    }

    /** What the filters take, in stops. */
    public double filterStops() {
        double sum = 0;
        for (Filter filter : filters) {
            sum += filter.stops();
        }
        return sum;
    }

    /** What the extension takes, in stops; 0 where it cannot be known. */
    public double extensionStops() {
        return extension.stops(focalMm()).orElse(0);
    }

    /** The setting after a change. Another lens forgets the focal length that was named for the one before. */
    public Setting with(SettingPatch change) {
        boolean otherLens = change.lens().isPresent() && !change.lens().equals(lens);
        return new Setting(
                change.aperture().or(() -> aperture),
                change.time().or(() -> time),
                change.lens().or(() -> lens),
                change.zoomMm().isPresent() ? change.zoomMm() : otherLens ? OptionalDouble.empty() : zoomMm,
                change.distanceM().isPresent() ? change.distanceM() : distanceM,
                change.filters().orElse(filters),
                change.extension().orElse(extension),
                change.biasStops().isPresent() ? change.biasStops().getAsDouble() : biasStops,
                change.flash().orElse(flash),
                change.tripod().orElse(tripod));
    }
}
