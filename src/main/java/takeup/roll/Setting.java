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
 * @param optics the lens and what is on it
 * @param biasStops deliberate deviation; + is more light on the film
 * @param flash whether flash is on
 * @param tripod whether the camera stands on one
 */
public record Setting(
        Optional<Aperture> aperture,
        Optional<ExposureTime> time,
        LensSetup optics,
        double biasStops,
        boolean flash,
        boolean tripod) {
    /**
     * The lens on a camera, how it is set but for its aperture, and what is on it.
     *
     * @param lens the lens on the camera
     * @param zoomMm the focal length that was named; a lens of one focal length needs none
     * @param distanceM the distance of the subject in metres
     * @param filters what is on the lens
     * @param extension how far it is drawn out
     */
    public record LensSetup(
            Optional<Lens> lens,
            OptionalDouble zoomMm,
            OptionalDouble distanceM,
            List<Filter> filters,
            Extension extension) {
        /** Nothing known. */
        static final LensSetup NONE = new LensSetup(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), Extension.NONE);

        public LensSetup {
            filters = List.copyOf(filters);
        }

        private boolean hasPartsOf(LensSetup other) {
            return areOne(lens, other.lens)
                    && zoomMm.equals(other.zoomMm)
                    && distanceM.equals(other.distanceM)
                    && (filters == other.filters || filters.isEmpty() && other.filters.isEmpty())
                    && extension == other.extension;
        }

        /** The focal length in use, in mm; empty for a zoom whose setting was not named. */
        OptionalDouble focalMm() {
            if (zoomMm.isPresent()) {
                return zoomMm;
            }
            return lens.isPresent() && !lens.get().isZoom()
                    ? OptionalDouble.of(lens.get().shortestMm())
                    : OptionalDouble.empty();
        }

        /** After a change. Another lens forgets the focal length that was named for the one before. */
        LensSetup with(SettingPatch.LensPatch change) {
            boolean otherLens = change.lens().isPresent() && !change.lens().equals(lens);
            return new LensSetup(
                    SettingPatch.either(change.lens(), lens),
                    SettingPatch.either(change.zoomMm(), otherLens ? OptionalDouble.empty() : zoomMm),
                    SettingPatch.either(change.distanceM(), distanceM),
                    change.filters().orElse(filters),
                    change.extension().orElse(extension));
        }
    }

    /** Nothing known. */
    public static final Setting NONE = new Setting(Optional.empty(), Optional.empty(), LensSetup.NONE, 0, false, false);

    public Setting {
        if (!(Math.abs(biasStops) <= 20)) {
            throw new IllegalArgumentException("a bias goes up to 20 stops");
        }
    }

    public Optional<Lens> lens() {
        return optics.lens();
    }

    public OptionalDouble zoomMm() {
        return optics.zoomMm();
    }

    public OptionalDouble distanceM() {
        return optics.distanceM();
    }

    public List<Filter> filters() {
        return optics.filters();
    }

    public Extension extension() {
        return optics.extension();
    }

    /** The focal length in use, in mm; empty for a zoom whose setting was not named. */
    public OptionalDouble focalMm() {
        return optics.focalMm();
    }

    /** What the filters take, in stops. */
    public double filterStops() {
        double sum = 0;
        for (Filter filter : filters()) {
            sum += filter.stops();
        }
        return sum;
    }

    /** What the extension takes, in stops; 0 where it cannot be known. */
    public double extensionStops() {
        return extension().stops(focalMm()).orElse(0);
    }

    /** The setting after a change. */
    public Setting with(SettingPatch change) {
        return new Setting(
                SettingPatch.either(change.aperture(), aperture),
                SettingPatch.either(change.time(), time),
                optics.with(change.optics()),
                change.biasStops().orElse(biasStops),
                change.flash().orElse(flash),
                change.tripod().orElse(tripod));
    }

    /**
     * The other one, where it is made of the very same parts; else this one. A roll of frames that were all taken with
     * one setting has it in memory once.
     */
    public Setting orSame(Setting other) {
        boolean isSame = areOne(aperture, other.aperture)
                && areOne(time, other.time)
                && optics.hasPartsOf(other.optics)
                && biasStops == other.biasStops
                && flash == other.flash
                && tripod == other.tripod;
        return isSame ? other : this;
    }

    private static boolean areOne(Optional<?> one, Optional<?> other) {
        return one.isPresent() ? other.isPresent() && one.get() == other.get() : other.isEmpty();
    }

    /** The same with no aperture and no time. */
    public Setting withoutPair() {
        return new Setting(Optional.empty(), Optional.empty(), optics, biasStops, flash, tripod);
    }
}
