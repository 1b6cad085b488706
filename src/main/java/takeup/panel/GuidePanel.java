package takeup.panel;

import java.util.Optional;
import takeup.action.PickList;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.report.SetupText;
import takeup.session.Guide;
import takeup.session.Session;
import takeup.text.Width;

/** The guide to the first frame, and the choices that stand where there is nothing to suggest yet. */
public final class GuidePanel {
    private final Session session;
    private final Grid grid;
    private final Layout layout;
    private final Optional<Guide> guide;

    public GuidePanel(Session session, Grid grid) {
        this.session = session;
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.guide = Guide.of(session);
    }

    public static boolean isShown(Session session) {
        return Guide.of(session).isPresent();
    }

    /** What is asked, and the rows to pick from, in so many rows of the screen. */
    public void drawChoices(int row, int count) {
        PickList choices = session.picks();
        int margin = layout.margin();
        int room = layout.right() - 1;
        grid.put(margin, row, title(room), TextRole.STRONG);
        int first = row + 1;
        if (count > 5) {
            String hint =
                    guide.isPresent() ? guide.get().hint() : "Down and Enter take one; typing the line does the same";
            grid.put(margin, first, TextFit.first(room, hint, "Down chooses, Enter takes it"), TextRole.QUIET);
            first++;
        }
        boolean hasFoot = guide.isPresent() && count > 6;
        int most = Math.max(1, row + count - first - (hasFoot ? 1 : 0));
        new PickRows(grid, choices.rows(), session.view().chosen(), most).draw(first);
        if (hasFoot) {
            String foot = TextFit.first(
                    room, "Esc ends the guide; ? shows all keys and words.", "Esc ends the guide; ? shows all");
            grid.put(margin, first + Math.min(most, choices.rows().size() + 1), foot, TextRole.QUIET);
        }
    }

    private String title(int room) {
        if (guide.isPresent()) {
            String title = step() + ": " + guide.get().title();
            return TextFit.first(room, "First roll, " + title, title);
        }
        Optional<CameraPlace> place = session.shown().placeInHand();
        return place.isPresent()
                ? TextFit.first(
                        room,
                        "No film in " + place.get() + ". Which one goes in?",
                        "Which film goes into " + place.get() + "?")
                : "Which camera?";
    }

    /** Which step it is: {@code 2 of 4}. */
    private String step() {
        return guide.orElseThrow().step() + " of " + Guide.STEPS;
    }

    /** The last step, beside the suggestions. */
    void drawFrameStep(int column, int row) {
        int room = layout.right() - column;
        grid.put(column, row, Width.cut("First roll, " + step(), room), TextRole.LABEL);
        grid.put(column, row + 1, Width.cut(guide.orElseThrow().title(), room), TextRole.STRONG);
        grid.put(column, row + 2, Width.cut("Or type what differs and a note:", room), TextRole.QUIET);
        grid.put(column + 2, row + 3, SetupText.example(session.shown()) + " ; bow seat", TextRole.READOUT);
        grid.put(column, row + 4, Width.cut("Esc ends the guide, ? shows all.", room), TextRole.QUIET);
    }

    /** The guide on one line, for a small screen; answers how many rows it took. */
    public int drawLine(int row) {
        Optional<String> line = line(session);
        if (line.isPresent()) {
            grid.put(0, row, Width.cut(line.get(), layout.columns()), TextRole.STRONG);
        }
        return line.isPresent() ? 1 : 0;
    }

    /** The guide on one line; empty once it is over. */
    static Optional<String> line(Session session) {
        Optional<Guide> guide = Guide.of(session);
        if (guide.isEmpty()) {
            return Optional.empty();
        }
        int step = guide.get().step();
        String todo = step == Guide.STEPS ? "Space logs a frame" : "m 5.6 125, or Down and Enter";
        return Optional.of(step + " of " + Guide.STEPS + ": " + todo);
    }
}
