package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.scans.Proposal;
import takeup.scans.Slot;
import takeup.text.Plain;

/**
 * A scan beside what was set and read for its frame, in words; or a frame without a scan, or a scan without a frame.
 *
 * @param scan the place of the scan in its proposal, -1 for a frame without one
 * @param places the places of the frames in their roll, from 0; none for a scan that nobody logged
 * @param file the scan's name, or a dash
 * @param frame the number of the frame, or of both; a dash for a scan that nobody logged
 * @param settings what was set: {@code f/2.8 1/250}
 * @param reading what was read, and how far off the exposure was: {@code EV 10.1, 0.9 under}
 * @param verdict thin, good, dense, or nothing
 * @param note the photographer's words
 */
public record ScanRow(
        int scan,
        List<Integer> places,
        String file,
        String frame,
        String settings,
        String reading,
        String verdict,
        String note) {
    private static final String NONE = "–";

    public ScanRow {
        places = List.copyOf(places);
    }

    /** The rows of a proposal in the order of the film, as far as it is known. */
    public static List<ScanRow> of(Proposal proposal, Roll roll, Review review) {
        List<Optional<Density>> verdicts = review.verdicts(roll);
        List<ScanRow> rows = new ArrayList<>();
        int scans = proposal.scans().size();
        int next = 0;
        for (int i = 0; i < scans; i++) {
            int at = proposal.isReversed() ? scans - 1 - i : i;
            int slot = proposal.slotOf().get(at);
            for (; slot >= 0 && next < slot; next++) {
                missing(proposal, next, roll, verdicts, rows);
            }
            String file = proposal.scans().get(at).name();
            if (slot < 0) {
                rows.add(new ScanRow(at, List.of(), file, NONE, "", "", "", "not in the log"));
            } else {
                rows.add(row(at, file, proposal.slots().get(slot), roll, verdicts));
                next = Math.max(next, slot + 1);
            }
        }
        for (; next < proposal.slots().size(); next++) {
            missing(proposal, next, roll, verdicts, rows);
        }
        return rows;
    }

    private static void missing(
            Proposal proposal, int slot, Roll roll, List<Optional<Density>> verdicts, List<ScanRow> into) {
        if (!proposal.slotOf().contains(slot)) {
            into.add(row(-1, NONE, proposal.slots().get(slot), roll, verdicts));
        }
    }

    private static ScanRow row(int scan, String file, Slot slot, Roll roll, List<Optional<Density>> verdicts) {
        List<Frame> frames = slot.frames().stream().map(roll.frames()::get).toList();
        return new ScanRow(
                scan,
                slot.frames(),
                file,
                joined("+", frames, it -> Integer.toString(it.number())),
                joined(" + ", frames, ScanRow::settings),
                joined(" + ", frames, it -> reading(roll, it)),
                String.join(
                        "+",
                        slot.frames().stream()
                                .flatMap(it -> verdicts.get(it).stream())
                                .map(Density::toString)
                                .toList()),
                String.join(
                        "; ", frames.stream().flatMap(it -> it.note().stream()).toList()));
    }

    private static String joined(String between, List<Frame> frames, Function<Frame, String> words) {
        return String.join(between, frames.stream().map(words).toList());
    }

    /** What was set; for a frame that was not exposed what became of it. */
    static String settings(Frame frame) {
        Setting setting = frame.exposure().setting();
        String pair = setting.aperture().map(Object::toString).orElse("")
                + setting.time().map(it -> " " + it).orElse("");
        if (frame.kind() != Frame.Kind.EXPOSED) {
            return (frame.kind() + " " + pair).strip();
        }
        return pair.isEmpty() ? "not known" : pair.strip();
    }

    private static String reading(Roll roll, Frame frame) {
        List<String> words = new ArrayList<>();
        if (frame.kind() != Frame.Kind.BLANK) {
            frame.exposure()
                    .light()
                    .ifPresent(it -> words.add("EV " + Plain.decimals(it.ev100().stops(), 1)));
        }
        String light = ExposureResult.of(roll, frame).light().words();
        if (!light.isEmpty()) {
            words.add(light);
        }
        return String.join(", ", words);
    }
}
