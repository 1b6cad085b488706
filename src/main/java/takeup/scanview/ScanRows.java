package takeup.scanview;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.grid.Bitmap;
import takeup.grid.Grid;
import takeup.grid.PixelPair;
import takeup.grid.Placement;
import takeup.grid.TextRole;
import takeup.review.ScanRow;
import takeup.scans.Picture;

/**
 * The scans and the place that they are drawn in: what the list and the contact sheet share.
 *
 * @param grid where they are drawn
 * @param scans the scans, and the one under the cursor
 * @param pictures the scans that could be read, by the names of their files
 * @param top the first row for them
 * @param height how many rows they have; the one below counts them
 */
record ScanRows(Grid grid, ScansState scans, Map<String, Picture> pictures, int top, int height) {
    List<ScanRow> all() {
        return scans.rows();
    }

    int cursor() {
        return Math.max(0, Math.min(all().size() - 1, scans.cursor()));
    }

    /** Whether this is the scan that is to be swapped. */
    boolean isMarked(ScanRow row) {
        return row.scan() >= 0 && row.scan() == scans.markedScan();
    }

    /** Says which of them are seen, where that is not all; a message is put over it. */
    void count(int from, int to) {
        if (to - from < all().size() && grid.rows() > 4) {
            grid.put(0, top + height, (from + 1) + " to " + to + " of " + all().size(), TextRole.QUIET);
        }
    }

    /** The scan of a row as large as fits, two pixels to a cell, its sides as they are; false where there is none. */
    boolean paint(ScanRow row, int left, int first, int columns, int rows) {
        Optional<Picture> picture = Optional.ofNullable(pictures.get(row.file()));
        picture.ifPresent(it -> paint(it, left, first, columns, rows));
        return picture.isPresent();
    }

    private void paint(Picture picture, int left, int first, int columns, int rows) {
        double scale = Math.min((double) columns / picture.columns(), 2.0 * rows / picture.rows());
        int width = Math.max(1, (int) Math.round(picture.columns() * scale));
        int height = Math.max(2, (int) Math.round(picture.rows() * scale) / 2 * 2);
        grid.put(new Placement(
                left, first, width, height / 2, new Bitmap(picture.columns(), picture.rows(), picture.rgb())));
        Picture fitted = picture.fitted(Math.min(columns, width), Math.min(2 * rows, height));
        for (int row = 0; row < fitted.rows() / 2; row++) {
            for (int column = 0; column < fitted.columns(); column++) {
                PixelPair pixels = new PixelPair(fitted.at(column, 2 * row), fitted.at(column, 2 * row + 1));
                grid.putPixels(left + column, first + row, pixels);
            }
        }
    }
}
