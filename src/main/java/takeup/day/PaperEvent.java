package takeup.day;

import java.util.List;
import java.util.Optional;
import takeup.roll.RollId;

/** A paper form that is read back. It changes the rolls by lines of their own, so none of this is a step. */
public sealed interface PaperEvent extends DayEvent {
    @Override
    default boolean isStep() {
        return false;
    }

    /** A paper form is being read back from here on. It changes no roll, so it is no step. */
    record PaperStarted(RollId roll) implements PaperEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(Optional.of(new PaperInput(roll, List.of())));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperStarted(this);
        }
    }

    /** A line of the form did not fit: it is stored as it was typed. */
    record PaperLineRejected(String line) implements PaperEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(day.paper().map(it -> it.and(line)));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperLineRejected(this);
        }
    }

    /** The form was read. */
    record PaperFinished() implements PaperEvent {
        @Override
        public Day appliedTo(Day day) {
            return day.with(Optional.empty());
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.paperFinished(this);
        }
    }
}
