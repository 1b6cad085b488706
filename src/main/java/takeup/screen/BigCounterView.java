package takeup.screen;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.Camera;
import takeup.lettering.BigText;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.CounterPanel;
import takeup.panel.FooterKeys;
import takeup.panel.LargeFacts;
import takeup.panel.Layout;
import takeup.panel.NamePlates;
import takeup.panel.PairFigures;
import takeup.panel.SettingText;
import takeup.panel.SmallBars;
import takeup.panel.StatusWords;
import takeup.panel.TopBar;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The same facts as large as the screen allows, to be read across a room: camera and film above the counter. */
final class BigCounterView {
    /** What to do with a roll that is full. */
    private static final String AT_END = "UNLOAD";

    /** With fewer rows nothing can be larger than on the shoot screen: only its words go. */
    private static final int SMALL = 18;

    private final Session session;
    private final Grid grid;

    private BigCounterView(Session session, Grid grid) {
        this.session = session;
        this.grid = grid;
    }

    static void draw(Session session, Grid grid) {
        new BigCounterView(session, grid).draw();
    }

    private void draw() {
        Optional<Roll> film = session.shown().rollInHand();
        if (grid.rows() < SMALL && film.isPresent()) {
            if (!new LargeFacts(session, grid, film.get()).draw(SmallBars.top(grid, session))) {
                NameBar.draw(grid, session);
            }
            SmallBars.draw(grid, session, StyledText.strong(words(film.get(), pair())));
            return;
        }
        int bottom = BottomBars.top(grid, session, 1);
        NamePlates names = new NamePlates(session, grid);
        boolean hasNames = bottom >= 15;
        if (hasNames) {
            TopBar.draw(grid, session);
        } else {
            NameBar.draw(grid, session);
        }
        List<StyledText> words = StatusWords.beside(session, hasNames ? names.warning() : Optional.empty());
        int plates = Math.min(2, TextFit.plateRows(words, grid.columns()));
        int foot = bottom - plates;
        TextFit.drawPlates(
                grid, words, Layout.of(grid).margin(), foot, Layout.of(grid).room(), plates);
        int top = 1;
        if (hasNames) {
            names.names(1);
            int high = names.warning().isPresent() ? 6 : 5;
            top = Layout.of(grid).isGrand() ? 7 : high;
        }
        Optional<Roll> roll = session.shown().rollInHand();
        if (roll.isEmpty()) {
            String words2 = session.shown().noFilm(session.shown().placeInHand());
            grid.put(centred(Width.of(words2)), Math.min(foot - 1, top + 2), words2, TextRole.STRONG);
        } else {
            withFilm(roll.get(), top, foot, hasNames);
        }
        BottomBars.draw(grid, session, 1, FooterKeys.List.WHOLE);
    }

    /** The counter, below it what is left and the pair: large where three rows are free for them. */
    private void withFilm(Roll roll, int top, int foot, boolean isTall) {
        int figures = Layout.of(grid).counterScale() > 1 ? 6 : 4;
        int below = isTall ? figures : 1;
        String number = Integer.toString(roll.next());
        int wide = Math.max(BigText.width("00", 1), BigText.width(number, 1));
        int scale = Math.max(1, Math.min((foot - top - below) / 5, (grid.columns() - 2) / wide));
        CounterPanel.counter(grid, roll, centred(BigText.width(number, scale)), top, scale, 1);
        String pair = pair();
        boolean isWrong = ExposureInHand.fault(session.shown()).isPresent();
        if (isTall) {
            int row = foot - (Layout.of(grid).counterScale() > 1 ? 6 : 4);
            int column = below(roll, row) + 2;
            int columns = Math.min(BigText.smallWidth(pair), grid.columns() - column - 12);
            int start = Math.max(column + 6, grid.columns() - columns - 6);
            new PairFigures(
                            grid,
                            start,
                            row,
                            grid.columns() - start,
                            isWrong ? PairFigures.Pair.WRONG : PairFigures.Pair.RIGHT)
                    .draw(pair, PairFigures.Height.THREE_ROWS);
        }
        String line = words(roll, pair);
        grid.put(centred(Width.of(line)), foot - 1, line, !isTall && isWrong ? TextRole.ALARM : TextRole.STRONG);
    }

    /** How many frames are left, large; at the end of the roll what to do. Answers the column after it. */
    private int below(Roll roll, int row) {
        int wide = BigText.smallWidth(AT_END);
        if (roll.framesLeft() > 0 || grid.columns() < 2 * wide + 30) {
            return CounterPanel.left(session, roll, grid, 2, row);
        }
        BigText.drawSmall(grid, 2, row, AT_END, TextRole.STRONG);
        return 2 + wide;
    }

    /** The same in words; a pair that is cut, as 1/12 of 1/125, would be another pair. */
    private String words(Roll roll, String pair) {
        String set = pair.isEmpty() ? "" : " · " + pair;
        String left = RollText.left(roll);
        if (roll.framesLeft() > 0) {
            return TextFit.first(grid.columns(), "next frame · " + left + set, left + set);
        }
        int nominal = roll.film().framesNominal();
        String end = "END " + nominal + "/" + nominal;
        String past = roll.framesLeft() < 0 ? end + " · " + left : end;
        String brief = (roll.framesLeft() < 0 ? left : end) + ", unload";
        return TextFit.first(
                grid.columns(),
                past + " · rewind or wind off, then unload" + set,
                past + " · rewind or wind off, then unload",
                brief + set,
                brief);
    }

    private String pair() {
        boolean isAutomatic =
                session.shown().cameraInHand().map(Camera::isAutomatic).orElse(false);
        return isAutomatic ? "" : SettingText.pair(session).orElse("");
    }

    private int centred(int width) {
        return Math.max(0, (grid.columns() - width) / 2);
    }
}
