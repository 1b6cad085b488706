package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.Camera;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.CounterPanel;
import takeup.panel.FooterKeys;
import takeup.panel.Layout;
import takeup.panel.NamePlates;
import takeup.panel.SettingText;
import takeup.panel.StatusWords;
import takeup.panel.TopBar;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The same facts as large as the screen allows, to be read across a room: camera and film above the counter. */
final class BigCounterView {
    private final Session session;
    private final Grid grid;

    private BigCounterView(Session session, Grid grid) {
        this.session = session;
        this.grid = grid;
    }

    static void draw(Session session, Grid grid) {
        new BigCounterView(session, grid).draw();
    }

    private void draw() {
        TopBar.draw(grid, session);
        int bottom = BottomBars.top(grid, session, 1);
        List<StyledText> words = StatusWords.of(session);
        int plates = Math.min(2, TextFit.plateRows(words, grid.columns()));
        int foot = bottom - plates;
        TextFit.drawPlates(
                grid, words, Layout.of(grid).margin(), foot, Layout.of(grid).room(), plates);
        boolean hasNames = foot >= 14;
        int top = 1;
        if (hasNames) {
            new NamePlates(session, grid).names(Math.max(1, Layout.of(grid).margin()), 1, grid.columns());
            top = Layout.of(grid).isGrand() ? 7 : 5;
        }
        Optional<Roll> roll = session.shown().rollInHand();
        if (roll.isEmpty()) {
            String words2 = session.shown().noFilm(session.shown().placeInHand());
            grid.put(centred(Width.of(words2)), Math.min(foot - 1, top + 2), words2, TextRole.STRONG);
        } else {
            withFilm(roll.get(), top, foot, hasNames);
        }
        BottomBars.draw(grid, session, 1, FooterKeys.List.WHOLE);
    }

    /** The counter, below it what is left and the pair: large where three rows are free for them. */
    private void withFilm(Roll roll, int top, int foot, boolean isTall) {
        int below = isTall ? 5 : 1;
        String number = Integer.toString(roll.next());
        int wide = Math.max(BigText.width("00", 1), BigText.width(number, 1));
        int scale = Math.max(1, Math.min((foot - top - below) / 5, (grid.columns() - 2) / wide));
        CounterPanel.counter(grid, roll, centred(BigText.width(number, scale)), top, scale, 1);
        String pair = pair();
        String left = RollText.left(roll);
        boolean isWrong = ExposureInHand.fault(session.shown()).isPresent();
        if (isTall) {
            String count = Integer.toString(Math.abs(roll.framesLeft()));
            int row = foot - 4;
            int column = 1 + BigText.smallWidth(count) + 2;
            BigText.drawSmall(grid, 1, row, count, TextRole.STRONG);
            int columns = BigText.smallWidth(pair);
            int start = Math.max(column + 6, grid.columns() - columns - 6);
            if (BigText.isDrawable(pair) && start + columns + 3 < grid.columns()) {
                int at = isWrong ? CounterPanel.bars(grid, start, row, columns, 3) : start;
                BigText.drawSmall(grid, at, row, pair, TextRole.READOUT);
            } else {
                grid.put(column + 8, row + 1, pair, isWrong ? TextRole.ALARM : TextRole.READOUT);
            }
        }
        // A pair that is cut, as 1/12 of 1/125, is another pair.
        String counted = left + (pair.isEmpty() ? "" : " · " + pair);
        String line = TextFit.first(grid.columns(), "next frame · " + counted, counted);
        grid.put(centred(Width.of(line)), foot - 1, line, !isTall && isWrong ? TextRole.ALARM : TextRole.STRONG);
    }

    private String pair() {
        boolean isAutomatic =
                session.shown().cameraInHand().map(Camera::isAutomatic).orElse(false);
        return isAutomatic ? "" : SettingText.pair(session).orElse("");
    }

    private int centred(int width) {
        return Math.max(0, (grid.columns() - width) / 2);
    }
}
