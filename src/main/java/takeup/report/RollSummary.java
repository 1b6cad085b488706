package takeup.report;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** One roll in the list of all of them. */
public record RollSummary(
        RollId id,
        Roll.State state,
        String camera,
        Optional<String> back,
        String stock,
        String stockName,
        double exposureIndex,
        String development,
        int framesUsed,
        int framesNominal,
        OffsetDateTime loadedAt,
        Optional<OffsetDateTime> finishedAt) {
    /** The line of a roll. */
    public static RollSummary of(Roll roll) {
        return new RollSummary(
                roll.id(),
                roll.state(),
                roll.camera().key(),
                roll.back(),
                roll.film().stock().key(),
                roll.film().stock().name(),
                roll.film().index().arithmetic(),
                roll.film().developmentWords(),
                roll.framesUsed(),
                roll.film().framesNominal(),
                roll.loadedAt(),
                roll.finishedAt());
    }

    /** The camera and back it is in: {@code 645 back 1} or {@code 35}. */
    public String place() {
        return camera + back.map(it -> " back " + it).orElse("");
    }
}
