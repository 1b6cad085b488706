package takeup.kit;

import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.SharpRange;
import takeup.exposure.Stops;

/**
 * The aperture and the focus that make a range sharp: the widest mark that does, else the narrowest there is.
 *
 * @param aperture a mark of the ring
 * @param focusM what to focus at, in metres
 * @param depth what is sharp then
 * @param circleMm the blur, in mm, that counts as sharp
 * @param isEnough whether all of the range is sharp
 */
public record SharpSetting(Aperture aperture, double focusM, DepthOfField depth, double circleMm, boolean isEnough) {
    /** For a lens at a focal length in mm. */
    public static SharpSetting of(SharpRange range, Ring ring, double focalMm, double circleMm) {
        double stops = 2 * Stops.of(range.fNumber(focalMm, circleMm));
        Aperture narrowest = ring.narrowest();
        Aperture aperture = ring.marks().stream()
                .filter(it -> !Stops.above(stops, it.stops()))
                .findFirst()
                .orElse(narrowest);
        double focus = range.focusM();
        return new SharpSetting(
                aperture,
                focus,
                DepthOfField.of(focalMm, aperture, circleMm, focus),
                circleMm,
                !Stops.above(stops, narrowest.stops()));
    }
}
