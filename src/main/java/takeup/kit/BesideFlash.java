package takeup.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;

/**
 * The rows of suggestions beside a flash that is on and known: not the light that is there anyway asks for the time,
 * but what the flash leaves to be added to.
 */
final class BesideFlash {
    private BesideFlash() {}

    /** Whether the flash counts in the rows. */
    static boolean counts(Suggestions.Request request) {
        return request.light().known().isFlashOn() && request.shutter().isPresent();
    }

    /**
     * The time, none faster than sync, at which all light together is nearest to what the film needs; where several are
     * as near, the one in hand where the camera can be held for it, or the fastest.
     */
    static Optional<ExposureTime> time(Aperture aperture, Suggestions.Request request) {
        List<ExposureTime> marks = request.shutter().orElseThrow().marks();
        double least = marks.stream()
                .mapToDouble(it -> distance(aperture, it, request))
                .min()
                .orElseThrow();
        List<ExposureTime> asNear = marks.stream()
                .filter(it -> !Stops.above(distance(aperture, it, request), least))
                .toList();
        return request.wishes()
                .inHand()
                .flatMap(Suggestions.PairInHand::time)
                .filter(it -> asNear.contains(it) && isSteady(it, request))
                .or(() -> asNear.stream().min(Comparator.comparingDouble(ExposureTime::stops)));
    }

    private static boolean isSteady(ExposureTime time, Suggestions.Request request) {
        List<Warning> warnings = new ArrayList<>();
        ExposureWarnings.ofTime(
                time,
                request.camera(),
                request.optics().focalMm(),
                false,
                request.support().tripod(),
                warnings);
        return warnings.isEmpty();
    }

    /** The aperture at which a held time is nearest to it. */
    static Optional<Aperture> nearestTo(ExposureTime held, Suggestions.Request request) {
        return request.optics().lens().orElseThrow().ring().marks().stream()
                .min(Comparator.comparingDouble(it -> distance(it, held, request)));
    }

    private static double distance(Aperture aperture, ExposureTime time, Suggestions.Request request) {
        OptionalDouble error = request.light()
                .known()
                .through(request.path(), Optional.of(aperture), Optional.of(time))
                .totalStops();
        return error.isPresent() ? Math.abs(error.getAsDouble()) : Double.MAX_VALUE;
    }

    /** Whether the flash makes up for what no time of the dial would bring. */
    static boolean makesUp(OptionalDouble error, Suggestions.Request request) {
        return counts(request) && error.isPresent() && !Stops.above(Math.abs(error.getAsDouble()), 0.5);
    }
}
