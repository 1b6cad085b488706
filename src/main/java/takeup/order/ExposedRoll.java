package takeup.order;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What an order takes from a roll's file.
 *
 * @param roll the number on the cassette or band, R0007
 * @param revision how many events the roll had when the file was written
 * @param status where the roll is between camera and lab
 * @param shoot for whom and when it was shot
 * @param camera the camera that it was in
 * @param film the film and its development
 * @param exposures what is on it
 * @param notes what the lab should know of it
 */
public record ExposedRoll(
        String roll,
        int revision,
        Status status,
        Shoot shoot,
        Body camera,
        RollFilm film,
        Exposures exposures,
        LabNotes notes) {
    /** Whether that is the photographer's own name for it. */
    public boolean isCalled(String name) {
        return film.label().name().filter(name::equalsIgnoreCase).isPresent();
    }

    /** A state, open, rewound, finished or withdrawn, and when the roll was loaded and unloaded. */
    record Status(String state, OffsetDateTime loadedAt, Optional<OffsetDateTime> finishedAt) {}

    /** The day of the shoot, 2026-09-12, and the client, if the file names one. */
    record Shoot(String date, Optional<String> client) {}

    /** A camera's name and its back, if it has such. */
    record Body(String name, Optional<String> back) {
        /** Both as they are printed: {@code 645 reflex, back 1}. */
        String printed() {
            return PrintedText.of(name)
                    + back.map(it -> ", back " + PrintedText.of(it)).orElse("");
        }
    }

    /** How many frames may come back as scans, and all frames in the order of the film. */
    record Exposures(int expected, List<ExposedFrame> frames) {
        Exposures {
            frames = frames instanceof FrameLines ? frames : List.copyOf(frames);
        }
    }

    /** The roll that a file of format takeup-roll holds; the file is named in what is wrong with it. */
    public static ExposedRoll of(String file, String json) {
        return JsonRoll.read(file, json);
    }

    /** The same as text of few letters, to be kept and read again with {@link #ofKept}. */
    public String kept() {
        return ExposedRollText.of(this);
    }

    /** The roll that was kept as that text; an IllegalArgumentException where it is none. */
    public static ExposedRoll ofKept(String text) {
        return ExposedRollText.read(text);
    }

    /** Open, rewound, finished or withdrawn. */
    public String state() {
        return status.state;
    }

    /** Whether this roll went into the same camera and back after another one. */
    public boolean isLoadedAfter(ExposedRoll other) {
        int later = status.loadedAt.compareTo(other.status.loadedAt);
        return camera.equals(other.camera) && (later > 0 || later == 0 && roll.compareTo(other.roll) > 0);
    }

    /** When it was unloaded. */
    public Optional<OffsetDateTime> finishedAt() {
        return status.finishedAt;
    }

    LabDevelopment development() {
        return film.development();
    }

    List<ExposedFrame> frames() {
        return exposures.frames;
    }

    /** Whether it is still in a camera. */
    public boolean isLoaded() {
        return state().equals("open") || state().equals("rewound");
    }

    /** Whether it came out of the camera and can be ordered. */
    public boolean isFinished() {
        return state().equals("finished");
    }
}
