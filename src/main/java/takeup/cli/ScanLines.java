package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.review.Density;
import takeup.review.Review;
import takeup.review.ScanRow;
import takeup.roll.Roll;
import takeup.text.Width;

/** Scans beside frames, as lines in columns. */
final class ScanLines {
    private ScanLines() {}

    /** A line for each row of a proposal. */
    static List<String> of(List<ScanRow> rows) {
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

    /** A line for each frame with its accepted scan and its verdict. */
    static List<String> accepted(Roll roll, Review review) {
        List<Optional<String>> scans = review.scans(roll);
        List<Optional<Density>> verdicts = review.verdicts(roll);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < roll.frames().size(); i++) {
            lines.add((Width.padLeft(Integer.toString(roll.frames().get(i).number()), 4) + "  "
                            + Width.pad(scans.get(i).orElse("–"), 28) + "  "
                            + Width.pad(verdicts.get(i).map(Object::toString).orElse(""), 5) + "  "
                            + roll.frames().get(i).note().orElse(""))
                    .stripTrailing());
        }
        return lines;
    }
}
