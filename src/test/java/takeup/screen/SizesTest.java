package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.message.Message;
import takeup.report.RollText;
import takeup.session.Session;
import takeup.session.Update;
import takeup.text.Hidden;
import takeup.text.Width;

/** Whatever the terminal's size and the moment of the day: a whole picture, and the frames that are left. */
@Tag("slow")
class SizesTest {
    private static final long SEED = 12_09;
    /** Where one layout gives way to another, and the cells around it. */
    private static final int[] COLUMNS = {1, 2, 20, 39, 40, 71, 72, 80, 100, 200};

    private static final int[] FEW = {1, 20, 40, 80, 120};
    private static final int[] ROWS = {1, 2, 3, 11, 12, 14, 21, 22, 24, 34, 60};

    static List<String> moments() {
        return States.names();
    }

    @ParameterizedTest(name = "{0}: every row of every picture is as wide as the terminal")
    @MethodSource("moments")
    void atEverySizeThePictureIsWhole(String moment) {
        for (Session.Page page : Session.Page.values()) {
            Session shoot = States.on(page, moment);
            for (Size size : sizes(
                    page.ordinal(), page == Session.Page.SHOOT ? COLUMNS : FEW, page == Session.Page.SHOOT ? 40 : 12)) {
                String where = moment + " on " + page + " at " + size.columns() + "x" + size.rows();
                Grid grid = Screen.render(shoot, size.columns(), size.rows());
                assertEquals(size.columns(), grid.columns());
                assertEquals(size.rows(), grid.rows());
                for (int row = 0; row < grid.rows(); row++) {
                    int width = 0;
                    for (int column = 0; column < grid.columns(); column++) {
                        String cell = grid.cell(column, row).text();
                        assertEquals(Hidden.shown(cell), cell, where);
                        width += cell.isEmpty() ? 0 : Width.of(cell);
                    }
                    assertEquals(size.columns(), width, where + ", row " + row);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}: how many are left can be read from 20x1 up")
    @MethodSource("moments")
    void framesLeftStandAsTextAtEverySize(String moment) {
        // What was said last may have the number in it, and is soon followed by something else.
        Session shoot = Update.update(States.of(moment), new Message.Notice("the export could not be written"))
                .session();
        boolean isLong =
                shoot.shown().rollInHand().map(it -> it.framesLeft() < 0).orElse(false);
        for (Size size : sizes(9, COLUMNS, 40)) {
            if (size.columns() >= (isLong ? 28 : 20)
                    && (size.rows() >= 13 || !shoot.view().big())) {
                String text = Screen.render(shoot, size.columns(), size.rows()).text();
                String left = shoot.shown().rollInHand().map(RollText::left).orElse("");
                int count = shoot.shown()
                        .rollInHand()
                        .map(it -> Math.abs(it.framesLeft()))
                        .orElse(0);
                boolean isLarge = LargeLetters.isDrawn(Screen.render(shoot, size.columns(), size.rows()), "" + count);
                assertTrue(
                        text.contains(left) || isLarge,
                        "at " + size.columns() + "x" + size.rows() + " \"" + left + "\" is missing:\n" + text);
            }
        }
    }

    @ParameterizedTest(name = "{0}: from 40x12 up the cursor stands on the prompt")
    @MethodSource("moments")
    void theCursorStandsWhereTypingGoesOn(String moment) {
        for (Session.Page page : Session.Page.values()) {
            Session shoot = States.on(page, moment);
            for (Size size : sizes(5, FEW, 5)) {
                if (size.columns() >= 40 && size.rows() >= 12) {
                    Grid grid = Screen.render(shoot, size.columns(), size.rows());
                    assertEquals(size.rows() - 2, grid.cursorRow(), moment + " at " + size);
                    assertFalse(grid.cursorColumn() < 2, moment + " at " + size);
                }
            }
        }
    }

    private static Set<Size> sizes(int salt, int[] allColumns, int more) {
        Set<Size> sizes = new LinkedHashSet<>();
        for (int columns : allColumns) {
            for (int rows : allColumns == FEW ? new int[] {1, 3, 12, 24, 40} : ROWS) {
                sizes.add(new Size(columns, rows));
            }
        }
        Random random = new Random(SEED + salt);
        for (int i = 0; i < more; i++) {
            sizes.add(new Size(1 + random.nextInt(200), 1 + random.nextInt(60)));
        }
        return sizes;
    }
}
