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

    /** How many frames of one sort got which verdict. */
    record ByVerdict(int thin, int good, int dense) {
        private static ByVerdict of(Density verdict, int count) {
            return new ByVerdict(
                    verdict == Density.THIN ? count : 0,
                    verdict == Density.GOOD ? count : 0,
                    verdict == Density.DENSE ? count : 0);
        }

        private ByVerdict plus(ByVerdict other) {
            return new ByVerdict(thin + other.thin, good + other.good, dense + other.dense);
        }

        int all() {
            return thin + good + dense;
        }

        /** The range of the share of thin frames: {@code 12 to 40 %}. */
        String thinShare() {
            ConfidenceInterval share = ConfidenceInterval.share(thin, all(), ConfidenceInterval.CONFIDENCE);
            return Math.round(100 * share.low()) + " to " + Math.round(100 * share.high()) + " %";
        }
    }

    /** Counts a roll's judged frames. */
    public void add(Roll roll, Review review) {
        List<Optional<Density>> verdicts = review.verdicts(roll);
        for (int i = 0; i < verdicts.size(); i++) {
            if (verdicts.get(i).isPresent()) {
                judged++;
                Optional<JudgedFrame> found = JudgedFrame.of(
                        roll, roll.frames().get(i), verdicts.get(i).get());
                found.ifPresent(it -> add(it, 1));
                unknown += found.isPresent() ? 0 : 1;
            }
        }
        rolls += verdicts.stream().anyMatch(Optional::isPresent) ? 1 : 0;
    }

    /** A roll's judged frames as lines, for {@link #add(String)}; none of a roll without a verdict. */
    public static String lines(Roll roll, Review review) {
        VerdictCounts counts = new VerdictCounts();
        counts.add(roll, review);
        if (counts.judged == 0) {
            return "";
        }
        StringBuilder lines = new StringBuilder();
        lines.append(counts.unknown).append('\n');
        counts.counts.forEach((frame, count) ->
                lines.append(count).append('\t').append(frame.line()).append('\n'));
        return lines.toString();
    }

    /** Counts the judged frames of a roll that was written down as lines; an IllegalArgumentException if it was not. */
    public void add(String lines) {
        int at = lines.indexOf('\n');
        if (at < 0) {
            return;
        }
        int more = Integer.parseInt(lines.substring(0, at));
        unknown += more;
        judged += more;
        rolls++;
        for (int end = lines.indexOf('\n', at + 1); end > 0; end = lines.indexOf('\n', at + 1)) {
            int tab = lines.indexOf('\t', at);
            int count = Integer.parseInt(lines.substring(at + 1, tab));
            judged += count;
            add(JudgedFrame.of(lines.substring(tab + 1, end)), count);
            at = end;
        }
    }

    void add(JudgedFrame frame, int count) {
        counts.merge(frame, count, Integer::sum);
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

    /** Verdicts by each name of a factor. */
    Map<String, ByVerdict> by(JudgedFrame.Factor factor) {
        Map<String, ByVerdict> by = new TreeMap<>(NaturalOrder.BY_NAME);
        counts.forEach(
                (frame, count) -> by.merge(frame.name(factor), ByVerdict.of(frame.verdict(), count), ByVerdict::plus));
        by.remove("");
        return by;
    }
}
