package takeup.panel;

import takeup.advice.NextMoment;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.lettering.TextFit;
import takeup.report.MomentText;
import takeup.text.Width;

/** The next key moment of the plan: the one thing to do about it, else its countdown. */
public final class MomentLine {
    private MomentLine() {}

    public static void draw(Grid grid, NextMoment moment, int row) {
        Layout layout = Layout.of(grid);
        String line = MomentText.line(moment);
        boolean isMust = moment.moment().must() && moment.advice() != NextMoment.Advice.NOTHING;
        int room = layout.room() - 2;
        String must = isMust ? " · MUST" : "";
        String text = TextFit.first(
                room,
                line + must,
                MomentText.fitting(moment, room - Width.of(must)) + must,
                MomentText.fitting(moment, room),
                MomentText.briefly(moment),
                line);
        boolean isUrgent = moment.isUrgent();
        grid.put(
                layout.margin(),
                row,
                isUrgent ? " " + text + " " : text,
                isUrgent ? TextRole.CAUTION : TextRole.STRONG);
    }
}
