package takeup.screen;

import takeup.session.Session;

/** The model as a picture. Pure: everything is drawn every time, and nothing is changed. */
public final class Screen {
    private Screen() {}

    /** The picture of a model in so many columns and rows. */
    public static Grid render(Session shoot, int columns, int rows) {
        return render(shoot, columns, rows, true);
    }

    /** The same for a terminal that can draw half cells, or cannot: a slate then needs whole ones. */
    public static Grid render(Session shoot, int columns, int rows, boolean halves) {
        Grid grid = Grid.of(columns, rows);
        if (grid.layout().isTiny()) {
            ShootView.draw(shoot, grid);
            return grid;
        }
        if (!shoot.view().sheet().isEmpty()) {
            SlateView.draw(shoot, grid, halves);
            return grid;
        }
        switch (shoot.view().page()) {
            case SHOOT -> ShootView.draw(shoot, grid);
            case FRAMES -> FramesView.draw(shoot, grid);
            case ROLLS -> RollsView.draw(shoot, grid);
            case PLAN -> PlanView.draw(shoot, grid);
            case BAG -> CheckListViews.bag(shoot, grid);
            case DAY_END -> CheckListViews.dayEnd(shoot, grid);
            case HELP -> HelpView.draw(shoot, grid);
        }
        return grid;
    }
}
