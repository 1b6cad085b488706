package takeup.panel;

import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The first row: what the view is about on the left, what goes on meanwhile on the right. */
public final class TopBar {
    private TopBar() {}

    /** Draws the shoot screen's: camera, back and lens in hand, the roll and its age, and the time. */
    public static void draw(Grid grid, Session session) {
        String roll = session.shown()
                .rollInHand()
                .map(it -> it.film().label().name().map(name -> name + " ").orElse("") + it.id()
                        + CameraText.age(it, session).map(age -> " " + age).orElse("") + "  ")
                .orElse("");
        String right = roll + ClockText.clock(session.now());
        int room = room(grid, right);
        String camera = CameraText.inHand(session.shown(), room);
        String film = session.shown()
                .rollInHand()
                .map(it -> " · " + it.film().stock().name())
                .orElse("");
        draw(grid, TextFit.first(room, camera + film, camera), right);
    }

    public static void draw(Grid grid, String title, String right) {
        Layout layout = Layout.of(grid);
        grid.fill(0, TextRole.BAR);
        grid.put(layout.margin(), 0, Width.cut(title, room(grid, right)), TextRole.BAR);
        grid.put(layout.right() - Width.of(right), 0, right, TextRole.BAR);
    }

    private static int room(Grid grid, String right) {
        return Layout.of(grid).room() - Width.of(right) - 2;
    }
}
