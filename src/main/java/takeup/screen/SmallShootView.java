package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.advice.NextMoment;
import takeup.advice.StandingWarnings;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.CameraText;
import takeup.panel.CounterPanel;
import takeup.panel.FilmStrip;
import takeup.panel.FooterKeys;
import takeup.panel.GuidePanel;
import takeup.panel.MomentLine;
import takeup.panel.SettingText;
import takeup.panel.StatusWords;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The shoot screen of a small terminal, down to 40 by 12: counter, pair and warnings, without the lists. */
final class SmallShootView {
    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final int columns;
    private final int rows;

    SmallShootView(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.columns = grid.columns();
        this.rows = grid.rows();
    }

    void draw() {
        top();
        int bottom = BottomBars.top(grid, session, 2) - 1;
        Optional<NextMoment> moment = NextMoment.of(state, session.now()).filter(it -> it.minutes() <= NextMoment.LEAD);
        if (moment.isPresent()) {
            MomentLine.draw(grid, moment.get(), bottom--);
        }
        if (state.rollInHand().isPresent()) {
            Roll roll = state.rollInHand().get();
            below(roll, counter(roll, bottom), bottom);
        } else {
            withoutFilm(bottom);
        }
        BottomBars.draw(grid, session, 2, FooterKeys.List.WHOLE);
    }

    /** Camera and film, the film's name cut before its rating is. */
    private void top() {
        String head = state.cameraInHand()
                .map(it -> state.placeInHand().orElseThrow().toString())
                .orElse("no camera");
        String tail = state.rollInHand()
                .map(it -> " EI " + it.film().index() + " · " + it.id())
                .orElse("");
        int room = columns - 6 - Width.of(head + " · " + tail);
        String film = state.rollInHand()
                .map(it -> " · "
                        + (room < 4 ? it.id() : Width.cut(it.film().stock().key(), room) + tail))
                .orElse("");
        grid.fill(0, TextRole.BAR);
        grid.put(0, 0, Width.cut(head + film, columns - 6), TextRole.BAR);
        grid.put(columns - 5, 0, ClockText.clock(session.now()), TextRole.BAR);
    }

    private void withoutFilm(int bottom) {
        // A warning that was just given is on the screen already, and the guide needs the row.
        List<Warning.Code> said =
                session.lastAnswer().warnings().stream().map(Warning::code).toList();
        boolean isSaid = said.equals(StandingWarnings.of(state, session.now()));
        String warnings = isSaid ? "" : StatusWords.warnings(session);
        grid.put(0, bottom, Width.cut(warnings, columns), TextRole.CAUTION);
        new GuidePanel(session, grid).drawChoices(1, bottom - (warnings.isEmpty() ? 0 : 1));
    }

    /** The counter with the pair beside it, and the words for all that is not neutral; answers the row after them. */
    private int counter(Roll roll, int bottom) {
        String number = Integer.toString(roll.next());
        int column = CounterPanel.counter(grid, roll, 0, 1, 1, number.length()) + 2;
        int nominal = roll.film().framesNominal();
        boolean isFull = roll.framesLeft() <= 0;
        grid.put(column, 1, isFull ? "END " + nominal + "/" + nominal + ", unload" : "next frame", TextRole.LABEL);
        grid.put(column, 2, RollText.left(roll), TextRole.READOUT);
        Optional<BulbTimer> timer = state.timerInHand();
        boolean isAutomatic = state.cameraInHand().map(Camera::isAutomatic).orElse(false);
        Optional<Warning> fault = isAutomatic ? Optional.empty() : ExposureInHand.fault(state);
        String pair = fault.map(it -> " " + it.code().standing() + " ").orElse("");
        int end = grid.put(column, 3, pair(timer, isAutomatic), fault.isPresent() ? TextRole.ALARM : TextRole.READOUT);
        grid.put(end + 1, 3, pair, TextRole.CAUTION);
        // The error is that of the setting in hand: it says nothing of this frame while the timer runs, or where the
        // camera is automatic.
        String error = isAutomatic ? "" : SettingText.error(state);
        String below = timer.map(it -> SettingText.timerBriefly(it, session)).orElse(error);
        grid.put(column, 4, Width.cut(below, columns - column), timer.isPresent() ? TextRole.STRONG : TextRole.NORMAL);
        List<StyledText> words = StatusWords.of(session);
        int most = Math.max(0, bottom - 5);
        int plates = Math.min(most, TextFit.plateRows(words, columns));
        TextFit.drawPlates(grid, words, 0, 6, columns, plates);
        return 6 + plates;
    }

    private String pair(Optional<BulbTimer> timer, boolean isAutomatic) {
        if (timer.isPresent() && timer.get().targetSeconds().isEmpty()) {
            return SettingText.elapsed(timer.get(), session);
        }
        return isAutomatic ? "sets itself" : SettingText.pair(session).orElse("nothing set");
    }

    /** The strip where two rows are free for it, then the guide and the other cameras. */
    private void below(Roll roll, int first, int bottom) {
        List<CameraPlace> others = CameraText.others(session);
        GuidePanel guide = new GuidePanel(session, grid);
        int wanted = (others.isEmpty() ? 0 : 1) + (GuidePanel.isShown(session) ? 1 : 0);
        int row = first;
        if (bottom - row + 1 - wanted >= 2) {
            new FilmStrip(grid, roll, 0, row, 1, columns).draw();
            row += 2;
        }
        row += row <= bottom ? guide.drawLine(row) : 0;
        for (int i = 0; i < others.size() && row <= bottom; i++, row++) {
            CameraPlace place = others.get(i);
            int unseen = row == bottom ? others.size() - 1 - i : 0;
            String more = unseen > 0 ? " · " + unseen + " more" : "";
            String line = TextFit.first(
                    columns - Width.of(more),
                    CameraText.full(place, session),
                    CameraText.brief(place, session),
                    CameraText.briefest(place, session));
            grid.put(0, row, line + more, TextRole.QUIET);
        }
    }
}
