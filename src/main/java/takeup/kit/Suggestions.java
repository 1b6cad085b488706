package takeup.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
            return film.stock.isEmpty() || film.stock.get().kind().isNegative();
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
    public record Wishes(Optional<Hold> hold, Optional<PairInHand> inHand, Optional<MeteredPair> shown) {
        Optional<ExposureTime> heldTime() {
            return hold.isPresent() ? hold.get().time() : Optional.empty();
        }
    }

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
        OptionalDouble least = OptionalDouble.empty();
        for (int i = 0; i < suggestions.size(); i++) {
            boolean isOut = droppedBy(i).isPresent() && droppedBy(i).get().compareTo(Rule.ERROR) < 0;
            OptionalDouble error = suggestions.get(i).errorStops();
            if (!isOut && error.isPresent()) {
                double size = Math.abs(error.getAsDouble());
                least = OptionalDouble.of(Math.min(size, least.orElse(size)));
            }
        }
        return least;
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
        for (Suggestion row : suggestions) {
            if (row.has(Warning.Code.OUT_OF_RANGE)) {
                return true;
            }
        }
        return false;
    }

    /** Without the rows that the shutter cannot do, while there are others; the best one stays, and the meter's own. */
    public Suggestions withoutImpossible(Optional<MeteredPair> shown) {
        List<Suggestion> kept = new ArrayList<>();
        List<Optional<Rule>> droppedBy = new ArrayList<>();
        int best = -1;
        for (int i = 0; i < suggestions.size(); i++) {
            Suggestion row = suggestions.get(i);
            boolean isShown = shown.isPresent() && shown.get().aperture().isSameMark(row.aperture());
            if (i == best() || isShown || !row.has(Warning.Code.OUT_OF_RANGE)) {
                best = i == best() ? kept.size() : best;
                kept.add(row);
                droppedBy.add(droppedBy(i));
            }
        }
        return kept.isEmpty() ? this : new Suggestions(kept, new Ranking(best, droppedBy));
    }

    /** The advice for all that. */
    public static Suggestions of(Request request) {
        List<Suggestion> rows = new ArrayList<>();
        if (request.optics.lens.isPresent()) {
            Optional<ExposureTime> held = request.wishes.heldTime();
            Optional<Aperture> heldAt =
                    held.isPresent() ? SuggestionRow.nearest(held.get(), request) : Optional.empty();
            for (Aperture aperture : request.optics.lens.get().ring().marks()) {
                boolean isHeld = heldAt.equals(Optional.of(aperture));
                rows.add(SuggestionRow.of(aperture, isHeld ? held : Optional.empty(), request));
            }
        }
        return new Suggestions(rows, Ranking.of(rows, request));
    }
}
