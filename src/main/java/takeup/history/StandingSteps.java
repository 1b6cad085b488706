package takeup.history;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tells which steps stand, asked from the newest one back. Who finds what is looked for among the last few pays for no
 * more of a long day: what a step took back or brought back lies behind it.
 */
final class StandingSteps {
    private final Map<Long, Boolean> isUndone = new HashMap<>();

    /** Whether the next older step stands. */
    boolean isStanding(JournalStep step) {
        List<JournalEntry> entries = step.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            JournalEntry entry = entries.get(i);
            if (entry.redoes().isPresent()) {
                isUndone.putIfAbsent(entry.redoes().get(), false);
            } else if (entry.undoes().isPresent()) {
                isUndone.putIfAbsent(entry.undoes().get(), true);
            }
        }
        return !isUndone.getOrDefault(step.step(), false);
    }
}
