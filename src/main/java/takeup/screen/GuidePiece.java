package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.shoot.Guide;
import takeup.shoot.Offer;
import takeup.shoot.Shoot;
import takeup.shoot.State;

/** The choices that stand where there is nothing to suggest yet, and the guide to the first frame beside them. */
final class GuidePiece {
    private static final String FOOT = "Esc ends the guide; ? shows all keys and words.";

    private GuidePiece() {}

    static boolean isShown(Shoot shoot) {
        return Guide.of(shoot).isPresent();
    }

    /** What is asked, and the rows to pick from, in so many rows of the screen. */
    static void offer(Grid grid, Shoot shoot, int row, int count) {
        List<Offer.Row> offered = Offer.of(shoot).rows();
        Optional<Guide> guide = Guide.of(shoot);
        int margin = Pieces.margin(grid);
        String title = guide.map(GuidePiece::title).orElseGet(() -> asked(shoot));
        int room = grid.columns() - 1 - margin;
        grid.put(
                margin,
                row,
                Width.cut(
                        Width.of(title) <= room
                                ? title
                                : guide.isPresent() ? title.replace("First roll, ", "") : shortly(shoot),
                        room),
                Look.STRONG);
        int first = row + 1;
        if (count > 5) {
            String hint = guide.map(Guide::hint).orElse("Down and Enter take one; typing the line does the same");
            grid.put(margin, first, Width.of(hint) <= room ? hint : "Down chooses, Enter takes it", Look.QUIET);
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
                    Look.QUIET);
        }
    }

    private static String asked(Shoot shoot) {
        return shoot.shown()
                .place()
                .map(it -> "No film in " + it + ". Which one goes in?")
                .orElse("Which camera?");
    }

    private static String shortly(Shoot shoot) {
        return shoot.shown()
                .place()
                .map(it -> "Which film goes into " + it + "?")
                .orElse("Which camera?");
    }

    /**
     * The rows side by side in as many columns as they need, up to two; where they are more, the part around the chosen
     * one.
     */
    private static void rows(Grid grid, int chosen, List<Offer.Row> offered, int row, int most) {
        int margin = Pieces.margin(grid);
        int room = grid.columns() - 2 * margin;
        boolean two = offered.size() > most && room >= 60;
        // What finds no room is told on the last row, which is not one to pick from then.
        boolean isCut = offered.size() > (two ? 2 * most : most) && most > 1;
        int rows = isCut ? most - 1 : most;
        int shown = two ? 2 * rows : rows;
        int from = chosen < shown ? 0 : chosen / shown * shown;
        List<Offer.Row> left = offered.subList(from, Math.min(offered.size(), from + rows));
        List<Offer.Row> right = offered.subList(from + left.size(), Math.min(offered.size(), from + shown));
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
                grid.fill(column, y, own, Look.CHOSEN);
            }
            grid.put(column, y, isChosen ? "►" : " ", isChosen ? Look.CHOSEN : Look.NORMAL);
            grid.put(column + 2, y, offered.get(i).line(), isChosen ? Look.CHOSEN : Look.READOUT);
            int words = Math.max(line, Width.of(offered.get(i).line())) + 4;
            grid.put(
                    column + words,
                    y,
                    shortened(offered.get(i).words(), own - words),
                    isChosen ? Look.CHOSEN : Look.NORMAL);
        }
        if (isCut) {
            int after = offered.size() - Math.min(offered.size(), from + shown);
            grid.put(
                    margin + 2,
                    row + most - 1,
                    after > 0 ? after + " more below: Down goes on" : from + " more above: Up goes back",
                    Look.QUIET);
        }
    }

    /**
     * The widest line up to so many columns: one key that is longer pushes its own words to the right, and not those of
     * all.
     */
    private static int widest(List<Offer.Row> rows, int most) {
        int widest = 0;
        for (Offer.Row row : rows) {
            int width = Width.of(row.line());
            widest = width <= most ? Math.max(widest, width) : widest;
        }
        return widest;
    }

    /**
     * Where the right column begins: so that neither has a word cut, if there is room for that at all; in the middle,
     * if there is not.
     */
    private static int parted(List<Offer.Row> left, List<Offer.Row> right, int most, int room) {
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

    private static int need(List<Offer.Row> rows, int most, boolean isShort) {
        int line = widest(rows, most);
        return rows.stream()
                .mapToInt(it ->
                        Math.max(line, Width.of(it.line())) + 4 + Width.of(isShort ? shortly(it.words()) : it.words()))
                .max()
                .orElse(0);
    }

    /** Without what stands behind its comma, where room is short. */
    private static String shortened(String words, int room) {
        return Width.cut(Width.of(words) <= room ? words : shortly(words), room);
    }

    private static String shortly(String words) {
        int comma = words.lastIndexOf(',');
        return comma < 0 ? words : words.substring(0, comma);
    }

    private static String title(Guide guide) {
        return "First roll, " + guide.step() + " of " + Guide.STEPS + ": " + guide.title();
    }

    /** The last step, beside the suggestions. */
    static void frame(Grid grid, Shoot shoot, int column, int row) {
        Guide guide = Guide.of(shoot).orElseThrow();
        int room = grid.columns() - Pieces.margin(grid) - column;
        grid.put(column, row, Width.cut("First roll, " + guide.step() + " of " + Guide.STEPS, room), Look.LABEL);
        grid.put(column, row + 1, Width.cut(guide.title(), room), Look.STRONG);
        grid.put(column, row + 2, Width.cut("Or type what differs and a note:", room), Look.QUIET);
        grid.put(column + 2, row + 3, State.example(shoot.shown()) + " ; bow seat", Look.READOUT);
        grid.put(column, row + 4, Width.cut("Esc ends the guide, ? shows all.", room), Look.QUIET);
    }

    /** The guide on one line, for a small screen; answers how many rows it took. */
    static int line(Grid grid, Shoot shoot, int row) {
        Optional<Guide> guide = Guide.of(shoot);
        guide.ifPresent(it -> grid.put(
                0,
                row,
                Width.cut(
                        it.step() + " of " + Guide.STEPS + ": "
                                + (it.step() < Guide.STEPS ? "m 5.6 125, or Down and Enter" : "Space logs a frame"),
                        grid.columns()),
                Look.STRONG));
        return guide.isPresent() ? 1 : 0;
    }
}
