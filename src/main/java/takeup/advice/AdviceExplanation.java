package takeup.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Light;
import takeup.kit.Hold;
import takeup.kit.MeteredPair;
import takeup.kit.Shutter;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;

/**
 * Why one suggestion is the best, and why its neighbours are not.
 *
 * @param request what the advice was asked for
 * @param best the suggestion that is best
 * @param rule the rule that decided; empty where there was no choice
 * @param tie where two marks of the dial are equally near to the right time
 * @param neighbours the suggestions beside it
 */
public record AdviceExplanation(
        AdviceRequest request,
        Suggestion best,
        Optional<Suggestions.Rule> rule,
        Optional<Tie> tie,
        List<Neighbour> neighbours) {
    /** Two marks that are equally near; the kind of film decided. */
    public record Tie(ExposureTime shorter, ExposureTime longer) {}

    /** A suggestion beside the best one, and the rule that dropped it. */
    public record Neighbour(Suggestion suggestion, Suggestions.Rule droppedBy) {}

    public AdviceExplanation {
        neighbours = List.copyOf(neighbours);
    }

    /**
     * The explanation of an advice that has a best suggestion. That a pair is in hand is no reason for itself: where
     * the same one is the best with nothing in hand, the rule that decides then is named.
     */
    public static AdviceExplanation of(AdviceRequest request, Light light, Optional<MeteredPair> shown) {
        Suggestions advice = request.advice(light, shown);
        Suggestion best = advice.bestOne().orElseThrow();
        if (isChosen(request.setting().aperture(), best)) {
            Suggestions free = request.withNothingInHand().advice(light, shown);
            if (free.bestOne().equals(Optional.of(best))) {
                return of(request, free, best);
            }
        }
        return of(request, advice, best);
    }

    private static AdviceExplanation of(AdviceRequest request, Suggestions advice, Suggestion best) {
        List<Neighbour> neighbours = new ArrayList<>();
        for (int at : new int[] {advice.best() - 1, advice.best() + 1}) {
            if (at >= 0 && at < advice.suggestions().size()) {
                Suggestion other = advice.suggestions().get(at);
                advice.droppedBy(at).ifPresent(it -> neighbours.add(new Neighbour(other, it)));
            }
        }
        return new AdviceExplanation(request, best, advice.decidedBy(), tie(request, best), neighbours);
    }

    /** What is held and was not kept, because it does not serve in this light. */
    public Optional<Hold> heldInVain() {
        return request.hold().filter(it -> !it.isKeptBy(best));
    }

    private static boolean isChosen(Optional<Aperture> aperture, Suggestion best) {
        return aperture.filter(it -> it.isSameMark(best.aperture())).isPresent();
    }

    private static Optional<Tie> tie(AdviceRequest request, Suggestion best) {
        Optional<Shutter> shutter = request.shutter();
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
}
