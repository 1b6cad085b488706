package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.BigText;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.Session;

/** At 40 by 12 camera, film, counter, frames left, the pair and the most urgent warning are large letters. */
class LargeFactsTest {
    private static final String TWO_BACKS =
            "cam 645 2; load bw100 @80; routine skip; cam 645 1; load cn400 @200; " + "routine skip; m 5.6 60";

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            4 125 x3                                       | 645·1; CN400; 4; 13; f/4 1/125
            5.6 60 x13                                     | 645·1; CN400; 14; 3; f/5.6 1/60; LEFT
            5.6 60 x13; plan 15:09 Start wants 12          | 645·1; CN400; 14; 3; f/5.6 1/60; 9 MIN
            5.6 60 x5; set 2.8 8                           | 645·1; CN400; 6; 11; f/2.8 1/8; DENSE
            5.6 60 x13; set 2.8 8                          | 645·1; CN400; 14; 3; f/2.8 1/8; DENSE
            5.6 60 x16                                     | 645·1; CN400; END; 0; f/5.6 1/60; LEFT
            5.6 60 x16; 5.6 60 x2; yes                     | 645·1; CN400; END; +2; f/5.6 1/60
            set 5.6+3/10 60                                | 645·1; CN400; 1; 16; 5.6
            4 125; set 5.6+3/10 500                        | 645·1; CN400; 2; 15; THIN
            cam 645 2; 4 125                               | 645·2; BW100; 2; 15; f/4 1/125
            cam 35; load kentmere400; routine skip; 2.8 60 | 35; KENT400; 2; 35; 2.8 1/60; DENSE
            cam 645leaf; load cn400; routine skip; 4 125   | 645L; CN400; 2; 15; f/4 1/125
            cam compact; load cn400; routine skip; . x3    | COMP; CN400; 4; 33; AUTO
            """)
    void eachIsThere(String lines, String words) {
        Playing day = Playing.of(TWO_BACKS.split("; ")).lines(lines.split("; "));
        String[] wanted = words.split("; ");
        Grid picture = Screen.render(day.press(Key.ctrl('l')).shoot(), 40, 12);
        LargeLetters.assertDrawn(picture, wanted);
        Grid big = Screen.render(day.press(Key.Name.F10).press(Key.ctrl('l')).shoot(), 40, 12);
        LargeLetters.assertDrawn(big, wanted);
        assertFalse(big.text().equals(picture.text()), "the view changes its words, so that F10 is seen to act");
    }

    @Test
    void whatIsNotSavedComesBeforeAllAndIsToldInTheLastRows() {
        Playing day = Playing.of(TWO_BACKS.split("; "))
                .lines("5.6 60 x13")
                .disk(Playing.Disk.FULL)
                .space();
        Grid picture = Screen.render(day.shoot(), 40, 12);
        LargeLetters.assertDrawn(picture, "645·1", "CN400", "14", "3", "f/5.6 1/60", "DISK");
        String[] rows = picture.text().split("\n");
        assertTrue(rows[10].contains("the disk is full; free some space"), picture.text());
        assertEquals("NOT SAVED: Frame 14 on R0002", rows[11]);
        assertEquals(TextRole.ALARM, picture.role(39, 11));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"4 125", "5.6 60 x9", "set 2.8 8", "5.6 60 x9; set 2.8 8", "5.6 60 x2; clock"})
    void counterAndFramesLeftAreNeverReadAsOne(String lines) {
        Playing day = Playing.of("cam 35", "load cn400", "routine skip", "m 5.6 60", "4 125");
        day.lines(lines.split("; ")).press(Key.ctrl('l'));
        Grid picture = Screen.render(day.shoot(), 40, 12);
        String number = day.shoot().shown().rollInHand().orElseThrow().next() + "";
        int start = BigText.smallWidth(number);
        for (int row = 3; row < 6; row++) {
            for (int column = start; column < start + 3; column++) {
                assertEquals(" ", picture.cell(column, row).text(), picture.text());
            }
        }
    }

    @Test
    void atTheEndOfTheRollToo() {
        Playing day = Playing.of(TWO_BACKS.split("; "))
                .lines("5.6 60 x18", "yes")
                .disk(Playing.Disk.FULL)
                .space();
        LargeLetters.assertDrawn(Screen.render(day.shoot(), 40, 12), "CN400", "END", "+2", "f/5.6 1/60", "DISK");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"why", "status", "flash on"})
    void aLongAnswerLeavesThemWholeAndMoreShowsAllOfIt(String line) {
        Playing day = Playing.of(TWO_BACKS.split("; ")).lines("5.6 60 x13", line);
        Grid picture = Screen.render(day.shoot(), 40, 12);
        LargeLetters.assertDrawn(picture, "645·1", "CN400", "14", "3", "f/5.6 1/60");
        assertTrue(picture.text().contains("… more"), picture.text());
        Session more = day.lines("more").shoot();
        String said = day.said().split("\n")[0];
        String start = said.substring(0, Math.min(60, said.length()));
        String text = Screen.render(more, 40, 12).text().replaceAll("\\s+", " ");
        assertTrue(text.contains(start), text);
        LargeLetters.assertDrawn(Screen.render(day.press(Key.ctrl('l')).shoot(), 40, 12), "f/5.6 1/60");
    }

    @Test
    void aCautionOfAFlashIsSeenBeforeWhatWasAnswered() {
        Playing day = Playing.of(TWO_BACKS.split("; ")).lines("4 125", "flash on");
        assertTrue(Screen.render(day.shoot(), 40, 12).text().contains(" FLASH VOLTAGE  an old unit"));
    }

    @Test
    void thePairThatWouldDoStandsBelowTheCounter() {
        Playing day = Playing.of(TWO_BACKS.split("; ")).lines("5.6 60 x5", "set 2.8 8");
        String text = Screen.render(day.shoot(), 40, 12).text();
        assertTrue(text.split("\n")[6].startsWith("set f/"), text);
    }

    @Test
    void whileALineIsTypedThePairIsInPlainLetters() {
        Playing day = Playing.of(TWO_BACKS.split("; ")).lines("5.6 60 x5").type("4 125 ; bow seat");
        Grid picture = Screen.render(day.shoot(), 40, 12);
        assertTrue(picture.text().contains("f/5.6 1/60") && picture.text().contains("Enter: "), picture.text());
        LargeLetters.assertDrawn(picture, "645·1", "CN400", "6", "11");
    }
}
