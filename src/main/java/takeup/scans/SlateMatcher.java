package takeup.scans;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
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
    private final Set<RollId> named = new HashSet<>();
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
        scans.forEach(it -> it.slate().map(Slate::roll).ifPresent(slates.named::add));
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
        int from = runs.isEmpty() ? 0 : begin(group, runs);
        rest.addAll(group.subList(0, from));
        for (int i = 0; i < runs.size(); i++) {
            int end = i + 2 < runs.size() ? runs.get(i + 2).first : group.size();
            int to = i + 1 < runs.size() ? border(group.subList(0, end), from, runs.get(i), runs.get(i + 1)) : end;
            if (i + 1 == runs.size()) {
                int last = finish(group, from, runs.get(i));
                rest.addAll(group.subList(last, to));
                to = last;
            }
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
        return cut(
                one.last + 1,
                other.first,
                at -> evidence(scans.subList(from, at), one.roll)
                        + evidence(scans.subList(at, scans.size()), other.roll));
    }

    /**
     * Where the first film with a slate begins: scans before it that the film cannot hold are of one without a slate.
     */
    private int begin(List<Scan> group, List<Run> runs) {
        int end = runs.size() > 1 ? runs.get(1).first : group.size();
        Run run = runs.get(0);
        if (holds(run.roll, end)) {
            return 0;
        }
        int least = candidate(run.roll).isEmpty() ? run.first : 0;
        return cut(least, run.first, at -> evidence(group.subList(at, end), run.roll) + others(group.subList(0, at)));
    }

    /** Where the last film with a slate ends. */
    private int finish(List<Scan> group, int from, Run run) {
        if (holds(run.roll, group.size() - from)) {
            return group.size();
        }
        return cut(
                run.last + 1,
                group.size(),
                at -> evidence(group.subList(from, at), run.roll) + others(group.subList(at, group.size())));
    }

    private boolean holds(RollId roll, int scans) {
        return candidate(roll).map(it -> it.mayHold(scans)).orElse(true);
    }

    /** The likeliest place of a cut; how sure it is goes into what is said of the films. */
    private int cut(int from, int to, IntToDoubleFunction weigh) {
        int best = to;
        double high = Double.NEGATIVE_INFINITY;
        double all = Double.NEGATIVE_INFINITY;
        for (int at = from; at <= to; at++) {
            double weight = weigh.applyAsDouble(at);
            all = LogSum.add(all, weight);
            best = weight > high ? at : best;
            high = Math.max(high, weight);
        }
        sure *= Math.exp(high - all);
        return best;
    }

    /** How likely scans without a slate are as those of the roll that they fit best, or of none that is known. */
    private double others(List<Scan> scans) {
        double best = scans.size() * GroupMatcher.OF_NO_ROLL;
        for (Candidate each : candidates) {
            if (!scans.isEmpty() && !each.slots().isEmpty() && !named.contains(each.roll())) {
                best = Math.max(best, Aligner.evidence(scans, each.slots(), each.room()));
            }
        }
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
