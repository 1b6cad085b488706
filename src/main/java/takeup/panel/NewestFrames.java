package takeup.panel;

import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.Width;

/** The newest frames of the roll in hand, the last one first; before there is one, the last step of the guide. */
public final class NewestFrames {
    private NewestFrames() {}

    public static void draw(Grid grid, Session session, int column, int row, int count, FrameText.Columns columns) {
        Roll roll = session.shown().rollInHand().orElseThrow();
        List<Frame> frames = roll.frames();
        grid.put(column, row, "newest frames", TextRole.LABEL);
        for (int i = 0; i < Math.min(count, frames.size()); i++) {
            String text = FrameText.of(roll, frames.get(frames.size() - 1 - i), columns);
            String cut = Width.cut(text, Layout.of(grid).right() - column);
            grid.put(column, row + 1 + i, cut, i == 0 ? TextRole.STRONG : TextRole.NORMAL);
        }
        if (frames.isEmpty() && GuidePanel.isShown(session)) {
            new GuidePanel(session, grid).drawFrameStep(column, row);
        } else if (frames.isEmpty()) {
            grid.put(column + 2, row + 1, "none yet", TextRole.QUIET);
        }
    }
}
