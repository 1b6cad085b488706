package takeup.scanview;

import java.util.List;
import takeup.grid.TextRole;
import takeup.review.ScanRow;
import takeup.text.Width;

/** A row a scan, and where there is room the scan under the cursor beside them. */
final class ScansList {
    private final ScanRows rows;
    private final int width;
    private final int fileWidth;
    private final int frameWidth;
    private final int settingsWidth;
    private final int readingWidth;

    private ScansList(ScanRows rows, int width) {
        this.rows = rows;
        this.width = width;
        int file = 6;
        int frame = 2;
        int settings = 9;
        int reading = 0;
        for (ScanRow row : rows.all()) {
            file = Math.max(file, Math.min(18, Width.of(row.file())));
            frame = Math.max(frame, Width.of(row.frame()));
            settings = Math.max(settings, Math.min(16, Width.of(row.settings())));
            reading = Math.max(reading, Width.of(row.reading()));
        }
        this.fileWidth = file;
        this.frameWidth = frame;
        this.settingsWidth = settings;
        this.readingWidth = reading;
    }

    static void draw(ScanRows rows) {
        int columns = rows.grid().columns();
        int picture = columns >= 90 ? columns * 2 / 5 : 0;
        int width = picture > 0 ? columns - picture - 1 : columns;
        new ScansList(rows, width).draw();
        if (picture > 0 && !rows.all().isEmpty()) {
            rows.paint(rows.all().get(rows.cursor()), width + 1, rows.top(), picture, rows.height());
        }
    }

    private void draw() {
        List<ScanRow> all = rows.all();
        int from = Math.max(0, Math.min(all.size() - rows.height(), rows.cursor() - rows.height() / 2));
        int to = Math.min(all.size(), from + rows.height());
        rows.count(from, to);
        for (int i = from; i < to; i++) {
            int line = rows.top() + i - from;
            TextRole role = i == rows.cursor() ? TextRole.CHOSEN : role(all.get(i));
            rows.grid().fill(0, line, width, role);
            rows.grid().put(0, line, Width.cut(text(all.get(i)), width), role);
        }
    }

    private TextRole role(ScanRow row) {
        if (row.scan() < 0 || row.places().isEmpty()) {
            return TextRole.CAUTION;
        }
        return rows.isMarked(row) ? TextRole.STRONG : TextRole.NORMAL;
    }

    private String text(ScanRow row) {
        String text = (rows.isMarked(row) ? "s " : "  ") + Width.pad(row.file(), fileWidth) + "  "
                + Width.padLeft(row.frame(), frameWidth) + "  " + Width.pad(row.verdict(), 5) + "  "
                + Width.pad(row.settings(), settingsWidth);
        // A reading without its end, as in 4.0 of 4.0 under, is no reading.
        boolean fits = Width.of(text) + 2 + readingWidth <= width;
        return fits ? text + "  " + Width.pad(row.reading(), readingWidth) + "  " + row.note() : text;
    }
}
