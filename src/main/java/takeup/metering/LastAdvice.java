package takeup.metering;

import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.MeteredPair;
import takeup.kit.Suggestions;

/**
 * The advice for a state of the shoot, which is worked out once while the state stays: most keys only change the
 * prompt. Two of them are equal: what is remembered changes no answer.
 */
public final class LastAdvice {
    private ShootState state;
    private boolean isWorkedOut;
    private boolean isReadAgain;
    private Optional<Suggestions> advice = Optional.empty();
    private Optional<MeteredPair> shown = Optional.empty();

    /** The suggestions for this state, without what the shutter cannot do; empty without film or light. */
    public Optional<Suggestions> of(ShootState asked) {
        look(asked);
        if (!isWorkedOut) {
            advice = workedOut();
            isWorkedOut = true;
        }
        return advice;
    }

    /** The pair that the meter showed for the light of the day; its line is read again for it. */
    public Optional<MeteredPair> shownByMeter(ShootState asked) {
        look(asked);
        if (!isReadAgain) {
            shown = state.day().light().flatMap(it -> ReadingCommand.shown(it, state, it.at()));
            isReadAgain = true;
        }
        return shown;
    }

    private void look(ShootState asked) {
        if (asked != state) {
            state = asked;
            isWorkedOut = false;
            isReadAgain = false;
        }
    }

    private Optional<Suggestions> workedOut() {
        Optional<Light> light = state.day().light();
        Optional<Suggestions> all =
                light.flatMap(it -> AdviceRequest.inHand(state).map(asked -> asked.advice(it)));
        // The line of the reading is read again only where a row could be left out.
        return all.filter(Suggestions::hasImpossible).isPresent()
                ? all.map(it -> it.withoutImpossible(shownByMeter(state)))
                : all;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LastAdvice;
    }

    @Override
    public int hashCode() {
        return 1;
    }
}
