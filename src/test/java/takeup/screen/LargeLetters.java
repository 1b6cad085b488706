package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.BigText;

/** Finds words that a picture shows in letters three rows high. */
final class LargeLetters {
    private LargeLetters() {}

    /** Each of these words is in the picture, with nothing of another letter in it or right beside it. */
    static void assertDrawn(Grid picture, String... words) {
        for (String word : words) {
            assertTrue(isDrawn(picture, word), "\"" + word + "\" is not drawn large in\n" + picture);
        }
    }

    static boolean isDrawn(Grid picture, String word) {
        Grid above = Grid.of(BigText.smallWidth(word), 3);
        BigText.drawSmall(above, 0, 0, word, TextRole.NORMAL);
        Grid lower = Grid.of(BigText.smallWidth(word), 3);
        BigText.drawBelowRim(lower, 0, 0, word, TextRole.NORMAL);
        for (int row = 0; row + 3 <= picture.rows(); row++) {
            for (int column = 0; column + above.columns() <= picture.columns(); column++) {
                if (isAt(picture, above, column, row) || isAt(picture, lower, column, row)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isAt(Grid picture, Grid letters, int column, int row) {
        for (int y = 0; y < letters.rows(); y++) {
            for (int x = -1; x <= letters.columns(); x++) {
                boolean isInside = x >= 0 && x < letters.columns();
                String wanted = isInside ? letters.cell(x, y).text() : " ";
                boolean isEdge = column + x < 0 || column + x >= picture.columns();
                if (!isEdge && !picture.cell(column + x, row + y).text().equals(wanted)) {
                    return false;
                }
            }
        }
        return true;
    }
}
