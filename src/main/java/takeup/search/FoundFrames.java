package takeup.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import takeup.json.Json;
import takeup.roll.RollId;
import takeup.text.English;

/**
 * What came of looking for frames.
 *
 * @param typed what was looked for
 * @param newest the newest of them, those of the newest roll first: as many as anybody reads on a screen
 * @param frames how many there are
 * @param rolls on how many rolls
 * @param problems what could not be read
 */
public record FoundFrames(String typed, List<FrameRow> newest, int frames, int rolls, List<String> problems) {
    private static final int MOST = 500;
    private static final int IN_WORDS = 5;

    /** Takes frames one by one, in the order of their rolls. */
    public static final class Collector {
        private final FindQuery query;
        private final Deque<FrameRow> newest = new ArrayDeque<>();
        private final Set<RollId> rolls = new HashSet<>();
        private int frames;

        public Collector(FindQuery query) {
            this.query = query;
        }

        /** Takes a frame that was found. */
        public void take(FrameRow row) {
            frames++;
            rolls.add(row.roll().summary().id());
            newest.addFirst(row);
            if (newest.size() > MOST) {
                newest.removeLast();
            }
        }

        public FoundFrames found(List<String> problems) {
            return new FoundFrames(query.typed(), List.copyOf(newest), frames, rolls.size(), problems);
        }
    }

    /** {@code 12 frames on 3 rolls}. */
    public String count() {
        return frames == 0
                ? "No frame meets all of: " + typed
                : English.count(frames, "frame") + " on " + English.count(rolls, "roll");
    }

    /** A sentence that names the newest of them. */
    public String words() {
        List<String> names = new ArrayList<>();
        newest.stream().limit(IN_WORDS).forEach(it -> names.add(FoundFrame.name(it)));
        String more = frames > names.size() ? ", and " + (frames - names.size()) + " more: takeup find lists all" : "";
        return count() + (names.isEmpty() ? "" : ": " + String.join(", ", names) + more) + ".";
    }

    /** The same for other programs. */
    public Json.Obj json() {
        return Json.object()
                .and("framesFound", frames)
                .and("rollsFound", rolls)
                .and("found", newest.stream().map(FoundFrame::json).toList());
    }
}
