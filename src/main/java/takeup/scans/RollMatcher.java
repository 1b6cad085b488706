package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.RollId;
import takeup.scans.ScansByRoll.Candidate;

/**
 * Finds the rolls that the scans of a folder belong to: by the slates in it where there are any, else by names, shapes,
 * tones and counts.
 */
public final class RollMatcher {
    private RollMatcher() {}

    /** The likeliest division; the roll that was asked for is one of the candidates. */
    public static ScansByRoll of(List<Scan> scans, List<Candidate> candidates, RollId asked) {
        Candidate wanted = candidates.stream()
                .filter(it -> it.roll().equals(asked))
                .findFirst()
                .orElseThrow();
        Optional<SlateMatcher> slates = SlateMatcher.of(scans, candidates);
        if (slates.isPresent()) {
            return bySlates(slates.get(), candidates, wanted);
        }
        // Where slates contradict each other, each scan that shows another roll's is of that roll.
        boolean isNamed = scans.stream().anyMatch(it -> isOf(it, asked));
        if (!isNamed && scans.stream().anyMatch(it -> it.slate().isPresent())) {
            String why = "the slates in this folder name other rolls, and contradict each other: sort the scans first";
            return new ScansByRoll(Proposal.none(List.of(), wanted.slots(), why), List.of(), scans);
        }
        return withoutSlates(scans, candidates, wanted);
    }

    private static boolean isOf(Scan scan, RollId roll) {
        return scan.slate().filter(it -> it.roll().equals(roll)).isPresent();
    }

    private static ScansByRoll bySlates(SlateMatcher slates, List<Candidate> candidates, Candidate wanted) {
        if (slates.names(wanted) || slates.rest().isEmpty()) {
            return slates.divided(wanted);
        }
        List<Candidate> open =
                candidates.stream().filter(it -> !slates.names(it)).toList();
        ScansByRoll byLook = withoutSlates(slates.rest(), open, wanted);
        ScansByRoll named = slates.divided(wanted);
        List<ScansByRoll.Other> others = new ArrayList<>(named.others());
        others.addAll(byLook.others());
        List<Scan> unmatched = new ArrayList<>(named.unmatched());
        unmatched.addAll(byLook.unmatched());
        return new ScansByRoll(byLook.asked(), others, unmatched);
    }

    private static ScansByRoll withoutSlates(List<Scan> scans, List<Candidate> candidates, Candidate wanted) {
        List<List<Scan>> groups = ScanGroups.of(scans);
        if (groups.size() > 1 && candidates.size() > 1) {
            return new GroupMatcher(groups, candidates, wanted).divided(scans);
        }
        return wanted.mayHold(scans.size()) || candidates.size() == 1
                ? ScansByRoll.all(scans, wanted)
                : inARow(scans, candidates, wanted);
    }

    /** One count over several films: the rolls follow each other as they were loaded. */
    private static ScansByRoll inARow(List<Scan> scans, List<Candidate> candidates, Candidate wanted) {
        int at = candidates.indexOf(wanted);
        List<Candidate> best = List.of();
        double high = Double.NEGATIVE_INFINITY;
        double all = Double.NEGATIVE_INFINITY;
        for (int from = 0; from <= at; from++) {
            for (int to = at + 1; to <= candidates.size(); to++) {
                List<Candidate> row = candidates.subList(from, to);
                List<Slot> slots = slots(row);
                if (scans.size() <= slots.size() + ScansByRoll.MORE && slots.size() <= scans.size() * 3) {
                    double evidence = Aligner.evidence(scans, slots, room(row));
                    all = LogSum.add(all, evidence);
                    best = evidence > high ? row : best;
                    high = Math.max(high, evidence);
                }
            }
        }
        if (best.isEmpty()) {
            return ScansByRoll.all(scans, wanted);
        }
        Proposal whole = Aligner.of(scans, slots(best), room(best)).weighed(Math.exp(high - all));
        List<ScansByRoll.Other> others = best.stream()
                .filter(it -> it != wanted)
                .map(it -> new ScansByRoll.Other(it.roll(), part(whole, it)))
                .toList();
        return new ScansByRoll(part(whole, wanted), others, List.of());
    }

    private static int room(List<Candidate> row) {
        return row.stream().mapToInt(Candidate::room).sum();
    }

    private static List<Slot> slots(List<Candidate> row) {
        return row.stream().flatMap(it -> it.slots().stream()).toList();
    }

    /** One roll's part of scans that were laid beside several; what nobody logged goes with the scan before it. */
    private static Proposal part(Proposal whole, Candidate roll) {
        List<Scan> scans = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        List<Slot> own = whole.slots().stream()
                .filter(it -> it.roll().equals(roll.roll()))
                .toList();
        boolean isIn = whole.slots().get(0).roll().equals(roll.roll());
        for (int i = 0; i < whole.scans().size(); i++) {
            Optional<Slot> slot = whole.slot(i);
            isIn = slot.map(it -> it.roll().equals(roll.roll())).orElse(isIn);
            if (isIn) {
                scans.add(whole.scans().get(i));
                places.add(slot.map(own::indexOf).orElse(-1));
            }
        }
        List<String> reasons = new ArrayList<>(List.of("one count runs over several rolls: " + scans.size() + " of "
                + whole.scans().size() + " scans, " + own.size() + " logged"));
        reasons.addAll(whole.reasons());
        return new Proposal(scans, own, places, whole.isReversed(), whole.isPiled(), whole.confidence(), reasons);
    }
}
