package takeup.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.roll.Frame;
import takeup.roll.Roll;

/**
 * What was decided about the scans of one roll, all events added up.
 *
 * @param accepted which scan shows which frames; empty while nothing was accepted
 * @param verdicts the verdict on each frame that was judged, the latest last; empty where it was taken back. A frame
 *     that was judged before and after it was renumbered has an entry for each of its keys.
 */
public record Review(Optional<ReviewEvent.Accepted> accepted, Map<FrameKey, Optional<Density>> verdicts) {
    /** Nothing decided yet. */
    public static final Review NONE = new Review(Optional.empty(), Map.of());

    public Review {
        verdicts = Collections.unmodifiableMap(new LinkedHashMap<>(verdicts));
    }

    /** What events add up to. */
    public static Review of(List<ReviewEvent> events) {
        Review review = NONE;
        for (ReviewEvent event : events) {
            review = event.appliedTo(review);
        }
        return review;
    }

    Review with(ReviewEvent.Accepted now) {
        return new Review(Optional.of(now), verdicts);
    }

    Review with(FrameKey frame, Optional<Density> verdict) {
        Map<FrameKey, Optional<Density>> more = new LinkedHashMap<>(verdicts);
        more.remove(frame);
        more.put(frame, verdict);
        return new Review(accepted, more);
    }

    /** The verdict on each frame of a roll, in its order. */
    public List<Optional<Density>> verdicts(Roll roll) {
        return byFrame(roll, verdicts);
    }

    /** The scan of each frame of a roll, in its order. */
    public List<Optional<String>> scans(Roll roll) {
        Map<FrameKey, Optional<String>> files = new LinkedHashMap<>();
        accepted.ifPresent(it ->
                it.scans().forEach(scan -> scan.frames().forEach(key -> files.put(key, Optional.of(scan.file())))));
        return byFrame(roll, files);
    }

    /** What is known by key, by the frames of the roll as they stand now. */
    private static <T> List<Optional<T>> byFrame(Roll roll, Map<FrameKey, Optional<T>> byKey) {
        List<Optional<T>> found =
                new ArrayList<>(Collections.nCopies(roll.frames().size(), Optional.empty()));
        byKey.forEach((key, value) -> {
            int at = key.placeIn(roll.frames());
            if (at >= 0) {
                found.set(at, value);
            }
        });
        return List.copyOf(found);
    }

    /** Frames that were meant when the scans were accepted and are not in the roll any more, by their numbers then. */
    public List<Integer> missingFrames(List<Frame> frames) {
        return accepted.map(it -> it.scans().stream()
                        .flatMap(placed -> placed.frames().stream())
                        .filter(key -> key.placeIn(frames) < 0)
                        .map(FrameKey::number)
                        .toList())
                .orElse(List.of());
    }
}
