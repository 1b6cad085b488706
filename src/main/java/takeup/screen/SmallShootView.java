package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.advice.NextMoment;
import takeup.advice.StandingWarnings;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.CameraText;
import takeup.panel.CounterPanel;
import takeup.panel.FilmStrip;
import takeup.panel.FooterKeys;
import takeup.panel.GuidePanel;
import takeup.panel.LargeFacts;
import takeup.panel.MomentLine;
import takeup.panel.NamePlates;
import takeup.panel.PairFigures;
import takeup.panel.SettingText;
import takeup.panel.SmallBars;
import takeup.panel.StatusWords;
import takeup.panel.WarningPlate;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/**
 * The shoot screen of a small terminal, down to 40 by 12, without the lists: camera and film on plates, counter, frames
 * left and the pair in large figures, warnings.
 */
final class SmallShootView {
    /** From so many rows on the names are large too. */
    private static final int WITH_NAMES = 17;

    private final Session session;
    private final ShootState state;
    private final Grid grid;
    private final int columns;
    private final int messageRows;

    SmallShootView(Session session, Grid grid) {
        this.session = session;
        this.state = session.shown();
        this.grid = grid;
        this.columns = grid.columns();
        this.messageRows = grid.rows() < 14 ? 1 : 2;
    }

    void draw() {
        if (grid.rows() < WITH_NAMES && state.rollInHand().isPresent()) {
            largeFacts(state.rollInHand().get());
            return;
        }
        NameBar.draw(grid, session);
        int row = 1;
        Optional<WarningPlate> large = Optional.empty();
        if (grid.rows() >= WITH_NAMES && state.rollInHand().isPresent()) {
            NamePlates names = new NamePlates(session, grid);
            int high = names.warning().isPresent() ? WarningPlate.ROWS : 3;
            row = names.names(row) < 0 ? row : row + high;
            large = names.warning();
        }
        int bottom = BottomBars.top(grid, session, messageRows) - 1;
        Optional<NextMoment> moment = near();
        if (moment.isPresent()) {
            MomentLine.draw(grid, moment.get(), bottom--);
        }
        if (state.rollInHand().isPresent()) {
            Roll roll = state.rollInHand().get();
            int after = figures(roll, row);
            after += plates(StatusWords.beside(session, large), after, Math.max(0, bottom - after + 1));
            below(roll, after, bottom);
        } else {
            withoutFilm(bottom);
        }
        BottomBars.draw(grid, session, messageRows, FooterKeys.List.WHOLE);
    }

    /** All that is read from afar in ten rows, what else there is to know in those that are free. */
    private void largeFacts(Roll roll) {
        int end = SmallBars.top(grid, session);
        if (!new LargeFacts(session, grid, roll).draw(end)) {
            NameBar.draw(grid, session);
        }
        int bottom = Math.min(end, grid.rows() - 2) - 1;
        Optional<NextMoment> moment = near();
        if (moment.isPresent() && bottom >= LargeFacts.ROWS) {
            MomentLine.draw(grid, moment.get(), bottom--);
        }
        below(roll, LargeFacts.ROWS, bottom);
        SmallBars.draw(grid, session, SmallBars.rest(session, columns));
    }

    private Optional<NextMoment> near() {
        Optional<NextMoment> moment = NextMoment.of(state, session.now());
        return moment.isPresent() && moment.get().minutes() <= NextMoment.LEAD ? moment : Optional.empty();
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

    /** Counter and frames left with words beside them, the pair below; answers the row after them. */
    private int figures(Roll roll, int row) {
        String number = Integer.toString(roll.next());
        boolean isFull = roll.framesLeft() <= 0;
        int at = isFull ? end(row) : 1 + BigText.smallWidth(number);
        if (!isFull) {
            BigText.drawSmall(grid, 1, row, number, TextRole.READOUT);
        }
        // Past the end the words count, since the figure is no frame that is left.
        int column = isFull ? at : CounterPanel.left(session, roll, grid, at + 3, row) + 3;
        int nominal = roll.film().framesNominal();
        grid.put(column, row, RollText.left(roll), TextRole.READOUT);
        String next = isFull ? "END " + nominal + "/" + nominal + ", unload" : "next frame";
        grid.put(column, row + 1, Width.cut(next, columns - column), isFull ? TextRole.STRONG : TextRole.LABEL);
        boolean isAutomatic = state.cameraInHand().map(Camera::isAutomatic).orElse(false);
        Optional<Warning> fault = isAutomatic ? Optional.empty() : ExposureInHand.fault(state);
        int error = column;
        if (fault.isPresent()) {
            error = grid.put(column, row + 2, " " + fault.get().code().standing() + " ", TextRole.CAUTION) + 1;
        }
        // The error is that of the setting in hand: it says nothing of this frame where the camera is automatic.
        int room = Math.max(0, columns - error);
        String words =
                isAutomatic ? "" : TextFit.first(room, SettingText.error(state), SettingText.errorBriefly(state));
        grid.put(error, row + 2, words, TextRole.NORMAL);
        Optional<String> pair = isAutomatic ? Optional.empty() : SettingText.pair(session);
        if (pair.isEmpty()) {
            grid.put(1, row + 4, isAutomatic ? "sets itself" : "nothing set", TextRole.READOUT);
            return row + 6;
        }
        int covered = BottomBars.covered(grid, session, messageRows);
        if (covered < row + 6) {
            // A message stands over the figures: half of them tell nothing, so the pair is in plain letters meanwhile.
            boolean isBelow = covered > row + 3;
            int start = isBelow ? 1 : column;
            String plate = Width.cut(" " + pair.get() + " ", columns - start);
            TextRole role = fault.isPresent() ? TextRole.ALARM : TextRole.NAME;
            grid.put(start, isBelow ? row + 3 : row + 1, plate, role);
            return row + 6;
        }
        PairFigures.Pair kind = fault.isPresent() ? PairFigures.Pair.WRONG : PairFigures.Pair.RIGHT;
        new PairFigures(grid, 1, row + 3, columns - 1, kind).draw(pair.get(), PairFigures.Height.THREE_ROWS);
        return row + 6;
    }

    /** The end of the roll in place of the counter. */
    private int end(int row) {
        int wide = BigText.smallWidth("END");
        int start = PairFigures.bars(grid, 1, row, wide, 3);
        BigText.drawSmall(grid, start, row, "END", TextRole.READOUT);
        return start + wide + 4;
    }

    private int plates(List<StyledText> words, int row, int most) {
        int plates = Math.min(most, TextFit.plateRows(words, columns));
        TextFit.drawPlates(grid, words, 0, row, columns, plates);
        return plates;
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
