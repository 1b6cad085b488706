package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.kit.Warning;
import takeup.report.StatusText;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.session.HelpList;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

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
    record Line(String text, TextRole look, boolean isRest) {
        Line(String text, TextRole look) {
            this(text, look, false);
        }

        /** Words over as many lines as they need, each behind so many blanks. */
        static List<Line> of(String words, int indent, int columns, TextRole look) {
            List<Line> lines = new ArrayList<>();
            for (String part : PromptBar.wrapped(words, columns - indent)) {
                lines.add(new Line(" ".repeat(indent) + part, look, !lines.isEmpty()));
            }
            return lines;
        }

        /** The same line as one that goes on with the line before. */
        Line rest() {
            return new Line(text, look, true);
        }
    }

    static void frames(Session shoot, Grid grid) {
        List<Line> lines = new ArrayList<>();
        Optional<Roll> found = shoot.shown().rollInHand();
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
            lines.addAll(Line.of(head, 0, grid.columns() - 2 * PromptBar.margin(grid), TextRole.STRONG));
            roll.counterChecks()
                    .forEach(it -> lines.add(new Line(
                            "counter showed " + it.shown() + " at " + ClockText.clock(it.at()) + ", the log came to "
                                    + it.expected(),
                            TextRole.CAUTION)));
            List<List<Warning>> warnings = FrameWarnings.of(
                    roll, shoot.shown().kit().fewLeft(roll.film().framesNominal()));
            for (int i = roll.frames().size() - 1; i >= 0; i--) {
                List<Warning> warned = warnings.get(i);
                boolean wide = grid.columns() >= 60;
                lines.add(new Line(
                        PromptBar.frame(roll, roll.frames().get(i), wide, Optional.of(warned)),
                        warned.isEmpty() ? TextRole.NORMAL : TextRole.CAUTION));
            }
            if (roll.frames().isEmpty()) {
                lines.add(new Line("no frame yet: Space on the shoot screen logs one", TextRole.QUIET));
            }
        });
        list(shoot, grid, title, lines);
    }

    static void help(Session shoot, Grid grid) {
        HelpList help = HelpList.of(shoot);
        Optional<HelpList.Entry> onEnter = HelpList.onEnter(shoot);
        List<Line> lines = new ArrayList<>();
        int marked = -1;
        int at = 0;
        for (HelpList.Section section : help.sections()) {
            lines.add(new Line(section.title(), TextRole.LABEL));
            int wide = grid.columns() - 2 * PromptBar.margin(grid);
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
            lines.add(new Line("nothing here has that in it", TextRole.QUIET));
        } else if (shoot.prompt().isEmpty() && shoot.view().topic().isEmpty()) {
            lines.add(new Line("Cautions", TextRole.LABEL));
            for (String caution : CAUTIONS) {
                lines.addAll(Line.of(caution, 0, grid.columns() - 2 * PromptBar.margin(grid), TextRole.NORMAL));
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
        TextRole look = isMarked ? TextRole.CHOSEN : entry.whyNot().isPresent() ? TextRole.QUIET : TextRole.NORMAL;
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

    static void list(Session shoot, Grid grid, String title, List<Line> lines) {
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

    private static void list(int asked, int atLeast, Session shoot, Grid grid, String title, List<Line> lines) {
        int rows = grid.rows();
        grid.fill(0, TextRole.BAR);
        String right = shoot.shown()
                        .rollInHand()
                        .map(it -> StatusText.leftWords(it) + "  ")
                        .orElse("")
                + ClockText.clock(shoot.now());
        int margin = PromptBar.margin(grid);
        grid.put(margin, 0, Width.cut(title, grid.columns() - Width.of(right) - 2 - 2 * margin), TextRole.BAR);
        grid.put(grid.columns() - margin - Width.of(right), 0, right, TextRole.BAR);
        int room = room(grid);
        int scroll = Math.max(0, Math.min(Math.max(start(lines, asked), atLeast), lines.size() - room));
        for (int i = 0; i < Math.min(room, lines.size() - scroll); i++) {
            Line line = lines.get(scroll + i);
            if (line.look() == TextRole.CHOSEN) {
                grid.fill(1 + i, TextRole.CHOSEN);
            }
            grid.put(margin, 1 + i, Width.cut(line.text(), grid.columns() - 2 * margin), line.look());
        }
        if (lines.size() > room && rows > 5) {
            grid.put(
                    margin,
                    rows - 4,
                    (scroll + 1) + " to " + Math.min(lines.size(), scroll + room) + " of " + lines.size() + " lines",
                    TextRole.QUIET);
        }
        if (rows > 3) {
            boolean isDisk = PromptBar.disk(grid, shoot, rows - 4);
            if (!isDisk && rows > 5 && !shoot.lastAnswer().warnings().isEmpty()) {
                // Some warnings are given once: a line that is typed here has no other place for them.
                grid.fill(rows - 4, TextRole.NORMAL);
                PromptBar.warnings(grid, shoot, rows - 4);
            }
            PromptBar.prompt(grid, shoot, rows - 2, 1);
            PromptBar.footer(grid, shoot, rows - 1, lines.size() > room);
        }
    }
}
