package takeup.roll;

import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.kit.Camera;

/**
 * One roll, as all that happened to it adds up.
 *
 * @param id the number on the cassette or band
 * @param life where it is in its life, and since when
 * @param loadedIn the camera and back it is in
 * @param film stock, size, index, development, frames promised
 * @param log its frames, and the number that comes next
 * @param handling counter checks, load checks, rewindings
 * @param notes what is noted about it as a whole
 * @param revision how many events there are so far, those that were undone counted too
 */
public record Roll(
        RollId id,
        Life life,
        LoadedIn loadedIn,
        Film film,
        FrameLog log,
        Handling handling,
        RollNotes notes,
        int revision) {
    /** Where a roll is in its life. */
    public enum State {
        OPEN("open"),
        REWOUND("rewound"),
        FINISHED("finished"),
        WITHDRAWN("withdrawn");

        private final String word;

        State(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /**
     * Where a roll is in its life.
     *
     * @param finishedAt when it was unloaded
     */
    public record Life(State state, OffsetDateTime loadedAt, Optional<OffsetDateTime> finishedAt) {
        Life in(State other) {
            return new Life(other, loadedAt, finishedAt);
        }
    }

    /**
     * What a roll is in.
     *
     * @param camera the camera, as it was described when the roll was loaded
     * @param back the interchangeable back on it
     */
    public record LoadedIn(Camera camera, Optional<String> back) {}

    /**
     * What the events of one roll add up to; empty where the record of its loading is missing. Steps that were undone
     * do not count; a roll whose loading was undone is withdrawn.
     */
    public static Optional<Roll> of(List<RollRecord> records) {
        Set<Long> undone = new HashSet<>();
        for (RollRecord record : records) {
            if (record.event() instanceof RollEvent.Undone back) {
                undone.add(back.step());
            } else if (record.event() instanceof RollEvent.Redone again) {
                undone.remove(again.step());
            }
        }
        Roll roll = null;
        boolean withdrawn = false;
        for (RollRecord record : records) {
            boolean loading = record.event() instanceof RollEvent.Loaded;
            if (loading && roll == null) {
                withdrawn = undone.contains(record.step());
                roll = record.appliedTo(null);
            } else if (roll != null && !loading && !undone.contains(record.step())) {
                roll = record.appliedTo(roll);
            }
        }
        if (roll == null) {
            return Optional.empty();
        }
        return Optional.of(roll.with(withdrawn ? State.WITHDRAWN : roll.state(), records.size()));
    }

    /**
     * The roll once one thing more has happened to it: what {@link #of} says of all records with this one behind them.
     * Not for records that undo or redo something; they change what went before.
     */
    public Roll and(RollRecord record) {
        Roll after = record.event() instanceof RollEvent.Loaded ? this : record.appliedTo(this);
        return after.with(state() == State.WITHDRAWN ? State.WITHDRAWN : after.state(), revision + 1);
    }

    static Roll loaded(RollEvent.Loaded loaded, OffsetDateTime at) {
        return new Roll(
                loaded.id(),
                new Life(State.OPEN, at, Optional.empty()),
                new LoadedIn(loaded.camera(), loaded.back()),
                loaded.film(),
                FrameLog.EMPTY,
                Handling.NONE,
                RollNotes.NONE,
                1);
    }

    public State state() {
        return life.state;
    }

    public OffsetDateTime loadedAt() {
        return life.loadedAt;
    }

    public Optional<OffsetDateTime> finishedAt() {
        return life.finishedAt;
    }

    public Camera camera() {
        return loadedIn.camera;
    }

    public Optional<String> back() {
        return loadedIn.back;
    }

    /** The camera and back it is in: {@code 645 back 1} or {@code 35}. */
    public String place() {
        return camera().key() + (back().isPresent() ? " back " + back().get() : "");
    }

    /** The camera that took a frame of it: the one that it is in, unless its back was moved since. */
    public Camera camera(Frame frame) {
        return frame.scene().body().orElse(camera());
    }

    /** The shoot of a frame, where it is another one than the roll's. */
    public Optional<Assignment> otherShoot(Frame frame) {
        return frame.scene()
                .shoot()
                .filter(it -> assignment().filter(it::isSameShoot).isEmpty());
    }

    /** Its frames, in the order of the film. */
    public List<Frame> frames() {
        return log.frames();
    }

    /** The number that the counter shows for the next frame. */
    public int next() {
        return log.next();
    }

    /** The last frame that was used up, as the camera's counter shows it; 0 before the first. */
    public int lastPassed() {
        return Math.max(0, next() - 1);
    }

    /** Whether the next exposure goes on the newest frame. */
    public boolean doubleAwaited() {
        return log.awaited() > 0;
    }

    /** How many more exposures go on the newest frame. */
    public int exposuresAwaited() {
        return log.awaited();
    }

    /** How many numbers were used up. */
    public int framesUsed() {
        return log.used();
    }

    /** How many frames may come back as scans. */
    public int framesExposed() {
        return (int) frames().stream().filter(Frame::mayComeBack).count();
    }

    /** How many frames the counter still promises; negative past the end. */
    public int framesLeft() {
        return film.framesNominal() - next() + 1;
    }

    /** The newest frame. */
    public Optional<Frame> newest() {
        return log.newest();
    }

    /** The newest frame of a kind, such as the slate. */
    public Optional<Frame> newest(Frame.Kind kind) {
        return log.newest(kind);
    }

    /** The place in the list of the frame with that number; the later one of two; -1 if there is none. */
    public int indexOf(int number) {
        return log.indexOf(number);
    }

    /** Whether the counter went past that number and no frame of it is known. */
    public boolean isPassed(int number) {
        return log.isPassed(number);
    }

    public List<CounterCheck> counterChecks() {
        return handling.counterChecks();
    }

    public List<LoadCheck> loadChecks() {
        return handling.loadChecks();
    }

    public List<Rewinding> rewindings() {
        return handling.rewindings();
    }

    /** What the lab must know. */
    public List<Condition> conditions() {
        return notes.conditions();
    }

    /** The photographer's words. */
    public Optional<String> note() {
        return notes.note();
    }

    /** The shoot that it belongs to. */
    public Optional<Assignment> assignment() {
        return notes.assignment();
    }

    /** How it was developed. */
    public Optional<DevelopedIn> developed() {
        return notes.developed();
    }

    /** The counter was read; it is right from here on. */
    Roll counterShown(int shown, OffsetDateTime at) {
        return with(handling.with(new CounterCheck(at, next(), shown))).with(log.showing(shown));
    }

    /** Out of the camera, its tongue out. */
    Roll rewound(OffsetDateTime at) {
        return with(log.rewound()).with(handling.rewound(at, next())).with(life.in(State.REWOUND), loadedIn);
    }

    /** In a camera again; the spare frames behind the last one are blank. */
    Roll reloaded(RollEvent.Reloaded again, OffsetDateTime at) {
        return with(log.withBlanks(again.spare(), at))
                .with(handling.reloaded(at, again.spare()))
                .with(life.in(State.OPEN), new LoadedIn(again.camera(), again.back()));
    }

    /** With its back on another body; the frames so far keep the one that took them. */
    Roll moved(RollEvent.BackMoved move) {
        return with(log.takenWith(camera())).with(life, new LoadedIn(move.camera(), Optional.of(move.back())));
    }

    Roll unloaded(OffsetDateTime at) {
        return with(new Life(State.FINISHED, life.loadedAt, Optional.of(at)), loadedIn);
    }

    Roll with(Film other) {
        return new Roll(id, life, loadedIn, other, log, handling, notes, revision);
    }

    Roll with(FrameLog other) {
        return new Roll(id, life, loadedIn, film, other, handling, notes, revision);
    }

    Roll with(Handling other) {
        return new Roll(id, life, loadedIn, film, log, other, notes, revision);
    }

    Roll with(RollNotes other) {
        return new Roll(id, life, loadedIn, film, log, handling, other, revision);
    }

    private Roll with(Life other, LoadedIn where) {
        return new Roll(id, other, where, film, log, handling, notes, revision);
    }

    private Roll with(State now, int events) {
        return new Roll(id, life.in(now), loadedIn, film, log, handling, notes, events);
    }
}
