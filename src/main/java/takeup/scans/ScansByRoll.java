package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.RollId;

/**
 * A folder sorted by rolls: which of its scans belong to the roll that was asked for, and which to others.
 *
 * @param asked the proposal for the roll that was asked for
 * @param others proposals for other rolls whose scans lie in the same folder
 * @param unmatched scans of no roll that is known
 */
public record ScansByRoll(Proposal asked, List<Other> others, List<Scan> unmatched) {
    /** Scans of another roll. */
    public record Other(RollId roll, Proposal proposal) {}

    /** A roll that scans may belong to; rolls stand in the order of loading. */
    public record Candidate(RollId roll, List<Slot> slots) {
        public Candidate {
            slots = List.copyOf(slots);
        }
    }

    /** More scans than frames by this many are no further frames of one film. Common practice: 39 fit on a 36. */
    private static final int MORE = 3;

    public ScansByRoll {
        others = List.copyOf(others);
        unmatched = List.copyOf(unmatched);
    }

    /** The likeliest sorting; the roll that was asked for is one of the candidates. */
    public static ScansByRoll of(List<Scan> scans, List<Candidate> candidates, RollId asked) {
        Candidate wanted = candidates.stream()
                .filter(it -> it.roll().equals(asked))
                .findFirst()
                .orElseThrow();
        return SlateMatcher.of(scans, candidates, wanted).orElseGet(() -> unslated(scans, candidates, wanted));
    }

    /** The likeliest sorting by names, shapes, tones and counts. */
    static ScansByRoll unslated(List<Scan> scans, List<Candidate> candidates, Candidate wanted) {
        List<List<Scan>> groups = ScanGroups.of(scans);
        if (groups.size() == 1 || candidates.size() == 1) {
            return scans.size() <= wanted.slots.size() + MORE || candidates.size() == 1
                    ? new ScansByRoll(Aligner.of(scans, wanted.slots), List.of(), List.of())
                    : inARow(scans, candidates, wanted);
        }
        return new GroupMatcher(groups, candidates, wanted).sorted(scans);
    }

    /** One count over several films: the rolls follow each other as they were loaded. */
    private static ScansByRoll inARow(List<Scan> scans, List<Candidate> candidates, Candidate wanted) {
        int at = candidates.indexOf(wanted);
        Optional<List<Candidate>> best = Optional.empty();
        double high = Double.NEGATIVE_INFINITY;
        double all = Double.NEGATIVE_INFINITY;
        for (int from = 0; from <= at; from++) {
            for (int to = at + 1; to <= candidates.size(); to++) {
                List<Candidate> row = candidates.subList(from, to);
                int frames = row.stream().mapToInt(it -> it.slots.size()).sum();
                if (scans.size() > frames + MORE || frames > scans.size() * 3) {
                    continue;
                }
                double evidence = Aligner.evidence(scans, joined(row));
                all = all == Double.NEGATIVE_INFINITY ? evidence : AlignmentModel.sum(all, evidence);
                if (evidence > high) {
                    high = evidence;
                    best = Optional.of(row);
                }
            }
        }
        if (best.isEmpty()) {
            return new ScansByRoll(Aligner.of(scans, wanted.slots), List.of(), List.of());
        }
        Proposal whole = Aligner.of(scans, joined(best.get()));
        double sure = Math.exp(high - all);
        List<Other> others = new ArrayList<>();
        for (Candidate each : best.get()) {
            if (each != wanted) {
                others.add(new Other(each.roll, part(whole, each, sure)));
            }
        }
        return new ScansByRoll(part(whole, wanted, sure), others, List.of());
    }

    private static List<Slot> joined(List<Candidate> row) {
        List<Slot> all = new ArrayList<>();
        row.forEach(it -> all.addAll(it.slots));
        return all;
    }

    /** One roll's part of scans that were laid beside several; what nobody logged goes with the scan before it. */
    private static Proposal part(Proposal whole, Candidate roll, double sure) {
        List<Scan> scans = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        List<Slot> own =
                whole.slots().stream().filter(it -> it.roll().equals(roll.roll)).toList();
        boolean isIn = whole.slotOf().isEmpty() || whole.slots().get(0).roll().equals(roll.roll);
        for (int i = 0; i < whole.scans().size(); i++) {
            Optional<Slot> slot = whole.slot(i);
            isIn = slot.map(it -> it.roll().equals(roll.roll)).orElse(isIn);
            if (isIn) {
                scans.add(whole.scans().get(i));
                places.add(slot.map(own::indexOf).orElse(-1));
            }
        }
        List<String> reasons = new ArrayList<>(List.of("one count runs over several rolls: " + scans.size() + " of "
                + whole.scans().size() + " scans, " + own.size() + " logged"));
        reasons.addAll(whole.reasons());
        return new Proposal(
                scans, own, places, whole.isReversed(), whole.isPiled(), whole.confidence() * sure, reasons);
    }
}
