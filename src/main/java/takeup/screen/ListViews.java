package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.kit.Warning;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.shoot.HelpList;
import takeup.shoot.Shoot;
import takeup.shoot.State;

/** The views that are lists: frames of the roll, help; and how a list is drawn. */
final class ListViews {
    private static final List<String> CAUTIONS = List.of(
            "Never look at the sun through a finder or a spot meter.",
            "Old flash units can carry a high trigger voltage, old cells can leak: keep to the makers' "
                    + "instructions and local rules.");

    private ListViews() {}

    /**
     * A line of a list, how it looks, and whether it goes on with the line before: a list is scrolled by whole entries.
     */
    record Line(String text, Look look, boolean isRest) {
        Line(String text, Look look) {
            this(text, look, false);
        }

        /** Words over as many lines as they need, each behind so many blanks. */
        static List<Line> of(String words, int indent, int columns, Look look) {
            List<Line> lines = new ArrayList<>();
            for (String part : Pieces.wrapped(words, columns - indent)) {
                lines.add(new Line(" ".repeat(indent) + part, look, !lines.isEmpty()));
            }
            return lines;
        }

        /** The same line as one that goes on with the line before. */
        Line rest() {
            return new Line(text, look, true);
        }
    }

    static void frames(Shoot shoot, Grid grid) {
        List<Line> lines = new ArrayList<>();
        Optional<Roll> found = shoot.shown().roll();
        String title = found.map(
                        it -> "Frames of " + it.id() + " · " + it.film().stock().name() + " · " + it.place())
                .orElse("Frames: no film");
        found.ifPresent(roll -> {
            String head = roll.film().developmentWords() + " · " + roll.framesUsed() + " of "
                    + roll.film().framesNominal() + " used"
                    + roll.note().map(it -> " · " + it).orElse("")
                    + (roll.conditions().isEmpty()
                            ? ""
                            : " · CONDITION "
                                    + String.join(
                                            ", ",
                                            roll.conditions().stream()
                                                    .map(it -> it.kind()
                                                            + it.words()
                                                                    .map(words -> " " + words)
                                                                    .orElse(""))
                                                    .toList()));
            lines.addAll(Line.of(head, 0, grid.columns() - 2 * Pieces.margin(grid), Look.STRONG));
            roll.counterChecks()
                    .forEach(it -> lines.add(new Line(
                            "counter showed " + it.shown() + " at " + Pieces.clock(it.at()) + ", the log came to "
                                    + it.expected(),
                            Look.CAUTION)));
            List<List<Warning>> warnings = FrameWarnings.of(
                    roll, shoot.shown().kit().fewLeft(roll.film().framesNominal()));
            for (int i = roll.frames().size() - 1; i >= 0; i--) {
                List<Warning> warned = warnings.get(i);
                boolean wide = grid.columns() >= 60;
                lines.add(new Line(
                        Pieces.frame(roll, roll.frames().get(i), wide, Optional.of(warned)),
                        warned.isEmpty() ? Look.NORMAL : Look.CAUTION));
            }
            if (roll.frames().isEmpty()) {
                lines.add(new Line("no frame yet: Space on the shoot screen logs one", Look.QUIET));
            }
        });
        list(shoot, grid, title, lines);
    }

    static void help(Shoot shoot, Grid grid) {
        HelpList help = HelpList.of(shoot);
        Optional<HelpList.Entry> onEnter = HelpList.onEnter(shoot);
        List<Line> lines = new ArrayList<>();
        int marked = -1;
        int at = 0;
        for (HelpList.Section section : help.sections()) {
            lines.add(new Line(section.title(), Look.LABEL));
            int wide = grid.columns() - 2 * Pieces.margin(grid);
            int room = room(section, wide);
            for (HelpList.Entry entry : section.entries()) {
                boolean isMarked = onEnter.isPresent()
                        && (shoot.view().chosen() < 0
                                ? at == 0
                                : at == shoot.view().chosen());
                marked = isMarked ? lines.size() : marked;
                entry(entry, room, wide, isMarked, lines);
                at++;
            }
        }
        if (lines.isEmpty()) {
            lines.add(new Line("nothing here has that in it", Look.QUIET));
        } else if (shoot.prompt().isEmpty() && shoot.view().topic().isEmpty()) {
            lines.add(new Line("Cautions", Look.LABEL));
            for (String caution : CAUTIONS) {
                lines.addAll(Line.of(caution, 0, grid.columns() - 2 * Pieces.margin(grid), Look.NORMAL));
            }
        }
        int high = Math.max(1, grid.rows() - 5);
        list(
                shoot.view().scroll(),
                marked < 0 ? 0 : Math.max(0, marked - high / 2),
                shoot,
                grid,
                help.title()
                        + (shoot.prompt().isEmpty() && shoot.view().topic().isEmpty() && grid.columns() >= 72
                                ? ": type to search, Down Enter does it"
                                : ""),
                lines);
    }

    /** How wide the left part of a section is: its longest entry, but for those that get a line of their own. */
    private static int room(HelpList.Section section, int columns) {
        int room = 0;
        for (HelpList.Entry entry : section.entries()) {
            int width = Width.of(entry.typed());
            room = width < columns / 3 ? Math.max(room, width) : room;
        }
        return room + 4;
    }

    /** What is typed and what it does, on one line where both fit; the highlighted one is marked. */
    private static void entry(HelpList.Entry entry, int room, int columns, boolean isMarked, List<Line> lines) {
        Look look = isMarked ? Look.CHOSEN : entry.whyNot().isPresent() ? Look.QUIET : Look.NORMAL;
        String typed = (isMarked ? "► " : "  ") + entry.typed();
        boolean fits = Width.of(typed) < room && room + Width.of(entry.does()) < columns;
        if (fits) {
            lines.add(new Line(Width.pad(typed, room) + entry.does(), look));
        } else {
            lines.add(new Line(typed, look));
            Line.of(entry.does(), Math.min(room, 6), columns, look).forEach(it -> lines.add(it.rest()));
        }
    }

    /** How many lines of a list are seen at once. */
    static int room(Grid grid) {
        return Math.max(0, grid.rows() - 5);
    }

    static void list(Shoot shoot, Grid grid, String title, List<Line> lines) {
        list(shoot.view().scroll(), 0, shoot, grid, title, lines);
    }

    /** The line at which an entry begins. */
    private static int start(List<Line> lines, int entry) {
        int left = entry;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isRest() && left-- == 0) {
                return i;
            }
        }
        return lines.size();
    }

    private static void list(int asked, int atLeast, Shoot shoot, Grid grid, String title, List<Line> lines) {
        int rows = grid.rows();
        grid.fill(0, Look.BAR);
        String right =
                shoot.shown().roll().map(it -> State.leftWords(it) + "  ").orElse("") + Pieces.clock(shoot.now());
        int margin = Pieces.margin(grid);
        grid.put(margin, 0, Width.cut(title, grid.columns() - Width.of(right) - 2 - 2 * margin), Look.BAR);
        grid.put(grid.columns() - margin - Width.of(right), 0, right, Look.BAR);
        int room = room(grid);
        int scroll = Math.max(0, Math.min(Math.max(start(lines, asked), atLeast), lines.size() - room));
        for (int i = 0; i < Math.min(room, lines.size() - scroll); i++) {
            Line line = lines.get(scroll + i);
            if (line.look() == Look.CHOSEN) {
                grid.fill(1 + i, Look.CHOSEN);
            }
            grid.put(margin, 1 + i, Width.cut(line.text(), grid.columns() - 2 * margin), line.look());
        }
        if (lines.size() > room && rows > 5) {
            grid.put(
                    margin,
                    rows - 4,
                    (scroll + 1) + " to " + Math.min(lines.size(), scroll + room) + " of " + lines.size() + " lines",
                    Look.QUIET);
        }
        if (rows > 3) {
            boolean isDisk = Pieces.disk(grid, shoot, rows - 4);
            if (!isDisk && rows > 5 && !shoot.said().warnings().isEmpty()) {
                // Some warnings are given once: a line that is typed here has no other place for them.
                grid.fill(rows - 4, Look.NORMAL);
                Pieces.warnings(grid, shoot, rows - 4);
            }
            Pieces.prompt(grid, shoot, rows - 2, 1);
            Pieces.footer(grid, shoot, rows - 1, lines.size() > room);
        }
    }
}
