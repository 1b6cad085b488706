package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.report.CheckList;
import takeup.report.DayEnd;
import takeup.report.DayEndText;
import takeup.report.NightBefore;
import takeup.report.NightBeforeText;
import takeup.report.PlanTable;
import takeup.session.Session;

/** The lists with headings that are gone through before and after a day: the bag, and the end of the day. */
final class CheckListViews {
    private CheckListViews() {}

    static void bag(Session session, Grid grid) {
        String title = "Bag · for " + PlanTable.title(session.shown());
        NightBefore night = NightBefore.of(session.shown(), session.now());
        draw(session, grid, title, NightBeforeText.sections(night, NightBeforeText.ClientName.HIDDEN));
    }

    static void dayEnd(Session session, Grid grid) {
        DayEnd end = session.dayEnd();
        String title = "End of the day · " + end.date();
        String missing = "A ROLL IS MISSING";
        String withMissing = Layout.of(grid).isNarrow() ? missing + " · " + title : title + " · " + missing;
        draw(session, grid, end.isRollMissing() ? withMissing : title, DayEndText.sections(end));
    }

    private static void draw(Session session, Grid grid, String title, List<CheckList.Section> sections) {
        List<ListLine> lines = new ArrayList<>();
        for (CheckList.Section section : sections) {
            lines.add(new ListLine(section.title(), TextRole.LABEL));
            for (CheckList.Item item : section.items()) {
                TextRole role = item.caution() ? TextRole.CAUTION : TextRole.NORMAL;
                lines.addAll(ListLine.wrapped(item.text(), 2, Layout.of(grid).room(), role));
            }
        }
        ListView.draw(session, grid, title, lines);
    }
}
