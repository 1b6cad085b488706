package takeup.roll;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.text.StableId;

/**
 * One number of the counter and the picture that belongs to it.
 *
 * @param number what the counter showed; 0 and 37 may occur
 * @param was the number it was logged under, if it was renumbered since
 * @param kind what became of it
 * @param exposure the first opening of the shutter
 * @param further more openings on the same frame
 * @param note the photographer's words
 * @param scene who and where, and for which shoot
 * @param id what other programs know it by, whatever its number and roll become; empty until it is in the log
 */
public record Frame(
        int number,
        OptionalInt was,
        Kind kind,
        Exposure exposure,
        List<Exposure> further,
        Optional<String> note,
        Scene scene,
        Optional<String> id) {
    /** What became of a frame. */
    public enum Kind {
        EXPOSED("exposed"),
        BLANK("blank"),
        UNLOGGED("unlogged"),
        LOST("lost"),
        SLATE("slate");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind of that name. */
        public static Optional<Kind> named(String word) {
            for (Kind kind : values()) {
                if (kind.word.equals(word)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }

        @Override
        public String toString() {
            return word;
        }
    }

    public Frame {
        further = List.copyOf(further);
    }

    /** A frame of which nobody said who or what is on it. */
    public Frame(
            int number, OptionalInt was, Kind kind, Exposure exposure, List<Exposure> further, Optional<String> note) {
        this(number, was, kind, exposure, further, note, Scene.NONE, Optional.empty());
    }

    /** A frame just logged. */
    public static Frame of(int number, Kind kind, Exposure exposure, Optional<String> note) {
        return new Frame(number, OptionalInt.empty(), kind, exposure, List.of(), note);
    }

    /** The frame in the log, with an id made of what brought it there; one that was moved here has its id already. */
    Frame broughtBy(String record) {
        return id.isPresent()
                ? this
                : new Frame(
                        number,
                        was,
                        kind,
                        exposure,
                        further,
                        note,
                        scene,
                        Optional.of(StableId.of("frame " + number + " of " + record)));
    }

    /** The number it was first logged under. */
    public int loggedAs() {
        return was.orElse(number);
    }

    /** Whether something may come back from the lab for it. */
    public boolean mayComeBack() {
        return kind != Kind.BLANK;
    }

    public Frame renumbered(int other) {
        int first = loggedAs();
        return new Frame(
                other,
                first == other ? OptionalInt.empty() : OptionalInt.of(first),
                kind,
                exposure,
                further,
                note,
                scene,
                id);
    }

    /** The same with who and where. */
    public Frame showing(Scene other) {
        return new Frame(number, was, kind, exposure, further, note, other, id);
    }

    Frame exposedAgain(Exposure more, Optional<String> words) {
        List<Exposure> all = new ArrayList<>(further);
        all.add(more);
        return new Frame(
                number,
                was,
                kind,
                exposure,
                all,
                words.isEmpty() ? note : words.map(it -> joined(note, it)),
                scene,
                id);
    }

    /**
     * The frame after a correction. A note takes the place of the one before. A frame that was blank or not recorded
     * and gets an aperture or a time was exposed.
     */
    public Frame with(SettingPatch change) {
        boolean set = change.aperture().isPresent() || change.time().isPresent();
        Kind now = change.kind().orElse(set && (kind == Kind.BLANK || kind == Kind.UNLOGGED) ? Kind.EXPOSED : kind);
        Exposure right = exposure.with(change);
        boolean bare = now == Kind.BLANK || now == Kind.UNLOGGED;
        return new Frame(
                number,
                was,
                now,
                bare && change.kind().isPresent() ? exposure.timeOnly() : right,
                further,
                SettingPatch.either(change.note(), note),
                scene.with(change.people().orElse(scene.people()))
                        .with(change.place().orElse(scene.place())),
                id);
    }

    /** Two notes in one. */
    public static String joined(Optional<String> before, String words) {
        return before.map(it -> it + "; " + words).orElse(words);
    }
}
