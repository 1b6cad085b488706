package takeup.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * A roll as its journal was read.
 *
 * @param loading the step that loaded it; 0 where that is not known
 * @param problems what could not be read
 */
public record RollReading(RollId id, Optional<Roll> roll, long loading, List<String> problems) {
    public static RollReading of(Archive archive, RollId id) {
        JournalRecords<RollRecord> opened = archive.roll(id);
        Optional<Roll> roll = Roll.of(opened.records());
        if (roll.isPresent()) {
            return new RollReading(
                    roll.get().id(), roll, opened.records().get(0).step(), opened.problems());
        }
        List<String> problems = new ArrayList<>(opened.problems());
        if (problems.isEmpty() || !opened.records().isEmpty()) {
            problems.add(id + ".journal:1: the record of its loading is missing, so the roll cannot be shown");
        }
        return new RollReading(id, Optional.empty(), 0, problems);
    }
}
