package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.advice.StandingWarnings;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.StyledText;
import takeup.report.RatingText;
import takeup.report.SetupText;
import takeup.report.StatusText;
import takeup.session.Session;
import takeup.text.Width;

/** The words for all that is not neutral: warnings that stand, then filter, bias, hold and the like. */
final class StatusWords {
    private StatusWords() {}

    static List<StyledText> of(Session session) {
        ShootState state = session.shown();
        List<StyledText> words = new ArrayList<>();
        StandingWarnings.of(state, session.now()).forEach(it -> words.add(StyledText.caution(it.standing())));
        state.day().paper().ifPresent(it -> words.add(StyledText.caution("PAPER OF " + it.roll() + ", done ends it")));
        RatingText.nextCard(state).map(StyledText::caution).ifPresent(words::add);
        SetupText.marks(state.inHand()).forEach(it -> words.add(StyledText.strong(it)));
        StatusText.reciprocity(state).map(StyledText::caution).ifPresent(words::add);
        return words;
    }

    /** The standing warnings alone, on one line. */
    static String warnings(Session session) {
        List<String> words = new ArrayList<>();
        RatingText.nextCard(session.shown()).ifPresent(words::add);
        StandingWarnings.of(session.shown(), session.now()).forEach(it -> words.add(it.standing()));
        return String.join(" · ", words);
    }

    /** Draws words one after the other, on a further row where one is full; answers the row after them. */
    static int draw(Grid grid, List<StyledText> words, int first) {
        Layout layout = Layout.of(grid);
        int row = first;
        int column = layout.margin();
        for (StyledText word : words) {
            if (column > layout.margin() && column + 3 + Width.of(word.text()) > layout.right()) {
                row++;
                column = layout.margin();
            } else if (column > layout.margin()) {
                column = grid.put(column, row, " · ", TextRole.QUIET);
            }
            column = grid.put(column, row, Width.cut(word.text(), layout.right()), word.role());
        }
        return row + 1;
    }

    /** Draws them from a place in row 5 on and below it at the left edge; answers the row after them. */
    static int drawBeside(Grid grid, List<StyledText> words, int start, int bottom) {
        int columns = grid.columns();
        int row = 5;
        int at = start;
        for (StyledText word : words) {
            int width = Width.of(word.text());
            if (at == start && row == 5 && start + width > columns && bottom > 5) {
                row++;
                at = 0;
            }
            boolean isFirst = at == start && row == 5;
            int from = isFirst || at == 0 ? at : at + 3;
            if (from + width > columns && !isFirst && row == bottom) {
                grid.put(Math.min(columns - 1, at + 1), row, "…", TextRole.STRONG);
                return row + 1;
            }
            if (from + width > columns && !isFirst) {
                row++;
                from = 0;
            } else if (from > at) {
                grid.put(at, row, " · ", TextRole.QUIET);
            }
            at = grid.put(from, row, Width.cut(word.text(), columns - from), word.role());
        }
        return row + 1;
    }
}
