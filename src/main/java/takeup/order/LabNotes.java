package takeup.order;

import java.util.List;
import java.util.Optional;

/**
 * What the lab should know of a roll.
 *
 * @param condition what the lab must know, in words
 * @param note words on the roll, where they are wanted
 */
record LabNotes(List<String> condition, Optional<String> note) {
    LabNotes {
        condition = List.copyOf(condition);
    }

    LabNotes withoutNote() {
        return new LabNotes(condition, Optional.empty());
    }

    /** Condition and note as they are printed. */
    String printed() {
        String conditions =
                String.join("; ", condition.stream().map(PrintedText::of).toList());
        String words = note.map(PrintedText::of).orElse("");
        return conditions + (conditions.isEmpty() || words.isEmpty() ? "" : "; ") + words;
    }
}
