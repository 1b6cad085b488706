package takeup.roll;

import java.math.BigDecimal;
import java.time.OffsetDateTime;

/**
 * What was noted on a roll as a whole: words, what the lab must know, whose it is, how it was developed, what it cost.
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
}
