package takeup.screen;

import java.time.OffsetDateTime;
import java.util.Optional;
import takeup.command.ScreenAction;
import takeup.grid.Grid;
import takeup.grid.PixelShape;
import takeup.grid.Size;
import takeup.grid.TextRole;
import takeup.lettering.SlateSheet;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.panel.BottomBars;
import takeup.panel.Layout;
import takeup.panel.MessageBar;
import takeup.roll.Frame;
import takeup.scans.ScreenClock;
import takeup.scans.Slate;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The slate or the clock over the whole screen, to be photographed as a frame; below it the prompt and the keys. */
public final class SlateView {
    private SlateView() {}

    static void draw(Session session, Grid grid, PixelShape pixels) {
        Optional<Slate> slate = session.shown()
                .rollInHand()
                .flatMap(it -> it.newest(Frame.Kind.SLATE).map(frame -> Slate.of(it, frame)));
        if (session.view().sheet().equals(Optional.of(ScreenAction.Sheet.CLOCK))) {
            OffsetDateTime now = session.now();
            String seconds = ":" + ClockText.twoDigits(now.getSecond());
            sheet(grid, 3, pixels, new ScreenClock(now).text(), ClockText.clock(now), seconds);
        } else if (slate.isPresent()) {
            sheet(grid, 3, pixels, slate.get());
        } else {
            String text = session.waiting().isEmpty()
                    ? "no slate on this roll: the word slate logs one"
                    : "the slate is shown once the disk has it";
            grid.put(0, 0, Width.cut(text, grid.columns()), TextRole.STRONG);
        }
        BottomBars.drawStill(grid, session);
    }

    /** A slate alone, with a line of words below it: what {@code takeup slate} shows. */
    public static Grid render(Slate slate, String words, int columns, int rows, PixelShape pixels) {
        Grid grid = Grid.of(columns, rows);
        sheet(grid, 1, pixels, slate);
        if (rows > 1) {
            grid.put(0, rows - 1, Width.cut(words, columns), TextRole.NORMAL);
        }
        return grid;
    }

    private static void sheet(Grid grid, int rowsBelow, PixelShape pixels, Slate slate) {
        String letters = slate.roll().letters();
        String number = slate.roll().toString().substring(letters.length());
        sheet(grid, rowsBelow, pixels, slate.text(), letters, number);
    }

    /** A code with a few letters beside it, over all rows but those below; a window too small for it is told so. */
    private static void sheet(Grid grid, int rowsBelow, PixelShape pixels, String code, String... letters) {
        int rows = Math.max(1, grid.rows() - rowsBelow);
        SlateSheet.of(grid.columns(), rows, pixels, code, letters).draw(grid, 0);
        Size fewest = SlateSheet.fewest(code, pixels);
        if (grid.columns() < fewest.columns() || rows < fewest.rows()) {
            String words = "the code needs " + fewest.columns() + " columns and " + (fewest.rows() + rowsBelow)
                    + " rows: make the window larger, or its letters smaller";
            int high = TextFit.rows(words, Layout.of(grid).right() - 1).size();
            MessageBar.draw(grid, StyledText.caution(words), Math.max(0, rows - high), rows);
        }
    }
}
