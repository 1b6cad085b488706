package takeup.panel;

import java.util.stream.Stream;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.message.SaveError;
import takeup.session.Session;
import takeup.text.Width;

/** A row for what must not be missed: what is not saved and why, or that nothing can be saved. */
final class AlarmBar {
    private AlarmBar() {}

    /** What is not saved, why, and what to do. */
    private static void drawNotSaved(Grid grid, Session session, int row) {
        SaveError error = session.saveError().orElseThrow();
        String all = notSaved(session) + more(session);
        String first = notSaved(session);
        alarm(
                grid,
                row,
                all + ": " + error + ". Held, and tried again at each key",
                all + ": " + error + "; held",
                all + ": " + error,
                first + ": " + error,
                all + ": " + error.reason(),
                first + ": " + error.reason());
    }

    /** The same over two rows, where one is too narrow for the reason. */
    private static void drawNotSavedInTwo(Grid grid, Session session, int row) {
        String error = session.saveError().orElseThrow().text();
        alarm(grid, row, notSaved(session) + more(session), notSaved(session));
        alarm(grid, row + 1, error + "; held", error);
    }

    /** The same in place of the footer, and why beside the empty prompt, which is no band below the large figures. */
    private static void drawNotSavedAtPrompt(Grid grid, Session session, int column, int row) {
        String error = session.saveError().orElseThrow().text();
        String all = notSaved(session) + more(session);
        grid.put(column, row, TextFit.first(grid.columns() - column, error + "; held", error), TextRole.STRONG);
        grid.fill(row + 1, TextRole.ALARM);
        grid.put(0, row + 1, TextFit.first(grid.columns(), all, notSaved(session)), TextRole.ALARM);
    }

    /** What it says, beside the empty prompt; answers whether there was anything. */
    static boolean drawAtPrompt(Grid grid, Session session, int column, int row) {
        int room = grid.columns() - column;
        if (WarningPlate.isNotSaved(session)) {
            drawNotSavedAtPrompt(grid, session, column, row);
        } else if (session.settings().readOnly().isPresent()) {
            String text = " READ ONLY: " + session.settings().readOnly().get() + " ";
            grid.put(column, row, Width.cut(text, room), TextRole.CAUTION);
        } else if (!session.waiting().isEmpty()) {
            grid.put(column, row, "saving …", TextRole.QUIET);
        } else {
            return false;
        }
        return true;
    }

    /** The first of these that fits, else the last. */
    private static void alarm(Grid grid, int row, String... wordings) {
        Layout layout = Layout.of(grid);
        grid.fill(row, TextRole.ALARM);
        String fits = Stream.of(wordings)
                .filter(it -> Width.of(it) < layout.right())
                .findFirst()
                .orElse(wordings[wordings.length - 1]);
        grid.put(layout.margin(), row, Width.cut(fits, layout.right()), TextRole.ALARM);
    }

    private static String notSaved(Session session) {
        return "NOT SAVED: " + session.waiting().get(0).name();
    }

    private static String more(Session session) {
        int more = session.waiting().size() - 1;
        return more > 0 ? ", and " + more + " more" : "";
    }

    /** How many rows it takes: two for what is not saved where one is too narrow for the reason. */
    static int rows(Grid grid, Session session) {
        if (WarningPlate.isNotSaved(session)) {
            return grid.columns() < 72 ? 2 : 1;
        }
        return session.settings().readOnly().isPresent() || !session.waiting().isEmpty() ? 1 : 0;
    }

    /** What is not saved, else why nothing can be, else that it is being saved. */
    static void draw(Grid grid, Session session, int row) {
        int margin = Layout.of(grid).margin();
        int room = Layout.of(grid).right() - 1;
        if (WarningPlate.isNotSaved(session) && rows(grid, session) == 2) {
            drawNotSavedInTwo(grid, session, row);
        } else if (WarningPlate.isNotSaved(session)) {
            drawNotSaved(grid, session, row);
        } else if (session.settings().readOnly().isPresent()) {
            grid.fill(row, TextRole.NORMAL);
            String text = " READ ONLY: " + session.settings().readOnly().get() + " ";
            grid.put(margin, row, Width.cut(text, room), TextRole.CAUTION);
        } else if (!session.waiting().isEmpty()) {
            grid.fill(row, TextRole.NORMAL);
            grid.put(margin, row, "saving …", TextRole.QUIET);
        }
    }
}
