package takeup.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.message.Key;
import takeup.screen.Screen;
import takeup.session.Playing;

/** The first minute as it is seen. */
class GuidePanelTest {
    private static final Playing[] STEPS = {
        Playing.of(),
        Playing.of("cam 645"),
        Playing.of("cam 645", "load cn400"),
        Playing.of("cam 645", "load cn400", "m sky shade")
    };

    @ParameterizedTest(name = "step {0} at {1}x{2} shows {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 80 | 24 | First roll, 1 of 4",
                "1 | 80 | 24 | cam 645      645 reflex, 6x4.5",
                "1 | 80 | 24 | Esc ends the guide",
                "1 | 40 | 12 | 1 of 4: which camera is in your hand?",
                "1 | 40 | 12 | more below: Down goes on",
                "1 | 40 | 12 | cam 35",
                "2 | 80 | 24 | First roll, 2 of 4",
                "2 | 80 | 24 | Colour negative 400, EI 200",
                "2 | 80 | 24 | load cn400 @200",
                "2 | 60 | 20 | load bw400",
                "2 | 120 | 40 | Colour negative 400, EI 200",
                "3 | 80 | 24 | First roll, 3 of 4",
                "3 | 80 | 24 | m 5.6 125",
                "3 | 80 | 24 | m sky snow",
                "3 | 40 | 12 | 3 of 4: m 5.6 125",
                "3 | 80 | 24 | 16 left",
                "4 | 80 | 24 | First roll, 4 of 4",
                "4 | 80 | 24 | Space logs a frame with what is set",
                "4 | 80 | 24 | 4 125 ; bow seat",
                "4 | 40 | 12 | 4 of 4: Space logs a frame",
                "4 | 120 | 40 | f/5.6"
            })
    void eachStepSaysWhatToPressAndWhatToType(int step, int columns, int rows, String words) {
        Playing day = STEPS[step - 1];
        // In a small window what was just said stands over it until the next key.
        String text = text(columns < 60 ? day.press(Key.ctrl('l')) : day, columns, rows);
        assertTrue(text.contains(words), text);
    }

    @Test
    void aHighlightedRowIsMarkedAndSaysWhatItStandsFor() {
        String text = text(
                Playing.of()
                        .press(Key.Name.DOWN)
                        .press(Key.Name.DOWN)
                        .press(Key.Name.DOWN)
                        .press(Key.Name.DOWN),
                80,
                24);
        assertTrue(text.contains("► cam 645 ") && text.contains("Enter does what cam 645 does"), text);
    }

    @Test
    void theLastRowOfAListThatIsTooLongIsSeenOnceItIsHighlighted() {
        Playing day = Playing.of("cam 645");
        for (int i = 0; i < 50; i++) {
            day.press(Key.Name.DOWN);
        }
        for (int[] size : new int[][] {{80, 24}, {40, 12}, {60, 16}, {72, 22}, {120, 40}}) {
            assertTrue(text(day, size[0], size[1]).contains("► load kentmere400"), text(day, size[0], size[1]));
        }
    }

    @Test
    void noWordOfAListIsCutAt80Columns() {
        String films = text(Playing.of("cam 35"), 80, 24);
        assertTrue(films.contains("Chromogenic black-and-white 400, EI 200"), films);
        Playing further = Playing.of("cam 35");
        for (int i = 0; i < 16; i++) {
            further = further.press(Key.Name.DOWN);
        }
        assertTrue(text(further, 80, 24).contains("Kentmere 100, EI 100"), text(further, 80, 24));
        assertTrue(text(Playing.of("cam 35", "load bw400"), 80, 24).contains("open shade on a clear day"));
        String again = text(Playing.medium("4 125", "unload yes"), 80, 24);
        assertTrue(again.contains("Colour negative 400 again"), again);
    }

    @Test
    void theFilmOfBeforeAndWhereItGoesAreWholeAt40Columns() {
        String later = text(Playing.medium("4 125", "unload yes"), 40, 12);
        assertTrue(
                later.contains("Which film goes into 645 back 1?") && later.contains("Colour negative 400 again"),
                later);
    }

    @Test
    void onceAFrameIsLoggedOrItWasSentAwayNothingOfItIsLeft() {
        assertFalse(text(Playing.medium("4 125"), 80, 24).contains("of 4"));
        assertFalse(text(Playing.medium().press(Key.Name.ESCAPE).press(Key.Name.ESCAPE), 80, 24)
                .contains("of 4"));
        String later = text(Playing.medium("4 125", "unload yes"), 80, 24);
        assertTrue(later.contains("No film in 645 back 1. Which one goes in?") && later.contains("load cn400"), later);
        assertEquals(-1, later.indexOf("First roll"));
    }

    private static String text(Playing day, int columns, int rows) {
        return Screen.render(day.shoot(), columns, rows).text();
    }
}
