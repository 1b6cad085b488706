package takeup.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.ExposureTime;
import takeup.exposure.LightParts;
import takeup.exposure.LongExposure;
import takeup.exposure.Stops;

/** One aperture of a request: the time for it, what that comes to, and what speaks against it. */
final class SuggestionRow {
    private SuggestionRow() {}

    private static LongExposure needed(Aperture aperture, Suggestions.Request request) {
        return new LongExposure(
                request.path().metered(request.ambient(), aperture),
                request.path().reciprocity());
    }

    static Optional<Aperture> nearest(ExposureTime held, Suggestions.Request request) {
        return BesideFlash.counts(request) ? BesideFlash.nearestTo(held, request) : nearestTo(held, request);
    }

    /** The aperture whose corrected time lies nearest to a held one; a tie goes as for times. */
    private static Optional<Aperture> nearestTo(ExposureTime held, Suggestions.Request request) {
        Aperture best = null;
        double bestDistance = Double.POSITIVE_INFINITY;
        for (Aperture aperture : request.optics().lens().orElseThrow().ring().marks()) {
            OptionalDouble corrected = needed(aperture, request).seconds();
            if (corrected.isEmpty()) {
                continue;
            }
            double distance = Math.abs(Stops.of(corrected.getAsDouble() / held.exactSeconds()));
            boolean tie = Math.abs(distance - bestDistance) <= Stops.TOLERANCE;
            if (distance < bestDistance - Stops.TOLERANCE || tie && !request.leansToLight()) {
                best = aperture;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The nearest time; by the watch a guess is to two figures. */
    private static Optional<ExposureTime> time(Aperture aperture, LongExposure exposure, Suggestions.Request request) {
        if (BesideFlash.counts(request)) {
            return BesideFlash.time(aperture, request);
        }
        if (exposure.seconds().isEmpty() || request.shutter().isEmpty()) {
            return Optional.empty();
        }
        double seconds = exposure.seconds().getAsDouble();
        ExposureTime nearest = request.shutter().get().nearest(seconds, request.leansToLight());
        return Optional.of(
                exposure.isGuess() && request.shutter().get().isByTheWatch(nearest)
                        ? ExposureTime.literal(LongExposure.guess(seconds))
                        : nearest);
    }

    static Suggestion of(Aperture aperture, Optional<ExposureTime> held, Suggestions.Request request) {
        double metered = request.path().metered(request.ambient(), aperture);
        LongExposure exposure = needed(aperture, request);
        OptionalDouble corrected = exposure.seconds();
        Optional<ExposureTime> time = Optional.empty();
        if (corrected.isPresent() || BesideFlash.counts(request)) {
            time = held.isPresent() ? held : time(aperture, exposure, request);
        }
        LightParts light = request.light().known().through(request.path(), Optional.of(aperture), time);
        OptionalDouble error = light.totalStops();
        OptionalDouble overBox = request.film().stock().isEmpty() || error.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        request.film().stock().get().stopsOverBox(request.path().index())
                                + request.path().biasStops()
                                + error.getAsDouble());
        Optional<DepthOfField> depth = request.optics().distanceM().isEmpty()
                        || request.optics().focalMm().isEmpty()
                ? Optional.empty()
                : Optional.of(DepthOfField.of(
                        request.optics().focalMm().getAsDouble(),
                        aperture,
                        request.camera().circleOfConfusionMm(),
                        request.optics().distanceM().getAsDouble()));
        List<Warning> warnings = new ArrayList<>();
        Optional<Hold> hold = request.wishes().hold();
        boolean keeps = held.isPresent() || hold.isPresent() && hold.get().isAt(aperture);
        if (error.isPresent() && keeps && Stops.above(Math.abs(error.getAsDouble()), 0.5)) {
            warnings.add(new Warning(
                    Warning.Code.OUT_OF_RANGE, "what is held is " + Stops.error(error.getAsDouble()) + " here"));
        } else if (corrected.isPresent() && !BesideFlash.makesUp(error, request)) {
            Warning.add(
                    ExposureWarnings.beyondDial(
                            corrected.getAsDouble(),
                            request.camera(),
                            request.support().flash()),
                    warnings);
        }
        if (time.isPresent()) {
            ExposureWarnings.ofTime(
                    time.get(),
                    request.camera(),
                    request.optics().focalMm(),
                    request.support().flash(),
                    request.support().tripod(),
                    warnings);
        }
        if (!BesideFlash.counts(request)) {
            ExposureWarnings.reciprocity(metered, request.path().reciprocity(), warnings);
        }
        if (overBox.isPresent()) {
            Warning.add(
                    ExposureWarnings.latitude(
                            overBox.getAsDouble() + request.film().pushStops(),
                            request.film().stock().get()),
                    warnings);
        }
        return new Suggestion(
                aperture,
                time,
                new Suggestion.Asked(
                        metered, corrected, request.path().reciprocity().openStops(metered)),
                light,
                overBox,
                depth,
                warnings);
    }
}
