package takeup.scans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.roll.RollId;
import takeup.text.English;

/**
 * A folder sorted by the slates in it: each names its film, so that films in one folder are told apart whatever the
 * files are called. Where one film ends and the next begins between two slates, what fits best decides.
 */
final class SlateMatcher {
    private final List<ScansByRoll.Candidate> candidates;
    private final ScansByRoll.Candidate wanted;
    private final Map<RollId, List<Scan>> films = new LinkedHashMap<>();
    private final List<Scan> rest = new ArrayList<>();
    private double sure = 1;

    private SlateMatcher(List<ScansByRoll.Candidate> candidates, ScansByRoll.Candidate wanted) {
        this.candidates = candidates;
        this.wanted = wanted;
    }

    /** The folder by its slates; empty where there is none, or where they contradict each other. */
    static Optional<ScansByRoll> of(
            List<Scan> scans, List<ScansByRoll.Candidate> candidates, ScansByRoll.Candidate wanted) {
        if (scans.stream().noneMatch(it -> it.slate().isPresent())) {
            return Optional.empty();
        }
        SlateMatcher slated = new SlateMatcher(candidates, wanted);
        for (List<Scan> group : ScanGroups.of(scans)) {
            if (!slated.take(group)) {
                return Optional.empty();
            }
        }
        return Optional.of(slated.sorted());
    }

    /**
     * Scans that follow each other, of one film or of several; false where a film's slates stand on both sides of
     * another's.
     */
    private boolean take(List<Scan> group) {
        List<Integer> first = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        List<RollId> rolls = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            Optional<RollId> roll = group.get(i).slate().map(Slate::roll);
            if (roll.isPresent()
                    && !rolls.isEmpty()
                    && rolls.get(rolls.size() - 1).equals(roll.get())) {
                last.set(last.size() - 1, i);
            } else if (roll.isPresent()) {
                if (rolls.contains(roll.get()) || films.containsKey(roll.get())) {
                    return false;
                }
                rolls.add(roll.get());
                first.add(i);
                last.add(i);
            }
        }
        int from = 0;
        for (int i = 0; i < rolls.size(); i++) {
            boolean isLast = i == rolls.size() - 1;
            int to = isLast
                    ? group.size()
                    : border(
                            group,
                            from,
                            last.get(i),
                            first.get(i + 1),
                            i + 2 < rolls.size() ? first.get(i + 2) : group.size(),
                            rolls.get(i),
                            rolls.get(i + 1));
            films.put(rolls.get(i), group.subList(from, to));
            from = to;
        }
        if (rolls.isEmpty()) {
            rest.addAll(group);
        }
        return true;
    }

    /** Where the second film begins: behind the first one's last slate, and at the latest with its own first. */
    private int border(List<Scan> group, int from, int lastSlate, int nextSlate, int end, RollId one, RollId other) {
        int best = nextSlate;
        double high = Double.NEGATIVE_INFINITY;
        double all = Double.NEGATIVE_INFINITY;
        for (int at = lastSlate + 1; at <= nextSlate; at++) {
            double weight = evidence(group.subList(from, at), one) + evidence(group.subList(at, end), other);
            all = all == Double.NEGATIVE_INFINITY ? weight : AlignmentModel.sum(all, weight);
            if (weight > high) {
                high = weight;
                best = at;
            }
        }
        sure *= Math.exp(high - all);
        return best;
    }

    private double evidence(List<Scan> scans, RollId roll) {
        return candidate(roll)
                .filter(it -> !it.slots().isEmpty())
                .map(it -> Aligner.evidence(scans, it.slots()))
                .orElse(0.0);
    }

    private Optional<ScansByRoll.Candidate> candidate(RollId roll) {
        return candidates.stream().filter(it -> it.roll().equals(roll)).findFirst();
    }

    private ScansByRoll sorted() {
        List<ScansByRoll.Other> others = new ArrayList<>();
        List<Scan> strangers = new ArrayList<>();
        films.forEach((roll, scans) -> {
            Optional<ScansByRoll.Candidate> known = candidate(roll);
            if (known.isEmpty()) {
                strangers.addAll(scans);
            } else if (known.get() != wanted) {
                others.add(new ScansByRoll.Other(roll, proposal(scans, known.get())));
            }
        });
        if (films.containsKey(wanted.roll())) {
            strangers.addAll(rest);
            return new ScansByRoll(proposal(films.get(wanted.roll()), wanted), others, strangers);
        }
        if (rest.isEmpty()) {
            String rolls = String.join(
                    ", ", films.keySet().stream().map(RollId::toString).toList());
            return new ScansByRoll(
                    new Proposal(
                            List.of(),
                            wanted.slots(),
                            List.of(),
                            false,
                            false,
                            0,
                            List.of("by its " + English.agree(films.size(), "slate", "slates") + " this folder is of "
                                    + rolls)),
                    others,
                    strangers);
        }
        List<ScansByRoll.Candidate> open =
                candidates.stream().filter(it -> !films.containsKey(it.roll())).toList();
        ScansByRoll without = ScansByRoll.unslated(rest, open, wanted);
        others.addAll(without.others());
        strangers.addAll(without.unmatched());
        return new ScansByRoll(without.asked(), others, strangers);
    }

    private Proposal proposal(List<Scan> scans, ScansByRoll.Candidate roll) {
        Proposal own = Aligner.of(scans, roll.slots());
        return new Proposal(
                own.scans(),
                own.slots(),
                own.slotOf(),
                own.isReversed(),
                own.isPiled(),
                own.confidence() * sure,
                own.reasons());
    }
}
