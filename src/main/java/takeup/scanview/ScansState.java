package takeup.scanview;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.review.ScanRow;
import takeup.roll.Roll;
import takeup.scans.Proposal;

/**
 * Scans and frames side by side, as the Scans view shows them: what is proposed, what is on the disk, where the cursor
 * is. Each method is what one key does; nothing is written here.
 *
 * @param roll the roll
 * @param folder the folder that came back
 * @param proposal which scan shows which frame, as it stands now
 * @param review what is on the disk
 * @param view where the photographer is in it
 * @param reply what the last key came to
 */
public record ScansState(Roll roll, String folder, Proposal proposal, Review review, View view, Reply reply) {
    /**
     * Where the photographer is.
     *
     * @param cursor the row that is highlighted
     * @param markedScan the scan that waits for another to be swapped with; -1 if none does
     * @param isSheet whether the contact sheet is shown, not the list
     */
    record View(int cursor, int markedScan, boolean isSheet) {
        View at(int row) {
            return new View(row, markedScan, isSheet);
        }

        View marking(int scan) {
            return new View(cursor, scan, isSheet);
        }
    }

    /** Whether the last key needs more than its message. */
    enum Kind {
        PLAIN,
        /** The same key again does what was asked about. */
        CONFIRMING,
        NOT_SAVED
    }

    /** What the last key came to: words, what is to be written down before the next key, and a scan to be opened. */
    record Reply(Kind kind, String message, List<ReviewEvent> toSave, Optional<String> toOpen) {
        Reply {
            toSave = List.copyOf(toSave);
        }

        static Reply of(String message) {
            return new Reply(Kind.PLAIN, message, List.of(), Optional.empty());
        }

        static Reply saving(String message, List<ReviewEvent> events) {
            return new Reply(Kind.PLAIN, message, events, Optional.empty());
        }
    }

    /** The state at the start. */
    public static ScansState of(Roll roll, String folder, Proposal proposal, Review review) {
        return new ScansState(roll, folder, proposal, review, new View(0, -1, false), Reply.of(""));
    }

    public int cursor() {
        return view.cursor;
    }

    public int markedScan() {
        return view.markedScan;
    }

    public boolean isSheet() {
        return view.isSheet;
    }

    /** What was said last. */
    public String message() {
        return reply.message;
    }

    /** Whether the message says that something could not be written. */
    public boolean isSaveFailed() {
        return reply.kind == Kind.NOT_SAVED;
    }

    /** What is to be written down before the next key. */
    public List<ReviewEvent> toSave() {
        return reply.toSave;
    }

    /** The file that is to be opened in the system's viewer. */
    public Optional<String> toOpen() {
        return reply.toOpen;
    }

    /** The rows, frames without a scan and scans without a frame included. */
    public List<ScanRow> rows() {
        return ScanRow.of(proposal, roll, review);
    }

    private Optional<ScanRow> row() {
        List<ScanRow> rows = rows();
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(view.cursor, rows.size() - 1)));
    }

    /** The scan under the cursor, -1 for a frame without one. */
    public int scan() {
        return row().map(ScanRow::scan).orElse(-1);
    }

    private ScansState with(View other, Reply now) {
        return new ScansState(roll, folder, proposal, review, other, now);
    }

    /** The same with another message. */
    public ScansState withMessage(String words) {
        return with(view, Reply.of(words));
    }

    /** Another proposal, the cursor on the scan that it was on. */
    private ScansState proposing(Proposal other, String words) {
        int scan = scan();
        ScansState now =
                new ScansState(roll, folder, other, review, view.marking(-1), Reply.of(words + "; a keeps it"));
        List<ScanRow> rows = now.rows();
        int cursor = view.cursor;
        for (int i = 0; i < rows.size(); i++) {
            cursor = rows.get(i).scan() == scan ? i : cursor;
        }
        return now.with(now.view.at(cursor), now.reply);
    }

    private ScansState onScan(UnaryOperator<ScansState> change) {
        return scan() < 0 ? withMessage("this frame has no scan: go to a scan first") : change.apply(this);
    }

    /** The cursor so many rows further. */
    public ScansState moved(int by) {
        int last = Math.max(0, rows().size() - 1);
        return with(view.at(Math.max(0, Math.min(last, view.cursor + by))), Reply.of(""));
    }

    /** The contact sheet instead of the list, or back. */
    public ScansState otherView() {
        return with(new View(view.cursor, view.markedScan, !view.isSheet), Reply.of(""));
    }

    /** This scan and all behind it show frames so many further on. */
    public ScansState shifted(int by) {
        return onScan(it -> it.proposing(
                it.proposal.shifted(it.scan(), by),
                by > 0 ? "from here on a frame later" : "from here on a frame earlier"));
    }

    /** The film the other way round; the cursor stays in its row. */
    public ScansState turned() {
        return new ScansState(
                roll,
                folder,
                proposal.turned(),
                review,
                view.marking(-1),
                Reply.of("the film is the other way round now; a keeps it"));
    }

    /** Marks a scan; the same key on another one exchanges their frames. */
    public ScansState swapped() {
        return onScan(it -> {
            if (it.view.markedScan < 0) {
                return it.with(it.view.marking(it.scan()), Reply.of("go to the other scan, then s again"));
            }
            return it.view.markedScan == it.scan()
                    ? it.with(it.view.marking(-1), Reply.of("given up"))
                    : it.proposing(it.proposal.swapped(it.view.markedScan, it.scan()), "swapped");
        });
    }

    /** Opens this scan in the system's viewer, at its full size. */
    ScansState opened() {
        return onScan(it -> {
            String file = it.proposal.scans().get(it.scan()).name();
            return it.with(it.view, new Reply(Kind.PLAIN, file + " opens in the viewer", List.of(), Optional.of(file)));
        });
    }

    /** This scan shows no logged frame. */
    public ScansState unlogged() {
        return onScan(it -> it.proposing(it.proposal.placed(it.scan(), -1), "this one is not in the log"));
    }

    /** A verdict on the frame under the cursor; the cursor goes to the next row. */
    public ScansState judged(Optional<Density> verdict) {
        Optional<ScanRow> row = row().filter(it -> !it.places().isEmpty());
        if (row.isEmpty()) {
            return withMessage("no frame stands here: nothing to judge");
        }
        List<ReviewEvent> events = row.get().places().stream()
                .<ReviewEvent>map(
                        it -> new ReviewEvent.Judged(FrameKey.of(roll.frames().get(it)), verdict))
                .toList();
        String what = verdict.map(it -> " is " + it).orElse(" is not judged any more");
        return with(
                view.at(Math.min(rows().size() - 1, view.cursor + 1)),
                Reply.saving("frame " + row.get().frame() + what, events));
    }

    /** Keeps which scan shows which frame. Where it is not sure it asks, and the same key again keeps it. */
    public ScansState accepted() {
        if (proposal.scans().isEmpty()) {
            return withMessage("there are no scans to keep");
        }
        if (!proposal.isSure() && reply.kind != Kind.CONFIRMING) {
            String words = "not sure (" + (int) (100 * proposal.confidence())
                    + " %): look first; a again keeps it all the same";
            return with(view, new Reply(Kind.CONFIRMING, words, List.of(), Optional.empty()));
        }
        return with(
                view.marking(-1), Reply.saving("accepted", List.of(ReviewEvent.Accepted.of(roll, proposal, folder))));
    }

    /** All that was to be saved is on the disk. */
    public ScansState saved(Review now) {
        return new ScansState(roll, folder, proposal, now, view, Reply.of(reply.message + ": on disk"));
    }

    /** What was to be saved could not be written. */
    public ScansState saveFailed(String why) {
        return with(view, new Reply(Kind.NOT_SAVED, "NOT SAVED: " + why, List.of(), Optional.empty()));
    }
}
