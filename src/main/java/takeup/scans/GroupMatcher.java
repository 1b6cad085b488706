package takeup.scans;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import takeup.scans.ScansByRoll.Candidate;

/**
 * Which group of scans belongs to which roll: every way is weighed by how well each group fits. Labs mostly keep the
 * order of the rolls.
 */
final class GroupMatcher {
    private static final double OUT_OF_ORDER = Math.log(0.1);
    /** That a scan is of no roll that is known, with what its looks would say on average. */
    static final double OF_NO_ROLL = Math.log(0.02) + 1;

    private static final int MOST_GROUPS = 6;

    private final List<List<Scan>> groups;
    private final List<Candidate> candidates;
    private final Candidate wanted;
    private final double[][] fits;
    private final List<Way> ways = new ArrayList<>();

    /** For each group the place of its roll among the candidates, -1 for none. */
    private record Way(int[] rollOf, double weight) {}

    GroupMatcher(List<List<Scan>> groups, List<Candidate> candidates, Candidate wanted) {
        this.groups = groups.size() <= MOST_GROUPS
                ? groups
                : List.of(groups.stream().flatMap(List::stream).toList());
        this.candidates = candidates;
        this.wanted = wanted;
        fits = new double[this.groups.size()][candidates.size() + 1];
    }

    ScansByRoll divided(List<Scan> scans) {
        for (int g = 0; g < groups.size(); g++) {
            for (int r = 0; r < candidates.size(); r++) {
                Candidate candidate = candidates.get(r);
                fits[g][r] = Aligner.evidence(groups.get(g), candidate.slots(), candidate.room());
            }
            fits[g][candidates.size()] = groups.get(g).size() * OF_NO_ROLL;
        }
        int[] rollOf = new int[groups.size()];
        spread(rollOf, 0, 0);
        Way best = Collections.max(ways, Comparator.comparingDouble(Way::weight));
        if (wanted.mayHold(scans.size()) && Aligner.evidence(scans, wanted.slots(), wanted.room()) > best.weight) {
            return ScansByRoll.all(scans, wanted);
        }
        return result(best, LogSum.of(ways.stream().mapToDouble(Way::weight)));
    }

    private void spread(int[] rollOf, int group, double weight) {
        if (group == groups.size()) {
            ways.add(new Way(rollOf.clone(), weight));
            return;
        }
        for (int r = -1; r < candidates.size(); r++) {
            int roll = r;
            boolean isTaken = roll >= 0 && Arrays.stream(rollOf, 0, group).anyMatch(it -> it == roll);
            if (!isTaken) {
                boolean isInOrder = roll < 0 || Arrays.stream(rollOf, 0, group).allMatch(it -> it < roll);
                rollOf[group] = roll;
                spread(
                        rollOf,
                        group + 1,
                        weight + fits[group][roll < 0 ? candidates.size() : roll] + (isInOrder ? 0 : OUT_OF_ORDER));
            }
        }
    }

    private ScansByRoll result(Way best, double all) {
        int asked = candidates.indexOf(wanted);
        Optional<Proposal> own = Optional.empty();
        List<ScansByRoll.Other> others = new ArrayList<>();
        List<Scan> unmatched = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int roll = best.rollOf[g];
            if (roll < 0) {
                unmatched.addAll(groups.get(g));
                continue;
            }
            Candidate candidate = candidates.get(roll);
            Proposal proposal = Aligner.of(groups.get(g), candidate.slots(), candidate.room());
            double share = share(g, roll, all);
            List<String> reasons = new ArrayList<>(
                    List.of("the folder holds " + groups.size() + " groups of scans; this one begins with "
                            + groups.get(g).get(0).name()));
            reasons.addAll(proposal.reasons());
            if (share < Proposal.SURE) {
                reasons.add("another group fits this roll nearly as well: look at the first scan of each");
            }
            Proposal weighed = proposal.weighed(share).because(reasons);
            if (roll == asked) {
                own = Optional.of(weighed);
            } else {
                others.add(new ScansByRoll.Other(candidates.get(roll).roll(), weighed));
            }
        }
        return new ScansByRoll(
                own.orElseGet(() ->
                        Proposal.none(List.of(), wanted.slots(), "no group of scans in this folder fits this roll")),
                others,
                unmatched);
    }

    /** How much of all that was weighed gives this group to this roll. */
    private double share(int group, int roll, double all) {
        double sum =
                LogSum.of(ways.stream().filter(it -> it.rollOf[group] == roll).mapToDouble(Way::weight));
        return Math.min(1, Math.exp(sum - all));
    }
}
