package takeup.roll;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What was noted on a roll as a whole: words, what the lab must know, whose it is, how it was developed, what it cost,
 * who signed a release.
 */
public sealed interface NoteEvent extends RollEvent {
    /** A note on the roll. */
    record Noted(String words) implements NoteEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes().with(words));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noted(this);
        }
    }

    /** Something that the lab must know. */
    record ConditionNoted(Condition condition) implements NoteEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes().with(condition));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.conditionNoted(this);
        }
    }

    /** The roll belongs to a shoot. */
    record ShootAssigned(Assignment assignment) implements NoteEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes().with(assignment));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.shootAssigned(this);
        }
    }

    /** The roll was developed. */
    record Developed(DevelopedIn how) implements NoteEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes().with(how));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.developed(this);
        }
    }

    /** Something of the roll was paid for. */
    record CostNoted(Costs.Kind kind, BigDecimal amount) implements NoteEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes().with(kind, amount));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.costNoted(this);
        }
    }

    /** People signed a model release; where none is named, nobody did after all. */
    record Released(List<String> people, Optional<String> words) implements NoteEvent {
        public Released {
            people = List.copyOf(people);
        }

        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.notes()
                    .released(people.stream()
                            .map(it -> new Release(it, at.toLocalDate(), words))
                            .toList()));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.released(this);
        }
    }
}
