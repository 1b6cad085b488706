package takeup.scans;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.ClockText;

/**
 * Digital files beside the frames of a roll that were taken at about the same time. A frame whose time is not known has
 * no place among them.
 *
 * @param rows the frames with a known time, in the order of the film
 * @param framesWithoutTime how many frames were left out because their time is not known
 * @param unmatched files of another time than the roll's
 */
public record DigitalMatches(List<FrameMatches> rows, int framesWithoutTime, List<DigitalShot> unmatched) {
    /** Files up to so long before the first frame or after the last belong to the roll's time. Opinion: no source. */
    public static final Duration MARGIN = Duration.ofMinutes(10);

    /** A frame and the files that are nearer to it than to any other frame, the nearest first. */
    public record FrameMatches(Frame frame, OffsetDateTime at, List<Match> files) {
        public FrameMatches {
            files = List.copyOf(files);
        }
    }

    /** A file, its true time, and by how many seconds that lies after the frame's. */
    public record Match(DigitalShot shot, OffsetDateTime at, long afterSeconds) {
        /** How it lies to its frame: {@code 2 s after}. */
        public String words() {
            if (afterSeconds == 0) {
                return "same second";
            }
            return ClockText.seconds(Math.abs(afterSeconds)) + (afterSeconds > 0 ? " after" : " before");
        }
    }

    public DigitalMatches {
        rows = List.copyOf(rows);
        unmatched = List.copyOf(unmatched);
    }

    /**
     * Files beside frames.
     *
     * @param clocks what is known of the cameras' clocks, by camera; a camera without one is taken to be right
     */
    public static DigitalMatches of(Roll roll, List<DigitalShot> shots, Map<String, CameraClock> clocks) {
        List<Frame> frames = roll.frames().stream()
                .filter(it -> it.exposure().at().isPresent())
                .toList();
        List<List<Match>> files =
                frames.stream().map(it -> (List<Match>) new ArrayList<Match>()).toList();
        List<DigitalShot> unmatched = new ArrayList<>();
        for (DigitalShot shot : shots) {
            OffsetDateTime at = trueTime(shot, clocks, frames);
            int nearest = nearest(frames, at);
            if (nearest < 0) {
                unmatched.add(shot);
            } else {
                long after = Duration.between(time(frames.get(nearest)), at).toSeconds();
                files.get(nearest).add(new Match(shot, at, after));
            }
        }
        List<FrameMatches> rows = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            files.get(i)
                    .sort(Comparator.comparingLong((Match it) -> Math.abs(it.afterSeconds()))
                            .thenComparing(it -> it.shot().name(), NaturalOrder.BY_NAME));
            rows.add(new FrameMatches(frames.get(i), time(frames.get(i)), files.get(i)));
        }
        return new DigitalMatches(rows, roll.frames().size() - frames.size(), unmatched);
    }

    private static OffsetDateTime time(Frame frame) {
        return frame.exposure().at().orElseThrow();
    }

    private static OffsetDateTime trueTime(DigitalShot shot, Map<String, CameraClock> clocks, List<Frame> frames) {
        ZoneOffset here =
                frames.isEmpty() ? ZoneOffset.UTC : time(frames.get(0)).getOffset();
        return Optional.ofNullable(clocks.get(shot.camera()))
                .map(it -> it.trueTime(shot.at(), shot.offset()))
                .orElseGet(() -> shot.at().atOffset(shot.offset().orElse(here)).withOffsetSameInstant(here));
    }

    /**
     * The place of the frame that is nearest in time, of equals the earlier one; -1 where the file is of another time.
     */
    private static int nearest(List<Frame> frames, OffsetDateTime at) {
        boolean isLate = frames.stream().allMatch(it -> at.isAfter(time(it).plus(MARGIN)));
        boolean isEarly = frames.stream().allMatch(it -> at.isBefore(time(it).minus(MARGIN)));
        return isLate || isEarly
                ? -1
                : Collections.min(
                        IntStream.range(0, frames.size()).boxed().toList(),
                        Comparator.comparing(
                                it -> Duration.between(time(frames.get(it)), at).abs()));
    }
}
