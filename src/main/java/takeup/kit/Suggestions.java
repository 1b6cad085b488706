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
     * All that an advice depends on.
     *
     * @param camera the camera
     * @param lens the lens on it; empty on a camera that sets itself
     * @param focalMm the focal length in use
     * @param stock the film; where it is empty the film counts as negative
     * @param pushStops development of the roll; pull is negative
     * @param path index, losses, bias and reciprocity
     * @param light EV at ISO 100
     * @param hold an aperture or time to keep
     * @param inHand the aperture that is set now
     * @param distanceM the distance of the subject in metres
     * @param flash whether flash is on
     * @param tripod whether the camera stands on one
     */
    public record Request(
            Camera camera,
            Optional<Lens> lens,
            OptionalDouble focalMm,
            Optional<Stock> stock,
            double pushStops,
            LightPath path,
            ExposureValue light,
            Optional<Hold> hold,
            Optional<Aperture> inHand,
            OptionalDouble distanceM,
            boolean flash,
            boolean tripod) {
        boolean leansToLight() {
            return stock.map(it -> it.kind().isNegative()).orElse(true);
        }
    }

    /** The best suggestion. */
    public Optional<Suggestion> bestOne() {
        return best < 0 ? Optional.empty() : Optional.of(suggestions.get(best));
    }

    /** The advice for all that. */
    public static Suggestions of(Request asked) {
        List<Suggestion> rows = new ArrayList<>();
        if (asked.lens.isPresent()) {
            Optional<Aperture> heldTimeAt = asked.hold.flatMap(Hold::time).flatMap(it -> nearestTo(it, asked));
            for (Aperture aperture : asked.lens.get().ring().marks()) {
                Optional<ExposureTime> held =
                        heldTimeAt.equals(Optional.of(aperture)) ? asked.hold.flatMap(Hold::time) : Optional.empty();
                rows.add(row(aperture, held, asked));
            }
        }
        return new Suggestions(rows, best(rows, asked));
    }

    /** The aperture whose corrected time lies nearest to a held one; a tie goes as for times. */
    private static Optional<Aperture> nearestTo(ExposureTime held, Request asked) {
        Aperture best = null;
        double bestDistance = Double.POSITIVE_INFINITY;
        for (Aperture aperture : asked.lens.orElseThrow().ring().marks()) {
            OptionalDouble corrected = asked.path.corrected(asked.light, aperture);
            if (corrected.isEmpty()) {
                continue;
            }
            double distance = Math.abs(Stops.of(corrected.getAsDouble() / held.exactSeconds()));
            boolean tie = Math.abs(distance - bestDistance) <= Stops.TOLERANCE;
            if (distance < bestDistance - Stops.TOLERANCE || tie && !asked.leansToLight()) {
                best = aperture;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Suggestion row(Aperture aperture, Optional<ExposureTime> held, Request asked) {
        double metered = asked.path.metered(asked.light, aperture);
        OptionalDouble corrected = asked.path.reciprocity().corrected(metered);
        Optional<ExposureTime> time = asked.camera.shutter().isEmpty() || corrected.isEmpty()
                ? Optional.empty()
                : held.isPresent()
                        ? held
                        : Optional.of(
                                asked.camera.shutter().get().nearest(corrected.getAsDouble(), asked.leansToLight()));
        OptionalDouble error = time.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(asked.path.error(asked.light, aperture, time.get()));
        OptionalDouble overBox = asked.stock.isEmpty() || error.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(asked.stock.get().boxSpeed().stopsOver(asked.path.index())
                        + asked.path.biasStops()
                        + error.getAsDouble());
        Optional<DepthOfField> depth = asked.distanceM.isEmpty() || asked.focalMm.isEmpty()
                ? Optional.empty()
                : Optional.of(DepthOfField.of(
                        asked.focalMm.getAsDouble(),
                        aperture,
                        asked.camera.circleOfConfusionMm(),
                        asked.distanceM.getAsDouble()));
        List<Warning> warnings = new ArrayList<>();
        boolean keeps = held.isPresent()
                || asked.hold
                        .flatMap(Hold::aperture)
                        .map(it -> same(it, aperture))
                        .orElse(false);
        if (error.isPresent() && keeps && Stops.above(Math.abs(error.getAsDouble()), 0.5)) {
            warnings.add(new Warning(
                    Warning.Code.OUT_OF_RANGE, "what is held is " + Stops.error(error.getAsDouble()) + " here"));
        } else if (corrected.isPresent()) {
            ExposureWarnings.beyondDial(corrected.getAsDouble(), asked.camera).ifPresent(warnings::add);
        }
        time.ifPresent(
                it -> ExposureWarnings.ofTime(it, asked.camera, asked.focalMm, asked.flash, asked.tripod, warnings));
        ExposureWarnings.reciprocity(metered, asked.path.reciprocity(), warnings);
        if (overBox.isPresent()) {
            ExposureWarnings.latitude(overBox.getAsDouble() + asked.pushStops, asked.stock.get())
                    .ifPresent(warnings::add);
        }
        return new Suggestion(
                aperture,
                time,
                metered,
                corrected,
                asked.path.reciprocity().openStops(metered),
                error,
                overBox,
                depth,
                warnings);
    }

    private static int best(List<Suggestion> rows, Request asked) {
        Optional<ExposureTime> heldTime = asked.hold.flatMap(Hold::time);
        if (heldTime.isPresent() && !rows.isEmpty()) {
            Optional<Aperture> at = nearestTo(heldTime.get(), asked);
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
        Optional<Aperture> held = asked.hold.flatMap(Hold::aperture);
        for (int i : equals) {
            if (held.isPresent() && same(rows.get(i).aperture(), held.get())) {
                return i;
            }
        }
        double wanted = asked.inHand.map(Aperture::stops).orElse(F_5_6);
        return equals.stream()
                .min(Comparator.comparingDouble(
                        it -> Math.rint(1e6 * Math.abs(rows.get(it).aperture().stops() - wanted))))
                .orElse(-1);
    }

    /** What speaks against a row, the weightiest first as the highest bit. */
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
