package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.scans.Proposal;

/**
 * Scans and frames side by side, as the Scans view shows them: what is proposed, what was kept, where the cursor is.
 *
 * @param roll the roll
 * @param folder the folder that came back
 * @param proposal which scan shows which frame, as it stands now
 * @param review what is on the disk
 * @param cursor the row that is highlighted
 * @param markedScan the scan that waits for another to be swapped with; -1 if none does
 * @param isSheet whether the contact sheet is shown, not the list
 * @param message what was said last
 * @param toSave what is to be written down before anything else is said
 * @param isConfirming whether accepting was asked about, so that the same key again does it
 */
public record ScansState(
        Roll roll,
        String folder,
        Proposal proposal,
        Review review,
        int cursor,
        int markedScan,
        boolean isSheet,
        String message,
        List<ReviewEvent> toSave,
        boolean isConfirming) {
    public ScansState {
        toSave = List.copyOf(toSave);
    }

    /** The desk at the start. */
    public static ScansState of(Roll roll, String folder, Proposal proposal, Review review) {
        return new ScansState(roll, folder, proposal, review, 0, -1, false, "", List.of(), false);
    }

    /** The rows, frames without a scan and scans without a frame included. */
    public List<ScanRow> rows() {
        return ScanRow.of(proposal, roll, review);
    }

    private ScansState with(Proposal other, String words) {
        return new ScansState(roll, folder, other, review, cursor, -1, isSheet, words, toSave, false);
    }

    /** The same with something said. */
    public ScansState withMessage(String words) {
        return new ScansState(roll, folder, proposal, review, cursor, markedScan, isSheet, words, toSave, false);
    }

    /** The cursor so many rows further. */
    public ScansState moved(int by) {
        int last = Math.max(0, rows().size() - 1);
        return new ScansState(
                roll,
                folder,
                proposal,
                review,
                Math.max(0, Math.min(last, cursor + by)),
                markedScan,
                isSheet,
                "",
                toSave,
                false);
    }

    /** The contact sheet instead of the list, or back. */
    public ScansState otherView() {
        return new ScansState(roll, folder, proposal, review, cursor, markedScan, !isSheet, "", toSave, false);
    }

    private ScansState onScan(UnaryOperator<ScansState> change) {
        return scan() < 0 ? withMessage("this frame has no scan: go to a scan first") : change.apply(this);
    }

    /** The scan under the cursor, -1 for a frame without one. */
    public int scan() {
        List<ScanRow> rows = rows();
        return rows.isEmpty() ? -1 : rows.get(Math.min(cursor, rows.size() - 1)).scan();
    }

    /** This scan and all behind it show frames so many further on. */
    public ScansState shifted(int by) {
        return onScan(it -> it.with(
                        it.proposal.shifted(it.scan(), by),
                        "from here on " + (by > 0 ? "a frame later" : "a frame earlier") + "; a keeps it")
                .onto(it.scan()));
    }

    /** The film the other way round. */
    public ScansState turned() {
        return with(proposal.turned(), "the film is the other way round now; a keeps it");
    }

    /** Marks a scan; the same key on another one exchanges their frames. */
    public ScansState swapped() {
        return onScan(it -> it.markedScan < 0 || it.markedScan == it.scan()
                ? new ScansState(
                        roll,
                        folder,
                        proposal,
                        review,
                        cursor,
                        it.markedScan < 0 ? it.scan() : -1,
                        isSheet,
                        it.markedScan < 0 ? "go to the other scan, then s again" : "given up",
                        toSave,
                        false)
                : it.with(it.proposal.swapped(it.markedScan, it.scan()), "swapped; a keeps it")
                        .onto(it.scan()));
    }

    /** This scan shows no logged frame. */
    public ScansState unlogged() {
        return onScan(it -> it.with(it.proposal.placed(it.scan(), -1), "nobody logged this one; a keeps it")
                .onto(it.scan()));
    }

    private ScansState onto(int scan) {
        List<ScanRow> rows = rows();
        int at = cursor;
        for (int i = 0; i < rows.size(); i++) {
            at = rows.get(i).scan() == scan ? i : at;
        }
        return new ScansState(roll, folder, proposal, review, at, markedScan, isSheet, message, toSave, isConfirming);
    }

    /** A verdict on the frame under the cursor; the cursor goes to the next row. */
    public ScansState judged(Optional<Density> verdict) {
        List<ScanRow> rows = rows();
        List<ReviewEvent> events = new ArrayList<>();
        List<Integer> frames = frames(rows);
        for (int index : frames) {
            events.add(new ReviewEvent.Judged(FrameKey.of(roll.frames().get(index)), verdict));
        }
        if (events.isEmpty()) {
            return withMessage("no frame stands here: nothing to judge");
        }
        String what =
                rows.get(cursor).frame() + (verdict.isPresent() ? " is " + verdict.get() : " is not judged any more");
        return new ScansState(
                roll,
                folder,
                proposal,
                review,
                Math.min(rows.size() - 1, cursor + 1),
                markedScan,
                isSheet,
                "frame " + what,
                events,
                false);
    }

    /** The places of the frames in the row under the cursor. */
    private List<Integer> frames(List<ScanRow> rows) {
        List<Integer> places = new ArrayList<>();
        if (!rows.isEmpty()) {
            for (String number :
                    rows.get(Math.min(cursor, rows.size() - 1)).frame().split("\\+")) {
                for (int i = 0; i < roll.frames().size(); i++) {
                    Frame frame = roll.frames().get(i);
                    if (Integer.toString(frame.number()).equals(number) && !places.contains(i)) {
                        places.add(i);
                    }
                }
            }
        }
        return places;
    }

    /** Keeps which scan shows which frame. Where it is not sure it asks, and the same key again keeps it. */
    public ScansState accepted() {
        if (proposal.scans().isEmpty()) {
            return withMessage("there are no scans to keep");
        }
        if (!proposal.isSure() && !isConfirming) {
            return new ScansState(
                    roll,
                    folder,
                    proposal,
                    review,
                    cursor,
                    markedScan,
                    isSheet,
                    "not sure (" + (int) (100 * proposal.confidence())
                            + " %): look first; a again keeps it all the same",
                    toSave,
                    true);
        }
        return new ScansState(
                roll,
                folder,
                proposal,
                review,
                cursor,
                -1,
                isSheet,
                "accepted",
                List.of(ReviewEvent.Accepted.of(roll, proposal, folder)),
                false);
    }

    /** What was wanted is on the disk. */
    public ScansState saved(Review now) {
        return new ScansState(
                roll, folder, proposal, now, cursor, markedScan, isSheet, message + ": on disk", List.of(), false);
    }

    /** What was wanted could not be written. */
    public ScansState saveFailed(String why) {
        return new ScansState(
                roll, folder, proposal, review, cursor, markedScan, isSheet, "NOT SAVED: " + why, List.of(), false);
    }
}
