package takeup.session;

import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.history.ShootState;
import takeup.kit.Suggestions;

/**
 * The advice for a state of the shoot, which is worked out once while the state stays: most keys only change the
 * prompt. Two of them are equal: what is remembered changes no answer.
 */
final class LastAdvice {
    private ShootState state;
    private Optional<Suggestions> advice = Optional.empty();

    /** The suggestions for this state, without what the shutter cannot do; empty without film or light. */
    Optional<Suggestions> of(ShootState asked) {
        if (asked != state) {
            advice = workedOut(asked);
            state = asked;
        }
        return advice;
    }

    private static Optional<Suggestions> workedOut(ShootState state) {
        return state.day()
                .light()
                .flatMap(light -> AdviceRequest.inHand(state).map(it -> it.advice(light)))
                .map(Suggestions::withoutImpossible);
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
