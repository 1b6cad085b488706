package takeup.scans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.Frame;
import takeup.text.English;

/** Why scans and log differ, in sentences: what a photographer would want to hear before accepting. */
final class ProposalReasons {
    private ProposalReasons() {}

    static List<String> of(Proposal it, Hypothesis how, boolean otherEndIsNext) {
        List<String> said = new ArrayList<>();
        int scans = it.scans().size();
        int frames = it.slots().stream().mapToInt(slot -> slot.frames().size()).sum();
        String counts = English.count(scans, "scan") + ", " + frames + " logged";
        List<Slot> missing = it.missing();
        List<Scan> extra = it.extra();
        if (how.layout() != Hypothesis.Layout.SINGLE) {
            said.add(counts + ": two half frames share a file"
                    + (how.layout() == Hypothesis.Layout.PAIRS_FIRST_ALONE
                            ? ", and the first shares its file with one that nobody logged"
                            : ""));
        }
        if (how.isPiled()) {
            said.add(counts + ", the last one of the film a pile, very bright and flat: the film stopped there, and "
                    + missing.size() + " further " + English.agree(missing.size(), "frame lies", "frames lie")
                    + " on it");
        } else if (!missing.isEmpty()) {
            missing(it, counts, missing, how, said);
        }
        if (!extra.isEmpty()) {
            extra(it, counts, extra, said);
        }
        if (said.isEmpty()) {
            said.add(counts + ": one for each");
        }
        slate(it).ifPresent(said::add);
        if (how.isReversed()) {
            said.add("the film was scanned from its other end: "
                    + (how.slope() > 0
                            ? "bright and dark scans follow the logged light only so"
                            : "what is black or missing fits only so"));
        }
        if (how.offset().isPresent()) {
            int off = how.offset().getAsInt();
            said.add("the numbers in the file names "
                    + (how.isReversed() ? "count the frames from the other end" : "are the frame numbers")
                    + (off == 0 ? "" : off > 0 ? " and " + off : " less " + -off));
        }
        if (!it.isSure()) {
            said.add(
                    otherEndIsNext
                            ? "nothing tells for sure which end of the film was scanned first: look whether the "
                                    + "first scan is frame "
                                    + first(it)
                            : "other places fit nearly as well: look at the frames about the gaps");
        }
        if (how.slope() == 0) {
            said.add("brightness follows the logged light nowhere here; it may be the lab's");
        }
        return said;
    }

    /** Where a slate was read: {@code 01.jpg is the slate of R0007}. */
    private static Optional<String> slate(Proposal it) {
        List<String> names = it.scans().stream()
                .filter(scan -> scan.slate().isPresent())
                .map(Scan::name)
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", names)
                        + English.agree(names.size(), " is the slate of ", " are slates of ")
                        + it.slots().get(0).roll());
    }

    private static String first(Proposal it) {
        for (int i = 0; i < it.scans().size(); i++) {
            if (it.slotOf().get(i) >= 0) {
                return String.valueOf(it.slots().get(it.slotOf().get(i)).number());
            }
        }
        return "1";
    }

    private static void missing(Proposal it, String counts, List<Slot> missing, Hypothesis how, List<String> said) {
        boolean isTail = missing.size() > 1
                && it.slots()
                        .subList(it.slots().size() - missing.size(), it.slots().size())
                        .equals(missing);
        long blank = missing.stream()
                .filter(slot -> !slot.frames().isEmpty()
                        && slot.kind() != Frame.Kind.EXPOSED
                        && slot.kind() != Frame.Kind.SLATE
                        && slot.kind() != Frame.Kind.UNLOGGED)
                .count();
        long far = missing.stream().filter(Slot::isFarOff).count();
        if (blank + far == missing.size()) {
            said.add(counts + ": " + numbers(missing) + " left out, "
                    + (far == 0
                            ? "blank or lost by the log"
                            : blank == 0 ? "far off by the log" : "blank, lost or far off by the log")
                    + (how.isGoodOnly() ? ": the lab returns good frames only" : ""));
        } else if (isTail) {
            said.add(counts + ": nothing came back from frame " + missing.get(0).number()
                    + " on; the film ended there, or the lab left them out");
        } else {
            said.add(counts + ": " + numbers(missing) + English.agree(missing.size(), " has", " have") + " no scan");
        }
    }

    private static void extra(Proposal it, String counts, List<Scan> extra, List<String> said) {
        boolean isFirst = it.slotOf().get(0) < 0;
        boolean isLast = it.slotOf().get(it.slotOf().size() - 1) < 0;
        String names =
                String.join(", ", extra.stream().limit(4).map(Scan::name).toList()) + (extra.size() > 4 ? " …" : "");
        String where = isFirst && !isLast
                ? it.isReversed() ? "after the last logged frame" : "before the first logged frame, as 00 and 0 are"
                : isLast && !isFirst
                        ? it.isReversed()
                                ? "before the first logged frame, as 00 and 0 are"
                                : "after the last logged frame, as 37 and 38 are"
                        : "that nobody logged";
        said.add(counts + ": " + names + English.agree(extra.size(), " is a frame ", " are frames ") + where);
    }

    static String numbers(List<Slot> slots) {
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
