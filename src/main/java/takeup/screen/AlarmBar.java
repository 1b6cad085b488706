package takeup.screen;

import java.util.List;
import java.util.stream.Stream;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.Warning;
import takeup.session.SaveError;
import takeup.session.Session;
import takeup.text.Width;

/** A row for what must not be missed: what is not saved and why, else the warnings that came with the last answer. */
final class AlarmBar {
    private AlarmBar() {}

    static boolean isNotSaved(Session session) {
        return session.saveError().isPresent() && !session.waiting().isEmpty();
    }

    /** What is not saved, why, and what to do; answers whether there is anything. */
    static boolean drawNotSaved(Grid grid, Session session, int row) {
        if (!isNotSaved(session)) {
            return false;
        }
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
        return true;
    }

    /** The same over two rows, where one is too narrow for the reason. */
    static void drawNotSavedInTwo(Grid grid, Session session, int row) {
        String error = session.saveError().orElseThrow().text();
        alarm(grid, row, notSaved(session) + more(session), notSaved(session));
        alarm(grid, row + 1, error + "; held", error);
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

    /** What is not saved, else the warnings of the last answer; answers whether there is anything. */
    static boolean draw(Grid grid, Session session, int row) {
        if (drawNotSaved(grid, session, row)) {
            return true;
        }
        int margin = Layout.of(grid).margin();
        int room = Layout.of(grid).right() - 1;
        if (session.settings().readOnly().isPresent()) {
            String text = "READ ONLY: " + session.settings().readOnly().get();
            grid.put(margin, row, Width.cut(text, room), TextRole.CAUTION);
        } else if (!session.lastAnswer().warnings().isEmpty()) {
            grid.put(margin, row, warnings(session.lastAnswer().warnings(), room), TextRole.CAUTION);
        } else if (!session.waiting().isEmpty()) {
            grid.put(margin, row, "saving …", TextRole.QUIET);
        } else {
            return false;
        }
        return true;
    }

    /** The first in full, the others by name or as a number. */
    private static String warnings(List<Warning> warnings, int room) {
        Warning first = warnings.get(0);
        List<String> others =
                warnings.stream().skip(1).map(it -> it.code().standing()).toList();
        String also = others.isEmpty() ? "" : ", also " + String.join(", ", others);
        String more = Width.of(also) <= room / 2 ? also : ", and " + others.size() + " more";
        return Width.cut(first.code().standing() + ": " + first.text(), room - Width.of(more)) + more;
    }
}
