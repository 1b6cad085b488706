package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.drafting.OrderDraft;
import takeup.drafting.OrderRow;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.order.OrderText;
import takeup.panel.Layout;
import takeup.session.Session;
import takeup.text.Width;

/** The lab order that is being made: its rows, then its sheet, then where that lies. */
final class OrderView {
    private OrderView() {}

    static void draw(Session session, Grid grid) {
        if (session.view().draft().isEmpty()) {
            List<ListLine> waiting = List.of(new ListLine("reading the rolls …", TextRole.QUIET));
            ListView.draw(session, grid, "Lab order", waiting);
            return;
        }
        OrderDraft draft = session.view().draft().get();
        int room = Layout.of(grid).room();
        switch (draft.step()) {
            case CHOOSING ->
                ListView.drawPicked(session, grid, "Lab order · Enter changes the row", choosing(session, draft, room));
            case SHEET ->
                ListView.draw(session, grid, "The sheet · Enter writes it, Esc goes back", sheet(session, draft, room));
            case WRITTEN -> ListView.draw(session, grid, "The order is written", written(session, draft, room));
        }
    }

    private static List<ListLine> choosing(Session session, OrderDraft draft, int room) {
        List<ListLine> lines = new ArrayList<>();
        List<OrderRow> rows = OrderRow.of(draft, session.now());
        int names =
                rows.stream().skip(1).mapToInt(it -> Width.of(it.name())).max().orElse(0) + 2;
        int chosen = Math.max(0, session.view().chosen());
        for (int i = 0; i < rows.size(); i++) {
            OrderRow row = rows.get(i);
            TextRole role = i == chosen ? TextRole.CHOSEN : i == 0 ? TextRole.STRONG : TextRole.NORMAL;
            String text = (i == chosen ? "► " : "  ") + Width.pad(row.name(), names);
            lines.add(new ListLine(text + row.text(), role));
        }
        lines.addAll(toKnow(draft, room));
        return lines;
    }

    /** What to look at before it goes, what stops it first. */
    private static List<ListLine> toKnow(OrderDraft draft, int room) {
        List<ListLine> lines = new ArrayList<>();
        draft.checks()
                .forEach(it -> lines.addAll(
                        ListLine.wrapped(it.text(), 2, room, it.isBlocking() ? TextRole.CAUTION : TextRole.NORMAL)));
        draft.source().problems().forEach(it -> lines.addAll(ListLine.wrapped(it, 2, room, TextRole.CAUTION)));
        if (!lines.isEmpty()) {
            lines.add(0, new ListLine("To know before it goes", TextRole.LABEL));
        }
        return lines;
    }

    private static List<ListLine> sheet(Session session, OrderDraft draft, int room) {
        List<ListLine> lines = new ArrayList<>(toKnow(draft, room));
        OrderText.of(draft.order(session.now()))
                .lines()
                .forEach(it -> lines.addAll(
                        it.isEmpty()
                                ? List.of(new ListLine("", TextRole.NORMAL))
                                : ListLine.wrapped(it, 0, room, TextRole.NORMAL)));
        return lines;
    }

    private static List<ListLine> written(Session session, OrderDraft draft, int room) {
        List<ListLine> lines = new ArrayList<>();
        lines.addAll(ListLine.wrapped("Print " + draft.sheet(), 0, room, TextRole.STRONG));
        lines.addAll(ListLine.wrapped(
                "It is the sheet that goes with the film, and labels for the rolls. Once it is on its way: F7, and "
                        + "Enter on the row of the order.",
                0,
                room,
                TextRole.NORMAL));
        lines.add(new ListLine("", TextRole.NORMAL));
        lines.addAll(sheet(session, draft, room));
        return lines;
    }
}
