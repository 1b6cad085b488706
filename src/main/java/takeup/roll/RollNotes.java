package takeup.roll;

import java.util.List;
import java.util.Optional;

/**
 * What is noted about a roll as a whole.
 *
 * @param conditions what the lab must know
 * @param note the photographer's words
 * @param assignment the shoot that it belongs to
 */
public record RollNotes(List<Condition> conditions, Optional<String> note, Optional<Assignment> assignment) {
    /** Nothing noted. */
    static final RollNotes NONE = new RollNotes(List.of(), Optional.empty(), Optional.empty());

    public RollNotes {
        conditions = List.copyOf(conditions);
    }

    RollNotes with(Condition condition) {
        return new RollNotes(Handling.and(conditions, condition), note, assignment);
    }

    RollNotes with(String words) {
        return new RollNotes(conditions, Optional.of(Frame.joined(note, words)), assignment);
    }

    RollNotes with(Assignment other) {
        return new RollNotes(conditions, note, Optional.of(other));
    }
}
