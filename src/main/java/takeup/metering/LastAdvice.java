package takeup.metering;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.MeteredPair;
import takeup.kit.Suggestions;

/**
 * The advice for a state of the shoot, and that state as it is today, worked out once while it stays: most keys only
 * change the prompt. Two of them are equal: what is remembered changes no answer.
 */
public final class LastAdvice {
    private ShootState saved;
    private OffsetDateTime shownAt;
    private ShootState shown;
    private ShootState state;
    private boolean isWorkedOut;
    private boolean isReadAgain;
    private Optional<Suggestions> advice = Optional.empty();
    private Optional<MeteredPair> pair = Optional.empty();

    /**
     * The saved state as it is on this day, worked out once a second while it stays: on a morning before the first line
     * it is another one, which whoever remembers something of it must find to be the same at the next key.
     */
    public ShootState shown(ShootState asked, OffsetDateTime now) {
        if (asked != saved
                || now.toEpochSecond() != shownAt.toEpochSecond()
                || !now.getOffset().equals(shownAt.getOffset())) {
            saved = asked;
            shownAt = now;
            shown = asked.asOf(now);
        }
        return shown;
    }

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
            Optional<Light> light = state.day().light();
            pair = light.isPresent()
                    ? ShownPair.of(light.get(), state, light.get().at())
                    : Optional.empty();
            isReadAgain = true;
        }
        return pair;
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
        Optional<AdviceRequest> asked = AdviceRequest.inHand(state);
        if (light.isEmpty() || asked.isEmpty()) {
            return Optional.empty();
        }
        Suggestions all = asked.get().advice(light.get());
        // The line of the reading is read again only where a row could be left out.
        return Optional.of(all.hasImpossible() ? all.withoutImpossible(shownByMeter(state)) : all);
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
