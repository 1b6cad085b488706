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
 * @param verdicts the verdict on each frame that has one
 */
public record Review(Optional<ReviewEvent.Accepted> accepted, Map<FrameKey, Density> verdicts) {
    /** Nothing decided yet. */
    public static final Review NONE = new Review(Optional.empty(), Map.of());

    public Review {
        verdicts = Map.copyOf(verdicts);
    }

    /** What events add up to. */
    public static Review of(List<ReviewEvent> events) {
        Optional<ReviewEvent.Accepted> accepted = Optional.empty();
        Map<FrameKey, Density> verdicts = new LinkedHashMap<>();
        for (ReviewEvent event : events) {
            if (event instanceof ReviewEvent.Accepted now) {
                accepted = Optional.of(now);
            } else if (event instanceof ReviewEvent.Judged judged) {
                verdicts.remove(judged.frame());
                judged.verdict().ifPresent(it -> verdicts.put(judged.frame(), it));
            }
        }
        return new Review(accepted, verdicts);
    }

    /** The verdict on each frame of a roll, in its order. */
    public List<Optional<Density>> verdicts(Roll roll) {
        List<Optional<Density>> found =
                new ArrayList<>(Collections.nCopies(roll.frames().size(), Optional.empty()));
        verdicts.forEach((key, density) -> {
            int at = key.placeIn(roll.frames());
            if (at >= 0) {
                found.set(at, Optional.of(density));
            }
        });
        return List.copyOf(found);
    }

    /** The scan of each frame of a roll, in its order. */
    public List<Optional<String>> scans(Roll roll) {
        List<Optional<String>> found =
                new ArrayList<>(Collections.nCopies(roll.frames().size(), Optional.empty()));
        accepted.ifPresent(it -> it.scans()
                .forEach(placed -> placed.frames().forEach(key -> {
                    int at = key.placeIn(roll.frames());
                    if (at >= 0) {
                        found.set(at, Optional.of(placed.file()));
                    }
                })));
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
