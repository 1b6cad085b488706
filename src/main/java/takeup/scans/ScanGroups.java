package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;

/**
 * A folder's scans in the groups that their names and shapes form: one for each film, if the lab kept films apart at
 * all.
 */
final class ScanGroups {
    private static final int FEWEST = 3;

    private ScanGroups() {}

    /** The scans, in natural order, in groups of neighbours. */
    static List<List<Scan>> of(List<Scan> scans) {
        int counter = counter(scans);
        List<List<Scan>> groups = new ArrayList<>();
        String key = "";
        for (Scan scan : scans) {
            String own = key(scan.name(), counter);
            if (groups.isEmpty() || !own.equals(key)) {
                groups.add(new ArrayList<>());
            }
            key = own;
            groups.get(groups.size() - 1).add(scan);
        }
        List<List<Scan>> all = new ArrayList<>();
        groups.forEach(it -> all.addAll(byShape(it)));
        return all;
    }

    /**
     * Which run of digits, counted from the end, goes on from scan to scan: the one without which fewest names differ.
     */
    private static int counter(List<Scan> scans) {
        int best = 0;
        int fewest = Integer.MAX_VALUE;
        for (int fromEnd = 0; fromEnd < 3; fromEnd++) {
            int from = fromEnd;
            int keys = (int)
                    scans.stream().map(it -> key(it.name(), from)).distinct().count();
            best = keys < fewest ? fromEnd : best;
            fewest = Math.min(fewest, keys);
        }
        return best;
    }

    /** The name without that run of digits. */
    private static String key(String name, int fromEnd) {
        List<MatchResult> runs = NameNumbers.runs(name);
        if (fromEnd >= runs.size()) {
            return runs.isEmpty() ? "" : name;
        }
        MatchResult run = runs.get(runs.size() - 1 - fromEnd);
        return name.substring(0, run.start()) + "#" + name.substring(run.end());
    }

    /** Another shape of picture from some scan on means another camera; a single scan of another shape was cropped. */
    private static List<List<Scan>> byShape(List<Scan> scans) {
        for (int at = FEWEST; at <= scans.size() - FEWEST; at++) {
            if (isOne(scans.subList(0, at))
                    && isOne(scans.subList(at, scans.size()))
                    && !isLike(scans.get(0), scans.get(at))) {
                return List.of(scans.subList(0, at), scans.subList(at, scans.size()));
            }
        }
        return List.of(scans);
    }

    private static boolean isOne(List<Scan> scans) {
        return scans.stream().allMatch(it -> isLike(it, scans.get(0)));
    }

    private static boolean isLike(Scan a, Scan b) {
        return Scan.haveLikeSides(a.aspect(), b.aspect());
    }
}
