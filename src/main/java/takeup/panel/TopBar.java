package takeup.panel;

import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The first row: what the view is about on the left, what goes on meanwhile on the right. */
public final class TopBar {
    private TopBar() {}

    /** Draws the shoot screen's: camera, back and lens in hand, the roll and its age, and the time. */
    public static void draw(Grid grid, Session session) {
        Optional<Roll> roll = session.shown().rollInHand();
        String right = (roll.isPresent() ? roll(roll.get(), session) : "") + ClockText.clock(session.now());
        int room = room(grid, right);
        String camera = CameraText.inHand(session.shown(), room);
        String film = roll.isPresent() ? " · " + roll.get().film().stock().name() : "";
        draw(grid, TextFit.first(room, camera + film, camera), right);
    }

    private static String roll(Roll roll, Session session) {
        Optional<String> name = roll.film().label().name();
        Optional<String> age = CameraText.age(roll, session);
        return (name.isPresent() ? name.get() + " " : "") + roll.id() + (age.isPresent() ? " " + age.get() : "") + "  ";
    }

    public static void draw(Grid grid, String title, String right) {
        Layout layout = Layout.of(grid);
        grid.fill(0, TextRole.BAR);
        grid.put(layout.margin(), 0, Width.cut(title, room(grid, right)), TextRole.BAR);
        grid.put(layout.right() - Width.of(right), 0, right, TextRole.BAR);
    }

    /** Whether both have room in one row. */
    public static boolean fits(Grid grid, String title, String right) {
        return Width.of(title) <= room(grid, right);
    }

    private static int room(Grid grid, String right) {
        return Layout.of(grid).room() - Width.of(right) - 2;
    }
}
