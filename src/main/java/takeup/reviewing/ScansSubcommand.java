package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.InTerminal;
import takeup.files.ScanFolder;
import takeup.files.SidecarFiles;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.OutputOption;
import takeup.options.RollArgument;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.review.ScansHtml;
import takeup.roll.Roll;
import takeup.scans.Proposal;
import takeup.scans.ScansByRoll;
import takeup.scanview.ScansState;
import takeup.terminal.NoTerminal;
import takeup.text.English;

/**
 * {@code takeup scans}: a folder beside a roll, on the screen or printed; what is decided is on the disk before it is
 * confirmed.
 */
@Command(
        name = "scans",
        description = {
            "Lays the scans of a folder beside the frames of a roll, says why counts differ and how sure it is.",
            "Scans are only read. On a terminal it opens them side by side; with an option, or in a pipe, "
                    + "it prints."
        },
        footer = {"", "For example:", "  takeup scans 1 scans", "  takeup scans 1 scans --accept --good 1-2"})
public final class ScansSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(index = "0", paramLabel = "ROLL", description = "Its number: R0007, r7, or 7.")
    RollArgument roll;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "The folder that came back; left out, what was accepted is shown.")
    String folder;

    @Option(names = "--text", description = "As text to read, on a terminal too.")
    boolean text;

    @Mixin
    JsonOption json;

    @Mixin
    AdjustOptions adjust;

    @Option(names = "--accept", description = "Keeps this. Where the evidence is too thin it asks for a yes.")
    boolean accept;

    @Option(
            names = "--html",
            description = "Writes a page with each scan beside its frame, verdict and warnings: R0007-scans.html, "
                    + "here, or the file of -o.")
    boolean html;

    @Mixin
    OutputOption output;

    @Mixin
    VerdictOptions verdicts;

    @Option(
            names = "--sidecars",
            paramLabel = "HABIT",
            description = "Writes an XMP file beside each accepted scan: full (crew_01.jpg.xmp) or short "
                    + "(crew_01.xmp), and renews its own. Another program's is never touched.")
    String sidecars;

    @Override
    public Integer call() throws IOException {
        Roll found = roll.find(global).roll();
        Archive archive = global.archive();
        JournalRecords<ReviewEvent> reviewed = archive.reviewOf(found.id());
        reviewed.problems().forEach(global.console()::error);
        Review review = Review.of(reviewed.records());
        List<ReviewEvent> decided = new ArrayList<>(verdicts.on(found));
        boolean isWhole = reviewed.problems().isEmpty();
        if (folder == null) {
            if (accept || adjust.isGiven() || html) {
                throw new CommandFailed(2, "name the folder that came back");
            }
            review = save(found, review, decided);
            new AcceptedScans(found, review, archive).print(global.console(), json);
        } else {
            Path path = folder(folder);
            OpenedScans opened = OpenedScans.of(archive, found, path);
            ScanFolder read = opened.folder();
            read.problems().forEach(global.console()::error);
            isWhole &= read.problems().isEmpty();
            if (read.scans().isEmpty()) {
                throw new CommandFailed(1, folder + " holds no scan that can be read: JPEG, PNG or TIFF");
            }
            ScansByRoll sorted = opened.sorted();
            Proposal proposal = adjust.apply(sorted.asked(), found);
            if (isForTheEye() && !proposal.scans().isEmpty() && opens(found, proposal, review, read)) {
                return isWhole ? 0 : 1;
            }
            if (accept) {
                decided.add(accepted(found, proposal, read));
            }
            new ProposedScans(found, sorted, proposal, read).print(global.console(), json, review);
            if (!accept && !json.isAsked()) {
                global.console()
                        .line("Nothing is written yet: --accept keeps this; --reverse, --shift 1, --swap 3,4 and "
                                + "--place 3=4 put it right first.");
            }
            review = save(found, review, decided);
            if (html) {
                Path file = output.fileOr(found.id() + "-scans.html");
                OutputOption.write(file, ScansHtml.of(found, proposal, review, ScanFolder.embedded(path)));
                if (!json.isAsked()) {
                    global.console().line("The page is " + file.toAbsolutePath() + ".");
                }
            }
        }
        if (sidecars != null) {
            isWhole &= new SidecarFiles(global.console(), archive)
                    .write(found, review, SidecarFiles.Naming.named(sidecars));
        }
        return isWhole ? 0 : 1;
    }

    /** Without an option it is for the eye. */
    private boolean isForTheEye() {
        return !text && !json.isAsked() && !accept && !html && sidecars == null && !verdicts.isGiven();
    }

    /** Opens the view; false where there is no terminal for it. */
    private boolean opens(Roll found, Proposal proposal, Review review, ScanFolder read) {
        try {
            new KeyLoop()
                    .run(
                            global,
                            new ScansScreen(
                                    global.archive(),
                                    new LargerScans(read.folder(), read.pictures()),
                                    (roll, events) -> new Decisions(global.archive(), roll, events).save(it -> {})),
                            ScansState.of(found, read.folder().toString(), proposal, review));
            return true;
        } catch (NoTerminal e) {
            return false;
        }
    }

    /** The folder that was typed. */
    static Path folder(String typed) {
        if (!Files.isDirectory(Path.of(typed))) {
            throw new CommandFailed(1, typed + " is no folder");
        }
        return Path.of(typed).toAbsolutePath().normalize();
    }

    private ReviewEvent accepted(Roll found, Proposal proposal, ScanFolder read) {
        List<String> reasons = proposal.reasons();
        if (proposal.scans().isEmpty()) {
            throw new CommandFailed(1, "there is nothing to accept: " + String.join("; ", reasons));
        }
        Console console = global.console();
        if (!proposal.isSure()
                && !InTerminal.answersYes(
                        json.isAsked() ? console::error : console::line,
                        "This is not sure (" + ProposedScans.percent(proposal.confidence()) + "): "
                                + reasons.get(reasons.size() - 1) + ". Accept it all the same? Type yes.")) {
            throw new CommandFailed(1, "not accepted, and nothing was written");
        }
        return ReviewEvent.Accepted.of(found, proposal, read.folder().toString());
    }

    private Review save(Roll found, Review before, List<ReviewEvent> decided) {
        if (decided.isEmpty()) {
            return before;
        }
        Review review = new Decisions(global.archive(), found.id(), decided).saveOrFail(global.console());
        long judged =
                decided.stream().filter(it -> it instanceof ReviewEvent.Judged).count();
        boolean isAccepted = decided.size() > judged;
        if (!json.isAsked()) {
            String what = judged == 0 ? "" : English.count(judged, "verdict") + " kept";
            global.console()
                    .line((isAccepted ? "Accepted" : "") + (isAccepted && judged > 0 ? ", and " : "") + what
                            + ": it is on disk.");
        }
        return review;
    }
}
