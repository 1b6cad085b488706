package takeup.roll;

import java.util.Optional;

/**
 * What stands on a roll beside its number.
 *
 * @param name the photographer's own name for it: B-12
 * @param batch the number of the emulsion, from the box
 */
public record RollLabel(Optional<String> name, Optional<String> batch) {
    /** Nothing. */
    public static final RollLabel NONE = new RollLabel(Optional.empty(), Optional.empty());

    /** With what is said of it in place of what was. */
    public RollLabel with(RollLabel said) {
        return new RollLabel(said.name.or(() -> name), said.batch.or(() -> batch));
    }

    /** What is not said, from another one. */
    public RollLabel or(RollLabel other) {
        return other.with(this);
    }

    public boolean isNone() {
        return name.isEmpty() && batch.isEmpty();
    }
}
