package takeup.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import takeup.roll.Roll;
import takeup.scans.NaturalOrder;

/**
 * All judged frames of an archive, counted by what they have in common: it does not grow with the number of rolls, only
 * with the number of different cases.
 */
public final class VerdictCounts {
    private final Map<JudgedFrame, Integer> counts = new HashMap<>();
    private int rolls;
    private int judged;
    private int unknown;

    /** Counts a roll's judged frames. */
    public void add(Roll roll, Review review) {
        List<Optional<Density>> verdicts = review.verdicts(roll);
        boolean any = false;
        for (int i = 0; i < verdicts.size(); i++) {
            if (verdicts.get(i).isPresent()) {
                any = true;
                judged++;
                Optional<JudgedFrame> found = JudgedFrame.of(
                        roll, roll.frames().get(i), verdicts.get(i).get());
                found.ifPresent(it -> add(it, 1));
                unknown += found.isPresent() ? 0 : 1;
            }
        }
        rolls += any ? 1 : 0;
    }

    void add(JudgedFrame each, int count) {
        counts.merge(each, count, Integer::sum);
    }

    /** How often each case occurred. */
    public Map<JudgedFrame, Integer> counts() {
        return Map.copyOf(counts);
    }

    /** Rolls with at least one verdict. */
    public int rolls() {
        return rolls;
    }

    /** Frames with a verdict. */
    public int judged() {
        return judged;
    }

    /** Judged frames whose exposure the log cannot tell. */
    public int unknown() {
        return unknown;
    }

    /** Frames that a lesson can be drawn from. */
    public int usable() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Frames by each name of a factor, and in it by verdict. */
    public Map<String, int[]> by(JudgedFrame.Factor factor) {
        Map<String, int[]> by = new TreeMap<>(NaturalOrder.BY_NAME);
        counts.forEach((each, count) -> by.computeIfAbsent(each.name(factor), it -> new int[Density.values().length])[
                each.verdict().ordinal()] += count);
        return by;
    }
}
