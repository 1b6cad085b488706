package takeup.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.TextRole;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.session.Playing;
import takeup.session.Session;
import takeup.session.Session.Page;
import takeup.session.Transition;

class TourTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-09-12T16:17+02:00");

    private static final Tour.Exhibits EXHIBITS = new Tour.Exhibits() {
        @Override
        public Optional<Grid> scans(Size size) {
            Grid grid = Grid.of(size.columns(), size.rows());
            grid.put(0, 0, "the contact sheet", TextRole.NORMAL);
            return Optional.of(grid);
        }

        @Override
        public List<String> lesson() {
            return List.of("rate it at 160");
        }
    };

    private final Tour tour = new Tour(EXHIBITS);
    private Session session = Playing.medium("m 5.6 125", "4 125 x3").shoot();

    private Transition press(Key key) {
        Transition done = tour.update(session, new Message.Pressed(key, NOW, 1_000_000, Message.Arrival.ALONE));
        session = done.session();
        return done;
    }

    private String seen(int columns, int rows) {
        return tour.render(session, columns, rows, PixelShape.HALF_CELL).text();
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "120, 40", "40, 12"})
    void enterGoesThroughEightStepsEachOverWhatItIsAbout(int columns, int rows) {
        List<Page> pages =
                List.of(Page.SHOOT, Page.SHOOT, Page.FRAMES, Page.PLAN, Page.BAG, Page.ROLLS, Page.SHOOT, Page.SHOOT);
        for (int i = 0; i < 8; i++) {
            String seen = seen(columns, rows);
            assertTrue(seen.contains("Tour " + (i + 1) + " of 8"), seen);
            assertTrue(seen.contains("Enter"), seen);

            assertEquals(pages.get(i), session.view().page());
            assertEquals(i == 6, seen.contains("contact sheet"), seen);
            assertEquals(i == 7, seen.replaceAll("\\s+", " ").contains("Now yours: takeup"), seen);
            press(Key.of(Key.Name.ENTER));
        }
        assertTrue(tour.isOver());
        assertEquals(Page.SHOOT, session.view().page());
        assertFalse(seen(columns, rows).contains("Tour"));
    }

    @Test
    void enterThatDoesWhatIsTypedDoesNotGoOn() {
        press(Key.typed("m"));
        press(Key.of(Key.Name.ENTER));
        assertTrue(seen(80, 24).contains("Tour 1 of 8"), "Enter did the line on the prompt");
        press(Key.of(Key.Name.DOWN));
        press(Key.of(Key.Name.ENTER));
        assertTrue(seen(80, 24).contains("Tour 1 of 8"), "Enter took the highlighted row");
    }

    @Test
    void spaceLogsAFrameInTheMiddleOfTheTour() {
        press(Key.of(Key.Name.ENTER));
        Transition done = press(Key.typed(" "));
        assertTrue(
                done.effects().stream().anyMatch(it -> it instanceof Effect.Save),
                done.effects().toString());
        assertTrue(seen(80, 24).contains("Tour 2 of 8"));
    }

    @Test
    void escLeavesFromAnyStepForTheShootScreen() {
        press(Key.of(Key.Name.ENTER));
        press(Key.of(Key.Name.ENTER));
        press(Key.of(Key.Name.ENTER));
        assertEquals(Page.PLAN, session.view().page());
        press(Key.of(Key.Name.ESCAPE));
        assertTrue(tour.isOver());
        assertEquals(Page.SHOOT, session.view().page());
    }

    @Test
    void backspaceGoesBackAndAViewOfOnesOwnIsLeftAgain() {
        press(Key.of(Key.Name.ENTER));
        press(Key.of(Key.Name.ENTER));
        press(Key.of(Key.Name.F1));
        assertEquals(Page.HELP, session.view().page());
        press(Key.of(Key.Name.ESCAPE));
        assertFalse(tour.isOver(), "Esc closed the help");
        press(Key.of(Key.Name.F5));
        press(Key.of(Key.Name.BACKSPACE));
        assertTrue(seen(80, 24).contains("Tour 2 of 8"));
        assertEquals(Page.SHOOT, session.view().page());
    }
}
