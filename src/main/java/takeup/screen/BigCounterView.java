package takeup.screen;

import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.BigText;
import takeup.lettering.TextFit;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The number of the next frame as large as the screen allows, to be read across a room. */
final class BigCounterView {
    private BigCounterView() {}

    static void draw(Session session, Grid grid) {
        int columns = grid.columns();
        int rows = grid.rows();
        TopBar.draw(grid, session);
        Optional<Roll> roll = session.shown().rollInHand();
        String number = roll.map(it -> Integer.toString(it.next())).orElse("-");
        int scale = Math.max(1, Math.min((rows - 8) / 5, (columns - 2) / Math.max(1, BigText.width(number, 1))));
        int top = rows < 14 ? 1 : 2;
        BigText.draw(grid, centred(columns, BigText.width(number, scale)), top, number, scale, TextRole.READOUT);
        int row = Math.min(top + 1 + 5 * scale, rows - 6);
        String counted = roll.map(RollText::left)
                        .orElseGet(() -> session.shown().noFilm(session.shown().placeInHand()))
                + SettingText.pair(session).map(it -> " · " + it).orElse("");
        // A pair that is cut, as 1/12 of 1/125, is another pair.
        String whole = roll.isPresent() ? "next frame · " + counted : counted;
        String line = TextFit.first(columns, whole, counted);
        grid.put(centred(columns, Width.of(line)), row, line, TextRole.STRONG);
        BottomBars.drawWithAlarm(grid, session);
    }

    private static int centred(int columns, int width) {
        return Math.max(0, (columns - width) / 2);
    }
}
