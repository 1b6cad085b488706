package takeup.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Shutter;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;

/**
 * Why one suggestion is the best, and why its neighbours are not.
 *
 * @param request what the advice was asked for
 * @param best the suggestion that is best
 * @param reason why it is
 * @param tie where two marks of the dial are equally near to the right time
 * @param neighbours the suggestions beside it
 */
public record AdviceExplanation(
        AdviceRequest request, Suggestion best, Reason reason, Optional<Tie> tie, List<Neighbour> neighbours) {
    /** Why a suggestion is the best. */
    public enum Reason {
        NEAREST_TO_HELD_TIME,
        APERTURE_HELD,
        APERTURE_IN_HAND,
        NEAREST_APERTURE
    }

    /** What speaks against a suggestion. */
    public enum Drawback {
        NO_TIME,
        OUT_OF_RANGE,
        ABOVE_SYNC_SPEED,
        HAND_HELD,
        BEYOND_RECIPROCITY_TABLE,
        FURTHER_FROM_HELD,
        FURTHER_FROM_APERTURE
    }

    /** Two marks that are equally near; the kind of film decided. */
    public record Tie(ExposureTime shorter, ExposureTime longer) {}

    /** A suggestion beside the best one, and what speaks against it. */
    public record Neighbour(Suggestion suggestion, Drawback drawback) {}

    private static final Map<Warning.Code, Drawback> DRAWBACKS = new EnumMap<>(Map.of(
            Warning.Code.OUT_OF_RANGE, Drawback.OUT_OF_RANGE,
            Warning.Code.SYNC_SPEED, Drawback.ABOVE_SYNC_SPEED,
            Warning.Code.HAND_HELD, Drawback.HAND_HELD,
            Warning.Code.RECIPROCITY_BEYOND, Drawback.BEYOND_RECIPROCITY_TABLE));

    public AdviceExplanation {
        neighbours = List.copyOf(neighbours);
    }

    /** The explanation of an advice that has a best suggestion. */
    public static AdviceExplanation of(AdviceRequest request, Suggestions advice) {
        Suggestion best = advice.bestOne().orElseThrow();
        List<Neighbour> neighbours = new ArrayList<>();
        for (int at : new int[] {advice.best() - 1, advice.best() + 1}) {
            if (at >= 0 && at < advice.suggestions().size()) {
                Suggestion other = advice.suggestions().get(at);
                neighbours.add(new Neighbour(other, drawback(request, other, best)));
            }
        }
        return new AdviceExplanation(request, best, reason(request, best), tie(request, best), neighbours);
    }

    /** The aperture that is held and was not chosen, because it does not serve in this light. */
    public Optional<Aperture> heldInVain() {
        return request.hold().flatMap(Hold::aperture).filter(it -> !it.isSameMark(best.aperture()));
    }

    private static Reason reason(AdviceRequest request, Suggestion best) {
        if (request.hold().flatMap(Hold::time).isPresent()) {
            return Reason.NEAREST_TO_HELD_TIME;
        }
        if (isChosen(request.hold().flatMap(Hold::aperture), best)) {
            return Reason.APERTURE_HELD;
        }
        return isChosen(request.setting().aperture(), best) ? Reason.APERTURE_IN_HAND : Reason.NEAREST_APERTURE;
    }

    private static boolean isChosen(Optional<Aperture> aperture, Suggestion best) {
        return aperture.filter(it -> it.isSameMark(best.aperture())).isPresent();
    }

    private static Optional<Tie> tie(AdviceRequest request, Suggestion best) {
        Optional<Shutter> shutter = request.camera().flatMap(Camera::shutter);
        if (shutter.isEmpty()
                || best.correctedSeconds().isEmpty()
                || request.hold().flatMap(Hold::time).isPresent()) {
            return Optional.empty();
        }
        double seconds = best.correctedSeconds().getAsDouble();
        ExposureTime longer = shutter.get().nearest(seconds, true);
        ExposureTime shorter = shutter.get().nearest(seconds, false);
        return longer.equals(shorter) ? Optional.empty() : Optional.of(new Tie(shorter, longer));
    }

    private static Drawback drawback(AdviceRequest request, Suggestion other, Suggestion best) {
        if (other.time().isEmpty()) {
            return Drawback.NO_TIME;
        }
        return DRAWBACKS.entrySet().stream()
                .filter(it -> other.has(it.getKey()) && !best.has(it.getKey()))
                .map(Map.Entry::getValue)
                .min(Comparator.naturalOrder())
                .orElse(request.hold().isPresent() ? Drawback.FURTHER_FROM_HELD : Drawback.FURTHER_FROM_APERTURE);
    }
}
