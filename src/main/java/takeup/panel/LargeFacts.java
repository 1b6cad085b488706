package takeup.panel;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/**
 * All that is read from where the camera is, in the ten rows that the smallest shoot screen has for it: camera and
 * film; the counter, the frames left and the most urgent warning; the pair. Where words have room beside or below the
 * counter they say the rest.
 */
public final class LargeFacts {
    /** How many rows they take. */
    public static final int ROWS = 10;

    private static final int COUNTER = 3;
    /** The row below the counter: words, and the lower rim of the warning. */
    private static final int WORDS = COUNTER + 3;

    private static final int PAIR = WORDS + 1;
    /** Columns in which a plate has some letters. */
    private static final int LEAST = 10;
    /** Columns in which the words beside the counter are whole. */
    private static final int WORDS_ROOM = 12;
    /** Columns that are added between the counter and the frames left where there is room. */
    private static final int APART = 4;

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Roll roll;
    private final boolean isAutomatic;
    private final Optional<Warning> fault;
    private Optional<WarningPlate> warning = Optional.empty();

    /** Those of a roll that is in hand. */
    public LargeFacts(Session session, Grid grid, Roll roll) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.roll = roll;
        Optional<Camera> camera = state.cameraInHand();
        this.isAutomatic = camera.isPresent() && camera.get().isAutomatic();
        this.fault = isAutomatic ? Optional.empty() : ExposureInHand.fault(state);
    }

    /**
     * Draws them from the first row on; answers whether the names were drawn.
     *
     * @param end the row at which what is said begins: half of a figure tells nothing, so what would be cut is in plain
     *     letters
     */
    public boolean draw(int end) {
        if (end <= WORDS) {
            String pair =
                    isAutomatic ? "sets itself" : SettingText.pair(session).orElse("nothing set");
            String words = "frame " + roll.next() + " · " + RollText.left(roll) + " · " + pair;
            grid.put(0, end - 1, end > 1 ? Width.cut(words, grid.columns()) : "", TextRole.READOUT);
        }
        if (end <= COUNTER) {
            return false;
        }
        Optional<NameLine> names = NameLine.of(state, grid.columns());
        if (names.isPresent()) {
            names.get().draw(grid, 0, 0, grid.columns());
        }
        if (end > WORDS) {
            counter();
            pair(end);
        }
        return names.isPresent();
    }

    private void counter() {
        boolean isFull = roll.framesLeft() <= 0;
        int at = isFull ? end() : next(0);
        warning = WarningPlate.withPair(session, fault, grid.columns() - at - 1);
        int spare =
                grid.columns() - at - 1 - (warning.isPresent() ? warning.get().width() : WORDS_ROOM);
        if (!isFull && spare > 0) {
            clear();
            at = next(Math.min(spare, APART));
        }
        if (isFull && warning.isEmpty() && WarningPlate.isNotSaved(session)) {
            clear();
            at = endWithoutBars();
            warning = WarningPlate.withPair(session, fault, grid.columns() - at - 1);
        }
        if (warning.isPresent()) {
            int column = grid.columns() - warning.get().width();
            warning.get().draw(grid, column, COUNTER);
            below(column - 1);
        } else {
            beside(at + 1);
            below(grid.columns());
        }
    }

    private void clear() {
        for (int row = COUNTER; row < WORDS; row++) {
            grid.fill(0, row, grid.columns(), TextRole.NORMAL);
        }
    }

    /**
     * The number of the next frame and how many are left, apart as far as there is room, so that they are never read as
     * one; answers the column after them.
     */
    private int next(int more) {
        String number = Integer.toString(roll.next());
        BigText.drawSmall(grid, 0, COUNTER, number, TextRole.READOUT);
        int bars = CounterPanel.isFewLeft(session) ? 2 : 0;
        return CounterPanel.left(session, roll, grid, BigText.smallWidth(number) + 3 + more, COUNTER) + bars;
    }

    /** The end of the roll in place of the counter, and how many frames are past it. */
    private int end() {
        int start = PairFigures.thinBars(grid, 1, COUNTER, BigText.smallWidth("END"), 3);
        BigText.drawSmall(grid, start, COUNTER, "END", TextRole.READOUT);
        return CounterPanel.left(session, roll, grid, start + BigText.smallWidth("END") + 3, COUNTER);
    }

    private int endWithoutBars() {
        BigText.drawSmall(grid, 0, COUNTER, "END", TextRole.READOUT);
        return CounterPanel.left(session, roll, grid, BigText.smallWidth("END") + 1, COUNTER);
    }

    /** The same in words, and how far the pair is off. */
    private void beside(int column) {
        int room = grid.columns() - column;
        boolean isFull = roll.framesLeft() <= 0;
        int nominal = roll.film().framesNominal();
        grid.put(column, COUNTER, Width.cut(RollText.left(roll), room), TextRole.READOUT);
        String next =
                isFull ? TextFit.first(room, "END " + nominal + "/" + nominal + ", unload", "unload") : "next frame";
        grid.put(column, COUNTER + 1, Width.cut(next, room), isFull ? TextRole.STRONG : TextRole.LABEL);
        grid.put(column, COUNTER + 2, error(room), TextRole.NORMAL);
    }

    /** The error is that of the setting in hand: it says nothing of this frame where the camera is automatic. */
    private String error(int room) {
        return isAutomatic ? "" : TextFit.first(room, SettingText.error(state), SettingText.errorBriefly(state));
    }

    /**
     * The pair that would do, and what else is not neutral, on one row; without either the frames left in words, where
     * they have no other place.
     */
    private void below(int room) {
        if (SmallBars.isBelowCounter(session)) {
            MessageBar.drawFirst(grid, session, 0, WORDS, room - 1);
            return;
        }
        List<StyledText> words = StatusWords.beside(session, warning);
        String instead = fault.isPresent() ? SettingText.instead(session.advice()) : "";
        int at = 0;
        if (!instead.isEmpty() && Width.of(instead) <= room) {
            at = grid.put(0, WORDS, instead, TextRole.STRONG) + 2;
        }
        if (!words.isEmpty() && room - at >= LEAST) {
            TextFit.drawPlates(grid, words, at, WORDS, room - at, 1);
        } else if (at == 0 && warning.isPresent()) {
            String left = RollText.left(roll);
            String error = isAutomatic ? "" : SettingText.errorBriefly(state);
            grid.put(0, WORDS, TextFit.first(room, left + "  " + error, left), TextRole.READOUT);
        }
    }

    private void pair(int end) {
        Optional<String> pair = isAutomatic ? Optional.empty() : SettingText.pair(session);
        boolean isWhole = end >= PAIR + 3;
        int row = Math.min(PAIR + (isWhole ? 1 : 0), end - 1);
        if (isAutomatic && isWhole) {
            BigText.drawSmall(grid, 1, PAIR, "AUTO", TextRole.READOUT);
            grid.put(BigText.smallWidth("AUTO") + 4, row, "sets itself", TextRole.READOUT);
        } else if (pair.isEmpty()) {
            grid.put(1, PAIR, isAutomatic ? "sets itself" : "nothing set", TextRole.READOUT);
            if (end > PAIR + 1) {
                grid.put(
                        1,
                        PAIR + 1,
                        Width.cut(GuidePanel.line(session).orElse(""), grid.columns() - 1),
                        TextRole.STRONG);
            }
        } else if (isWhole) {
            PairFigures.Pair kind = fault.isPresent() ? PairFigures.Pair.WRONG : PairFigures.Pair.RIGHT;
            new PairFigures(grid, 1, PAIR, grid.columns() - 1, kind).draw(pair.get(), PairFigures.Height.THREE_ROWS);
        } else {
            for (int over = row; over < PAIR + 3; over++) {
                grid.fill(over, TextRole.NORMAL);
            }
            String plate = Width.cut(" " + pair.get() + " ", grid.columns() - 1);
            grid.put(1, row, plate, fault.isPresent() ? TextRole.ALARM : TextRole.NAME);
        }
    }
}
