package takeup.screen;

import takeup.grid.Grid;
import takeup.session.Session;

/** The last rows of every view: messages, the prompt, and the keys that work now. */
final class BottomBars {
    private BottomBars() {}

    /**
     * Draws them.
     *
     * @param messageRows how many rows above the prompt a message may take
     * @param list how much of the view's list is seen
     */
    static void draw(Grid grid, Session session, int messageRows, FooterKeys.List list) {
        int prompt = grid.rows() - 2;
        MessageBar.draw(grid, session, prompt - messageRows, messageRows);
        PromptBar.draw(grid, session, prompt);
        FooterKeys.of(session, list).draw(grid, grid.rows() - 1);
    }

    /** The same below a row for what is not saved or warned of, as on the larger shoot screens. */
    static void drawWithAlarm(Grid grid, Session session) {
        AlarmBar.draw(grid, session, grid.rows() - 5);
        draw(grid, session, 2, FooterKeys.List.WHOLE);
    }
}
