package takeup.panel;

import takeup.grid.Grid;
import takeup.session.Session;

/** The last rows of every view: messages, the prompt, and the keys that work now. */
public final class BottomBars {
    private BottomBars() {}

    /**
     * Draws them. A longer message, and the warnings with it, may grow over what stands above; what is not saved stands
     * between it and the prompt.
     *
     * @param messageRows how many rows above the prompt a message has anyway
     * @param list how much of the view's list is seen
     */
    public static void draw(Grid grid, Session session, int messageRows, FooterKeys.List list) {
        int least = messageRows(grid, session, messageRows);
        draw(grid, session, least, Math.max(least, grid.rows() - 3), list);
    }

    /** The same with a message of one row, below what must not be drawn over. */
    public static void drawStill(Grid grid, Session session) {
        draw(grid, session, 1, 1, FooterKeys.List.WHOLE);
    }

    private static void draw(Grid grid, Session session, int least, int most, FooterKeys.List list) {
        int prompt = grid.rows() - 2;
        int alarm = AlarmBar.rows(grid, session);
        MessageBar.drawOver(grid, session, prompt - alarm, least, most);
        AlarmBar.draw(grid, session, prompt - alarm);
        PromptBar.draw(grid, session, prompt);
        FooterKeys.of(session, list).draw(grid, grid.rows() - 1);
    }

    /** The first row that they cover as they are drawn, a longer message too. */
    public static int covered(Grid grid, Session session, int messageRows) {
        int least = messageRows(grid, session, messageRows);
        int most = Math.max(least, grid.rows() - 3);
        return grid.rows() - 2 - AlarmBar.rows(grid, session) - MessageBar.rows(grid, session, least, most);
    }

    /** The first row that they take. */
    public static int top(Grid grid, Session session, int messageRows) {
        return grid.rows() - 2 - AlarmBar.rows(grid, session) - messageRows(grid, session, messageRows);
    }

    /** A second row of what is not saved costs the message one. */
    private static int messageRows(Grid grid, Session session, int wanted) {
        return Math.max(1, wanted - Math.max(0, AlarmBar.rows(grid, session) - 1));
    }
}
