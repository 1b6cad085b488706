package takeup.message;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderSource;
import takeup.history.JournalStep;
import takeup.report.RollSummary;
import takeup.roll.RollId;
import takeup.search.FoundFrames;

/** What reaches the model from outside: keys, the clock, the answers of the disk. */
public sealed interface Message {
    /** Picks the case for this kind of message. */
    <R> R match(Cases<R> cases);

    /** One method for each kind of message. */
    interface Cases<R> {
        R pressed(Pressed message);

        R ticked(Ticked message);

        R saved(Saved message);

        R saveFailed(SaveFailed message);

        R notice(Notice message);

        R fetched(Fetched message);

        R listed(Listed message);

        R orderRead(OrderRead message);

        R orderWritten(OrderWritten message);

        R orderMarked(OrderMarked message);

        R found(Found message);

        R resized(Resized message);

        R ended(Ended message);
    }

    /**
     * A key.
     *
     * @param key which
     * @param at the time of day
     * @param ticks milliseconds on a clock that only runs forward
     * @param arrival whether it came alone
     */
    record Pressed(Key key, OffsetDateTime at, long ticks, Arrival arrival) implements Message {
        /** A key that came alone, as from a hand. */
        public Pressed(Key key, OffsetDateTime at, long ticks) {
            this(key, at, ticks, Arrival.ALONE);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pressed(this);
        }
    }

    /** How a key came in: what comes with others in one read was hardly typed one by one. */
    enum Arrival {
        ALONE,
        WITH_OTHERS
    }

    /** The clock: once a second or so, and when the model asked to be woken. */
    record Ticked(OffsetDateTime at, long ticks) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ticked(this);
        }
    }

    /** Whether the files of the rolls that a step changed were written after it; so they are where there are none. */
    enum Export {
        WRITTEN,
        FAILED
    }

    /** A step is on the disk. */
    record Saved(long step, Export export) implements Message {
        public Saved(long step) {
            this(step, Export.WRITTEN);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.saved(this);
        }
    }

    /** A step could not be written; it is tried again at the next key. */
    record SaveFailed(long step, SaveError why) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.saveFailed(this);
        }
    }

    /** Something to say that came from the disk, such as an export that failed. */
    record Notice(String text) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notice(this);
        }
    }

    /** A finished roll was read in. */
    record Fetched(RollId roll, List<JournalStep> steps, List<String> problems) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.fetched(this);
        }
    }

    /** All rolls there are, for the view of them, and where those are that are in an order. */
    record Listed(List<RollSummary> rolls, Map<String, String> ordered) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.listed(this);
        }
    }

    /** What a lab order can be made from. */
    record OrderRead(OrderSource source) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.orderRead(this);
        }
    }

    /** A lab order is on the disk. */
    record OrderWritten(String order, OrderDraft draft) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.orderWritten(this);
        }
    }

    /** It is on the disk how far an order has come: what is said of it, and what an order can be made from now. */
    record OrderMarked(String text, OrderSource source) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.orderMarked(this);
        }
    }

    /** Frames that were looked for. */
    record Found(FoundFrames frames) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.found(this);
        }
    }

    /** The terminal changed its size or came back: draw again. */
    record Resized() implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.resized(this);
        }
    }

    /** No key will come any more. */
    record Ended(String why) implements Message {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ended(this);
        }
    }
}
