package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.shoot.DayEnd;
import takeup.shoot.PlanTable;
import takeup.shoot.Prepare;
import takeup.shoot.Shoot;
import takeup.shoot.Situation;

/** The views of the day: its plan with the sun's own moments, and the bag with the night-before list. */
final class DayViews {
    private DayViews() {
    }

    static void plan(Shoot shoot, Grid grid) {
        Situation s = shoot.shown();
        List<PlanTable.Row> rows = PlanTable.of(s, shoot.now());
        int when = 7;
        int in = 4;
        int what = 6;
        int more = 12;
        for (PlanTable.Row row : rows) {
            more = Math.max(more, Width.of(row.more()));
            when = Math.max(when, Width.of(row.when()) + 2);
            in = Math.max(in, Width.of(row.in()) + 2);
            what = Math.max(what, Width.of(row.what()) + 2);
        }
        what = Math.min(what, Math.max(14, grid.columns() - 6 - when - in - more));
        List<ListViews.Line> lines = new ArrayList<>();
        for (Prepare.Item remark : PlanTable.remarks(s, shoot.now())) {
            for (String part : Pieces.wrapped(remark.text(), grid.columns() - 1)) {
                lines.add(new ListViews.Line(part, remark.caution() ? Look.CAUTION : Look.STRONG));
            }
        }
        for (PlanTable.Row row : rows) {
            String text = (row.kind() == PlanTable.Kind.NEXT ? "► " : "  ") + Width.padLeft(row.number(), 2) + "  " + Width.pad(row.when(), when) + Width.pad(row.in(), in)
                    + (row.more().isEmpty() ? row.what() : Width.pad(Width.cut(row.what(), what - 1), what) + row.more());
            lines.add(new ListViews.Line(text, switch (row.kind()) {
                case NEXT -> Look.READOUT;
                case MUST -> Look.STRONG;
                case MOMENT -> Look.NORMAL;
                case SUN -> Look.LABEL;
                case OVER -> Look.QUIET;
            }));
        }
        if (rows.isEmpty()) {
            lines.add(new ListViews.Line("nothing is planned: plan 16:30 Prize-giving wants 12 must", Look.QUIET));
        }
        if (s.day().job().position().isEmpty()) {
            lines.add(new ListViews.Line("the sun's times want a place: shoot NAME at 59.33,18.07", Look.QUIET));
        }
        ListViews.list(shoot, grid, "Plan · " + PlanTable.title(s), lines);
    }

    static void bag(Shoot shoot, Grid grid) {
        ListViews.list(shoot, grid, "Bag · for " + PlanTable.title(shoot.shown()), lines(Prepare.of(shoot.shown(), shoot.now()), grid));
    }

    static void dayEnd(Shoot shoot, Grid grid) {
        DayEnd end = DayEnd.of(shoot);
        ListViews.list(shoot, grid, "End of the day · " + end.date() + (end.isShort() ? " · A ROLL IS MISSING" : ""), lines(end.sections(), grid));
    }

    private static List<ListViews.Line> lines(List<Prepare.Section> sections, Grid grid) {
        List<ListViews.Line> lines = new ArrayList<>();
        for (Prepare.Section section : sections) {
            lines.add(new ListViews.Line(section.title(), Look.LABEL));
            for (Prepare.Item item : section.items()) {
                List<String> parts = Pieces.wrapped(item.text(), grid.columns() - 3);
                for (int i = 0; i < parts.size(); i++) {
                    lines.add(new ListViews.Line("  " + parts.get(i), item.caution() ? Look.CAUTION : Look.NORMAL));
                }
            }
        }
        return lines;
    }
}
