package takeup.screen;

import takeup.day.BulbTimer;
import takeup.exposure.ExposureTime;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.BigText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.Layout;
import takeup.panel.SettingText;
import takeup.panel.TopBar;
import takeup.session.Session;

/**
 * The bulb timer across the whole screen: the seconds that are left, a bar of what has passed, and the key that closes.
 * Once the time is over it turns over, and counts how late it is.
 */
final class TimerView {
    /** Rows of the figures where there is room for them. */
    private static final int FIGURES = 12;

    private static final String CLOSE = "CLOSE";

    private final Session session;
    private final Grid grid;
    private final BulbTimer timer;

    TimerView(Session session, Grid grid, BulbTimer timer) {
        this.session = session;
        this.grid = grid;
        this.timer = timer;
    }

    void draw() {
        TopBar.draw(grid, session);
        double elapsed = timer.elapsed(session.now());
        boolean isOpen = timer.targetSeconds().isEmpty();
        double target = timer.targetSeconds().orElse(0);
        long left = (long) Math.ceil(target - elapsed - 1e-9);
        boolean isOver = !isOpen && left <= 0;
        int bottom = BottomBars.top(grid, session, 1);
        String figures = isOpen ? Long.toString((long) elapsed) : Long.toString(isOver ? -left : left);
        int top = grid.rows() >= 22 ? 2 : 1;
        if (isOver && grid.rows() >= 24) {
            top = 5;
        }
        int rows = Math.max(3, Math.min(FIGURES * (grid.rows() >= 36 ? 2 : 1), bottom - top - 3));
        String large = isOver ? "+" + figures : figures;
        if (isOver) {
            for (int row = 1; row < top + rows + 1; row++) {
                grid.fill(row, TextRole.ALARM);
            }
        }
        if (top == 5) {
            BigText.drawSmall(grid, (grid.columns() - BigText.smallWidth(CLOSE)) / 2, 1, CLOSE, TextRole.ALARM);
        }
        boolean isBeside = isOver && top < 5 && grid.columns() >= 2 * BigText.smallWidth(CLOSE) - 4;
        if (isBeside) {
            BigText.drawSmall(grid, 1, top + (rows - 3) / 2, CLOSE, TextRole.ALARM);
        }
        int start = isBeside ? BigText.smallWidth(CLOSE) + 2 : 0;
        figures(large, start, top, rows, isOver ? TextRole.ALARM : TextRole.READOUT);
        int below = top + rows + 1;
        bar(isOpen || isOver ? 1 : Math.min(1, elapsed / target), isOpen, below);
        words(elapsed, target, isOpen, isOver, below + 1);
        BottomBars.drawStill(grid, session);
    }

    private void figures(String text, int left, int top, int rows, TextRole role) {
        int high = rows;
        int room = grid.columns() - left;
        while (high > 3 && BigText.tallWidth(text, high) > room - 2) {
            high--;
        }
        int column = left + Math.max(0, (room - BigText.tallWidth(text, high)) / 2);
        BigText.drawTall(grid, column, top + (rows - high) / 2, text, high, role);
    }

    private void bar(double share, boolean isOpen, int row) {
        Layout layout = Layout.of(grid);
        int margin = Math.max(1, layout.margin());
        int width = grid.columns() - 2 * margin;
        if (!isOpen) {
            grid.put(margin, row, "─".repeat(width), TextRole.QUIET);
            grid.put(margin, row, "█".repeat((int) Math.round(width * share)), TextRole.READOUT);
        }
    }

    private void words(double elapsed, double target, boolean isOpen, boolean isOver, int row) {
        String passed = SettingText.elapsed(timer, session);
        String planned = ExposureTime.words(target);
        String words;
        if (isOver) {
            words = "CLOSE +" + (long) Math.max(0, elapsed - target) + " s · " + planned + " are over · Space closes";
        } else if (isOpen) {
            words = passed + " open · Space closes";
        } else {
            words = "s left · " + passed + " of " + planned + " · Space closes";
        }
        String text = TextFit.first(grid.columns() - 2, words, words.replace(" · ", ", "), "Space closes");
        int column = Math.max(1, (grid.columns() - text.length()) / 2);
        grid.put(column, row, isOver ? " " + text + " " : text, isOver ? TextRole.CAUTION : TextRole.STRONG);
    }
}
