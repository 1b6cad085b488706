package takeup.roll;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.kit.Camera;

/**
 * One roll, as all that happened to it adds up.
 *
 * @param id the number on the cassette or band
 * @param state where it is in its life
 * @param camera the camera, as it was described when the roll was loaded
 * @param back the interchangeable back it is in
 * @param film stock, size, index, development, frames promised
 * @param frames in the order of the film
 * @param next the number that the counter shows for the next frame
 * @param doubleAwaited whether the next exposure goes on the newest frame
 * @param counterChecks the camera's counter against the log
 * @param loadChecks what was looked at after loading, as far as it was answered
 * @param rewindings when it was rewound before its end and loaded again
 * @param conditions what the lab must know
 * @param note the photographer's words
 * @param loadedAt when it was loaded
 * @param finishedAt when it was unloaded
 * @param assignment the shoot that it belongs to
 * @param revision how many events there are so far, those taken back counted too
 */
public record Roll(
        RollId id,
        State state,
        Camera camera,
        Optional<String> back,
        Film film,
        List<Frame> frames,
        int next,
        boolean doubleAwaited,
        List<CounterCheck> counterChecks,
        List<LoadCheck> loadChecks,
        List<Rewinding> rewindings,
        List<Condition> conditions,
        Optional<String> note,
        OffsetDateTime loadedAt,
        Optional<OffsetDateTime> finishedAt,
        Optional<Assignment> assignment,
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

    public Roll {
        frames = List.copyOf(frames);
        counterChecks = List.copyOf(counterChecks);
        loadChecks = List.copyOf(loadChecks);
        rewindings = List.copyOf(rewindings);
        conditions = List.copyOf(conditions);
    }

    /**
     * What the events of one roll add up to; empty where the record of its loading is missing. Steps that were taken
     * back do not count; a roll whose loading was taken back is withdrawn.
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
                roll = record.event().appliedTo(null, record.at());
            } else if (roll != null && !loading && !undone.contains(record.step())) {
                roll = record.event().appliedTo(roll, record.at());
            }
        }
        if (roll == null) {
            return Optional.empty();
        }
        return Optional.of(roll.with(withdrawn ? State.WITHDRAWN : roll.state, records.size()));
    }

    /**
     * The roll once one thing more has happened to it: what {@link #of} says of all records with this one behind them.
     * Not for records that take something back or put it back; they change what went before.
     */
    public Roll and(RollRecord record) {
        Roll after = record.event() instanceof RollEvent.Loaded
                ? this
                : record.event().appliedTo(this, record.at());
        return after.with(state == State.WITHDRAWN ? state : after.state, revision + 1);
    }

    static Roll loaded(RollEvent.Loaded loaded, OffsetDateTime at) {
        return new Roll(
                loaded.id(),
                State.OPEN,
                loaded.camera(),
                loaded.back(),
                loaded.film(),
                List.of(),
                1,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                at,
                Optional.empty(),
                Optional.empty(),
                1);
    }

    /** How many numbers went by. */
    public int framesUsed() {
        int first = Math.min(1, next);
        int last = next - 1;
        for (Frame frame : frames) {
            first = Math.min(first, frame.number());
            last = Math.max(last, frame.number());
        }
        return Math.max(0, last - first + 1);
    }

    /** How many frames may come back as scans. */
    public int framesExposed() {
        return (int) frames.stream().filter(Frame::mayComeBack).count();
    }

    /** How many frames the counter still promises; negative past the end. */
    public int framesLeft() {
        return film.framesNominal() - next + 1;
    }

    /** The newest frame. */
    public Optional<Frame> newest() {
        return frames.isEmpty() ? Optional.empty() : Optional.of(frames.get(frames.size() - 1));
    }

    /** The newest frame of a kind, such as the slate. */
    public Optional<Frame> newest(Frame.Kind kind) {
        for (int i = frames.size() - 1; i >= 0; i--) {
            if (frames.get(i).kind() == kind) {
                return Optional.of(frames.get(i));
            }
        }
        return Optional.empty();
    }

    /** The place in the list of the frame with that number; the later one of two; -1 if there is none. */
    public int indexOf(int number) {
        for (int i = frames.size() - 1; i >= 0; i--) {
            if (frames.get(i).number() == number) {
                return i;
            }
        }
        return -1;
    }

    /** The last frame that went by, as the camera's counter shows it; 0 before the first. */
    public int lastPassed() {
        return Math.max(0, next - 1);
    }

    /** The camera and back it is in: {@code 645 back 1} or {@code 35}. */
    public String place() {
        return camera.key() + back.map(it -> " back " + it).orElse("");
    }

    Roll added(Frame frame) {
        List<Frame> all = new ArrayList<>(frames);
        all.add(frame);
        return with(all, frame.number() + 1);
    }

    /** Whether the counter went past that number and no frame of it is known. */
    public boolean isPassed(int number) {
        return number > 0 && number < next && indexOf(number) < 0;
    }

    /** A frame that the counter went past, in its place; no other changes its number. */
    Roll filled(Frame frame) {
        int at = 0;
        while (at < frames.size() && frames.get(at).number() < frame.number()) {
            at++;
        }
        List<Frame> all = new ArrayList<>(frames);
        all.add(at, frame);
        return with(all, next, doubleAwaited);
    }

    Roll inserted(Frame frame, int before) {
        int at = indexOf(before);
        if (at < 0) {
            return added(frame);
        }
        List<Frame> all = new ArrayList<>(frames.subList(0, at));
        all.add(frame);
        for (Frame later : frames.subList(at, frames.size())) {
            all.add(later.renumbered(later.number() + 1));
        }
        return with(all, next + 1, doubleAwaited);
    }

    Roll dropped(int from, int to) {
        int first = indexOf(from);
        int last = indexOf(to);
        if (first < 0 || last < first) {
            return this;
        }
        int gone = to - from + 1;
        List<Frame> all = new ArrayList<>(frames.subList(0, first));
        for (Frame later : frames.subList(last + 1, frames.size())) {
            all.add(later.renumbered(later.number() - gone));
        }
        return with(all, next - gone, doubleAwaited && last < frames.size() - 1);
    }

    Roll corrected(int from, int to, SettingPatch change) {
        List<Frame> all = new ArrayList<>(frames);
        for (int number = from; number <= to; number++) {
            int at = indexOf(number);
            if (at >= 0) {
                all.set(at, all.get(at).with(change));
            }
        }
        // A note or a correction in between does not end the waiting for a double exposure.
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                all,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll doubled() {
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                next,
                true,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll exposedAgain(Exposure exposure, Optional<String> words) {
        if (frames.isEmpty()) {
            return this;
        }
        List<Frame> all = new ArrayList<>(frames);
        all.set(all.size() - 1, all.get(all.size() - 1).exposedAgain(exposure, words));
        return with(all, next);
    }

    Roll counterShown(int shown, OffsetDateTime at) {
        List<CounterCheck> checks = new ArrayList<>(counterChecks);
        checks.add(new CounterCheck(at, next, shown));
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                shown,
                doubleAwaited,
                checks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll checked(LoadCheck.What what, LoadCheck.Answer answer, OffsetDateTime at) {
        List<LoadCheck> all = new ArrayList<>(loadChecks);
        all.add(new LoadCheck(at, next, what, answer));
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                all,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    /** Out of the camera, its tongue out; what waits for a second exposure waits no longer. */
    Roll rewound(OffsetDateTime at) {
        List<Rewinding> all = new ArrayList<>(rewindings);
        all.add(new Rewinding(at, next, Optional.empty(), 0));
        return new Roll(
                id,
                State.REWOUND,
                camera,
                back,
                film,
                frames,
                next,
                false,
                counterChecks,
                loadChecks,
                all,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    /** In a camera again; the spare frames behind the last one are blank. */
    Roll reloaded(RollEvent.Reloaded again, OffsetDateTime at) {
        List<Rewinding> all = new ArrayList<>(rewindings);
        if (!all.isEmpty()) {
            Rewinding last = all.remove(all.size() - 1);
            all.add(new Rewinding(last.at(), last.next(), Optional.of(at), again.spare()));
        }
        List<Frame> more = new ArrayList<>(frames);
        for (int i = 0; i < again.spare(); i++) {
            more.add(Frame.of(
                    next + i,
                    Frame.Kind.BLANK,
                    new Exposure(Optional.of(at), Setting.NONE, Optional.empty(), Optional.empty()),
                    Optional.empty()));
        }
        return new Roll(
                id,
                State.OPEN,
                again.camera(),
                again.back(),
                film,
                more,
                next + again.spare(),
                false,
                counterChecks,
                loadChecks,
                all,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll with(Film other) {
        return new Roll(
                id,
                state,
                camera,
                back,
                other,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll noted(String words) {
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                Optional.of(Frame.joined(note, words)),
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll assigned(Assignment other) {
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                Optional.of(other),
                revision);
    }

    Roll conditioned(Condition condition) {
        List<Condition> all = new ArrayList<>(conditions);
        all.add(condition);
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                all,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    Roll unloaded(OffsetDateTime at) {
        return new Roll(
                id,
                State.FINISHED,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                Optional.of(at),
                assignment,
                revision);
    }

    /** A further frame ends the waiting for a double exposure. */
    private Roll with(List<Frame> all, int nextNumber) {
        return with(all, nextNumber, false);
    }

    private Roll with(List<Frame> all, int nextNumber, boolean waits) {
        return new Roll(
                id,
                state,
                camera,
                back,
                film,
                all,
                nextNumber,
                waits,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                revision);
    }

    private Roll with(State now, int events) {
        return new Roll(
                id,
                now,
                camera,
                back,
                film,
                frames,
                next,
                doubleAwaited,
                counterChecks,
                loadChecks,
                rewindings,
                conditions,
                note,
                loadedAt,
                finishedAt,
                assignment,
                events);
    }
}
