package takeup.scanview;

import java.util.List;
import java.util.Map;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.scans.Picture;
import takeup.text.Width;

/** Scans beside what was set and read: a list with the scan under the cursor large, or a contact sheet of them all. */
public final class ScansView {
    private ScansView() {}

    /** The picture of the scans in so many columns and rows. */
    public static Grid render(ScansState scans, Map<String, Picture> pictures, int columns, int rows) {
        Grid grid = Grid.of(columns, rows);
        title(grid, scans);
        int top = rows > 8 ? reasons(grid, scans) : 1;
        boolean isTwoRows = rows > 16 || rows >= 12 && columns < 60 && !scans.isSheet();
        ScansFooter footer = new ScansFooter(scans, columns, isTwoRows ? 2 : 1);
        int foot = rows - footer.rows();
        ScanRows shown = new ScanRows(grid, scans, pictures, top, Math.max(1, foot - top - 2));
        if (scans.isSheet()) {
            ContactSheet.draw(shown);
        } else {
            ScansList.draw(shown);
        }
        if (rows > 4) {
            message(grid, scans, foot - 2);
            String thin = "thin: no texture in the shadows";
            String hint = TextFit.first(columns, thin + " of negative or scan; brightness may be the lab's", thin);
            grid.put(0, foot - 1, hint, TextRole.QUIET);
            footer.draw(grid, foot);
        }
        return grid;
    }

    /** Roll, film and folder, and on the right whether the proposal is sure. */
    private static void title(Grid grid, ScansState scans) {
        String right = certainty(scans) + " " + (int) (100 * scans.proposal().confidence()) + " %";
        String left = "Scans of " + scans.roll().id() + " · "
                + scans.roll().film().stock().name() + " · " + lastPart(scans.folder());
        grid.fill(0, TextRole.BAR);
        grid.put(0, 0, Width.cut(left, grid.columns() - Width.of(right) - 2), TextRole.BAR);
        grid.put(grid.columns() - Width.of(right), 0, right, TextRole.BAR);
    }

    private static String certainty(ScansState scans) {
        if (scans.review().accepted().isPresent()) {
            return "accepted";
        }
        return scans.proposal().isSure() ? "sure" : "NOT SURE";
    }

    /** The last part of a folder's name: that is what the lab called it. */
    private static String lastPart(String folder) {
        String path = folder.replaceAll("/+$", "");
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** Why the proposal is sure or not, from row 1 on; answers the row after it. */
    private static int reasons(Grid grid, ScansState scans) {
        int columns = grid.columns();
        List<String> reasons = scans.proposal().reasons().stream()
                .flatMap(it -> TextFit.rows(it, columns).stream())
                .toList();
        int shown = Math.min(grid.rows() > 16 ? 4 : 2, reasons.size());
        TextRole role = scans.proposal().isSure() ? TextRole.NORMAL : TextRole.CAUTION;
        for (int i = 0; i < shown; i++) {
            boolean isCut = i == shown - 1 && shown < reasons.size();
            grid.put(0, 1 + i, isCut ? Width.cut(reasons.get(i), columns - 1) + "…" : reasons.get(i), role);
        }
        return 1 + shown;
    }

    private static void message(Grid grid, ScansState scans, int row) {
        if (!scans.message().isEmpty()) {
            grid.fill(row, TextRole.NORMAL);
            TextRole role = scans.isSaveFailed() ? TextRole.ALARM : TextRole.STRONG;
            grid.put(0, row, Width.cut(scans.message(), grid.columns()), role);
        }
    }
}
