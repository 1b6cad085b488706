package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.NextMoment;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.report.LightText;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.session.PickList;
import takeup.session.Session;
import takeup.text.Width;

/** The whole shoot screen, from 72 by 22 on: film and light, counter, strip, suggestions, newest frames. */
final class FullShootView {
    private static final String BETWEEN_PLACES = "     ";

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final Layout layout;

    FullShootView(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.layout = Layout.of(grid);
    }

    void draw() {
        TopBar.draw(grid, session);
        int row = head(layout.isGrand() ? 2 : 1) + (layout.isAiry() ? 1 : 0);
        Optional<NextMoment> moment = NextMoment.of(state, session.now());
        if (state.rollInHand().isPresent()) {
            withFilm(state.rollInHand().get(), row, moment);
        } else {
            int end = layout.rows() - (moment.isPresent() ? 7 : 6);
            new GuidePanel(session, grid).drawChoices(row, end - row);
            moment.ifPresent(it -> MomentLine.draw(grid, it, layout.rows() - 6));
        }
        BottomBars.drawWithAlarm(grid, session);
    }

    /** Counter and strip from above, the other cameras and the next moment from below, the lists in between. */
    private void withFilm(Roll roll, int top, Optional<NextMoment> moment) {
        int blank = layout.isAiry() ? 1 : 0;
        int row = new CounterPanel(session, grid).draw(roll, top) + blank + (layout.hasUpperRebate() ? 1 : 0);
        int stripRows = layout.isGrand() ? 3 : 2;
        FilmStrip strip = new FilmStrip(grid, roll, layout.margin(), row, stripRows, layout.room());
        if (layout.hasUpperRebate()) {
            strip.upperRebate();
        }
        strip.draw();
        row += stripRows + 1 + blank;
        List<String> others = otherPlaces(layout.isGrand() ? 4 : 2);
        int end = layout.rows() - 5 - others.size() - (layout.isGrand() ? 1 : 0);
        for (int i = 0; i < others.size(); i++) {
            grid.put(layout.margin(), end + i, Width.cut(others.get(i), layout.right()), TextRole.LABEL);
        }
        moment.ifPresent(it -> MomentLine.draw(grid, it, end - 1));
        int lists = end - (layout.isGrand() ? 1 : 0) - (moment.isPresent() ? 1 : 0);
        if (PickList.of(session).rows().isEmpty()) {
            lists(row, lists - row - 1);
        } else {
            new GuidePanel(session, grid).drawChoices(row, lists - row);
        }
    }

    private void lists(int row, int count) {
        SuggestionList suggestions = new SuggestionList(session, grid);
        suggestions.draw(row, count);
        if (suggestions.isEmpty()) {
            NewestFrames.draw(grid, session, layout.margin(), row, count, FrameText.Columns.TIMED);
        } else if (layout.isTwoLists()) {
            NewestFrames.draw(grid, session, suggestions.end(), row, count, suggestions.columnsBeside());
        }
    }

    /** Film, light, and the words for all that is not neutral or stands; answers the row after it. */
    private int head(int row) {
        state.rollInHand().ifPresent(it -> film(it.film(), row));
        int margin = layout.margin();
        Optional<String> light = state.day().light().map(it -> "light " + LightText.of(it, session.now()));
        if (state.rollInHand().isPresent()) {
            String meter = "meter at " + state.rollInHand().get().film().index();
            int column = grid.put(margin, row + 1, meter, TextRole.READOUT) + 2;
            String known = light.orElse("no light reading today");
            grid.put(column, row + 1, Width.cut(known, layout.columns() - column), TextRole.NORMAL);
        } else {
            grid.put(margin, row + 1, Width.cut(light.orElse(""), layout.right()), TextRole.NORMAL);
        }
        return StatusWords.draw(grid, StatusWords.of(session), row + 2);
    }

    /** A long name gives way to how the film is rated and developed: that costs money. */
    private void film(Film film, int row) {
        String development = film.developmentWords();
        String name = Width.cut(film.stock().name(), Math.max(16, layout.room() - 2 - Width.of(development)));
        int column = grid.put(layout.margin(), row, name, TextRole.STRONG) + 2;
        grid.put(column, row, Width.cut(development, layout.columns() - column), TextRole.NORMAL);
    }

    /** The other cameras and backs, as many side by side as fit; what finds no room on so many lines is counted. */
    private List<String> otherPlaces(int most) {
        List<String> rest = new ArrayList<>();
        CameraText.others(session).forEach(it -> rest.add(CameraText.full(it, session)));
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
