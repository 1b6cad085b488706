package takeup.screen;

import takeup.session.Session;

/** The shoot screen in the form that has room: one roll's state at a glance, what to set, and the prompt. */
final class ShootView {
    private ShootView() {}

    static void draw(Session session, Grid grid) {
        Layout layout = grid.layout();
        if (layout.isTiny()) {
            TinyShootView.draw(session, grid);
        } else if (session.view().big()) {
            BigCounterView.draw(session, grid);
        } else if (layout.isSmall()) {
            new SmallShootView(session, grid).draw();
        } else {
            new FullShootView(session, grid).draw();
        }
    }
}
