package takeup.report;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * One roll in the list of all of them.
 *
 * @param name the photographer's own name for it
 */
public record RollSummary(
        RollId id,
        Roll.State state,
        CameraPlace place,
        FilmSummary film,
        int framesUsed,
        OffsetDateTime loadedAt,
        Optional<OffsetDateTime> finishedAt,
        Optional<String> name) {
    /**
     * The film of a roll.
     *
     * @param stock its key
     * @param development what the lab is asked to do, in words
     */
    public record FilmSummary(
            String stock, String stockName, double exposureIndex, String development, int framesNominal) {}

    /** The line of a roll. */
    public static RollSummary of(Roll roll) {
        return new RollSummary(
                roll.id(),
                roll.state(),
                CameraPlace.of(roll),
                new FilmSummary(
                        roll.film().stock().key(),
                        roll.film().stock().name(),
                        roll.film().index().arithmetic(),
                        roll.film().developmentWords(),
                        roll.film().framesNominal()),
                roll.framesUsed(),
                roll.loadedAt(),
                roll.finishedAt(),
                roll.film().label().name());
    }
}
