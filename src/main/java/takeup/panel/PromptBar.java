package takeup.panel;

import java.util.Optional;
import takeup.action.Menu;
import takeup.advice.LoadChecks;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.report.LoadCheckText;
import takeup.session.Session;
import takeup.text.Width;

/** The prompt with its cursor: what is typed or, while it is empty, what the load routine asks. */
public final class PromptBar {
    private PromptBar() {}

    public static void draw(Grid grid, Session session, int row) {
        String typed = session.prompt().text();
        int cursor = Width.of(onOneLine(typed.substring(0, session.prompt().cursor())));
        int room = grid.columns() - 3;
        int skipped = Math.max(0, cursor - room + 1);
        grid.fill(row, TextRole.PROMPT);
        grid.put(0, row, "> ", TextRole.PROMPT);
        grid.put(2, row, TextFit.without(skipped, onOneLine(typed)), TextRole.PROMPT, room + 1);
        Optional<Menu> menu = session.view().menu();
        if (typed.isEmpty() && menu.isPresent()) {
            // What the actions come to so far is shown where it would be typed, so that one learns it.
            grid.put(2, row, Width.cut(menu.get().preview(), room), TextRole.PROMPT);
        }
        Optional<LoadChecks> check = loadCheck(session);
        if (check.isPresent()) {
            grid.put(3, row, question(check.get(), grid.columns() - 4), TextRole.PROMPT);
        }
        grid.cursor(2 + cursor - skipped, row);
    }

    private static String onOneLine(String text) {
        return text.replace("\n", " │ ");
    }

    /** The load check that Enter, n and Esc answer now: only an empty prompt of the plain shoot screen asks it. */
    static Optional<LoadChecks> loadCheck(Session session) {
        boolean isFree = session.prompt().isEmpty()
                && session.question().isEmpty()
                && session.view().page() == Session.Page.SHOOT
                && session.view().sheet().isEmpty();
        return isFree ? LoadChecks.of(session.shown()) : Optional.empty();
    }

    /**
     * The question, shortened from what can be spared first: the keys are in the footer, the rating is what matters.
     */
    private static String question(LoadChecks check, int room) {
        String numbered = LoadCheckText.count(check) + ": " + LoadCheckText.asked(check);
        return TextFit.first(
                room,
                LoadCheckText.question(check) + " Enter yes, n no, Esc skip",
                LoadCheckText.question(check),
                numbered,
                LoadCheckText.asked(check),
                LoadCheckText.askedBriefly(check));
    }
}
