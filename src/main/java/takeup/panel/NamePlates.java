package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.report.LightText;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** Camera and film in hand in large letters, and beside them how the film is rated and what the light is. */
public final class NamePlates {
    private static final int GAP = 3;

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Layout layout;

    public NamePlates(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.layout = Layout.of(grid);
    }

    /** Draws them with the facts beside them, or below where they are too long; answers the row after both. */
    public int draw(int row) {
        int left = Math.max(1, layout.margin());
        int end = names(left, row, layout.right());
        if (end < 0) {
            return below(facts(), row);
        }
        int high = isLarge() ? 5 : 3;
        int column = end + GAP;
        List<StyledText> facts = facts();
        List<StyledText> beside = wrapped(facts, layout.right() - column);
        if (layout.right() - column < 16 || beside.size() > high) {
            return below(facts, row + high);
        }
        for (int i = 0; i < beside.size(); i++) {
            grid.put(column, row + i, beside.get(i).text(), beside.get(i).role());
        }
        return row + high;
    }

    private int below(List<StyledText> facts, int row) {
        int at = row;
        for (StyledText line : wrapped(facts, layout.room())) {
            grid.put(layout.margin(), at++, line.text(), line.role());
        }
        return at;
    }

    /** Draws the names alone, as large as so many columns allow; answers the column after them, -1 without room. */
    public int names(int left, int row, int right) {
        String camera = camera();
        String film = film();
        boolean isDrawable = BigText.isDrawable(camera + film);
        int width = isLarge() ? BigText.width(camera, 1) : BigText.smallWidth(camera);
        int both = width
                + (film.isEmpty() ? 0 : GAP + (isLarge() ? GAP + BigText.width(film, 1) : BigText.smallWidth(film)));
        if (!isDrawable || camera.isEmpty() || left + both > right) {
            return -1;
        }
        draw(left, row, camera, TextRole.STRONG);
        int at = left + width + GAP + (isLarge() ? GAP : 0);
        draw(at, row, film, TextRole.READOUT);
        return left + both;
    }

    private void draw(int column, int row, String text, TextRole role) {
        if (isLarge()) {
            BigText.draw(grid, column, row, text, 1, role);
        } else {
            BigText.drawSmall(grid, column, row, text, role);
        }
    }

    private boolean isLarge() {
        return layout.isGrand() && BigText.width(camera(), 1) + BigText.width(film(), 1) <= layout.room() / 2 + 6;
    }

    private boolean hasOtherBack(CameraPlace place) {
        for (CameraPlace other : state.placesInUse()) {
            if (other.camera().equals(place.camera()) && !other.equals(place)) {
                return true;
            }
        }
        return false;
    }

    /** The camera's key, and its back where several are in use: {@code 645-2}. */
    private String camera() {
        Optional<CameraPlace> place = state.placeInHand();
        if (place.isEmpty()) {
            return "";
        }
        Optional<String> back = hasOtherBack(place.get()) ? place.get().back() : Optional.empty();
        String key = place.get().camera() + (back.isPresent() ? "-" + back.get() : "");
        return key.toUpperCase(Locale.ROOT);
    }

    private String film() {
        return state.rollInHand().isEmpty()
                ? ""
                : state.rollInHand().get().film().stock().key().toUpperCase(Locale.ROOT);
    }

    /** How the film is rated and developed, and the light. */
    private List<StyledText> facts() {
        List<StyledText> facts = new ArrayList<>();
        Optional<Film> film = state.rollInHand().map(Roll::film);
        film.ifPresent(it -> facts.add(StyledText.strong(it.developmentWords())));
        Optional<String> light = state.day()
                .light()
                .map(it -> it.ev100() + " " + LightText.how(it) + ", " + LightText.age(it.at(), session.now()));
        boolean isFlashRead =
                state.day().flash().isPresent() && state.inHand().setting().flash();
        String missing = film.isPresent() && !isFlashRead ? "no light reading today" : "";
        String known = light.orElse(missing);
        String meter = film.isPresent() ? "meter at " + film.get().index() : "";
        String both = meter + (meter.isEmpty() || known.isEmpty() ? "" : "  ") + known;
        if (!both.isEmpty()) {
            facts.add(new StyledText(both, TextRole.READOUT));
        }
        return facts;
    }

    private static List<StyledText> wrapped(List<StyledText> lines, int width) {
        List<StyledText> wrapped = new ArrayList<>();
        for (StyledText line : lines) {
            // How it is pushed is read in one piece, so a long line breaks behind the process.
            int comma = line.text().indexOf(", ") + 1;
            boolean isBroken = Width.of(line.text()) > width && comma > 0 && comma <= width;
            String first = isBroken ? line.text().substring(0, comma) : line.text();
            String rest = line.text().substring(first.length()).strip();
            TextFit.rows(first, width).forEach(it -> wrapped.add(new StyledText(it, line.role())));
            if (!rest.isEmpty()) {
                TextFit.rows(rest, width).forEach(it -> wrapped.add(new StyledText(it, line.role())));
            }
        }
        return wrapped;
    }
}
