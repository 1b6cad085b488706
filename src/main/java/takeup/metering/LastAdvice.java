package takeup.metering;

import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.Suggestions;

/**
 * The advice for a state of the shoot, which is worked out once while the state stays: most keys only change the
 * prompt. Two of them are equal: what is remembered changes no answer.
 */
public final class LastAdvice {
    private ShootState state;
    private Optional<Suggestions> advice = Optional.empty();

    /** The suggestions for this state, without what the shutter cannot do; empty without film or light. */
    public Optional<Suggestions> of(ShootState asked) {
        if (asked != state) {
            advice = workedOut(asked);
            state = asked;
        }
        return advice;
    }

    private static Optional<Suggestions> workedOut(ShootState state) {
        Optional<Light> light = state.day().light();
        Optional<Suggestions> all =
                light.flatMap(it -> AdviceRequest.inHand(state).map(asked -> asked.advice(it)));
        // The line of the reading is read again only where a row could be left out.
        return all.filter(Suggestions::hasImpossible).isPresent()
                ? all.map(it -> it.withoutImpossible(
                        ReadingCommand.shown(light.get(), state, light.get().at())))
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
