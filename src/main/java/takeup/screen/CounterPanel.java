package takeup.screen;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.day.BulbTimer;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.lettering.BigText;
import takeup.report.ExposuresText;
import takeup.report.RollText;
import takeup.report.SetupText;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.session.Session;
import takeup.text.Width;

/** The number of the next frame, what is left, the pair to set or the running timer, and what the pair comes to. */
final class CounterPanel {
    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Layout layout;
    private final int scale;

    CounterPanel(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.scale = layout.counterScale();
    }

    /** Draws it from a row on; answers the row after it. */
    int draw(Roll roll, int row) {
        String number = Integer.toString(roll.next());
        int left = Math.max(1, layout.margin());
        BigText.draw(grid, left, row, number, scale, TextRole.READOUT);
        int column = left + Math.max(BigText.width("00", scale), BigText.width(number, scale)) + 3;
        grid.put(column, row, "next frame", TextRole.LABEL);
        grid.put(column, row + 1, RollText.left(roll), TextRole.READOUT);
        grid.put(column, row + 2, "of " + roll.film().framesNominal(), TextRole.QUIET);
        if (roll.doubleAwaited()) {
            String count =
                    ExposuresText.count(roll, roll.newest().orElseThrow()).orElse("");
            grid.put(column, row + 3, "DOUBLE", TextRole.CAUTION);
            grid.put(column, row + 4, count, TextRole.CAUTION);
        }
        int right = column + Math.max(13, Width.of(RollText.left(roll)) + 3);
        return Math.max(row + 5 * scale, setting(roll, right, row));
    }

    /** What to set; answers the row after it. */
    private int setting(Roll roll, int column, int row) {
        int below = row + (layout.isAiry() ? 6 : 3);
        Setting setting = state.inHand().setting();
        Optional<BulbTimer> timer = state.timerInHand();
        if (timer.isPresent()) {
            large(SettingText.elapsed(timer.get(), session), column, row);
            String text = SettingText.timer(timer.get(), session);
            grid.put(column, below, Width.cut(text, layout.columns() - column), TextRole.STRONG);
        } else if (state.cameraInHand().map(Camera::isAutomatic).orElse(false)) {
            grid.put(column, row, "sets itself", TextRole.LABEL);
            return row;
        } else if (setting.aperture().isEmpty() && setting.time().isEmpty()) {
            grid.put(column, row, "nothing set", TextRole.LABEL);
            String example = SetupText.example(state);
            String hint = session.choices().isEmpty()
                    ? "type " + example + ", or a reading: m 5.6 125"
                    : "Down and Enter take one below; or type " + example;
            grid.put(column, row + 1, Width.cut(hint, layout.right() - column), TextRole.QUIET);
            return row;
        } else {
            String aperture = setting.aperture().map(Object::toString).orElse("-");
            large(aperture + " " + setting.time().map(Object::toString).orElse("-"), column, row);
            sum(roll, column, below);
        }
        return below + 2;
    }

    /** What the setting comes to in this light: in words, as a bar, and what the sum is made of. */
    private void sum(Roll roll, int column, int row) {
        int room = layout.right() - column;
        boolean hasRuler = scale > 1;
        int end = grid.put(column, row, Width.cut(SettingText.error(state), room), TextRole.STRONG);
        OptionalDouble sum = ExposureBar.sum(state);
        if (sum.isPresent() && hasRuler) {
            ExposureBar.of(roll, sum.getAsDouble()).ruler(grid, column, row + 1, room);
        } else if (sum.isPresent()) {
            ExposureBar.of(roll, sum.getAsDouble()).inline(grid, end + 2, row, layout.right() - end - 2);
        }
        SettingText.sum(state, room).ifPresent(it -> grid.put(column, row + (hasRuler ? 3 : 1), it, TextRole.NORMAL));
    }

    /** As large as fits: five rows, three, or plain letters in the middle of the three. */
    private void large(String text, int column, int row) {
        int room = layout.right() - column;
        boolean isDrawable = text.indexOf('+') < 0;
        if (layout.isAiry() && isDrawable && BigText.width(text, 1) <= room) {
            BigText.draw(grid, column, row, text, 1, TextRole.READOUT);
        } else if (isDrawable && BigText.smallWidth(text) <= room) {
            BigText.drawSmall(grid, column, row, text, TextRole.READOUT);
        } else {
            grid.put(column, row + 1, Width.cut(text.replace(" ", "  "), room), TextRole.READOUT);
        }
    }
}
