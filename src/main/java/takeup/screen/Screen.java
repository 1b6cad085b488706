package takeup.screen;

import java.util.Optional;
import takeup.day.BulbTimer;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.panel.Layout;
import takeup.session.Session;

/** The model as a picture; nothing of the model is changed. */
public final class Screen {
    private final KeptBody body = new KeptBody();

    /** The picture of a model in so many columns and rows. */
    public static Grid render(Session session, int columns, int rows) {
        return render(session, columns, rows, PixelShape.HALF_CELL);
    }

    /** The same for a terminal that draws pixels in this shape: a slate may need whole cells. */
    public static Grid render(Session session, int columns, int rows, PixelShape pixels) {
        return new Screen().picture(session, columns, rows, pixels);
    }

    /** The same, quicker: what stands above the prompt is drawn again only where it can have changed. */
    public Grid picture(Session session, int columns, int rows, PixelShape pixels) {
        Grid grid = Grid.of(columns, rows);
        if (Layout.of(grid).isTiny()) {
            TinyShootView.draw(session, grid);
        } else if (!session.view().sheet().isEmpty()) {
            SlateView.draw(session, grid, pixels);
        } else {
            page(session, grid);
        }
        return grid;
    }

    private void page(Session session, Grid grid) {
        switch (session.view().page()) {
            case SHOOT -> shoot(session, grid);
            case FRAMES -> FramesView.draw(session, grid);
            case ROLLS -> RollsView.draw(session, grid);
            case FIND -> FoundView.draw(session, grid);
            case PLAN -> PlanView.draw(session, grid);
            case BAG -> CheckListViews.bag(session, grid);
            case DAY_END -> CheckListViews.dayEnd(session, grid);
            case ORDER -> OrderView.draw(session, grid);
            case HELP -> HelpView.draw(session, grid);
            case ACTIONS -> session.view().menu().ifPresent(it -> ActionsView.draw(session, grid, it));
        }
    }

    private void shoot(Session session, Grid grid) {
        Optional<BulbTimer> timer = session.shown().timerInHand();
        if (timer.isPresent()) {
            new TimerView(session, grid, timer.get()).draw();
        } else if (session.view().big()) {
            BigCounterView.draw(session, grid);
        } else if (Layout.of(grid).isSmall()) {
            new SmallShootView(session, grid).draw();
        } else {
            body.draw(new FullShootView(session, grid), grid);
        }
    }
}
