package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.PixelPair;
import takeup.grid.TextRole;
import takeup.review.ScanRow;
import takeup.scans.Picture;
import takeup.session.ScanKeys;
import takeup.session.ScansState;
import takeup.text.Width;

/** Scans beside what was set and read: a list with the scan under the cursor large, or a contact sheet of them all. */
public final class ScansView {
    private static final int TILE = 20;
    private static final int TILE_ROWS = 9;

    private ScansView() {}

    /** The picture of a desk in so many columns and rows. */
    public static Grid render(ScansState desk, Map<String, Picture> pictures, int columns, int rows) {
        Grid grid = Grid.of(columns, rows);
        List<ScanRow> all = desk.rows();
        int cursor = Math.max(0, Math.min(all.size() - 1, desk.cursor()));
        grid.fill(0, TextRole.BAR);
        String state = desk.review().accepted().isPresent()
                ? "accepted"
                : desk.proposal().isSure() ? "sure" : "NOT SURE";
        String right = state + " " + (int) (100 * desk.proposal().confidence()) + " %";
        grid.put(
                0,
                0,
                Width.cut(
                        "Scans of " + desk.roll().id() + " · "
                                + desk.roll().film().stock().name() + " · " + name(desk.folder()),
                        columns - Width.of(right) - 2),
                TextRole.BAR);
        grid.put(columns - Width.of(right), 0, right, TextRole.BAR);
        int top = 1;
        if (rows > 8) {
            List<String> reasons = desk.proposal().reasons().stream()
                    .flatMap(it -> TextFit.rows(it, columns).stream())
                    .toList();
            int shown = Math.min(rows > 16 ? 4 : 2, reasons.size());
            for (int i = 0; i < shown; i++) {
                boolean isCut = i == shown - 1 && shown < reasons.size();
                grid.put(
                        0,
                        top++,
                        isCut ? Width.cut(reasons.get(i), columns - 1) + "…" : reasons.get(i),
                        desk.proposal().isSure() ? TextRole.NORMAL : TextRole.CAUTION);
            }
        }
        List<List<Item>> keys =
                footer(desk, columns, rows > 16 || rows >= 12 && columns < 60 && !desk.isSheet() ? 2 : 1);
        int foot = rows - keys.size();
        int room = Math.max(1, foot - top - 2);
        if (desk.isSheet()) {
            sheet(grid, desk, all, pictures, cursor, top, room);
        } else {
            list(grid, desk, all, pictures, cursor, top, room);
        }
        if (rows > 4) {
            if (!desk.message().isEmpty()) {
                grid.fill(foot - 2, TextRole.NORMAL);
            }
            grid.put(
                    0,
                    foot - 2,
                    Width.cut(desk.message(), columns),
                    desk.isSaveFailed() ? TextRole.ALARM : TextRole.STRONG);
            String hint = "thin: no texture in the shadows of negative or scan; brightness may be the lab's";
            grid.put(
                    0,
                    foot - 1,
                    Width.of(hint) <= columns ? hint : Width.cut("thin: no texture in the shadows", columns),
                    TextRole.QUIET);
            for (int i = 0; i < keys.size(); i++) {
                footer(grid, foot + i, keys.get(i));
            }
        }
        return grid;
    }

    private static void list(
            Grid grid,
            ScansState desk,
            List<ScanRow> all,
            Map<String, Picture> pictures,
            int cursor,
            int top,
            int room) {
        int picture = grid.columns() >= 90 ? grid.columns() * 2 / 5 : 0;
        int width = grid.columns() - picture - (picture > 0 ? 1 : 0);
        int from = Math.max(0, Math.min(all.size() - room, cursor - room / 2));
        count(grid, top + room, from, Math.min(all.size(), from + room), all.size());
        int name = 6;
        int set = 9;
        int frame = 2;
        int read = 0;
        for (ScanRow row : all) {
            frame = Math.max(frame, Width.of(row.frame()));
            read = Math.max(read, Width.of(row.reading()));
            name = Math.max(name, Math.min(18, Width.of(row.file())));
            set = Math.max(set, Math.min(16, Width.of(row.settings())));
        }
        for (int i = 0; i < Math.min(room, all.size() - from); i++) {
            ScanRow row = all.get(from + i);
            TextRole role = from + i == cursor
                    ? TextRole.CHOSEN
                    : row.scan() < 0 || row.frame().equals("–")
                            ? TextRole.CAUTION
                            : row.scan() == desk.markedScan() ? TextRole.STRONG : TextRole.NORMAL;
            grid.fill(0, top + i, width, role);
            String what = mark(desk, row, "  ") + Width.pad(row.file(), name) + "  " + Width.padLeft(row.frame(), frame)
                    + "  " + Width.pad(row.verdict(), 5) + "  " + Width.pad(row.settings(), set);
            // A reading without its end, as in 4.0 of 4.0 under, is no reading.
            boolean fits = Width.of(what) + 2 + read <= width;
            grid.put(
                    0,
                    top + i,
                    Width.cut(fits ? what + "  " + Width.pad(row.reading(), read) + "  " + row.note() : what, width),
                    role);
        }
        if (picture > 0 && !all.isEmpty()) {
            Optional.ofNullable(pictures.get(all.get(cursor).file()))
                    .ifPresent(it -> paint(grid, it, width + 1, top, picture, room));
        }
    }

    /** What stands before the scan that is to be swapped, and before another. */
    private static String mark(ScansState desk, ScanRow row, String none) {
        return row.scan() == desk.markedScan() && row.scan() >= 0 ? "s " : none;
    }

    /** Which of them are seen, where that is not all; what was said last is put over it. */
    private static void count(Grid grid, int row, int from, int to, int all) {
        if (to - from < all && grid.rows() > 4) {
            grid.put(0, row, (from + 1) + " to " + to + " of " + all, TextRole.QUIET, grid.columns());
        }
    }

    private static void sheet(
            Grid grid,
            ScansState desk,
            List<ScanRow> all,
            Map<String, Picture> pictures,
            int cursor,
            int top,
            int room) {
        int across = Math.max(1, grid.columns() / TILE);
        // Two rows of somewhat lower pictures rather than one and a gap.
        int down = Math.max(1, (room + TILE_ROWS / 3) / TILE_ROWS);
        int tall = Math.min(TILE_ROWS, Math.max(3, room / down));
        int first = Math.max(0, cursor / across - down / 2);
        first = Math.max(0, Math.min(first, (all.size() + across - 1) / across - down));
        count(grid, top + room, first * across, Math.min(all.size(), (first + down) * across), all.size());
        for (int i = first * across; i < Math.min(all.size(), (first + down) * across); i++) {
            ScanRow row = all.get(i);
            int column = i % across * TILE;
            int line = top + (i / across - first) * tall;
            Optional<Picture> picture = Optional.ofNullable(pictures.get(row.file()));
            if (picture.isPresent()) {
                paint(grid, picture.get(), column, line, TILE - 1, tall - 2);
            } else {
                grid.put(column, line, "no scan", TextRole.QUIET, TILE - 1);
            }
            TextRole role = i == cursor
                    ? TextRole.CHOSEN
                    : row.scan() == desk.markedScan() && row.scan() >= 0 ? TextRole.STRONG : TextRole.NORMAL;
            grid.fill(column, line + tall - 2, TILE - 1, role);
            grid.put(
                    column,
                    line + tall - 2,
                    Width.cut(
                            mark(desk, row, "") + row.frame() + " "
                                    + (row.verdict().isEmpty() ? "" : row.verdict() + " ") + row.settings(),
                            TILE - 1),
                    role);
            grid.put(column, line + tall - 1, Width.cut(row.reading(), TILE - 1), TextRole.QUIET);
        }
    }

    /** A picture as large as fits, two dots to a cell, its sides as they are. */
    private static void paint(Grid grid, Picture picture, int left, int top, int columns, int rows) {
        double scale = Math.min((double) columns / picture.columns(), 2.0 * rows / picture.rows());
        int width = Math.max(1, (int) Math.round(picture.columns() * scale));
        int height = Math.max(2, (int) Math.round(picture.rows() * scale) / 2 * 2);
        Picture fitted = picture.fitted(Math.min(columns, width), Math.min(2 * rows, height));
        for (int row = 0; row < fitted.rows() / 2; row++) {
            for (int column = 0; column < fitted.columns(); column++) {
                grid.putPixels(
                        left + column,
                        top + row,
                        new PixelPair(fitted.at(column, 2 * row), fitted.at(column, 2 * row + 1)));
            }
        }
    }

    /** A key of the footer and what it does here. */
    private record Item(String key, String does) {
        int width() {
            return Width.of(key) + 1 + Width.of(does);
        }
    }

    /** The keys in so many rows; where they find no room, the way out still does. Arrows are not told. */
    private static List<List<Item>> footer(ScansState desk, int columns, int most) {
        List<List<Item>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        List<Item> all = new ArrayList<>();
        for (ScanKeys key : ScanKeys.all()) {
            String name = key.key().toString();
            if (name.length() == 1) {
                all.add(new Item(name, name.equals("v") && desk.isSheet() ? "list" : key.does()));
            }
        }
        int at = 0;
        for (Item item : all) {
            if (at + item.width() > columns && rows.size() < most) {
                rows.add(new ArrayList<>());
                at = 0;
            }
            int kept = most == 1
                            && !item.key().equals("q")
                            && rows.get(0).stream().noneMatch(it -> it.key().equals("q"))
                    ? 9
                    : 0;
            if (at + item.width() + kept <= columns) {
                rows.get(rows.size() - 1).add(item);
                at += item.width() + 2;
            }
        }
        return rows;
    }

    private static void footer(Grid grid, int row, List<Item> items) {
        grid.fill(row, TextRole.BAR);
        int at = 0;
        for (Item item : items) {
            at = grid.put(at, row, item.key(), TextRole.KEY);
            at = grid.put(at, row, " " + item.does() + "  ", TextRole.BAR);
        }
    }

    /** The last part of a folder's name: that is what the lab called it. */
    private static String name(String folder) {
        String path = folder.replaceAll("/+$", "");
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
