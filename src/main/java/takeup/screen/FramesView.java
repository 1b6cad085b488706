package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.Warning;
import takeup.lettering.TextFit;
import takeup.panel.FrameText;
import takeup.panel.Layout;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The frames of the roll in hand, the newest first, each with its warnings. */
final class FramesView {
    private FramesView() {}

    static void draw(Session session, Grid grid) {
        Optional<Roll> roll = session.shown().rollInHand();
        String title = roll.map(
                        it -> "Frames of " + it.id() + " · " + it.film().stock().name() + " · " + it.place())
                .orElse("Frames: no film");
        ListView.drawPicked(
                session,
                grid,
                title,
                roll.map(it -> lines(it, session, Layout.of(grid))).orElse(List.of()));
    }

    private static List<ListLine> lines(Roll roll, Session session, Layout layout) {
        List<ListLine> lines = new ArrayList<>(ListLine.wrapped(head(roll), 0, layout.room(), TextRole.STRONG));
        roll.counterChecks()
                .forEach(it -> lines.add(new ListLine(
                        "counter showed " + it.shown() + " at " + ClockText.clock(it.at()) + ", the log came to "
                                + it.expected(),
                        TextRole.CAUTION)));
        int fewLeft = session.shown().kit().fewLeft(roll.film().framesNominal());
        List<List<Warning>> warnings = FrameWarnings.of(roll, fewLeft);
        FrameText.Columns columns = layout.hasFrameTimes() ? FrameText.Columns.ALL : FrameText.Columns.WARNED;
        if (!roll.frames().isEmpty()) {
            lines.add(new ListLine(FrameText.head(columns), TextRole.LABEL).continued());
        }
        for (int i = roll.frames().size() - 1; i >= 0; i--) {
            Frame frame = roll.frames().get(i);
            int above = i + 1 < roll.frames().size() ? roll.frames().get(i + 1).number() : frame.number() + 1;
            if (above > frame.number() + 1) {
                lines.add(new ListLine(gap(frame.number() + 1, above - 1), TextRole.QUIET).continued());
            }
            TextRole plain = warnings.get(i).isEmpty() ? TextRole.NORMAL : TextRole.CAUTION;
            boolean isChosen = roll.frames().size() - 1 - i == session.view().chosen();
            TextRole role = isChosen ? TextRole.CHOSEN : plain;
            String text = FrameText.of(roll, frame, columns, warnings.get(i));
            if (isChosen) {
                lines.addAll(whole(text, layout.room()));
            } else {
                lines.add(new ListLine(Width.cut(text, layout.room()), role));
            }
        }
        if (roll.frames().isEmpty()) {
            lines.add(new ListLine("no frame yet: Space on the shoot screen logs one", TextRole.QUIET));
        }
        return lines;
    }

    /**
     * The highlighted row is there whole, with who is on the frame, where, and the note, over as many lines as it
     * needs.
     */
    private static List<ListLine> whole(String text, int room) {
        List<String> parts = TextFit.rows(text, room);
        List<ListLine> lines = new ArrayList<>(List.of(new ListLine(parts.get(0), TextRole.CHOSEN)));
        String rest = text.substring(parts.get(0).length()).strip();
        if (!rest.isEmpty()) {
            ListLine.wrapped(rest, 5, room, TextRole.CHOSEN).forEach(it -> lines.add(it.continued()));
        }
        return lines;
    }

    private static String gap(int first, int last) {
        String numbers = first == last ? Integer.toString(first) : first + "-" + last;
        return Width.padLeft(numbers, 3) + "  not in the log";
    }

    private static String head(Roll roll) {
        String conditions = roll.conditions().stream()
                .map(it -> it.kind() + it.words().map(words -> " " + words).orElse(""))
                .collect(Collectors.joining(", "));
        return roll.film().developmentWords() + " · " + roll.framesUsed() + " of "
                + roll.film().framesNominal() + " used"
                + roll.note().map(it -> " · " + it).orElse("")
                + (conditions.isEmpty() ? "" : " · CONDITION " + conditions);
    }
}
