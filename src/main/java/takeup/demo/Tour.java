package takeup.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.screen.Screen;
import takeup.session.Session;
import takeup.session.Session.Page;
import takeup.session.Transition;
import takeup.session.Update;

/**
 * The tour through the demo: eight steps over the screen, which goes on working beneath. Enter on an empty prompt goes
 * on, Backspace back, Esc leaves.
 */
public final class Tour {
    /** Help or actions over a view over another one: no more than that lies over the shoot screen. */
    private static final int DEEPEST = 3;

    private final Exhibits exhibits;
    private int at;

    /** What the last steps show in place of a view: empty while it is not ready. */
    public interface Exhibits {
        /** The scans of a roll, drawn in that size. */
        Optional<Grid> scans(Size size);

        /** What the verdicts and the rating test came to. */
        List<String> lesson();
    }

    /** The tour at its first step. */
    public Tour(Exhibits exhibits) {
        this.exhibits = exhibits;
    }

    /** Whether it is over. */
    public boolean isOver() {
        return at >= TourStep.ALL.size();
    }

    /** The first step alone, while the day is being made. */
    public static Grid opening(Size size) {
        Grid grid = Grid.of(size.columns(), size.rows());
        TourPlate.draw(grid, 0, Math.max(1, grid.rows() - 3));
        grid.put(1, grid.rows() - 1, "The day is being made …", TextRole.QUIET);
        return grid;
    }

    /** The session after a message: the keys of the tour are kept from it. */
    public Transition update(Session session, Message message) {
        if (isOver() || !(message instanceof Message.Pressed pressed) || !takes(session, pressed.key())) {
            return Update.update(session, message);
        }
        at = switch (pressed.key().name()) {
            case ENTER -> at + 1;
            case BACKSPACE -> Math.max(0, at - 1);
            default -> TourStep.ALL.size();
        };
        return show(session, pressed);
    }

    private static boolean takes(Session session, Key key) {
        boolean isFree = session.prompt().isEmpty()
                && session.question().isEmpty()
                && !session.view().isChosen()
                && session.view().page() != Page.ACTIONS;
        return isFree
                && (key.name() == Key.Name.ENTER
                        || key.name() == Key.Name.BACKSPACE
                        || key.name() == Key.Name.ESCAPE && session.view().page() != Page.HELP);
    }

    /** Presses the key of the step's view; Esc until the shoot screen is there. */
    private Transition show(Session session, Message.Pressed pressed) {
        TourStep step = isOver() ? TourStep.ALL.get(0) : TourStep.ALL.get(at);
        Transition shown = new Transition(session, List.of());
        for (int i = 0; i < DEEPEST && shown.session().view().page() != step.page(); i++) {
            Transition next = Update.update(
                    shown.session(),
                    new Message.Pressed(Key.of(step.key()), pressed.at(), pressed.ticks(), pressed.arrival()));
            List<Effect> effects = new ArrayList<>(shown.effects());
            effects.addAll(next.effects());
            shown = new Transition(next.session(), effects);
        }
        return shown;
    }

    /** The session with the step over it. */
    public Grid render(Session session, int columns, int rows, PixelShape pixels) {
        if (isOver()) {
            return Screen.render(session, columns, rows, pixels);
        }
        boolean isOwn = at >= TourStep.SCANS
                && session.prompt().isEmpty()
                && session.view().page() == Page.SHOOT;
        Grid grid = isOwn ? own(new Size(columns, rows)) : Screen.render(session, columns, rows, pixels);
        // The message and the prompt stay to be seen.
        TourPlate.draw(grid, at, Math.max(1, isOwn ? rows - 1 : rows - 3));
        TourPlate.footer(grid, at);
        return grid;
    }

    private Grid own(Size size) {
        if (at == TourStep.SCANS) {
            return exhibits.scans(size).orElseGet(() -> {
                Grid waiting = Grid.of(size.columns(), size.rows());
                waiting.put(1, 0, "The scans are being drawn …", TextRole.QUIET);
                return waiting;
            });
        }
        Grid grid = Grid.of(size.columns(), size.rows());
        int row = 0;
        for (String line : exhibits.lesson()) {
            for (String part : line.startsWith(" ") ? List.of(line) : TextFit.rows(line, size.columns())) {
                grid.put(0, row, part, line.startsWith(" ") ? TextRole.NORMAL : TextRole.STRONG);
                row++;
            }
        }
        return grid;
    }
}
