package takeup.roll;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import takeup.text.ClockText;

/**
 * Something that happened to a roll, as it was written down.
 *
 * @param step the line that did it, counted over all rolls and days of one writer
 * @param at when it was written
 * @param event what happened
 */
public record RollRecord(long step, OffsetDateTime at, RollEvent event) {
    /** The roll once this has happened to it, each frame that it brings with an id. */
    Roll appliedTo(Roll roll) {
        Roll after = event.appliedTo(roll, at);
        if (roll == null || after.frames().size() <= roll.frames().size()) {
            return after;
        }
        String record = roll.id() + ", loaded at " + roll.loadedAt().toEpochSecond() + ", by step " + step + " at "
                + ClockText.instant(at);
        return after.with(after.log().broughtBy(record));
    }

    /** The roll as it was after each of these records. */
    public static List<Roll> statesAlong(List<RollRecord> records) {
        List<Roll> states = new ArrayList<>();
        for (int count = 1; count <= records.size(); count++) {
            Roll.of(records.subList(0, count)).ifPresent(states::add);
        }
        return states;
    }
}
