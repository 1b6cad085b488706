package takeup.reviewing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.ReviewEvent;
import takeup.roll.Roll;

/** The options of {@code takeup scans} that judge frames. */
final class VerdictOptions {
    @Option(
            names = "--thin",
            paramLabel = "FRAMES",
            description = "These frames are thin, by the texture of their shadows: 3-5,9.")
    String thin;

    @Option(names = "--good", paramLabel = "FRAMES", description = "These frames are good.")
    String good;

    @Option(names = "--dense", paramLabel = "FRAMES", description = "These frames are dense.")
    String dense;

    @Option(names = "--unjudged", paramLabel = "FRAMES", description = "Takes the verdict on these frames back.")
    String unjudged;

    boolean isGiven() {
        return Stream.of(thin, good, dense, unjudged).anyMatch(it -> it != null);
    }

    /** The verdicts on frames of that roll. */
    List<ReviewEvent> on(Roll roll) {
        List<ReviewEvent> events = new ArrayList<>();
        Set<FrameKey> judged = new HashSet<>();
        judge(thin, Optional.of(Density.THIN), roll, judged, events);
        judge(good, Optional.of(Density.GOOD), roll, judged, events);
        judge(dense, Optional.of(Density.DENSE), roll, judged, events);
        judge(unjudged, Optional.empty(), roll, judged, events);
        return events;
    }

    private static void judge(
            String frames, Optional<Density> verdict, Roll roll, Set<FrameKey> judged, List<ReviewEvent> into) {
        if (frames == null) {
            return;
        }
        for (int place : FrameNumbers.of(frames, roll)) {
            FrameKey frame = FrameKey.of(roll.frames().get(place));
            if (!judged.add(frame)) {
                throw new CommandFailed(2, "frame " + frame.number() + " is given two verdicts");
            }
            into.add(new ReviewEvent.Judged(frame, verdict));
        }
    }
}
