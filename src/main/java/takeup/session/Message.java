package takeup.session;

import java.time.OffsetDateTime;
import java.util.List;
import takeup.history.JournalStep;
import takeup.report.RollSummary;
import takeup.roll.RollId;

/** What reaches the model from outside: keys, the clock, the answers of the disk. */
public sealed interface Message {
    /** The model after it, and what it asks of the outside. */
    Transition appliedTo(Session shoot);

    /**
     * A key.
     *
     * @param key which
     * @param at the time of day
     * @param ticks milliseconds on a clock that only runs forward
     */
    record Pressed(Key key, OffsetDateTime at, long ticks) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, at, ticks).pressed(key);
        }
    }

    /** The clock: once a second or so, and when the model asked to be woken. */
    record Ticked(OffsetDateTime at, long ticks) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, at, ticks).ticked();
        }
    }

    /** A step is on the disk. */
    record Saved(long step) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).kept(step);
        }
    }

    /** A step could not be written; it is tried again at the next key. */
    record SaveFailed(long step, String why) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).notKept(step, why);
        }
    }

    /** Something to say that came from the disk, such as an export that failed. */
    record Notice(String words) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).told(words);
        }
    }

    /** A finished roll was read in. */
    record Fetched(RollId roll, List<JournalStep> steps, List<String> problems) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).fetched(roll, steps, problems);
        }
    }

    /** All rolls there are, for the view of them. */
    record Listed(List<RollSummary> rolls) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).listed(rolls);
        }
    }

    /** The terminal changed its size or came back: draw again. */
    record Resized() implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Transition(shoot, List.of());
        }
    }

    /** No key will come any more. */
    record Ended(String why) implements Message {
        @Override
        public Transition appliedTo(Session shoot) {
            return new Update(shoot, shoot.now(), shoot.ticks()).ended();
        }
    }
}
