package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.RandomKeys;

/** What stands above the prompt is not drawn for each key, and looks as if it were. */
class KeptBodyTest {
    private static final Size LARGE = new Size(120, 40);

    private final Screen screen = new Screen();

    @Test
    void afterAnyKeyThePictureIsTheOneThatIsDrawnAfresh() {
        Random random = new Random(20_261_129);
        Playing day = States.busy();
        for (int i = 0; i < 4_000; i++) {
            if (i % 500 == 0 || day.isOver()) {
                day = random.nextBoolean() ? States.busy() : Playing.two("m 5.6 125", "4 125 x3");
            }
            if (random.nextInt(60) == 0) {
                day.disk(Playing.Disk.values()[random.nextInt(3)]);
            }
            // Either no time passes, or as much as the screen waits between two pictures.
            day.after(random.nextInt(4) == 0 ? 1000 : 0, RandomKeys.any(random));
            Size size = random.nextInt(50) == 0 ? LARGE : Size.USUAL;
            isAlike(Screen.render(day.shoot(), size.columns(), size.rows()), picture(day, size), "key " + i);
        }
    }

    @Test
    void theTimeInItIsAsOldAsWithoutAKeyAndNoOlder() {
        Playing day = Playing.at("2026-09-12T15:00:59.400+02:00");
        assertTrue(picture(day, Size.USUAL).text().contains("15:00"));
        day.after(700, Key.typed("c"));
        Grid kept = picture(day, Size.USUAL);
        assertTrue(kept.text().contains("15:00") && kept.text().contains("> c"), kept.text());
        day.after(300, Key.typed("a"));
        assertTrue(picture(day, Size.USUAL).text().contains("15:01"));
    }

    @Test
    void whatWasSaidOverItIsGoneWithTheNextKey() {
        Playing day = Playing.medium("m 5.6 125", "why");
        String said = picture(day, Size.USUAL).text();
        day.after(0, Key.typed("4"));
        String typed = picture(day, Size.USUAL).text();
        assertFalse(typed.equals(said));
        assertEquals(Screen.render(day.shoot(), 80, 24).text(), typed);
    }

    private Grid picture(Playing day, Size size) {
        return screen.picture(day.shoot(), size.columns(), size.rows(), PixelShape.HALF_CELL);
    }

    private static void isAlike(Grid fresh, Grid kept, String which) {
        assertEquals(fresh.text(), kept.text(), which);
        assertEquals(fresh.cursorColumn(), kept.cursorColumn(), which);
        assertEquals(fresh.cursorRow(), kept.cursorRow(), which);
        for (int row = 0; row < fresh.rows(); row++) {
            int at = row;
            assertTrue(fresh.isRowOf(kept, row), () -> which + ", row " + at);
            assertTrue(kept.isUncertain(row) || !fresh.isUncertain(row), () -> which + ", row " + at);
        }
    }
}
