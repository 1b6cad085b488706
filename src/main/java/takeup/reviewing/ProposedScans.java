package takeup.reviewing;

import java.util.ArrayList;
import java.util.List;
import takeup.console.Console;
import takeup.files.ScanFolder;
import takeup.json.Json;
import takeup.options.JsonOption;
import takeup.review.Review;
import takeup.review.ScanRow;
import takeup.roll.Roll;
import takeup.scans.Proposal;
import takeup.scans.Scan;
import takeup.scans.ScansByRoll;
import takeup.scans.Slot;
import takeup.text.English;
import takeup.text.Width;

/**
 * The scans of a folder as they may belong beside a roll's frames, to be printed.
 *
 * @param sorted the folder with all rolls that its scans may belong to
 * @param proposal the one for this roll, with what was put right by hand
 */
record ProposedScans(Roll roll, ScansByRoll sorted, Proposal proposal, ScanFolder folder) {
    void print(Console console, JsonOption json, Review review) {
        if (json.isAsked()) {
            console.json("scans-proposed", json());
            return;
        }
        console.line(roll.id() + " · " + roll.film().stock().name() + " · "
                + English.count(roll.framesExposed(), "frame") + " may come back · "
                + English.count(proposal.scans().size(), "scan") + " in " + folder.folder());
        proposal.reasons().forEach(console::line);
        console.line((proposal.isSure() ? "sure: " : "NOT SURE: ") + percent(proposal.confidence()));
        lines(ScanRow.of(proposal, roll, review)).forEach(console::line);
        for (ScansByRoll.Other other : sorted.others()) {
            int more = other.proposal().scans().size();
            String scans = more + " more " + English.agree(more, "scan", "scans");
            console.line((isComplete() ? roll.id() + " has all " + roll.frames().size() + "; the folder holds " : "")
                    + scans + ", most like " + other.roll() + " ("
                    + percent(other.proposal().confidence())
                    + "): takeup scans " + other.roll() + " FOLDER");
        }
        if (!sorted.unmatched().isEmpty()) {
            console.line("of no roll here: " + String.join(", ", names(sorted.unmatched())));
        }
    }

    private boolean isComplete() {
        return !proposal.slots().isEmpty() && proposal.missing().isEmpty();
    }

    static String percent(double share) {
        long percent = (long) Math.floor(100 * share);
        return share > 0.99 && share < 1 ? "over 99 %" : percent + " %";
    }

    private static List<String> names(List<Scan> scans) {
        return scans.stream().map(Scan::name).toList();
    }

    /** A line for each row of a proposal. */
    private static List<String> lines(List<ScanRow> rows) {
        int file = 4;
        int set = 4;
        int read = 4;
        for (ScanRow row : rows) {
            file = Math.max(file, Math.min(40, Width.of(row.file())));
            set = Math.max(set, Math.min(28, Width.of(row.settings())));
            read = Math.max(read, Math.min(30, Width.of(row.reading())));
        }
        List<String> lines = new ArrayList<>();
        for (ScanRow row : rows) {
            String number = row.scan() < 0 ? "" : Integer.toString(row.scan() + 1);
            lines.add((Width.padLeft(number, 3) + "  " + Width.pad(row.file(), file) + "  "
                            + Width.padLeft(row.frame(), 5) + "  " + Width.pad(row.settings(), set) + "  "
                            + Width.pad(row.reading(), read) + "  " + Width.pad(row.verdict(), 5) + "  " + row.note())
                    .stripTrailing());
        }
        return lines;
    }

    private Json.Obj json() {
        List<Json> scans = new ArrayList<>();
        for (int i = 0; i < proposal.scans().size(); i++) {
            scans.add(Json.object()
                    .and("file", proposal.scans().get(i).name())
                    .and("frames", proposal.slot(i).map(it -> numbers(it)).orElse(List.of())));
        }
        List<Integer> missing = new ArrayList<>();
        proposal.missing().forEach(it -> missing.addAll(numbers(it)));
        return Json.object()
                .and("roll", roll.id())
                .and("folder", folder.folder())
                .and("confidence", Json.digits(proposal.confidence(), 6))
                .and("sure", proposal.isSure())
                .and("reversed", proposal.isReversed())
                .and("piled", proposal.isPiled())
                .and("reasons", proposal.reasons())
                .and("scans", scans)
                .and("missing", missing)
                .and(
                        "others",
                        sorted.others().stream()
                                .map(it -> Json.object()
                                        .and("roll", it.roll())
                                        .and("scans", it.proposal().scans().size())
                                        .and(
                                                "confidence",
                                                Json.digits(it.proposal().confidence(), 6)))
                                .toList())
                .and("strangers", names(sorted.unmatched()));
    }

    private List<Integer> numbers(Slot slot) {
        return slot.frames().stream().map(it -> roll.frames().get(it).number()).toList();
    }
}
