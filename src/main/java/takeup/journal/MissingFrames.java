package takeup.journal;

import java.util.List;
import java.util.Optional;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollRecord;

/**
 * Which frames are not in the log where records of a roll are missing: what the numbers before and after the gap say.
 */
final class MissingFrames {
    private MissingFrames() {}

    /**
     * Such as {@code : frame 8 is not in the log}; nothing where it cannot be known, or where no number is left out.
     */
    static String words(List<RollRecord> records, int gap) {
        Optional<Roll> before = Roll.of(records.subList(0, gap));
        int first = before.isEmpty() ? 0 : before.get().next();
        for (RollRecord record : records.subList(gap, records.size())) {
            if (record.event() instanceof RollEvent.Added added
                    && added.before().isEmpty()) {
                int last = added.frame().number() - 1;
                if (before.isEmpty() || last < first) {
                    return "";
                }
                return first == last
                        ? ": frame " + first + " is not in the log"
                        : ": frames " + first + " to " + last + " are not in the log";
            }
            if (renumbers(record.event())) {
                return "";
            }
        }
        return "";
    }

    /** Whether numbers after it say nothing of what was before it. */
    private static boolean renumbers(RollEvent event) {
        return event instanceof RollEvent.Added
                || event instanceof RollEvent.Dropped
                || event instanceof RollEvent.CounterShown
                || event instanceof RollEvent.Undone
                || event instanceof RollEvent.Redone
                || event instanceof RollEvent.Unknown;
    }
}
