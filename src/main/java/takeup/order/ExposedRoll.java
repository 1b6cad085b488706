package takeup.order;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What an order takes from a roll's file.
 *
 * @param roll the number on the cassette or band, R0007
 * @param revision how many events the roll had when the file was written
 * @param state open, rewound, finished or withdrawn
 * @param date when it was loaded, 2026-09-12
 * @param client for whom, if the file says so
 * @param camera the camera's name
 * @param back its back, if it has such
 * @param frameSize 24x36, 6x4.5
 * @param filmSize 135, 120 or 220
 * @param stock the stock's name
 * @param kind colour-negative, bw-negative, colour-reversal or bw-reversal
 * @param development what is to be done with it
 * @param framesExposed frames that may come back as scans
 * @param condition what the lab must know, in words
 * @param note words on the roll
 * @param finishedAt when it was unloaded
 * @param frames in the order of the film
 */
public record ExposedRoll(
        String roll,
        int revision,
        String state,
        String date,
        Optional<String> client,
        String camera,
        Optional<String> back,
        String frameSize,
        String filmSize,
        String stock,
        String kind,
        LabDevelopment development,
        int framesExposed,
        List<String> condition,
        Optional<String> note,
        Optional<OffsetDateTime> finishedAt,
        List<ExposedFrame> frames) {
    public ExposedRoll {
        condition = List.copyOf(condition);
        frames = List.copyOf(frames);
    }

    /** The roll that a file of format takeup-roll holds; the file is named in what is wrong with it. */
    public static ExposedRoll of(String file, String json) {
        return JsonRoll.read(file, json);
    }

    /** Whether it is still in a camera. */
    public boolean isLoaded() {
        return state.equals("open") || state.equals("rewound");
    }

    /** Whether it came out of the camera and can be ordered. */
    public boolean isFinished() {
        return state.equals("finished");
    }

    /** The camera and its back: {@code 645 reflex, back 1}. */
    public String body() {
        return PrintedText.of(camera)
                + back.map(it -> ", back " + PrintedText.of(it)).orElse("");
    }

    /** What the lab's mask must be told: half-frame, panoramic; empty for the usual ones. */
    Optional<String> special() {
        return switch (frameSize) {
            case "18x24" -> Optional.of("half-frame");
            case "24x65", "6x12", "6x17" -> Optional.of("panoramic");
            default -> Optional.empty();
        };
    }
}
