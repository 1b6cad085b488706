package takeup.screen;

import java.time.Duration;
import takeup.grid.Grid;

/**
 * The body of the shoot screen as it was drawn last: most keys change only what stands below it, and it costs more to
 * draw than all of that. What it shows of the time may be as old as it gets where no key is pressed.
 */
final class KeptBody {
    /** As long as the screen waits between two pictures of its own accord. */
    private static final Duration TICK = Duration.ofSeconds(1);

    private FullShootView last;
    private Grid drawn;

    /** Draws a view: its body, and below it what each key may change. */
    void draw(FullShootView view, Grid grid) {
        if (last != null && view.hasBodyOf(last, TICK)) {
            grid.putAll(drawn);
        } else {
            view.drawBody();
            last = view;
            drawn = Grid.of(grid.columns(), grid.rows());
            drawn.putAll(grid);
        }
        view.drawBars();
    }
}
