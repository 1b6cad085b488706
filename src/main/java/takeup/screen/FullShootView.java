package takeup.screen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.NextMoment;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Suggestions;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.CameraText;
import takeup.panel.CounterPanel;
import takeup.panel.FilmStrip;
import takeup.panel.FooterKeys;
import takeup.panel.FrameText;
import takeup.panel.GuidePanel;
import takeup.panel.Layout;
import takeup.panel.MomentLine;
import takeup.panel.NamePlates;
import takeup.panel.NewestFrames;
import takeup.panel.StatusWords;
import takeup.panel.SuggestionList;
import takeup.panel.TopBar;
import takeup.panel.WarningPlate;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The whole shoot screen, from 72 by 22 on: camera and film, counter, strip, suggestions, newest frames. */
final class FullShootView {
    private static final String BETWEEN_PLACES = "     ";
    /** Rows of the list below its heading that stand there whatever else is on. */
    private static final int LEAST_LIST = 5;

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Layout layout;
    private final Optional<Suggestions> advice;
    /** The row after the body. */
    private final int end;
    /** The first row that a longer message covers; the row after the body without one. */
    private final int covered;

    FullShootView(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.advice = session.advice();
        this.end = BottomBars.top(grid, session, messageRows());
        this.covered = BottomBars.covered(grid, session, messageRows());
    }

    /**
     * Whether its body looks like that of another one, drawn less than so long before: it shows what is true, the time,
     * the highlighted row and the end that the last rows leave, and nothing else.
     */
    boolean hasBodyOf(FullShootView other, Duration tick) {
        return state == other.state
                && session.view().chosen() == other.session.view().chosen()
                && end == other.end
                && covered == other.covered
                && WarningPlate.isNotSaved(session) == WarningPlate.isNotSaved(other.session)
                && layout.columns() == other.layout.columns()
                && layout.rows() == other.layout.rows()
                && Duration.between(other.session.now(), session.now()).abs().compareTo(tick) < 0;
    }

    /** Draws what stands above the last rows. */
    void drawBody() {
        TopBar.draw(grid, session);
        int row = layout.isGrand() ? 2 : 1;
        if (state.placeInHand().isPresent()) {
            row = new NamePlates(session, grid).draw(row) + (layout.isAiry() ? 1 : 0);
        } else {
            List<StyledText> words = StatusWords.of(session);
            int plates = Math.min(3, TextFit.plateRows(words, layout.room()));
            TextFit.drawPlates(grid, words, layout.margin(), row, layout.room(), plates);
            row += plates;
        }
        int bottom = end;
        Optional<NextMoment> moment = NextMoment.of(state, session.now());
        if (moment.isPresent()) {
            MomentLine.draw(grid, moment.get(), --bottom);
        }
        if (state.rollInHand().isPresent()) {
            withFilm(state.rollInHand().get(), row, bottom);
        } else {
            new GuidePanel(session, grid).drawChoices(row + 1, bottom - row - 1);
        }
    }

    /** Draws the last rows, and over the body what is said there. */
    void drawBars() {
        BottomBars.draw(grid, session, messageRows(), FooterKeys.List.WHOLE);
    }

    private int messageRows() {
        return layout.isAiry() ? 2 : 1;
    }

    /**
     * Where what stands below the names goes.
     *
     * @param counter row of the counter
     * @param strip row of the film strip
     * @param stripRows how many rows it is high; 0 where there is none
     * @param list row of the list's heading
     * @param listRows how many rows there are for the list with its heading
     */
    private record Rows(int counter, int strip, int stripRows, int list, int listRows) {}

    /**
     * Counter and strip from above, the other cameras from below, the list in between; it has its rows before the strip
     * and before anything is set apart. A longer message that would leave fewer of them takes the strip's place.
     */
    private void withFilm(Roll roll, int top, int bottom) {
        int counterRows = 5 * layout.counterScale();
        int most = Math.max(1, Math.min(layout.placeRows(), bottom - top - counterRows - 2 - LEAST_LIST - 1));
        List<String> others = otherPlaces(most);
        int end = bottom - others.size();
        Rows rows = rows(top, end, others);
        if (covered - rows.list() - 1 < LEAST_LIST) {
            Rows tight = rows(top, covered, List.of());
            rows = tight.listRows() - 1 >= LEAST_LIST ? tight : rows;
        }
        for (int i = 0; i < others.size(); i++) {
            grid.put(layout.margin(), end + i, Width.cut(others.get(i), layout.right()), TextRole.LABEL);
        }
        new CounterPanel(session, advice, grid).draw(roll, rows.counter());
        if (rows.stripRows() > 0) {
            FilmStrip strip = new FilmStrip(grid, roll, layout.margin(), rows.strip(), rows.stripRows(), layout.room());
            if (layout.hasUpperRebate()) {
                strip.upperRebate();
            }
            strip.draw();
        }
        if (session.picks().rows().isEmpty()) {
            lists(rows.list(), rows.listRows() - 1);
        } else {
            new GuidePanel(session, grid).drawChoices(rows.list(), rows.listRows());
        }
    }

    private Rows rows(int top, int end, List<String> others) {
        int counterRows = 5 * layout.counterScale();
        int stripRows = layout.isGrand() ? 3 : 1;
        int rebate = layout.hasUpperRebate() ? 1 : 0;
        int spare = end - top - counterRows - stripRows - 1 - rebate - LEAST_LIST - 1;
        boolean hasStrip = spare >= 0;
        // One row more of film comes before any blank row.
        boolean isTaller = spare >= 2 && stripRows == 1;
        stripRows += isTaller ? 1 : 0;
        int free = hasStrip ? spare - (isTaller ? 1 : 0) : spare + stripRows + 1 + rebate;
        int above = free >= 1 ? 1 : 0;
        int between = free >= 3 ? 1 : 0;
        int below = free >= 4 ? 1 : 0;
        int row = top + above + Math.max(5, counterRows) + between;
        int strip = row + rebate;
        row += hasStrip ? rebate + stripRows + 1 + below : 0;
        int listRows = end - row - (free >= 2 && !others.isEmpty() ? 1 : 0);
        return new Rows(top + above, strip, hasStrip ? stripRows : 0, row, listRows);
    }

    private void lists(int row, int count) {
        SuggestionList suggestions = new SuggestionList(session, advice, grid);
        suggestions.draw(row, count);
        if (suggestions.isEmpty()) {
            NewestFrames.draw(grid, session, layout.margin(), row, count, FrameText.Columns.TIMED);
        } else if (layout.isTwoLists()) {
            NewestFrames.draw(grid, session, suggestions.end(), row, count, suggestions.columnsBeside());
        }
    }

    /** The other cameras and backs, as many side by side as fit; what finds no room on so many lines is counted. */
    private List<String> otherPlaces(int most) {
        List<String> rest = new ArrayList<>();
        for (CameraPlace place : CameraText.others(session)) {
            rest.add(CameraText.full(place, session));
        }
        List<String> lines = new ArrayList<>();
        while (!rest.isEmpty() && lines.size() < most) {
            boolean isLast = lines.size() == most - 1;
            String line = rest.remove(0);
            while (!rest.isEmpty()
                    && Width.of(line + BETWEEN_PLACES + rest.get(0) + (isLast ? more(rest.size() - 1) : ""))
                            < layout.room()) {
                line += BETWEEN_PLACES + rest.remove(0);
            }
            lines.add(line + (isLast ? more(rest.size()) : ""));
        }
        return lines;
    }

    private static String more(int count) {
        return count > 0 ? "   and " + count + " more" : "";
    }
}
