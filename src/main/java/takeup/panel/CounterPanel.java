package takeup.panel;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.ExposureInHand;
import takeup.advice.StandingWarnings;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.lettering.BigText;
import takeup.lettering.TextFit;
import takeup.report.ExposuresText;
import takeup.report.RollText;
import takeup.report.SetupText;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.session.Session;
import takeup.text.Plain;
import takeup.text.Width;

/** The number of the next frame, what is left, the pair to set, and what the pair comes to. */
public final class CounterPanel {
    private static final int GAP = 3;
    /** Columns of what is left, with its words: {@code 10 left of 16}. */
    private static final int LEFT = 13;

    private final Session session;
    private final ShootState state;
    private final Optional<Suggestions> advice;
    /** Stops above box speed that the pair in hand comes to; empty where that is not known. */
    private final OptionalDouble overBox;

    private final Grid grid;
    private final Layout layout;
    private final int scale;

    public CounterPanel(Session session, Optional<Suggestions> advice, Grid grid) {
        this.state = session.shown();
        this.advice = advice;
        this.session = session;
        this.overBox = ExposureInHand.overBox(state);
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.scale = layout.counterScale();
    }

    /** Draws it from a row on; answers the row after it. */
    public int draw(Roll roll, int row) {
        int column = counter(grid, roll, Math.max(1, layout.margin()), row, scale, 2) + GAP;
        int high = Math.max(5, 5 * scale);
        left(roll, column, row, high);
        setting(roll, column + Math.max(LEFT, Width.of(RollText.left(roll)) + 1) + GAP - 1, row);
        return row + high;
    }

    /**
     * The number of the next frame, 5 * scale rows high; at the end of the roll a plate in its place, since there is no
     * next frame. Answers the column after it, or after so many digits.
     */
    public static int counter(Grid grid, Roll roll, int column, int row, int scale, int digits) {
        if (roll.framesLeft() <= 0) {
            int wide = plateWidth(scale);
            for (int y = 0; y < 5 * scale; y++) {
                grid.fill(column, row + y, wide, TextRole.ALARM);
            }
            if (scale == 1) {
                BigText.drawSmall(grid, column + 2, row + 1, "END", TextRole.ALARM);
            } else {
                BigText.draw(grid, column + 2, row + 2 + scale / 3, "END", scale - 1, TextRole.ALARM);
            }
            return column + wide;
        }
        String number = Integer.toString(roll.next());
        BigText.draw(grid, column, row, number, scale, TextRole.READOUT);
        return column + Math.max(BigText.width("0".repeat(digits), scale), BigText.width(number, scale));
    }

    private static int plateWidth(int scale) {
        return scale == 1 ? BigText.smallWidth("END") + 4 : BigText.width("END", scale - 1) + 4;
    }

    private void left(Roll roll, int column, int row, int high) {
        int left = roll.framesLeft();
        left(session, roll, grid, column, row);
        int foot = row + high - 2;
        if (left <= 0) {
            int nominal = roll.film().framesNominal();
            grid.put(column, foot, RollText.left(roll), TextRole.READOUT);
            grid.put(column, foot + 1, "END " + nominal + "/" + nominal, TextRole.STRONG);
            return;
        }
        int after = grid.put(column, foot, RollText.left(roll), TextRole.READOUT);
        grid.put(after, foot, " of " + roll.film().framesNominal(), TextRole.LABEL);
        if (roll.doubleAwaited()) {
            String count =
                    ExposuresText.count(roll, roll.newest().orElseThrow()).orElse("");
            grid.put(column, foot + 1, "DOUBLE " + count, TextRole.CAUTION);
        } else {
            grid.put(column, foot + 1, "next frame", TextRole.LABEL);
        }
    }

    /** How many frames are left, between bars where they are few. Answers the column after it. */
    public static int left(Session session, Roll roll, Grid grid, int column, int row) {
        int left = roll.framesLeft();
        String number = left < 0 ? "+" + -left : Integer.toString(left);
        boolean isLarge = Layout.of(grid).counterScale() > 1;
        int wide = isLarge ? BigText.width(number, 1) : BigText.smallWidth(number);
        TextRole role = left > 0 ? TextRole.STRONG : TextRole.READOUT;
        if (isFewLeft(session)) {
            for (int y = 0; y < (isLarge ? 5 : 3); y++) {
                grid.fill(column - 2, row + y, 1, TextRole.CAUTION);
                grid.fill(column + wide + 1, row + y, 1, TextRole.CAUTION);
            }
        }
        if (isLarge) {
            BigText.draw(grid, column, row, number, 1, role);
        } else {
            BigText.drawSmall(grid, column, row, number, role);
        }
        return column + wide;
    }

    /** Whether few frames are left, so that their number stands between bars. */
    static boolean isFewLeft(Session session) {
        return StandingWarnings.of(session.shown(), session.now()).contains(Warning.Code.FRAMES_LEFT);
    }

    /** What to set. */
    private void setting(Roll roll, int column, int row) {
        int below = row + (layout.isAiry() ? 6 : 3);
        int room = layout.right() - column;
        Setting setting = state.inHand().setting();
        if (state.cameraInHand().isPresent() && state.cameraInHand().get().isAutomatic()) {
            grid.put(column, row + 1, "sets itself", TextRole.READOUT);
        } else if (setting.aperture().isEmpty() && setting.time().isEmpty()) {
            grid.put(column, row, "nothing set", TextRole.READOUT);
            String example = SetupText.example(state);
            String hint = advice.isEmpty() || advice.get().suggestions().isEmpty()
                    ? "type " + example + ", or a reading: m 5.6 125"
                    : "Down and Enter take one below; or type " + example;
            int line = row + 1;
            for (String part : TextFit.rows(hint, room, 3)) {
                grid.put(column, line++, part, TextRole.QUIET);
            }
        } else {
            String aperture = Plain.textOr(setting.aperture(), "-");
            Optional<Warning> fault = ExposureInHand.fault(state);
            String pair = aperture + " " + Plain.textOr(setting.time(), "-");
            PairFigures.Pair kind = fault.isPresent() ? PairFigures.Pair.WRONG : PairFigures.Pair.RIGHT;
            new PairFigures(grid, column, row, room, kind)
                    .draw(pair, layout.isAiry() ? PairFigures.Height.FIVE_ROWS : PairFigures.Height.THREE_ROWS);
            int line = layout.isAiry() ? below - 1 : below;
            if (roll.framesLeft() <= 0) {
                end(roll, column, line);
            } else if (fault.isPresent()) {
                wrong(roll, fault.get(), column, line);
            } else {
                sum(roll, column, line);
            }
        }
    }

    private void end(Roll roll, int column, int row) {
        String past = roll.framesLeft() < 0 ? "Frames past the end may be cut off." : "The roll is full.";
        int line = row;
        for (String part : TextFit.rows(past + " Rewind or wind off, then unload.", layout.right() - column, 2)) {
            grid.put(column, line++, part, TextRole.STRONG);
        }
    }

    /** What is wrong with the pair, and the one that would do. */
    private void wrong(Roll roll, Warning fault, int column, int row) {
        int room = layout.right() - column;
        int at = grid.put(column, row, TextFit.plate(fault.code().standing()).text(), TextRole.CAUTION);
        String error = SettingText.error(state);
        String remedy = SettingText.instead(advice);
        String both = remedy + (remedy.isEmpty() || error.isEmpty() ? "" : " · ") + error;
        String brief = remedy.isEmpty() ? error : remedy;
        grid.put(at + 1, row, TextFit.first(room - (at + 1 - column), both, brief), TextRole.STRONG);
        bar(roll, column, row + 1, room);
        if (layout.isAiry() || overBox.isEmpty()) {
            int line = layout.isAiry() ? row + 3 : row + 1;
            grid.put(column, line, Width.cut(fault.text(), room), TextRole.NORMAL);
        }
    }

    /** What the setting comes to in this light: in words, as a bar, and what the sum is made of. */
    private void sum(Roll roll, int column, int row) {
        int room = layout.right() - column;
        int end = grid.put(column, row, Width.cut(SettingText.error(state), room), TextRole.STRONG);
        if (layout.isAiry()) {
            bar(roll, column, row + 1, room);
        } else if (overBox.isPresent()) {
            bar(roll, end + 2, row, layout.right() - end - 2);
        }
        int below = layout.isAiry() ? row + (scale > 1 ? 3 : 2) : row + 1;
        Optional<String> sum = SettingText.sum(state, room);
        if (sum.isPresent()) {
            grid.put(column, below, sum.get(), TextRole.NORMAL);
        }
    }

    private void bar(Roll roll, int column, int row, int room) {
        if (overBox.isPresent() && scale > 1) {
            ExposureBar.of(roll, overBox.getAsDouble()).ruler(grid, column, row, room);
        } else if (overBox.isPresent()) {
            ExposureBar.of(roll, overBox.getAsDouble()).inline(grid, column, row, room);
        }
    }
}
