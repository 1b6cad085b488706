package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.TextFit;
import takeup.panel.Layout;
import takeup.report.CheckList;
import takeup.report.PlanTable;
import takeup.session.Session;
import takeup.text.Width;

/** The plan of the day: its moments and the sun's own, as a table or on a narrow screen below each other. */
final class PlanView {
    private PlanView() {}

    static void draw(Session session, Grid grid) {
        ShootState state = session.shown();
        Layout layout = Layout.of(grid);
        boolean hasPosition = state.day().position().isPresent();
        List<PlanTable.Row> rows = PlanTable.of(state, session.now());
        List<ListLine> lines = new ArrayList<>();
        for (CheckList.Item remark : PlanTable.remarks(state, session.now())) {
            TextRole role = remark.caution() ? TextRole.CAUTION : TextRole.STRONG;
            lines.addAll(ListLine.wrapped(remark.text(), 0, layout.room() - 1, role));
        }
        int high = lines.size() + rows.size() + (hasPosition ? 0 : 1);
        long over = rows.stream().filter(PlanView::isSunOver).count();
        if (high > layout.listRows() && over > 1) {
            lines.add(new ListLine("      " + over + " of the sun's moments are over", TextRole.QUIET));
            rows = rows.stream().filter(it -> !isSunOver(it)).toList();
        }
        List<PlanTable.Row> moments =
                rows.stream().filter(it -> !it.number().isEmpty()).toList();
        int chosen = session.view().chosen();
        Optional<PlanTable.Row> picked =
                chosen >= 0 && chosen < moments.size() ? Optional.of(moments.get(chosen)) : Optional.empty();
        List<ListLine> table =
                layout.isNarrow() ? narrow(rows, picked, layout.room()) : table(rows, picked, layout.room());
        lines.addAll(table);
        if (rows.isEmpty()) {
            lines.addAll(hint("No plan yet. Try: plan 16:30 Prize-giving wants 12 must", layout));
        }
        if (!hasPosition) {
            lines.addAll(hint("For sunrise and sunset, give the place: shoot NAME at 59.33,18.07", layout));
        }
        ListView.drawPicked(session, grid, "Plan · " + PlanTable.title(state), lines);
    }

    private static List<ListLine> hint(String text, Layout layout) {
        return ListLine.wrapped(text, 0, layout.room(), TextRole.QUIET);
    }

    private static boolean isSunOver(PlanTable.Row row) {
        return row.kind() == PlanTable.Kind.OVER && row.number().isEmpty();
    }

    /** A line a row, its columns as wide as what stands in them. */
    private static List<ListLine> table(List<PlanTable.Row> rows, Optional<PlanTable.Row> picked, int columns) {
        int when = 7;
        int in = 4;
        int what = 6;
        int more = 0;
        for (PlanTable.Row row : rows) {
            more = Math.max(more, Width.of(more(row)));
            when = Math.max(when, Width.of(row.when()) + 2);
            in = Math.max(in, Width.of(row.in()) + 2);
            what = Math.max(what, Width.of(row.what()) + 2);
        }
        what = Math.min(what, Math.max(14, columns - 6 - when - in - more));
        List<ListLine> lines = new ArrayList<>();
        for (PlanTable.Row row : rows) {
            String name = row.details().isEmpty() ? row.what() : Width.pad(Width.cut(row.what(), what - 2), what);
            String text = start(row) + Width.pad(row.when(), when) + Width.pad(row.in(), in) + name + more(row);
            lines.add(new ListLine(text, role(row, picked)));
        }
        return lines;
    }

    private static String more(PlanTable.Row row) {
        return String.join("  ", row.details());
    }

    /** What is at which time, and on the rows below it how far away it is and what it wants. */
    private static List<ListLine> narrow(List<PlanTable.Row> rows, Optional<PlanTable.Row> picked, int columns) {
        List<ListLine> lines = new ArrayList<>();
        for (PlanTable.Row row : rows) {
            String start = start(row) + row.when() + "  ";
            int indent = Width.of(start);
            List<String> parts = new ArrayList<>(TextFit.rows(row.what(), columns - indent));
            if (!row.number().isEmpty()) {
                parts.add(row.in());
                parts.addAll(row.details().isEmpty() ? List.of() : TextFit.rows(more(row), columns - indent));
            }
            for (int i = 0; i < parts.size(); i++) {
                lines.add(new ListLine(
                        (i == 0 ? start : " ".repeat(indent)) + parts.get(i), role(row, picked), i > 0, ""));
            }
        }
        return lines;
    }

    private static String start(PlanTable.Row row) {
        return (row.kind() == PlanTable.Kind.NEXT ? "► " : "  ") + Width.padLeft(row.number(), 2) + "  ";
    }

    private static TextRole role(PlanTable.Row row, Optional<PlanTable.Row> picked) {
        if (picked.equals(Optional.of(row))) {
            return TextRole.CHOSEN;
        }
        return switch (row.kind()) {
            case NEXT -> TextRole.READOUT;
            case MUST -> TextRole.STRONG;
            case MOMENT -> TextRole.NORMAL;
            case SUN -> TextRole.LABEL;
            case OVER -> TextRole.QUIET;
        };
    }
}
