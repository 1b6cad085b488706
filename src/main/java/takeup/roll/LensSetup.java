package takeup.roll;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Extension;
import takeup.kit.Filter;
import takeup.kit.Lens;

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
    static final LensSetup NONE =
            new LensSetup(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), Extension.NONE);

    public LensSetup {
        filters = List.copyOf(filters);
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
    LensSetup with(LensPatch change) {
        boolean otherLens = change.lens().isPresent() && !change.lens().equals(lens);
        return new LensSetup(
                change.lens().or(() -> lens),
                SettingPatch.either(change.zoomMm(), otherLens ? OptionalDouble.empty() : zoomMm),
                SettingPatch.either(change.distanceM(), distanceM),
                change.filters().orElse(filters),
                change.extension().orElse(extension));
    }
}
