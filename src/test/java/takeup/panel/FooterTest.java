package takeup.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.Grid;
import takeup.message.Key;
import takeup.screen.Screen;
import takeup.session.Playing;

/** The last line of the screen promises what works now, and nothing else. */
class FooterTest {
    @ParameterizedTest(name = "{0} columns")
    @CsvSource(
            delimiter = '|',
            value = {
                "120 | a one  F2 frames  F3 rolls  F4 plan  F5 bag  F9 theme  PgUp earlier",
                " 43 | a one  F2 frames  F3 rolls  F4 plan  F5 bag",
                " 42 | a one  F2-F5 lists  F9 theme  PgUp earlier",
                " 29 | a one  F2-F5 lists  F9 theme",
                " 17 | a one  F9 theme",
                "  5 | a one"
            })
    void theListsAreNamedAllOrTogetherAndEarlierLinesGoFirst(int columns, String line) {
        Footer footer = new Footer();
        String[] keys = {
            "a", "one", "PgUp", "earlier", "F2", "frames", "F3", "rolls", "F4", "plan", "F5", "bag", "F9", "theme"
        };
        for (int i = 0; i < keys.length; i += 2) {
            footer.then(keys[i], keys[i + 1]);
        }
        Grid grid = Grid.of(columns, 1);
        footer.draw(grid, 0);
        assertEquals(line, grid.text().strip());
    }

    @Test
    void aListThatIsSeenWholeOffersNoPageAndNoWayToItself() {
        check(
                "Esc shoot  Enter actions  Down choose  Ctrl-Z undo  ? help  F3-F5 lists  F8 find",
                Playing.medium("4 125").press(Key.Name.F2),
                80,
                24);
    }

    @Test
    void theWayBackStandsFirstAlsoWhereThereIsRoomForLittleElse() {
        check("Esc shoot  Space page  Enter actions", Playing.medium("4 125 x9").press(Key.Name.F2), 40, 12);
    }

    @Test
    void aQuestionIsAnsweredByTheKeysThatAreNamed() {
        check(
                "y yes  n no  Space same again  Enter actions  Ctrl-Z undo  ? help  F2-F5 lists",
                Playing.medium("4 125", "routine skip", "unload"),
                80,
                24);
    }

    @Test
    void whileALineIsTypedEscClearsIt() {
        check(
                "Enter do it  Tab complete  Ctrl-Z undo  Esc clear  F1 help  F2-F5 lists  F10 big",
                Playing.medium("4 125").type("8"),
                80,
                24);
    }

    private static void check(String footer, Playing day, int columns, int rows) {
        String[] lines = Screen.render(day.shoot(), columns, rows).text().split("\n");
        assertEquals(footer, lines[rows - 1].strip());
    }
}
