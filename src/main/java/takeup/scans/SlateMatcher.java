package takeup.scans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.roll.RollId;
import takeup.scans.ScansByRoll.Candidate;
import takeup.text.English;

/**
 * Divides a folder by the slates in it: each names its film, so that films in one folder are separated whatever the
 * files are called. Where one film ends and the next begins between two slates, what fits best decides.
 */
final class SlateMatcher {
    private final List<Candidate> candidates;
    private final Map<RollId, List<Scan>> films = new LinkedHashMap<>();
    private final List<Scan> rest = new ArrayList<>();
    private double sure = 1;

    private SlateMatcher(List<Candidate> candidates) {
        this.candidates = candidates;
    }

    /** The folder by its slates; empty where there is none, or where they contradict each other. */
    static Optional<SlateMatcher> of(List<Scan> scans, List<Candidate> candidates) {
        if (scans.stream().noneMatch(it -> it.slate().isPresent())) {
            return Optional.empty();
        }
        SlateMatcher slates = new SlateMatcher(candidates);
        boolean isClear = ScanGroups.of(scans).stream().allMatch(slates::take);
        return isClear ? Optional.of(slates) : Optional.empty();
    }

    /** Whether a slate names the roll. */
    boolean names(Candidate roll) {
        return films.containsKey(roll.roll());
    }

    /** The groups of scans without a slate. */
    List<Scan> rest() {
        return rest;
    }

    /**
     * Scans that follow each other, of one film or of several; false where a film's slates stand on both sides of
     * another's.
     */
    private boolean take(List<Scan> group) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            Optional<RollId> roll = group.get(i).slate().map(Slate::roll);
            int last = runs.size() - 1;
            if (roll.isPresent() && last >= 0 && runs.get(last).roll.equals(roll.get())) {
                runs.set(last, new Run(roll.get(), runs.get(last).first, i));
            } else if (roll.isPresent()) {
                RollId next = roll.get();
                if (runs.stream().anyMatch(it -> it.roll.equals(next)) || films.containsKey(next)) {
                    return false;
                }
                runs.add(new Run(next, i, i));
            }
        }
        int from = 0;
        for (int i = 0; i < runs.size(); i++) {
            int end = i + 2 < runs.size() ? runs.get(i + 2).first : group.size();
            int to = i + 1 < runs.size() ? border(group.subList(0, end), from, runs.get(i), runs.get(i + 1)) : end;
            films.put(runs.get(i).roll, group.subList(from, to));
            from = to;
        }
        if (runs.isEmpty()) {
            rest.addAll(group);
        }
        return true;
    }

    /** The slates of one film that follow each other: the places of the first and the last. */
    private record Run(RollId roll, int first, int last) {}

    /** Where the second film begins: behind the first one's last slate, and at the latest with its own first. */
    private int border(List<Scan> scans, int from, Run one, Run other) {
        int best = other.first;
        double high = Double.NEGATIVE_INFINITY;
        double all = Double.NEGATIVE_INFINITY;
        for (int at = one.last + 1; at <= other.first; at++) {
            double weight =
                    evidence(scans.subList(from, at), one.roll) + evidence(scans.subList(at, scans.size()), other.roll);
            all = LogSum.add(all, weight);
            best = weight > high ? at : best;
            high = Math.max(high, weight);
        }
        sure *= Math.exp(high - all);
        return best;
    }

    private double evidence(List<Scan> scans, RollId roll) {
        return candidate(roll)
                .filter(it -> !it.slots().isEmpty())
                .map(it -> Aligner.evidence(scans, it.slots(), it.room()))
                .orElse(0.0);
    }

    private Optional<Candidate> candidate(RollId roll) {
        return candidates.stream().filter(it -> it.roll().equals(roll)).findFirst();
    }

    /** The films that slates name; what has none goes with them where the roll that was asked for is among them. */
    ScansByRoll divided(Candidate wanted) {
        List<ScansByRoll.Other> others = new ArrayList<>();
        List<Scan> unmatched = new ArrayList<>();
        films.forEach((roll, scans) -> {
            Optional<Candidate> known = candidate(roll);
            if (known.isEmpty()) {
                unmatched.addAll(scans);
            } else if (known.get() != wanted) {
                others.add(new ScansByRoll.Other(roll, proposal(scans, known.get())));
            }
        });
        if (names(wanted)) {
            unmatched.addAll(rest);
            return new ScansByRoll(proposal(films.get(wanted.roll()), wanted), others, unmatched);
        }
        String rolls =
                String.join(", ", films.keySet().stream().map(RollId::toString).toList());
        String why = "by its " + English.agree(films.size(), "slate", "slates") + " this folder is of " + rolls;
        return new ScansByRoll(Proposal.none(List.of(), wanted.slots(), why), others, unmatched);
    }

    private Proposal proposal(List<Scan> scans, Candidate roll) {
        return Aligner.of(scans, roll.slots(), roll.room()).weighed(sure);
    }
}
