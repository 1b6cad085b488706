package takeup.metering;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.kit.MeteredPair;
import takeup.prompt.CommandRejected;
import takeup.prompt.Reading;
import takeup.prompt.ReadingParser;
import takeup.prompt.Tokens;
import takeup.roll.Roll;

/** The pair that the meter showed for a light of the day: its line, read again. */
final class ShownPair {
    private ShownPair() {}

    /** The pair, as far as the line still means the same light. */
    static Optional<MeteredPair> of(Light light, ShootState state, OffsetDateTime now) {
        Optional<Roll> roll = state.rollInHand();
        Optional<FilmSpeed> index =
                roll.isPresent() ? Optional.of(roll.get().film().index()) : Optional.empty();
        try {
            List<String> words = Tokens.of(light.typed()).words();
            Reading again = ReadingParser.read(
                    light.typed(),
                    words.subList(1, words.size()),
                    state.meterInHand(),
                    state.day().preset(),
                    index,
                    now);
            boolean isSame = again.light().isPresent()
                    && again.light().get().ev100().stops() == light.ev100().stops();
            return isSame ? again.shown() : Optional.empty();
        } catch (CommandRejected e) {
            return Optional.empty();
        }
    }
}
