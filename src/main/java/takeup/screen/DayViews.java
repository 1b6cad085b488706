package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.history.ShootState;
import takeup.report.DayEnd;
import takeup.report.NightBefore;
import takeup.report.PlanTable;
import takeup.session.Session;
import takeup.text.Width;

/** The views of the day: its plan with the sun's own moments, and the bag with the night-before list. */
final class DayViews {
    /** Narrower than this a row of the plan takes several lines. */
    private static final int NARROW = 60;

    private DayViews() {}

    static void plan(Session shoot, Grid grid) {
        ShootState s = shoot.shown();
        List<PlanTable.Row> rows = PlanTable.of(s, shoot.now());
        int wide = grid.columns() - 2 * PromptBar.margin(grid);
        List<ListViews.Line> lines = new ArrayList<>();
        for (NightBefore.Item remark : PlanTable.remarks(s, shoot.now())) {
            lines.addAll(ListViews.Line.of(
                    remark.text(), 0, wide - 1, remark.caution() ? TextRole.CAUTION : TextRole.STRONG));
        }
        int high = lines.size() + rows.size() + (s.day().job().position().isEmpty() ? 1 : 0);
        if (high > ListViews.room(grid) && overs(rows) > 1) {
            lines.add(new ListViews.Line("      " + overs(rows) + " of the sun's moments are over", TextRole.QUIET));
            rows = rows.stream().filter(it -> !isOver(it)).toList();
        }
        lines.addAll(grid.columns() < NARROW ? narrow(rows, wide) : table(rows, wide));
        if (rows.isEmpty()) {
            lines.addAll(ListViews.Line.of(
                    "nothing is planned: plan 16:30 Prize-giving wants 12 must", 0, wide, TextRole.QUIET));
        }
        if (s.day().job().position().isEmpty()) {
            lines.addAll(ListViews.Line.of(
                    "the sun's times want a place: shoot NAME at 59.33,18.07", 0, wide, TextRole.QUIET));
        }
        ListViews.list(shoot, grid, "Plan · " + PlanTable.title(s), lines);
    }

    private static boolean isOver(PlanTable.Row row) {
        return row.kind() == PlanTable.Kind.OVER && row.number().isEmpty();
    }

    private static int overs(List<PlanTable.Row> rows) {
        return (int) rows.stream().filter(DayViews::isOver).count();
    }

    /** A line a row, its columns as wide as what stands in them. */
    private static List<ListViews.Line> table(List<PlanTable.Row> rows, int columns) {
        int when = 7;
        int in = 4;
        int what = 6;
        int more = 0;
        for (PlanTable.Row row : rows) {
            more = Math.max(more, Width.of(row.more()));
            when = Math.max(when, Width.of(row.when()) + 2);
            in = Math.max(in, Width.of(row.in()) + 2);
            what = Math.max(what, Width.of(row.what()) + 2);
        }
        what = Math.min(what, Math.max(14, columns - 6 - when - in - more));
        List<ListViews.Line> lines = new ArrayList<>();
        for (PlanTable.Row row : rows) {
            lines.add(new ListViews.Line(
                    start(row)
                            + Width.pad(row.when(), when)
                            + Width.pad(row.in(), in)
                            + (row.more().isEmpty()
                                    ? row.what()
                                    : Width.pad(Width.cut(row.what(), what - 2), what) + row.more()),
                    look(row)));
        }
        return lines;
    }

    /** What is at which time, and on the rows below it how far away it is and what it wants. */
    private static List<ListViews.Line> narrow(List<PlanTable.Row> rows, int columns) {
        List<ListViews.Line> lines = new ArrayList<>();
        for (PlanTable.Row row : rows) {
            String start = start(row) + row.when() + "  ";
            int indent = Width.of(start);
            List<String> parts = new ArrayList<>(PromptBar.wrapped(row.what(), columns - indent));
            if (!row.number().isEmpty()) {
                parts.add(row.in());
                parts.addAll(row.more().isEmpty() ? List.of() : PromptBar.wrapped(row.more(), columns - indent));
            }
            for (int i = 0; i < parts.size(); i++) {
                lines.add(new ListViews.Line((i == 0 ? start : " ".repeat(indent)) + parts.get(i), look(row), i > 0));
            }
        }
        return lines;
    }

    private static String start(PlanTable.Row row) {
        return (row.kind() == PlanTable.Kind.NEXT ? "► " : "  ") + Width.padLeft(row.number(), 2) + "  ";
    }

    private static TextRole look(PlanTable.Row row) {
        return switch (row.kind()) {
            case NEXT -> TextRole.READOUT;
            case MUST -> TextRole.STRONG;
            case MOMENT -> TextRole.NORMAL;
            case SUN -> TextRole.LABEL;
            case OVER -> TextRole.QUIET;
        };
    }

    static void bag(Session shoot, Grid grid) {
        ListViews.list(
                shoot,
                grid,
                "Bag · for " + PlanTable.title(shoot.shown()),
                lines(NightBefore.of(shoot.shown(), shoot.now()), grid));
    }

    static void dayEnd(Session shoot, Grid grid) {
        DayEnd end = shoot.dayEnd();
        String title = "End of the day · " + end.date();
        String missing = "A ROLL IS MISSING";
        ListViews.list(
                shoot,
                grid,
                !end.isShort() ? title : grid.columns() < NARROW ? missing + " · " + title : title + " · " + missing,
                lines(end.sections(), grid));
    }

    private static List<ListViews.Line> lines(List<NightBefore.Section> sections, Grid grid) {
        List<ListViews.Line> lines = new ArrayList<>();
        for (NightBefore.Section section : sections) {
            lines.add(new ListViews.Line(section.title(), TextRole.LABEL));
            for (NightBefore.Item item : section.items()) {
                lines.addAll(ListViews.Line.of(
                        item.text(),
                        2,
                        grid.columns() - 2 * PromptBar.margin(grid),
                        item.caution() ? TextRole.CAUTION : TextRole.NORMAL));
            }
        }
        return lines;
    }
}
