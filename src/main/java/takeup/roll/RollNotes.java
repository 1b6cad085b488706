package takeup.roll;

import java.math.BigDecimal;
import java.util.ArrayList;
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
 * @param releases who signed a model release
 */
public record RollNotes(
        List<Condition> conditions,
        Optional<String> note,
        Optional<Assignment> assignment,
        Optional<DevelopedIn> developed,
        Optional<Costs> paid,
        List<Release> releases) {
    /** Nothing noted. */
    static final RollNotes NONE =
            new RollNotes(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public RollNotes {
        conditions = List.copyOf(conditions);
        releases = List.copyOf(releases);
    }

    RollNotes with(Condition condition) {
        return new RollNotes(Handling.and(conditions, condition), note, assignment, developed, paid, releases);
    }

    RollNotes with(String words) {
        return new RollNotes(conditions, Optional.of(Frame.joined(note, words)), assignment, developed, paid, releases);
    }

    RollNotes with(Assignment other) {
        return new RollNotes(conditions, note, Optional.of(other), developed, paid, releases);
    }

    RollNotes with(DevelopedIn how) {
        return new RollNotes(conditions, note, assignment, Optional.of(how), paid, releases);
    }

    RollNotes with(Costs.Kind kind, BigDecimal amount) {
        return new RollNotes(
                conditions, note, assignment, developed, Optional.of(costs().with(kind, amount)), releases);
    }

    /**
     * With releases of some people, in place of those that they signed before; of nobody at all where none is named.
     */
    RollNotes released(List<Release> signed) {
        List<Release> all = new ArrayList<>(releases);
        all.removeIf(before -> signed.stream().anyMatch(it -> it.name().equalsIgnoreCase(before.name())));
        all.addAll(signed);
        return new RollNotes(conditions, note, assignment, developed, paid, signed.isEmpty() ? List.of() : all);
    }

    /** Who is on a frame and has signed no release. */
    public List<String> unreleased(Frame frame) {
        return frame.scene().people().stream()
                .filter(it -> releases.stream().noneMatch(one -> one.name().equalsIgnoreCase(it)))
                .toList();
    }

    /** What it cost, as far as that was said. */
    public Costs costs() {
        return paid.orElse(Costs.NONE);
    }
}
