package takeup.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FrameLight;
import takeup.exposure.LightParts;
import takeup.exposure.LightPath;
import takeup.exposure.Stops;

/**
 * What to set on this camera for this light: one suggestion for each aperture of the lens, widest first, and which of
 * them is best.
 *
 * @param suggestions empty for a camera that sets itself
 * @param best the index of the best one; -1 where there is none
 */
public record Suggestions(List<Suggestion> suggestions, int best) {
    /** Where there is nothing to suggest. */
    public static final Suggestions NONE = new Suggestions(List.of(), -1);

    private static final double F_5_6 = 5;

    public Suggestions {
        suggestions = List.copyOf(suggestions);
    }

    /**
     * All that suggestions depend on.
     *
     * @param camera the camera
     * @param optics the lens on it
     * @param film the film in it
     * @param path index, losses, bias and reciprocity
     * @param light the light that is there, and the flash
     * @param hold an aperture or time to keep
     * @param inHand the aperture that is set now
     * @param support flash and tripod
     */
    public record Request(
            Camera camera,
            LensInUse optics,
            FilmInUse film,
            LightPath path,
            FrameLight light,
            Optional<Hold> hold,
            Optional<Aperture> inHand,
            Support support) {
        /** The light that a time is chosen for. */
        ExposureValue ambient() {
            return light.ambient().orElseThrow();
        }

        boolean leansToLight() {
            return film.stock.map(it -> it.kind().isNegative()).orElse(true);
        }
    }

    /**
     * The lens of a request.
     *
     * @param lens empty on a camera that sets itself
     * @param focalMm the focal length in use
     * @param distanceM the distance of the subject in metres
     */
    public record LensInUse(Optional<Lens> lens, OptionalDouble focalMm, OptionalDouble distanceM) {}

    /**
     * The film of a request.
     *
     * @param stock where it is empty the film counts as negative
     * @param pushStops development of the roll; pull is negative
     */
    public record FilmInUse(Optional<Stock> stock, double pushStops) {}

    /** Whether flash is on, and whether the camera stands on a tripod. */
    public record Support(boolean flash, boolean tripod) {}

    /** The best suggestion. */
    public Optional<Suggestion> bestOne() {
        return best < 0 ? Optional.empty() : Optional.of(suggestions.get(best));
    }

    /** The advice for all that. */
    public static Suggestions of(Request request) {
        List<Suggestion> rows = new ArrayList<>();
        if (request.optics.lens.isPresent()) {
            Optional<Aperture> heldTimeAt = request.hold.flatMap(Hold::time).flatMap(it -> nearestTo(it, request));
            for (Aperture aperture : request.optics.lens.get().ring().marks()) {
                Optional<ExposureTime> held =
                        heldTimeAt.equals(Optional.of(aperture)) ? request.hold.flatMap(Hold::time) : Optional.empty();
                rows.add(row(aperture, held, request));
            }
        }
        return new Suggestions(rows, best(rows, request));
    }

    /** The aperture whose corrected time lies nearest to a held one; a tie goes as for times. */
    private static Optional<Aperture> nearestTo(ExposureTime held, Request request) {
        Aperture best = null;
        double bestDistance = Double.POSITIVE_INFINITY;
        for (Aperture aperture : request.optics.lens.orElseThrow().ring().marks()) {
            OptionalDouble corrected = request.path.corrected(request.ambient(), aperture);
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

    private static Suggestion row(Aperture aperture, Optional<ExposureTime> held, Request request) {
        double metered = request.path.metered(request.ambient(), aperture);
        OptionalDouble corrected = request.path.reciprocity().corrected(metered);
        Optional<ExposureTime> time = corrected.isEmpty()
                ? Optional.empty()
                : request.camera
                        .shutter()
                        .map(it -> held.orElseGet(() -> it.nearest(corrected.getAsDouble(), request.leansToLight())));
        LightParts light = request.light.known().through(request.path, Optional.of(aperture), time);
        OptionalDouble error = light.totalStops();
        OptionalDouble overBox = request.film.stock.isEmpty() || error.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(request.film.stock.get().boxSpeed().stopsOver(request.path.index())
                        + request.path.biasStops()
                        + error.getAsDouble());
        Optional<DepthOfField> depth = request.optics.distanceM.isEmpty() || request.optics.focalMm.isEmpty()
                ? Optional.empty()
                : Optional.of(DepthOfField.of(
                        request.optics.focalMm.getAsDouble(),
                        aperture,
                        request.camera.circleOfConfusionMm(),
                        request.optics.distanceM.getAsDouble()));
        List<Warning> warnings = new ArrayList<>();
        boolean keeps = held.isPresent()
                || request.hold
                        .flatMap(Hold::aperture)
                        .map(it -> same(it, aperture))
                        .orElse(false);
        if (error.isPresent() && keeps && Stops.above(Math.abs(error.getAsDouble()), 0.5)) {
            warnings.add(new Warning(
                    Warning.Code.OUT_OF_RANGE, "what is held is " + Stops.error(error.getAsDouble()) + " here"));
        } else if (corrected.isPresent()) {
            ExposureWarnings.beyondDial(corrected.getAsDouble(), request.camera).ifPresent(warnings::add);
        }
        time.ifPresent(it -> ExposureWarnings.ofTime(
                it, request.camera, request.optics.focalMm, request.support.flash, request.support.tripod, warnings));
        ExposureWarnings.reciprocity(metered, request.path.reciprocity(), warnings);
        if (overBox.isPresent()) {
            ExposureWarnings.latitude(overBox.getAsDouble() + request.film.pushStops, request.film.stock.get())
                    .ifPresent(warnings::add);
        }
        return new Suggestion(
                aperture,
                time,
                new Suggestion.Asked(
                        metered, corrected, request.path.reciprocity().openStops(metered)),
                light,
                overBox,
                depth,
                warnings);
    }

    private static int best(List<Suggestion> rows, Request request) {
        Optional<ExposureTime> heldTime = request.hold.flatMap(Hold::time);
        if (heldTime.isPresent() && !rows.isEmpty()) {
            Optional<Aperture> at = nearestTo(heldTime.get(), request);
            for (int i = 0; i < rows.size(); i++) {
                if (at.equals(Optional.of(rows.get(i).aperture()))) {
                    return i;
                }
            }
        }
        int least = rows.stream().mapToInt(Suggestions::rank).min().orElse(0);
        List<Integer> equals = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rank(rows.get(i)) == least) {
                equals.add(i);
            }
        }
        Optional<Aperture> held = request.hold.flatMap(Hold::aperture);
        for (int i : equals) {
            if (held.isPresent() && same(rows.get(i).aperture(), held.get())) {
                return i;
            }
        }
        double wanted = request.inHand.map(Aperture::stops).orElse(F_5_6);
        return equals.stream()
                .min(Comparator.comparingDouble(
                        it -> Math.rint(1e6 * Math.abs(rows.get(it).aperture().stops() - wanted))))
                .orElse(-1);
    }

    /** The reasons against a row as a number to compare: the most serious one is its highest bit. */
    private static int rank(Suggestion row) {
        int rank = 0;
        for (Warning.Code code : List.of(
                Warning.Code.OUT_OF_RANGE,
                Warning.Code.SYNC_SPEED,
                Warning.Code.HAND_HELD,
                Warning.Code.RECIPROCITY_BEYOND)) {
            rank = 2 * rank + (row.has(code) ? 1 : 0);
        }
        return rank;
    }

    private static boolean same(Aperture a, Aperture b) {
        return Math.abs(a.stops() - b.stops()) < 1e-6;
    }
}
