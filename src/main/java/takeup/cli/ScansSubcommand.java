package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.disk.IoErrorText;
import takeup.files.JournalStore;
import takeup.files.ProcessEnvironment;
import takeup.files.ScanFolder;
import takeup.files.SidecarFiles;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.review.ScanRow;
import takeup.review.ScansState;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.scans.Proposal;
import takeup.scans.Scan;
import takeup.scans.ScansByRoll;
import takeup.scans.Slate;
import takeup.scans.Slot;
import takeup.terminal.NoTerminal;
import takeup.terminal.TerminalEnvironment;
import takeup.text.English;

/** {@code takeup scans}: a folder beside a roll, printed; what is decided is forced to the disk before it is said. */
final class ScansSubcommand {
    private final ReviewSubcommands.Scans asked;
    private final Subcommands commands;
    private final Archive archive;
    private final Console out;

    ScansSubcommand(ReviewSubcommands.Scans asked, Subcommands commands) {
        this.asked = asked;
        this.commands = commands;
        this.archive = commands.archive();
        this.out = commands.out();
    }

    int run() throws IOException {
        Roll roll = new RollsSubcommand(commands).found(asked.roll);
        JournalRecords<ReviewEvent> opened = archive.reviewOf(roll.id());
        opened.problems().forEach(out::error);
        Review review = Review.of(opened.records());
        List<ReviewEvent> decided = new ArrayList<>(judged(roll));
        boolean isBad = !opened.problems().isEmpty();
        if (asked.folder == null) {
            if (asked.accept || asked.reverse || asked.shift != 0 || asked.swaps != null || asked.places != null) {
                throw new CommandFailed(2, "name the folder that came back");
            }
            review = keep(roll, review, decided);
            shown(roll, review);
        } else {
            Path path = folder(asked.folder);
            List<ScansByRoll.Candidate> rolls = candidates(roll, path);
            ScanFolder folder = ScanFolder.read(
                    path,
                    rolls.stream()
                            .anyMatch(it -> it.slots().stream().anyMatch(slot -> slot.kind() == Frame.Kind.SLATE)));
            folder.problems().forEach(out::error);
            isBad |= !folder.problems().isEmpty();
            ScansByRoll sorted = ScansByRoll.of(folder.scans(), slated(rolls, folder), roll.id());
            Proposal proposal = adjusted(sorted.asked(), roll);
            if (isToLookAt() && opens(roll, proposal, review, folder)) {
                return isBad ? 1 : 0;
            }
            if (asked.accept) {
                decided.add(accepted(roll, proposal, folder));
            }
            print(roll, review, sorted, proposal, folder);
            review = keep(roll, review, decided);
        }
        if (asked.sidecars != null) {
            isBad |= !new SidecarFiles(out).write(roll, review, asked.sidecars);
        }
        return isBad ? 1 : 0;
    }

    /** Without an option it is for the eye. */
    private boolean isToLookAt() {
        return !asked.text
                && !asked.json
                && !asked.accept
                && asked.sidecars == null
                && asked.thin == null
                && asked.good == null
                && asked.dense == null
                && asked.unjudged == null;
    }

    /** Opens the view; false where there is no terminal for it. */
    private boolean opens(Roll roll, Proposal proposal, Review review, ScanFolder folder) {
        TerminalEnvironment environment = TerminalEnvironment.of(
                ProcessEnvironment.variables(),
                commands.ascii || commands.settings().ascii());
        try {
            new ScansScreen(archive, folder.pictures())
                    .run(
                            ScansState.of(roll, folder.folder().toString(), proposal, review),
                            environment,
                            commands.look());
            return true;
        } catch (NoTerminal e) {
            return false;
        }
    }

    static Path folder(String typed) {
        if (!Files.isDirectory(Path.of(typed))) {
            throw new CommandFailed(1, typed + " is no folder");
        }
        return Path.of(typed).toAbsolutePath().normalize();
    }

    /** The roll itself, and rolls near to it whose scans may lie in the same folder. */
    List<ScansByRoll.Candidate> candidates(Roll roll, Path folder) throws IOException {
        TreeSet<RollId> near = new TreeSet<>();
        List<RollId> all = archive.finishedRolls();
        int at = all.indexOf(roll.id());
        for (int i = Math.max(0, at - 2); at >= 0 && i < Math.min(all.size(), at + 4); i++) {
            near.add(all.get(i));
        }
        near.add(roll.id());
        List<ScansByRoll.Candidate> candidates = new ArrayList<>();
        for (RollId id : near) {
            Optional<ReviewEvent.Accepted> before =
                    Review.of(archive.reviewOf(id).records()).accepted();
            boolean isElsewhere = before.isPresent() && !before.get().folder().equals(folder.toString());
            Optional<Roll> other = id.equals(roll.id())
                    ? Optional.of(roll)
                    : isElsewhere ? Optional.empty() : Roll.of(archive.roll(id).records());
            other.filter(it -> !it.frames().isEmpty() || id.equals(roll.id()))
                    .ifPresent(it -> candidates.add(new ScansByRoll.Candidate(id, Slot.of(it))));
        }
        return candidates;
    }

    /** The same, and rolls whose slates were found, wherever they stand. */
    private List<ScansByRoll.Candidate> slated(List<ScansByRoll.Candidate> near, ScanFolder folder) throws IOException {
        TreeMap<RollId, ScansByRoll.Candidate> all = new TreeMap<>();
        near.forEach(it -> all.put(it.roll(), it));
        List<RollId> finished = archive.finishedRolls();
        for (Scan scan : folder.scans()) {
            Optional<RollId> id =
                    scan.slate().map(Slate::roll).filter(it -> finished.contains(it) && !all.containsKey(it));
            if (id.isPresent()) {
                Roll.of(archive.roll(id.get()).records())
                        .ifPresent(it -> all.put(it.id(), new ScansByRoll.Candidate(it.id(), Slot.of(it))));
            }
        }
        return List.copyOf(all.values());
    }

    private Proposal adjusted(Proposal proposal, Roll roll) {
        Proposal now = asked.reverse ? proposal.turned() : proposal;
        now = asked.shift == 0 ? now : now.shifted(0, asked.shift);
        for (String swap : asked.swaps == null ? List.<String>of() : asked.swaps) {
            String[] both = swap.split(",", -1);
            if (both.length != 2) {
                throw new CommandFailed(2, swap + " does not name two scans: --swap 3,4");
            }
            now = now.swapped(scan(both[0], now), scan(both[1], now));
        }
        for (String place : asked.places == null ? List.<String>of() : asked.places) {
            int sign = place.indexOf('=');
            if (sign < 1) {
                throw new CommandFailed(2, place + " does not name a scan and its frame: --place 3=4, or 3=none");
            }
            String frame = place.substring(sign + 1);
            now = now.placed(scan(place.substring(0, sign), now), frame.equals("none") ? -1 : slot(frame, now, roll));
        }
        return now;
    }

    private static int scan(String typed, Proposal proposal) {
        int number = FrameNumbers.number(typed);
        if (number < 1 || number > proposal.scans().size()) {
            throw new CommandFailed(
                    2,
                    "there is no scan " + typed + ": they are counted from 1 to "
                            + proposal.scans().size());
        }
        return number - 1;
    }

    private static int slot(String typed, Proposal proposal, Roll roll) {
        int index = FrameNumbers.of(typed, roll).get(0);
        for (int i = 0; i < proposal.slots().size(); i++) {
            if (proposal.slots().get(i).frames().contains(index)) {
                return i;
            }
        }
        throw new CommandFailed(2, "frame " + typed + " has no place here");
    }

    private List<ReviewEvent> judged(Roll roll) {
        List<ReviewEvent> events = new ArrayList<>();
        judge(asked.thin, Optional.of(Density.THIN), roll, events);
        judge(asked.good, Optional.of(Density.GOOD), roll, events);
        judge(asked.dense, Optional.of(Density.DENSE), roll, events);
        judge(asked.unjudged, Optional.empty(), roll, events);
        Set<FrameKey> named = new HashSet<>();
        for (ReviewEvent event : events) {
            if (event instanceof ReviewEvent.Judged judged && !named.add(judged.frame())) {
                throw new CommandFailed(2, "frame " + judged.frame().number() + " is given two verdicts");
            }
        }
        return events;
    }

    private static void judge(String frames, Optional<Density> verdict, Roll roll, List<ReviewEvent> into) {
        if (frames != null) {
            FrameNumbers.of(frames, roll)
                    .forEach(it -> into.add(
                            new ReviewEvent.Judged(FrameKey.of(roll.frames().get(it)), verdict)));
        }
    }

    private ReviewEvent accepted(Roll roll, Proposal proposal, ScanFolder folder) throws IOException {
        if (proposal.scans().isEmpty()) {
            throw new CommandFailed(1, "there is nothing to accept: " + String.join("; ", proposal.reasons()));
        }
        if (!proposal.isSure()
                && !InTerminal.answersYes(
                        asked.json ? out::error : out::line,
                        "This is not sure (" + percent(proposal.confidence()) + "): "
                                + proposal.reasons().get(proposal.reasons().size() - 1)
                                + ". Accept it all the same? Type yes.")) {
            throw new CommandFailed(1, "not accepted, and nothing was written");
        }
        return ReviewEvent.Accepted.of(roll, proposal, folder.folder().toString());
    }

    private Review keep(Roll roll, Review before, List<ReviewEvent> decided) throws IOException {
        if (decided.isEmpty()) {
            return before;
        }
        try (JournalStore disk = JournalStore.take(archive)) {
            disk.keep(roll.id(), OffsetDateTime.now().truncatedTo(ChronoUnit.MILLIS), decided);
            disk.remarks().forEach(out::error);
        } catch (IOException e) {
            throw new CommandFailed(1, "NOT SAVED: " + IoErrorText.words(e));
        }
        List<ReviewEvent> all = new ArrayList<>(archive.reviewOf(roll.id()).records());
        long verdicts =
                decided.stream().filter(it -> it instanceof ReviewEvent.Judged).count();
        boolean isAccepted = decided.size() > verdicts;
        if (!asked.json) {
            out.line((isAccepted ? "Accepted" : "") + (isAccepted && verdicts > 0 ? ", and " : "")
                    + (verdicts > 0 ? English.count(verdicts, "verdict") : "")
                    + (isAccepted && verdicts == 0 ? "" : " kept") + ": it is on disk.");
        }
        return Review.of(all);
    }

    private void print(Roll roll, Review review, ScansByRoll sorted, Proposal proposal, ScanFolder folder) {
        if (asked.json) {
            out.raw(JsonText.pretty(json(roll, sorted, proposal, folder)));
            return;
        }
        out.line(roll.id() + " · " + roll.film().stock().name() + " · " + roll.framesExposed()
                + " frames may come back · " + proposal.scans().size() + " scans in " + folder.folder());
        proposal.reasons().forEach(out::line);
        out.line((proposal.isSure() ? "sure: " : "NOT SURE: ") + percent(proposal.confidence()));
        ScanLines.of(ScanRow.of(proposal, roll, review)).forEach(out::line);
        for (ScansByRoll.Other other : sorted.others()) {
            out.line(other.proposal().scans().size() + " more scans look like " + other.roll() + " ("
                    + percent(other.proposal().confidence()) + "): takeup scans " + other.roll() + " FOLDER");
        }
        if (!sorted.unmatched().isEmpty()) {
            out.line("of no roll here: "
                    + String.join(
                            ", ", sorted.unmatched().stream().map(Scan::name).toList()));
        }
        if (!asked.accept) {
            out.line("Nothing is written yet: --accept keeps this; --reverse, --shift 1, --swap 3,4 and --place "
                    + "3=4 put it right first.");
        }
    }

    static String percent(double share) {
        long percent = (long) Math.floor(100 * share);
        return share > 0.99 && share < 1 ? "over 99 %" : percent + " %";
    }

    private static Json.Obj json(Roll roll, ScansByRoll sorted, Proposal proposal, ScanFolder folder) {
        List<Json> scans = new ArrayList<>();
        for (int i = 0; i < proposal.scans().size(); i++) {
            scans.add(Json.object()
                    .and("file", proposal.scans().get(i).name())
                    .and("frames", proposal.slot(i).map(it -> numbers(roll, it)).orElse(List.of())));
        }
        List<Integer> missing = new ArrayList<>();
        proposal.missing().forEach(it -> missing.addAll(numbers(roll, it)));
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
                .and("strangers", sorted.unmatched().stream().map(Scan::name).toList());
    }

    private static List<Integer> numbers(Roll roll, Slot slot) {
        return slot.frames().stream().map(it -> roll.frames().get(it).number()).toList();
    }

    /** What was accepted and judged before. */
    private void shown(Roll roll, Review review) {
        List<Optional<String>> scans = review.scans(roll);
        List<Optional<Density>> verdicts = review.verdicts(roll);
        List<Json> frames = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            frames.add(Json.object()
                    .and("frame", roll.frames().get(i).number())
                    .and("scan", scans.get(i))
                    .and("verdict", verdicts.get(i)));
        }
        if (asked.json) {
            out.raw(JsonText.pretty(Json.object()
                    .and("roll", roll.id())
                    .and("folder", review.accepted().map(ReviewEvent.Accepted::folder))
                    .and("frames", frames)));
            return;
        }
        out.line(roll.id() + " · " + roll.film().stock().name() + " · "
                + review.accepted()
                        .map(it -> it.scans().size() + " scans in " + it.folder())
                        .orElse("no scans accepted yet: takeup scans " + roll.id() + " FOLDER"));
        ScanLines.accepted(roll, review).forEach(out::line);
        List<Integer> gone = review.missingFrames(roll.frames());
        if (!gone.isEmpty()) {
            out.line("frames that were there when the scans were accepted, and are not now: "
                    + String.join(", ", gone.stream().map(String::valueOf).toList()) + "; accept the scans again");
        }
    }
}
