package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.exposure.Light;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.report.LightText;
import takeup.roll.Film;
import takeup.session.Session;
import takeup.text.Width;

/** Camera and film in hand in large letters, and beside them how the film is rated and what the light is. */
public final class NamePlates {
    private static final int GAP = 3;

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Layout layout;
    /** Columns of both names; -1 where they cannot be drawn, or have no room. */
    private final int width;

    private final Optional<WarningPlate> warning;

    public NamePlates(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.width = width();
        this.warning = width < 0 ? Optional.empty() : WarningPlate.of(session, layout.right() - left() - width - GAP);
    }

    /**
     * Draws them with the most urgent warning beside them and the facts below; without a warning the facts stand beside
     * them. The words for what is not neutral follow, in the last row of the facts where they fit. Answers the row
     * after all of it.
     */
    public int draw(int row) {
        List<StyledText> words = StatusWords.beside(session, warning);
        List<StyledText> facts = facts();
        int end = names(row);
        if (end < 0) {
            return below(facts, row, layout.room(), words);
        }
        int high = isLarge() ? 5 : 3;
        if (warning.isPresent()) {
            boolean isBesidePlate = high < WarningPlate.ROWS;
            int room = isBesidePlate ? layout.room() - warning.get().width() - GAP : layout.room();
            return Math.max(row + WarningPlate.ROWS, below(facts, row + high, room, words));
        }
        int column = end + GAP;
        List<StyledText> beside = wrapped(facts, layout.right() - column);
        if (layout.right() - column < 16 || beside.size() > high) {
            return below(facts, row + high, layout.room(), words);
        }
        for (int i = 0; i < beside.size(); i++) {
            grid.put(column, row + i, beside.get(i).text(), beside.get(i).role());
        }
        return row + high + plates(words, row + high);
    }

    /**
     * The facts in one row where they fit, else each on its own; what fits beside the plate of a warning comes first.
     * Then the words, in the last of these rows where there is room.
     *
     * @param room columns of the first row
     */
    private int below(List<StyledText> facts, int row, int room, List<StyledText> words) {
        List<StyledText> lines = new ArrayList<>();
        int fitting = 0;
        for (StyledText fact : facts) {
            boolean fits = Width.of(fact.text()) <= room;
            lines.add(fits ? fitting++ : lines.size(), fact);
        }
        boolean isOneRow = width(lines, GAP) <= room;
        int column = layout.margin();
        int at = row;
        int end = column;
        if (isOneRow) {
            for (StyledText fact : lines) {
                end = grid.put(end, at, fact.text(), fact.role()) + GAP;
            }
            at += lines.isEmpty() ? 0 : 1;
        } else {
            boolean isCut = Width.of(lines.get(0).text()) > room;
            for (StyledText line : wrapped(lines, isCut ? room : layout.room())) {
                end = grid.put(column, at++, line.text(), line.role()) + GAP;
            }
        }
        int free = (at - 1 == row ? column + room : layout.right()) - end;
        if (at > row && !words.isEmpty() && TextFit.plateRows(words, free) == 1 && width(words, 2) <= free) {
            TextFit.drawPlates(grid, words, end, at - 1, free, 1);
            return at;
        }
        return at + plates(words, at);
    }

    /** Columns of all of them side by side, so far apart. */
    private static int width(List<StyledText> words, int gap) {
        int all = -gap;
        for (StyledText word : words) {
            all += Width.of(word.text()) + gap;
        }
        return all;
    }

    /** Words in rows of their own; answers how many. */
    private int plates(List<StyledText> words, int row) {
        int rows = Math.min(3, TextFit.plateRows(words, layout.room()));
        TextFit.drawPlates(grid, words, layout.margin(), row, layout.room(), rows);
        return rows;
    }

    /** The warning that stands beside the names on a large plate; empty without one, or without room. */
    public Optional<WarningPlate> warning() {
        return warning;
    }

    private int left() {
        return Math.max(1, layout.margin());
    }

    private int width() {
        String camera = camera();
        String film = film(state);
        int both = cameraWidth()
                + (film.isEmpty() ? 0 : GAP + (isLarge() ? GAP + BigText.width(film, 1) : BigText.smallWidth(film)));
        boolean isDrawable = BigText.isDrawable(camera + film);
        return !isDrawable || camera.isEmpty() || left() + both > layout.right() ? -1 : both;
    }

    private int cameraWidth() {
        return isLarge() ? BigText.width(camera(), 1) : BigText.smallWidth(camera());
    }

    /**
     * Draws the names, as large as the screen allows, and the warning at the right edge; answers the column after the
     * names, -1 without room.
     */
    public int names(int row) {
        if (width < 0) {
            return -1;
        }
        if (warning.isPresent()) {
            warning.get().draw(grid, layout.right() - warning.get().width(), row);
        }
        draw(left(), row, camera(), TextRole.STRONG);
        draw(left() + cameraWidth() + GAP + (isLarge() ? GAP : 0), row, film(state), TextRole.READOUT);
        return left() + width;
    }

    private void draw(int column, int row, String text, TextRole role) {
        if (isLarge()) {
            BigText.draw(grid, column, row, text, 1, role);
        } else {
            BigText.drawSmall(grid, column, row, text, role);
        }
    }

    private boolean isLarge() {
        return layout.isGrand() && BigText.width(camera(), 1) + BigText.width(film(state), 1) <= layout.room() / 2 + 6;
    }

    private static boolean hasOtherBack(ShootState state, CameraPlace place) {
        for (CameraPlace other : state.placesInUse()) {
            if (other.camera().equals(place.camera()) && !other.equals(place)) {
                return true;
            }
        }
        return false;
    }

    private String camera() {
        return camera(state) + back(state);
    }

    /** The camera's key. */
    static String camera(ShootState state) {
        Optional<CameraPlace> place = state.placeInHand();
        return place.isEmpty() ? "" : place.get().camera().toUpperCase(Locale.ROOT);
    }

    /** Its back where several are in use: {@code -2}. */
    static String back(ShootState state) {
        Optional<CameraPlace> place = state.placeInHand();
        Optional<String> back = place.isPresent() && hasOtherBack(state, place.get())
                ? place.get().back()
                : Optional.empty();
        return back.isPresent() ? "-" + back.get().toUpperCase(Locale.ROOT) : "";
    }

    /** The film's key. */
    static String film(ShootState state) {
        return state.rollInHand().isEmpty()
                ? ""
                : state.rollInHand().get().film().stock().key().toUpperCase(Locale.ROOT);
    }

    /** How the film is rated and developed, and the light. */
    private List<StyledText> facts() {
        List<StyledText> facts = new ArrayList<>();
        boolean hasFilm = state.rollInHand().isPresent();
        String meter = "";
        if (hasFilm) {
            Film film = state.rollInHand().get().film();
            facts.add(StyledText.strong(film.developmentWords()));
            meter = "meter at " + film.index();
        }
        boolean isFlashRead =
                state.day().flash().isPresent() && state.inHand().setting().flash();
        String known = hasFilm && !isFlashRead ? "no light reading today" : "";
        if (state.day().light().isPresent()) {
            Light light = state.day().light().get();
            known = light.ev100() + " " + LightText.how(light) + ", " + LightText.age(light.at(), session.now());
        }
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
            List<String> rows = new ArrayList<>(TextFit.rows(first, width));
            if (!rest.isEmpty()) {
                rows.addAll(TextFit.rows(rest, width));
            }
            for (String row : rows) {
                wrapped.add(new StyledText(row, line.role()));
            }
        }
        return wrapped;
    }
}
