package takeup.roll;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What is noted about a roll as a whole.
 *
 * @param conditions what the lab must know
 * @param note the photographer's words
 * @param assignment the shoot that it belongs to
 * @param developed how it was developed
 * @param paid what it cost
 */
public record RollNotes(
        List<Condition> conditions,
        Optional<String> note,
        Optional<Assignment> assignment,
        Optional<DevelopedIn> developed,
        Optional<Costs> paid) {
    /** Nothing noted. */
    static final RollNotes NONE =
            new RollNotes(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public RollNotes {
        conditions = List.copyOf(conditions);
    }

    RollNotes with(Condition condition) {
        return new RollNotes(Handling.and(conditions, condition), note, assignment, developed, paid);
    }

    RollNotes with(String words) {
        return new RollNotes(conditions, Optional.of(Frame.joined(note, words)), assignment, developed, paid);
    }

    RollNotes with(Assignment other) {
        return new RollNotes(conditions, note, Optional.of(other), developed, paid);
    }

    RollNotes with(DevelopedIn how) {
        return new RollNotes(conditions, note, assignment, Optional.of(how), paid);
    }

    RollNotes with(Costs.Kind kind, BigDecimal amount) {
        return new RollNotes(conditions, note, assignment, developed, Optional.of(costs().with(kind, amount)));
    }

    /** What it cost, as far as that was said. */
    public Costs costs() {
        return paid.orElse(Costs.NONE);
    }
}
