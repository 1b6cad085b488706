package takeup.scans;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import takeup.scans.ScansByRoll.Candidate;

/**
 * Which group of scans belongs to which roll: every way is weighed by how well each group fits. Labs mostly keep the
 * order of the rolls.
 */
final class GroupMatcher {
    private static final double OUT_OF_ORDER = Math.log(0.1);
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

    ScansByRoll sorted(List<Scan> scans) {
        for (int g = 0; g < groups.size(); g++) {
            for (int r = 0; r < candidates.size(); r++) {
                fits[g][r] = Aligner.evidence(groups.get(g), candidates.get(r).slots());
            }
            fits[g][candidates.size()] = strangers(groups.get(g));
        }
        int[] rollOf = new int[groups.size()];
        spread(rollOf, 0, 0);
        Way best = ways.get(0);
        double all = Double.NEGATIVE_INFINITY;
        for (Way way : ways) {
            all = all == Double.NEGATIVE_INFINITY ? way.weight : AlignmentModel.sum(all, way.weight);
            best = way.weight > best.weight ? way : best;
        }
        double together = scans.size() <= wanted.slots().size() + 3
                ? Aligner.evidence(scans, wanted.slots())
                : Double.NEGATIVE_INFINITY;
        if (together > best.weight) {
            return new ScansByRoll(Aligner.of(scans, wanted.slots()), List.of(), List.of());
        }
        return result(best, all);
    }

    private static double strangers(List<Scan> scans) {
        return scans.size() * (Math.log(0.02) + 1);
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
        List<Scan> strangers = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int roll = best.rollOf[g];
            if (roll < 0) {
                strangers.addAll(groups.get(g));
                continue;
            }
            Proposal proposal = Aligner.of(groups.get(g), candidates.get(roll).slots());
            double share = share(g, roll, all);
            List<String> reasons = new ArrayList<>(
                    List.of("the folder holds " + groups.size() + " groups of scans; this one begins with "
                            + groups.get(g).get(0).name()));
            reasons.addAll(proposal.reasons());
            if (share < Proposal.SURE) {
                reasons.add("another group fits this roll nearly as well: look at the first scan of each");
            }
            Proposal weighed = new Proposal(
                    proposal.scans(),
                    proposal.slots(),
                    proposal.slotOf(),
                    proposal.isReversed(),
                    proposal.isPiled(),
                    proposal.confidence() * share,
                    reasons);
            if (roll == asked) {
                own = Optional.of(weighed);
            } else {
                others.add(new ScansByRoll.Other(candidates.get(roll).roll(), weighed));
            }
        }
        return new ScansByRoll(
                own.orElseGet(() -> new Proposal(
                        List.of(),
                        wanted.slots(),
                        List.of(),
                        false,
                        false,
                        0,
                        List.of("no group of scans in this folder fits this roll"))),
                others,
                strangers);
    }

    /** How much of all that was weighed gives this group to this roll. */
    private double share(int group, int roll, double all) {
        double sum = Double.NEGATIVE_INFINITY;
        for (Way way : ways) {
            if (way.rollOf[group] == roll) {
                sum = sum == Double.NEGATIVE_INFINITY ? way.weight : AlignmentModel.sum(sum, way.weight);
            }
        }
        return Math.min(1, Math.exp(sum - all));
    }
}
