package takeup.screen;

import java.util.Optional;
import takeup.command.ScreenAction;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.scans.ScreenClock;
import takeup.scans.Slate;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The slate over the whole screen, to be photographed as a frame; below it the prompt and the keys. */
public final class SlateView {
    private static final int FOOT = 3;

    private SlateView() {}

    static void draw(Session shoot, Grid grid, boolean halves) {
        int rows = grid.rows() - FOOT;
        Optional<Roll> roll = shoot.shown().rollInHand();
        Optional<Slate> slate = roll.flatMap(it -> it.newest(Frame.Kind.SLATE).map(frame -> Slate.of(it, frame)));
        if (shoot.view().sheet().equals(Optional.of(ScreenAction.Sheet.CLOCK))) {
            String text = new ScreenClock(shoot.now()).text();
            draw(
                    grid,
                    rows,
                    FOOT,
                    halves,
                    text,
                    ClockText.clock(shoot.now()),
                    ":" + ClockText.twoDigits(shoot.now().getSecond()));
        } else if (slate.isPresent()) {
            draw(grid, rows, FOOT, halves, slate.get());
        } else {
            grid.put(
                    0,
                    0,
                    Width.cut(
                            shoot.waiting().isEmpty()
                                    ? "no slate on this roll: the word slate logs one"
                                    : "the slate is shown once the disk has it",
                            grid.columns()),
                    TextRole.STRONG);
        }
        AlarmBar.drawNotSaved(grid, shoot, grid.rows() - 4);
        BottomBars.draw(grid, shoot, 1, FooterKeys.List.WHOLE);
    }

    /** A slate alone, with a line of words below it: what {@code takeup slate} shows. */
    public static Grid render(Slate slate, String words, int columns, int rows, boolean halves) {
        Grid grid = Grid.of(columns, rows);
        draw(grid, Math.max(1, rows - 1), 1, halves, slate);
        if (rows > 1) {
            grid.put(0, rows - 1, Width.cut(words, columns), TextRole.NORMAL);
        }
        return grid;
    }

    private static void draw(Grid grid, int rows, int foot, boolean halves, Slate slate) {
        String letters = slate.roll().letters();
        draw(
                grid,
                rows,
                foot,
                halves,
                slate.text(),
                letters,
                slate.roll().toString().substring(letters.length()));
    }

    private static void draw(Grid grid, int rows, int foot, boolean halves, String text, String... lines) {
        SlateSheet.of(grid.columns(), rows, halves, text, lines).draw(grid, 0);
        Size fewest = SlateSheet.fewest(text, halves);
        if (grid.columns() < fewest.columns() || rows < fewest.rows()) {
            String words = "the code needs " + fewest.columns() + " columns and " + (fewest.rows() + foot)
                    + " rows: make the window larger, or its letters smaller";
            int high = TextFit.rows(words, grid.layout().right() - 1).size();
            grid.paragraph(Math.max(0, rows - high), rows, StyledText.caution(words));
        }
    }
}
