package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import takeup.roll.Frame;
import takeup.text.English;

/** Why scans and log differ, in sentences: what a photographer would want to hear before accepting. */
final class ProposalReasons {
    private final Proposal proposal;
    private final Hypothesis how;
    private final List<Slot> missing;
    private final List<Scan> extra;
    /** {@code 12 scans, R0007 has 13}. */
    private final String counts;

    private final List<String> reasons = new ArrayList<>();

    private ProposalReasons(Proposal proposal, Hypothesis how) {
        this.proposal = proposal;
        this.how = how;
        missing = proposal.missing();
        extra = proposal.extra();
        int frames =
                proposal.slots().stream().mapToInt(it -> it.frames().size()).sum();
        List<String> rolls = proposal.slots().stream()
                .map(it -> it.roll().toString())
                .distinct()
                .toList();
        counts = English.count(proposal.scans().size(), "scan") + ", " + String.join(" and ", rolls)
                + English.agree(rolls.size(), " has ", " have ") + frames;
    }

    static List<String> of(Proposal proposal, Hypothesis how, boolean isOtherEndNext) {
        ProposalReasons all = new ProposalReasons(proposal, how);
        all.differences();
        all.slates();
        all.direction();
        all.numbers();
        if (!proposal.isSure()) {
            all.uncertainty(isOtherEndNext);
        }
        if (how.slope() == 0) {
            all.reasons.add("brightness follows the logged light nowhere here; it may be the lab's");
        }
        return all.reasons;
    }

    private void differences() {
        if (how.layout() != Hypothesis.Layout.SINGLE) {
            reasons.add(counts + ": two half frames share a file"
                    + (how.layout() == Hypothesis.Layout.PAIRS_FIRST_ALONE
                            ? ", and the first shares its file with one that nobody logged"
                            : ""));
        }
        if (how.isPiled()) {
            reasons.add(counts + ", the last one of the film a pile, very bright and flat: the film " + guess()
                    + "stopped there, and "
                    + missing.size() + " further " + English.agree(missing.size(), "frame lies", "frames lie")
                    + " on it");
        } else if (!missing.isEmpty()) {
            reasons.add(counts + ": " + missingFrames());
        }
        if (!extra.isEmpty()) {
            String names =
                    String.join(", ", extra.stream().limit(4).map(Scan::name).toList())
                            + (extra.size() > 4 ? " …" : "");
            reasons.add(counts + ": " + names + " "
                    + guess()
                    + English.agree(extra.size(), "is a frame ", "are frames ")
                    + place());
        }
        if (reasons.isEmpty()) {
            reasons.add(counts + ": one for each");
        }
    }

    /** What is not sure never reads as a fact. */
    private String guess() {
        return proposal.isSure() ? "" : "most likely ";
    }

    private String missingFrames() {
        List<Slot> slots = proposal.slots();
        long blank = missing.stream().filter(ProposalReasons::isBlank).count();
        long far = missing.stream().filter(Slot::isFarOff).count();
        if (blank + far == missing.size()) {
            String kinds = blank == 0 ? "far off" : "blank, lost or far off";
            return numbers(missing) + " " + guess() + "left out, " + (far == 0 ? "blank or lost" : kinds)
                    + " by the log" + (how.isGoodOnly() ? ": the lab returns good frames only" : "");
        }
        if (missing.size() > 1
                && slots.subList(slots.size() - missing.size(), slots.size()).equals(missing)) {
            return "nothing came back from frame " + missing.get(0).number()
                    + " on; the film ended there, or the lab left them out";
        }
        return numbers(missing) + " " + guess() + English.agree(missing.size(), "has", "have") + " no scan";
    }

    private static boolean isBlank(Slot slot) {
        return !slot.frames().isEmpty() && (slot.kind() == Frame.Kind.BLANK || slot.kind() == Frame.Kind.LOST);
    }

    /** Where on the film the scans are that nobody logged. */
    private String place() {
        List<Integer> slotOf = proposal.slotOf();
        boolean isFirst = slotOf.get(0) < 0;
        boolean isLast = slotOf.get(slotOf.size() - 1) < 0;
        if (isFirst == isLast) {
            return "that nobody logged";
        }
        if (how.isReversed()) {
            return isFirst ? "after the last logged frame" : "before the first logged frame, as 00 and 0 are";
        }
        return isFirst
                ? "before the first logged frame, as 00 and 0 are"
                : "after the last logged frame, as 37 and 38 are";
    }

    /** Where a slate was read: {@code 01.jpg is the slate of R0007}. */
    private void slates() {
        List<String> names = proposal.scans().stream()
                .filter(it -> it.slate().isPresent())
                .map(Scan::name)
                .toList();
        if (!names.isEmpty()) {
            reasons.add(String.join(", ", names)
                    + English.agree(names.size(), " is the slate of ", " are slates of ")
                    + proposal.slots().get(0).roll());
        }
    }

    private void direction() {
        if (how.isReversed()) {
            reasons.add("the film was " + guess() + "scanned from its other end: "
                    + (how.slope() > 0
                            ? "bright and dark scans follow the logged light only so"
                            : "what is black or missing fits only so"));
        }
    }

    private void numbers() {
        how.offset().ifPresent(it -> {
            String shift = it > 0 ? " and " + it : " less " + -it;
            reasons.add("the numbers in the file names "
                    + (how.isReversed() ? "count the frames from the other end" : "are the frame numbers")
                    + (it == 0 ? "" : shift));
        });
    }

    private void uncertainty(boolean isOtherEndNext) {
        if (isOtherEndNext) {
            String first = proposal.slotOf().stream()
                    .filter(it -> it >= 0)
                    .map(it -> Integer.toString(proposal.slots().get(it).number()))
                    .findFirst()
                    .orElse("1");
            reasons.add(
                    "nothing tells for sure which end of the film was scanned first: look whether the first scan is "
                            + "frame " + first);
        } else {
            reasons.add("other places fit nearly as well: look at the frames about the gaps");
        }
    }

    /** The numbers of frames, neighbours as a range: {@code frames 4, 7-8}. */
    private static String numbers(List<Slot> slots) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            int from = i;
            while (i + 1 < slots.size()
                    && slots.get(i + 1).number() == slots.get(i).number() + 1) {
                i++;
            }
            words.add(slots.get(from).number() + (i > from ? "-" + slots.get(i).number() : ""));
        }
        return English.agree(slots.size(), "frame ", "frames ") + String.join(", ", words);
    }
}
