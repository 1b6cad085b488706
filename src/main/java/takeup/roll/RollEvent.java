package takeup.roll;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.kit.Camera;

/** What happened to one roll. A mistake is corrected by a further event, never by an edit. */
public sealed interface RollEvent
        permits NoteEvent,
                RollEvent.Loaded,
                RollEvent.Added,
                RollEvent.DoubleAnnounced,
                RollEvent.ExposedAgain,
                RollEvent.Corrected,
                RollEvent.Dropped,
                RollEvent.CounterShown,
                RollEvent.RollCorrected,
                RollEvent.LoadChecked,
                RollEvent.Rewound,
                RollEvent.Reloaded,
                RollEvent.Unloaded,
                RollEvent.BackMoved,
                RollEvent.Undone,
                RollEvent.Redone,
                RollEvent.Unknown {
    /** The roll as it stands once this has happened; as it was, for what changes nothing by itself. */
    default Roll appliedTo(Roll roll, OffsetDateTime at) {
        return roll;
    }

    /** One method for each kind, for rooms that must know which it is. */
    <R> R match(Cases<R> cases);

    /** A case for each kind. */
    interface Cases<R> {
        R loaded(Loaded event);

        R added(Added event);

        R doubleAnnounced(DoubleAnnounced event);

        R exposedAgain(ExposedAgain event);

        R corrected(Corrected event);

        R dropped(Dropped event);

        R counterShown(CounterShown event);

        R rollCorrected(RollCorrected event);

        R noted(NoteEvent.Noted event);

        R conditionNoted(NoteEvent.ConditionNoted event);

        R shootAssigned(NoteEvent.ShootAssigned event);

        R developed(NoteEvent.Developed event);

        R costNoted(NoteEvent.CostNoted event);

        R released(NoteEvent.Released event);

        R loadChecked(LoadChecked event);

        R rewound(Rewound event);

        R reloaded(Reloaded event);

        R backMoved(BackMoved event);

        R unloaded(Unloaded event);

        R undone(Undone event);

        R redone(Redone event);

        R unknown(Unknown event);
    }

    /** A film was put into a camera or back. Camera and stock are kept as they were then. */
    record Loaded(RollId id, Camera camera, Optional<String> back, Film film) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return Roll.loaded(this, at);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.loaded(this);
        }
    }

    /** How a frame came into the log. */
    enum Origin {
        LOGGED,
        INSERTED,
        MOVED
    }

    /** A frame was exposed, had been forgotten before another one, or was moved here from another roll. */
    record Added(Frame frame, Origin origin, OptionalInt before) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(
                    before.isPresent() ? roll.log().inserted(frame, before.getAsInt()) : inItsPlace(roll.log()));
        }

        /** In the gap that the counter left, or behind the last. */
        private FrameLog inItsPlace(FrameLog log) {
            return origin == Origin.INSERTED && log.isPassed(frame.number()) ? log.filled(frame) : log.added(frame);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.added(this);
        }
    }

    /** The next exposure goes on the newest frame. */
    record DoubleAnnounced(int more) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.log().awaiting(more));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.doubleAnnounced(this);
        }
    }

    /** The newest frame was exposed once more. */
    record ExposedAgain(Exposure exposure, Optional<String> note) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.log().exposedAgain(exposure, note));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exposedAgain(this);
        }
    }

    /** Frames were logged wrong: this is right. */
    record Corrected(int from, int to, SettingPatch change) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.log().corrected(from, to, change));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.corrected(this);
        }
    }

    /** Frames never happened here, or were shot on another camera's roll; later ones are renumbered. */
    record Dropped(int from, int to, Optional<RollId> movedTo) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.log().dropped(from, to));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.dropped(this);
        }
    }

    /** The camera, wound on, shows a number. */
    record CounterShown(int shown) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.counterShown(shown, at);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.counterShown(this);
        }
    }

    /** What was known about the film was wrong, or its development was decided. */
    record RollCorrected(RollChange change) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.film().with(change));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.rollCorrected(this);
        }
    }

    /** A question of the load routine was answered. */
    record LoadChecked(LoadCheck.What what, LoadCheck.Answer answer) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.with(roll.handling().with(new LoadCheck(at, roll.next(), what, answer)));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.loadChecked(this);
        }
    }

    /** The roll was rewound before its end and is out of the camera, to be loaded again. */
    record Rewound() implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.rewound(at);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.rewound(this);
        }
    }

    /** A rewound roll was put into a camera again and wound past what is exposed, and so many frames further. */
    record Reloaded(Camera camera, Optional<String> back, int spare) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.reloaded(this, at);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reloaded(this);
        }
    }

    /** The roll is finished and out of the camera. */
    record Unloaded() implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.unloaded(at);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unloaded(this);
        }
    }

    /** The back with the roll in it went on another body. */
    record BackMoved(Camera camera, String back) implements RollEvent {
        @Override
        public Roll appliedTo(Roll roll, OffsetDateTime at) {
            return roll.moved(this);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.backMoved(this);
        }
    }

    /** A step was undone: what it did here counts no longer. */
    record Undone(long step) implements RollEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undone(this);
        }
    }

    /** A step that was undone was done again. */
    record Redone(long step) implements RollEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.redone(this);
        }
    }

    /** A kind that a later version wrote: kept, and shown as such. */
    record Unknown(String kind, String text) implements RollEvent {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }
}
