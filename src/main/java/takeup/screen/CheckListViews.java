package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.Layout;
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
        int film = night.day().shoot().isPresent() ? 1 : 0;
        boolean isFridgeFirst = night.day().bag().filled().isEmpty()
                && !night.day().fridge().filled().isEmpty();
        int before = isFridgeFirst ? film + 1 : film;
        draw(session, grid, title, NightBeforeText.sections(night, NightBeforeText.ClientName.HIDDEN), before);
    }

    static void dayEnd(Session session, Grid grid) {
        DayEnd end = session.dayEnd();
        String title = "End of the day · " + end.date();
        String missing = "A ROLL IS MISSING";
        String withMissing = Layout.of(grid).isNarrow() ? missing + " · " + title : title + " · " + missing;
        draw(session, grid, end.isRollMissing() ? withMissing : title, DayEndText.sections(end), 0);
    }

    /**
     * Draws a list of which some rows can be picked.
     *
     * @param first how many items there are before the first that can be picked
     */
    private static void draw(Session session, Grid grid, String title, List<CheckList.Section> sections, int first) {
        List<ListLine> lines = new ArrayList<>();
        int at = -first;
        for (CheckList.Section section : sections) {
            lines.add(new ListLine(section.title(), TextRole.LABEL));
            for (CheckList.Item item : section.items()) {
                TextRole plain = item.caution() ? TextRole.CAUTION : TextRole.NORMAL;
                TextRole role =
                        session.view().chosen() >= 0 && at == session.view().chosen() ? TextRole.CHOSEN : plain;
                at++;
                lines.addAll(ListLine.wrapped(item.text(), 2, Layout.of(grid).room(), role));
            }
        }
        ListView.drawPicked(session, grid, title, lines);
    }
}
