package takeup.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FrameLight;
import takeup.exposure.LightPath;

/**
 * What to set on this camera for this light: one suggestion for each aperture of the lens, widest first, and which of
 * them is best.
 *
 * @param suggestions empty for a camera that sets itself
 * @param ranking which one is the best, and what speaks against the others
 */
public record Suggestions(List<Suggestion> suggestions, Ranking ranking) {
    /** Where there is nothing to suggest. */
    public static final Suggestions NONE = new Suggestions(List.of(), new Ranking(-1, List.of()));

    public Suggestions {
        suggestions = List.copyOf(suggestions);
    }

    /** The rules that the best one is found by, the weightiest first. */
    public enum Rule {
        /** The body can set it. */
        USABLE,
        /** It keeps the aperture or the time that is held. */
        KEEPS_HELD,
        /** By hand it is shorter than a second, where such a time is within a third of a stop. */
        STEADY,
        /** Its error is within a sixth of a stop, else smaller, and on the side that the film tolerates. */
        ERROR,
        /** No warning speaks of a spoilt frame. */
        SPOILS_NOTHING,
        /** It is the fewest stops away from what is in hand, both rings counted. */
        NEAREST_IN_HAND,
        /** The meter showed that very pair, and nothing is in hand. */
        SHOWN_BY_METER,
        /** It can be held by hand, or else shakes least. */
        HAND_HOLDABLE,
        /** Of pairs that are equally far from what is in hand, its aperture is nearest to the one in hand. */
        APERTURE_IN_HAND,
        /** Its aperture is nearest to the middle of the ring. */
        MIDDLE_OF_LENS
    }

    /**
     * All that suggestions depend on.
     *
     * @param camera the camera
     * @param optics the lens on it
     * @param film the film in it
     * @param path index, losses, bias and reciprocity
     * @param light the light that is there, and the flash
     * @param wishes what is held, what is in hand
     * @param support flash and tripod
     */
    public record Request(
            Camera camera,
            LensInUse optics,
            FilmInUse film,
            LightPath path,
            FrameLight light,
            Wishes wishes,
            Support support) {
        public Request {
            camera = camera.withLens(optics.lens());
        }

        /** The light that a time is chosen for. */
        ExposureValue ambient() {
            return light.ambient().orElseThrow();
        }

        boolean leansToLight() {
            return film.stock.map(it -> it.kind().isNegative()).orElse(true);
        }

        /** The times that a frame can have. */
        Optional<Shutter> shutter() {
            return camera.shutter(support.flash);
        }
    }

    /**
     * What speaks for one pair rather than another of a request.
     *
     * @param hold an aperture or time to keep
     * @param inHand what is set now
     * @param shown the pair that the meter showed
     */
    public record Wishes(Optional<Hold> hold, Optional<PairInHand> inHand, Optional<MeteredPair> shown) {}

    /** The aperture that is set now, and the time if that is known too. */
    public record PairInHand(Aperture aperture, Optional<ExposureTime> time) {
        /** How far a row is from it, in stops on the two rings together. */
        double stopsTo(Suggestion row) {
            double times = time.isPresent() && row.time().isPresent()
                    ? Math.abs(time.get().stops() - row.time().get().stops())
                    : 0;
            return apertureStopsTo(row) + times;
        }

        double apertureStopsTo(Suggestion row) {
            return Math.abs(aperture.stops() - row.aperture().stops());
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

    /** The index of the best one; -1 where there is none. */
    public int best() {
        return ranking.best();
    }

    /** The best suggestion. */
    public Optional<Suggestion> bestOne() {
        return best() < 0 ? Optional.empty() : Optional.of(suggestions.get(best()));
    }

    /** The least error, in stops, of all that can be set, keeps what is held, and is no long time by hand. */
    public OptionalDouble leastError() {
        return IntStream.range(0, suggestions.size())
                .filter(it -> droppedBy(it)
                        .filter(rule -> rule.compareTo(Rule.ERROR) < 0)
                        .isEmpty())
                .mapToObj(suggestions::get)
                .flatMapToDouble(it -> it.errorStops().stream())
                .map(Math::abs)
                .min();
    }

    /** The rule that dropped a suggestion; empty for the best. */
    public Optional<Rule> droppedBy(int index) {
        return ranking.droppedBy().get(index);
    }

    /** The rule that decided: the last one that dropped a suggestion. Empty where there was no choice. */
    public Optional<Rule> decidedBy() {
        return ranking.droppedBy().stream().flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    /** Whether the shutter cannot do every row. */
    public boolean hasImpossible() {
        return suggestions.stream().anyMatch(it -> it.has(Warning.Code.OUT_OF_RANGE));
    }

    /** Without the rows that the shutter cannot do, while there are others; the best one stays, and the meter's own. */
    public Suggestions withoutImpossible(Optional<MeteredPair> shown) {
        List<Integer> kept = IntStream.range(0, suggestions.size())
                .filter(it -> it == best()
                        || !suggestions.get(it).has(Warning.Code.OUT_OF_RANGE)
                        || shown.filter(pair -> pair.aperture()
                                        .isSameMark(suggestions.get(it).aperture()))
                                .isPresent())
                .boxed()
                .toList();
        return kept.isEmpty()
                ? this
                : new Suggestions(
                        kept.stream().map(suggestions::get).toList(),
                        new Ranking(
                                kept.indexOf(best()),
                                kept.stream().map(ranking.droppedBy()::get).toList()));
    }

    /** The advice for all that. */
    public static Suggestions of(Request request) {
        List<Suggestion> rows = new ArrayList<>();
        if (request.optics.lens.isPresent()) {
            Optional<Aperture> heldTimeAt =
                    request.wishes.hold.flatMap(Hold::time).flatMap(it -> SuggestionRow.nearest(it, request));
            for (Aperture aperture : request.optics.lens.get().ring().marks()) {
                Optional<ExposureTime> held = heldTimeAt.equals(Optional.of(aperture))
                        ? request.wishes.hold.flatMap(Hold::time)
                        : Optional.empty();
                rows.add(SuggestionRow.of(aperture, held, request));
            }
        }
        return new Suggestions(rows, Ranking.of(rows, request));
    }
}
