package takeup.screen;

import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.panel.MessageBar;
import takeup.panel.PromptBar;
import takeup.panel.SettingText;
import takeup.panel.StatusWords;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The smallest shoot screen: what must be known in one line, or in two if there is room, and the prompt below. */
final class TinyShootView {
    private TinyShootView() {}

    static void draw(Session session, Grid grid) {
        int columns = grid.columns();
        int rows = grid.rows();
        Optional<Roll> roll = session.shown().rollInHand();
        boolean isNotSaved = session.saveError().isPresent();
        String left = (isNotSaved ? "NOT SAVED " : "")
                + roll.map(RollText::left)
                        .orElseGet(() -> session.shown().noFilm(session.shown().placeInHand()));
        String frame = roll.map(it -> "frame " + it.next()).orElse("");
        String leftAndFrame = left + (frame.isEmpty() ? "" : ", " + frame);
        String pair = SettingText.pair(session).map(it -> "  " + it).orElse("");
        boolean isInTwo = rows >= 4 && Width.of(leftAndFrame + pair) > columns;
        boolean isFrameBelow = isInTwo && Width.of(leftAndFrame) > columns;
        String first = (isFrameBelow ? left : leftAndFrame) + (isInTwo ? "" : pair);
        grid.put(0, 0, Width.cut(first, columns), isNotSaved ? TextRole.ALARM : TextRole.READOUT);
        if (isInTwo) {
            String second = ((isFrameBelow ? frame : "") + pair).strip();
            grid.put(0, 1, Width.cut(second, columns), TextRole.READOUT);
        }
        if (rows >= 5) {
            grid.put(0, isInTwo ? 2 : 1, Width.cut(StatusWords.warnings(session), columns), TextRole.CAUTION);
        }
        if (rows >= 6) {
            grid.put(0, 3, Width.cut("quit leaves; 40x12 shows more", columns), TextRole.QUIET);
        }
        if (rows >= 3) {
            MessageBar.draw(grid, session, rows - 2, 1);
        }
        if (rows >= 2) {
            PromptBar.draw(grid, session, rows - 1);
        }
    }
}
