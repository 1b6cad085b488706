package takeup.screen;

import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.TextFit;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The first row of a small screen, which has no room for large names: camera and film on plates, and the time. */
final class NameBar {
    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final int columns;

    private NameBar(Grid grid, Session session) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.columns = grid.columns();
    }

    static void draw(Grid grid, Session session) {
        new NameBar(grid, session).draw();
    }

    /** Camera and film on plates, then the rating; the film's name is cut before its rating is. */
    private void draw() {
        String clock = ClockText.clock(session.now());
        int room = columns - Width.of(clock) - 1;
        grid.fill(0, TextRole.BAR);
        grid.put(columns - Width.of(clock), 0, clock, TextRole.BAR);
        if (state.placeInHand().isEmpty()) {
            grid.put(0, 0, "no camera", TextRole.BAR);
            return;
        }
        CameraPlace place = state.placeInHand().get();
        String brief = place.camera() + place.back().map(it -> "-" + it).orElse("");
        if (state.rollInHand().isEmpty()) {
            grid.put(0, 0, TextFit.first(room, " " + place + " "), TextRole.NAME);
            return;
        }
        Roll roll = state.rollInHand().get();
        String rating = " EI " + roll.film().index() + " ";
        String film = " " + roll.film().stock().key() + rating;
        String id = " " + roll.id();
        int beside = Width.of(film + id) + 1;
        String camera = TextFit.first(Math.max(8, room - beside), " " + place + " ", " " + brief + " ");
        int at = grid.put(0, 0, camera, TextRole.NAME) + 1;
        int filmRoom = room - at - Width.of(rating + id);
        // A film whose name has no room stands there by its roll.
        String name = filmRoom < 5
                ? " " + roll.id()
                : Width.cut(" " + roll.film().stock().key(), filmRoom);
        at = grid.put(at, 0, Width.cut(name + rating, Math.max(0, room - at)), TextRole.NAME);
        if (filmRoom >= 5) {
            grid.put(at, 0, Width.cut(id, Math.max(0, room - at)), TextRole.BAR);
        }
    }
}
