package takeup.roll;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.kit.Camera;

/**
 * The frames of a roll as they were logged, and the number that comes next. It counts as the camera does: a number can
 * be passed without a frame, and two frames can have the same one.
 *
 * @param frames in the order of the film
 * @param next the number that the counter shows for the next frame
 * @param awaited how many more exposures go on the newest frame
 */
public record FrameLog(List<Frame> frames, int next, int awaited) {
    /** Of a roll that was just loaded. */
    static final FrameLog EMPTY = new FrameLog(List.of(), 1, 0);

    public FrameLog {
        frames = List.copyOf(frames);
    }

    /** How many numbers were used up. */
    int used() {
        int first = Math.min(1, next);
        int last = next - 1;
        for (Frame frame : frames) {
            first = Math.min(first, frame.number());
            last = Math.max(last, frame.number());
        }
        return Math.max(0, last - first + 1);
    }

    /** The newest frame. */
    Optional<Frame> newest() {
        return frames.isEmpty() ? Optional.empty() : Optional.of(frames.get(frames.size() - 1));
    }

    /** The newest frame of a kind, such as the slate. */
    Optional<Frame> newest(Frame.Kind kind) {
        for (int i = frames.size() - 1; i >= 0; i--) {
            if (frames.get(i).kind() == kind) {
                return Optional.of(frames.get(i));
            }
        }
        return Optional.empty();
    }

    /** The place in the list of the frame with that number; the later one of two; -1 if there is none. */
    int indexOf(int number) {
        for (int i = frames.size() - 1; i >= 0; i--) {
            if (frames.get(i).number() == number) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the counter went past that number and no frame of it is known. */
    boolean isPassed(int number) {
        return number > 0 && number < next && indexOf(number) < 0;
    }

    /** With a frame behind the last one. It ends the waiting for a second exposure. */
    FrameLog added(Frame frame) {
        return new FrameLog(with(frames.size(), frame), frame.number() + 1, 0);
    }

    /** With a frame that the counter went past, in its place; no other changes its number. */
    FrameLog filled(Frame frame) {
        int at = 0;
        while (at < frames.size() && frames.get(at).number() < frame.number()) {
            at++;
        }
        return new FrameLog(with(at, frame), next, awaited);
    }

    /** With a frame before the one of that number; it and all behind it move up by one. */
    FrameLog inserted(Frame frame, int before) {
        int at = indexOf(before);
        if (at < 0) {
            return added(frame);
        }
        List<Frame> all = new ArrayList<>(frames.subList(0, at));
        all.add(frame);
        for (Frame later : frames.subList(at, frames.size())) {
            all.add(later.renumbered(later.number() + 1));
        }
        return new FrameLog(all, next + 1, awaited);
    }

    /** Without the frames from one number to another; all behind them move down. */
    FrameLog dropped(int from, int to) {
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
        return new FrameLog(all, next - gone, last < frames.size() - 1 ? awaited : 0);
    }

    /** With frames corrected. A correction in between does not end the waiting for a second exposure. */
    FrameLog corrected(int from, int to, SettingPatch change) {
        List<Frame> all = new ArrayList<>(frames);
        for (int number = from; number <= to; number++) {
            int at = indexOf(number);
            if (at >= 0) {
                all.set(at, all.get(at).with(change));
            }
        }
        return new FrameLog(all, next, awaited);
    }

    /** Where so many more exposures go on the newest frame. */
    FrameLog awaiting(int more) {
        return new FrameLog(frames, next, more);
    }

    /** With one more exposure on the newest frame. */
    FrameLog exposedAgain(Exposure exposure, Optional<String> note) {
        if (frames.isEmpty()) {
            return this;
        }
        List<Frame> all = new ArrayList<>(frames);
        all.set(all.size() - 1, all.get(all.size() - 1).exposedAgain(exposure, note));
        return new FrameLog(all, next, Math.max(0, awaited - 1));
    }

    /** Where the counter shows another number for the next frame. */
    FrameLog showing(int number) {
        return new FrameLog(frames, number, awaited);
    }

    /** Where the frames so far were taken with a camera that the roll leaves now. */
    FrameLog takenWith(Camera body) {
        List<Frame> all = frames.stream()
                .map(it -> it.scene().body().isPresent()
                        ? it
                        : it.showing(it.scene().takenWith(body)))
                .toList();
        return new FrameLog(all, next, awaited);
    }

    /** Out of the camera: nothing waits for a second exposure any more. */
    FrameLog rewound() {
        return new FrameLog(frames, next, 0);
    }

    /** With blank frames behind the last one. */
    FrameLog withBlanks(int count, OffsetDateTime at) {
        List<Frame> all = new ArrayList<>(frames);
        Exposure none = new Exposure(Optional.of(at), Setting.NONE, Optional.empty(), Optional.empty());
        for (int i = 0; i < count; i++) {
            all.add(Frame.of(next + i, Frame.Kind.BLANK, none, Optional.empty()));
        }
        return new FrameLog(all, next + count, 0);
    }

    /** With an id for each frame that has none yet, made of what brought it. */
    FrameLog broughtBy(String record) {
        List<Frame> all = new ArrayList<>(frames.size());
        for (Frame frame : frames) {
            all.add(frame.broughtBy(record));
        }
        return new FrameLog(all, next, awaited);
    }

    private List<Frame> with(int place, Frame frame) {
        List<Frame> all = new ArrayList<>(frames);
        all.add(place, frame);
        return all;
    }
}
