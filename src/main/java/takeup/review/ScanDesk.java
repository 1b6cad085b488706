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
 * @param marked the scan that waits for another to be swapped with; -1 if none does
 * @param isSheet whether the contact sheet is shown, not the list
 * @param said what was said last
 * @param wanted what is to be written down before anything else is said
 * @param isAsked whether accepting was asked about, so that the same key again does it
 */
public record ScanDesk(
        Roll roll,
        String folder,
        Proposal proposal,
        Review review,
        int cursor,
        int marked,
        boolean isSheet,
        String said,
        List<ReviewEvent> wanted,
        boolean isAsked) {
    public ScanDesk {
        wanted = List.copyOf(wanted);
    }

    /** The desk at the start. */
    public static ScanDesk of(Roll roll, String folder, Proposal proposal, Review review) {
        return new ScanDesk(roll, folder, proposal, review, 0, -1, false, "", List.of(), false);
    }

    /** The rows, frames without a scan and scans without a frame included. */
    public List<ScanRow> rows() {
        return ScanRow.of(proposal, roll, review);
    }

    private ScanDesk with(Proposal other, String words) {
        return new ScanDesk(roll, folder, other, review, cursor, -1, isSheet, words, wanted, false);
    }

    /** The same with something said. */
    public ScanDesk saying(String words) {
        return new ScanDesk(roll, folder, proposal, review, cursor, marked, isSheet, words, wanted, false);
    }

    /** The cursor so many rows further. */
    public ScanDesk moved(int by) {
        int last = Math.max(0, rows().size() - 1);
        return new ScanDesk(
                roll,
                folder,
                proposal,
                review,
                Math.max(0, Math.min(last, cursor + by)),
                marked,
                isSheet,
                "",
                wanted,
                false);
    }

    /** The contact sheet instead of the list, or back. */
    public ScanDesk otherView() {
        return new ScanDesk(roll, folder, proposal, review, cursor, marked, !isSheet, "", wanted, false);
    }

    private ScanDesk onScan(UnaryOperator<ScanDesk> change) {
        return scan() < 0 ? saying("this frame has no scan: go to a scan first") : change.apply(this);
    }

    /** The scan under the cursor, -1 for a frame without one. */
    public int scan() {
        List<ScanRow> rows = rows();
        return rows.isEmpty() ? -1 : rows.get(Math.min(cursor, rows.size() - 1)).scan();
    }

    /** This scan and all behind it show frames so many further on. */
    public ScanDesk shifted(int by) {
        return onScan(it -> it.with(
                        it.proposal.shifted(it.scan(), by),
                        "from here on " + (by > 0 ? "a frame later" : "a frame earlier") + "; a keeps it")
                .onto(it.scan()));
    }

    /** The film the other way round. */
    public ScanDesk turned() {
        return with(proposal.turned(), "the film is the other way round now; a keeps it");
    }

    /** Marks a scan; the same key on another one exchanges their frames. */
    public ScanDesk swapped() {
        return onScan(it -> it.marked < 0 || it.marked == it.scan()
                ? new ScanDesk(
                        roll,
                        folder,
                        proposal,
                        review,
                        cursor,
                        it.marked < 0 ? it.scan() : -1,
                        isSheet,
                        it.marked < 0 ? "go to the other scan, then s again" : "given up",
                        wanted,
                        false)
                : it.with(it.proposal.swapped(it.marked, it.scan()), "swapped; a keeps it")
                        .onto(it.scan()));
    }

    /** This scan shows no logged frame. */
    public ScanDesk unlogged() {
        return onScan(it -> it.with(it.proposal.placed(it.scan(), -1), "nobody logged this one; a keeps it")
                .onto(it.scan()));
    }

    private ScanDesk onto(int scan) {
        List<ScanRow> rows = rows();
        int at = cursor;
        for (int i = 0; i < rows.size(); i++) {
            at = rows.get(i).scan() == scan ? i : at;
        }
        return new ScanDesk(roll, folder, proposal, review, at, marked, isSheet, said, wanted, isAsked);
    }

    /** A verdict on the frame under the cursor; the cursor goes to the next row. */
    public ScanDesk judged(Optional<Density> verdict) {
        List<ScanRow> rows = rows();
        List<ReviewEvent> events = new ArrayList<>();
        List<Integer> frames = frames(rows);
        for (int index : frames) {
            events.add(new ReviewEvent.Judged(FrameKey.of(roll.frames().get(index)), verdict));
        }
        if (events.isEmpty()) {
            return saying("no frame stands here: nothing to judge");
        }
        String what =
                rows.get(cursor).frame() + (verdict.isPresent() ? " is " + verdict.get() : " is not judged any more");
        return new ScanDesk(
                roll,
                folder,
                proposal,
                review,
                Math.min(rows.size() - 1, cursor + 1),
                marked,
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
    public ScanDesk accepted() {
        if (proposal.scans().isEmpty()) {
            return saying("there are no scans to keep");
        }
        if (!proposal.isSure() && !isAsked) {
            return new ScanDesk(
                    roll,
                    folder,
                    proposal,
                    review,
                    cursor,
                    marked,
                    isSheet,
                    "not sure (" + (int) (100 * proposal.confidence())
                            + " %): look first; a again keeps it all the same",
                    wanted,
                    true);
        }
        return new ScanDesk(
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
    public ScanDesk kept(Review now) {
        return new ScanDesk(roll, folder, proposal, now, cursor, marked, isSheet, said + ": on disk", List.of(), false);
    }

    /** What was wanted could not be written. */
    public ScanDesk notKept(String why) {
        return new ScanDesk(
                roll, folder, proposal, review, cursor, marked, isSheet, "NOT SAVED: " + why, List.of(), false);
    }
}
