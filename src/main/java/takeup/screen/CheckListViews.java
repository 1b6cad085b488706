package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.report.DayEnd;
import takeup.report.NightBefore;
import takeup.report.PlanTable;
import takeup.session.Session;

/** The lists with headings that are gone through before and after a day: the bag, and the end of the day. */
final class CheckListViews {
    private CheckListViews() {}

    static void bag(Session session, Grid grid) {
        String title = "Bag · for " + PlanTable.title(session.shown());
        draw(session, grid, title, NightBefore.of(session.shown(), session.now()));
    }

    static void dayEnd(Session session, Grid grid) {
        DayEnd end = session.dayEnd();
        String title = "End of the day · " + end.date();
        String missing = "A ROLL IS MISSING";
        String withMissing = grid.layout().isNarrow() ? missing + " · " + title : title + " · " + missing;
        draw(session, grid, end.isShort() ? withMissing : title, end.sections());
    }

    private static void draw(Session session, Grid grid, String title, List<NightBefore.Section> sections) {
        List<ListLine> lines = new ArrayList<>();
        for (NightBefore.Section section : sections) {
            lines.add(new ListLine(section.title(), TextRole.LABEL));
            for (NightBefore.Item item : section.items()) {
                TextRole role = item.caution() ? TextRole.CAUTION : TextRole.NORMAL;
                lines.addAll(ListLine.wrapped(item.text(), 2, grid.layout().room(), role));
            }
        }
        ListView.draw(session, grid, title, lines);
    }
}
