package takeup.cli;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import takeup.history.ShootState;
import takeup.report.PlanTable;
import takeup.text.Padding;

/** The plan of the day as lines of text, as {@code plan} and {@code prepare} print it. */
final class PlanLines {
    private PlanLines() {}

    static List<String> of(ShootState state, OffsetDateTime now) {
        List<String> lines = new ArrayList<>();
        lines.add("Plan: " + PlanTable.title(state));
        PlanTable.of(state, now).forEach(it -> lines.add(line(it)));
        if (state.day().plan().moments().isEmpty()) {
            lines.add("  No plan yet. Try: takeup plan import FILE, or plan 16:30 Prize-giving wants 12 "
                    + "on the prompt");
        }
        return lines;
    }

    private static String line(PlanTable.Row row) {
        return "  " + Padding.cell(row.number(), 4) + Padding.cell(row.when(), 7) + Padding.cell(row.in(), 14)
                + row.what() + (row.details().isEmpty() ? "" : ", " + String.join(", ", row.details()));
    }
}
