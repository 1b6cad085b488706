package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.report.StatusText;
import takeup.session.Guide;
import takeup.session.PickList;
import takeup.session.Session;
import takeup.text.Width;

/** The choices that stand where there is nothing to suggest yet, and the guide to the first frame beside them. */
final class GuidePanel {
    private static final String FOOT = "Esc ends the guide; ? shows all keys and words.";

    private GuidePanel() {}

    static boolean isShown(Session shoot) {
        return Guide.of(shoot).isPresent();
    }

    /** What is asked, and the rows to pick from, in so many rows of the screen. */
    static void offer(Grid grid, Session shoot, int row, int count) {
        List<PickList.Row> offered = PickList.of(shoot).rows();
        Optional<Guide> guide = Guide.of(shoot);
        int margin = PromptBar.margin(grid);
        String title = guide.map(GuidePanel::title).orElseGet(() -> asked(shoot));
        int room = grid.columns() - 1 - margin;
        grid.put(
                margin,
                row,
                Width.cut(
                        Width.of(title) <= room
                                ? title
                                : guide.map(GuidePanel::shortTitle).orElseGet(() -> shortly(shoot)),
                        room),
                TextRole.STRONG);
        int first = row + 1;
        if (count > 5) {
            String hint = guide.map(Guide::hint).orElse("Down and Enter take one; typing the line does the same");
            grid.put(margin, first, Width.of(hint) <= room ? hint : "Down chooses, Enter takes it", TextRole.QUIET);
            first++;
        }
        boolean foot = guide.isPresent() && count > 6;
        int most = Math.max(1, row + count - first - (foot ? 1 : 0));
        rows(grid, shoot.view().chosen(), offered, first, most);
        if (foot) {
            grid.put(
                    margin,
                    first + Math.min(most, offered.size() + 1),
                    Width.of(FOOT) <= room ? FOOT : "Esc ends the guide; ? shows all",
                    TextRole.QUIET);
        }
    }

    private static String asked(Session shoot) {
        return shoot.shown()
                .placeInHand()
                .map(it -> "No film in " + it + ". Which one goes in?")
                .orElse("Which camera?");
    }

    private static String shortly(Session shoot) {
        return shoot.shown()
                .placeInHand()
                .map(it -> "Which film goes into " + it + "?")
                .orElse("Which camera?");
    }

    /**
     * The rows side by side in as many columns as they need, up to two; where they are more, the part around the chosen
     * one.
     */
    private static void rows(Grid grid, int chosen, List<PickList.Row> offered, int row, int most) {
        int margin = PromptBar.margin(grid);
        int room = grid.columns() - 2 * margin;
        boolean two = offered.size() > most && room >= 60;
        // What finds no room is told on the last row, which is not one to pick from then.
        boolean isCut = offered.size() > (two ? 2 * most : most) && most > 1;
        int rows = isCut ? most - 1 : most;
        int shown = two ? 2 * rows : rows;
        int from = chosen < shown ? 0 : chosen / shown * shown;
        List<PickList.Row> left = offered.subList(from, Math.min(offered.size(), from + rows));
        List<PickList.Row> right = offered.subList(from + left.size(), Math.min(offered.size(), from + shown));
        int keys = two ? room / 4 : room / 2;
        int wide = two && !right.isEmpty() ? parted(left, right, keys, room) : room + 1;
        for (int i = from; i < Math.min(offered.size(), from + shown); i++) {
            boolean isLeft = i - from < rows;
            int column = margin + (isLeft ? 0 : wide);
            int own = isLeft ? wide - 1 : room - wide;
            int y = row + (i - from) % rows;
            int line = widest(isLeft ? left : right, keys);
            boolean isChosen = i == chosen;
            if (isChosen) {
                grid.fill(column, y, own, TextRole.CHOSEN);
            }
            grid.put(column, y, isChosen ? "►" : " ", isChosen ? TextRole.CHOSEN : TextRole.NORMAL);
            grid.put(column + 2, y, offered.get(i).line(), isChosen ? TextRole.CHOSEN : TextRole.READOUT);
            int words = Math.max(line, Width.of(offered.get(i).line())) + 4;
            grid.put(
                    column + words,
                    y,
                    shortened(offered.get(i), own - words),
                    isChosen ? TextRole.CHOSEN : TextRole.NORMAL);
        }
        if (isCut) {
            int after = offered.size() - Math.min(offered.size(), from + shown);
            grid.put(
                    margin + 2,
                    row + most - 1,
                    after > 0 ? after + " more below: Down goes on" : from + " more above: Up goes back",
                    TextRole.QUIET);
        }
    }

    /**
     * The widest line up to so many columns: one key that is longer pushes its own words to the right, and not those of
     * all.
     */
    private static int widest(List<PickList.Row> rows, int most) {
        int widest = 0;
        for (PickList.Row row : rows) {
            int width = Width.of(row.line());
            widest = width <= most ? Math.max(widest, width) : widest;
        }
        return widest;
    }

    /**
     * Where the right column begins: so that neither has a word cut, if there is room for that at all; in the middle,
     * if there is not.
     */
    private static int parted(List<PickList.Row> left, List<PickList.Row> right, int most, int room) {
        for (boolean isRightShort : new boolean[] {false, true}) {
            for (boolean isLeftShort : new boolean[] {false, true}) {
                int first = need(left, most, isLeftShort) + 1;
                int second = need(right, most, isRightShort);
                if (first + second <= room) {
                    return Math.max(first, Math.min(room / 2, room - second));
                }
            }
        }
        return room / 2;
    }

    private static int need(List<PickList.Row> rows, int most, boolean isShort) {
        int line = widest(rows, most);
        return rows.stream()
                .mapToInt(it -> Math.max(line, Width.of(it.line())) + 4 + Width.of(isShort ? it.name() : it.text()))
                .max()
                .orElse(0);
    }

    /** The name alone, where room is short. */
    private static String shortened(PickList.Row row, int room) {
        return Width.cut(Width.of(row.text()) <= room ? row.text() : row.name(), room);
    }

    private static String title(Guide guide) {
        return "First roll, " + shortTitle(guide);
    }

    private static String shortTitle(Guide guide) {
        return guide.step() + " of " + Guide.STEPS + ": " + guide.title();
    }

    /** The last step, beside the suggestions. */
    static void frame(Grid grid, Session shoot, int column, int row) {
        Guide guide = Guide.of(shoot).orElseThrow();
        int room = grid.columns() - PromptBar.margin(grid) - column;
        grid.put(column, row, Width.cut("First roll, " + guide.step() + " of " + Guide.STEPS, room), TextRole.LABEL);
        grid.put(column, row + 1, Width.cut(guide.title(), room), TextRole.STRONG);
        grid.put(column, row + 2, Width.cut("Or type what differs and a note:", room), TextRole.QUIET);
        grid.put(column + 2, row + 3, StatusText.example(shoot.shown()) + " ; bow seat", TextRole.READOUT);
        grid.put(column, row + 4, Width.cut("Esc ends the guide, ? shows all.", room), TextRole.QUIET);
    }

    /** The guide on one line, for a small screen; answers how many rows it took. */
    static int line(Grid grid, Session shoot, int row) {
        Optional<Guide> guide = Guide.of(shoot);
        guide.ifPresent(it -> grid.put(
                0,
                row,
                Width.cut(
                        it.step() + " of " + Guide.STEPS + ": "
                                + (it.step() < Guide.STEPS ? "m 5.6 125, or Down and Enter" : "Space logs a frame"),
                        grid.columns()),
                TextRole.STRONG));
        return guide.isPresent() ? 1 : 0;
    }
}
