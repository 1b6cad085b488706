package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.day.CameraPlace;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Warning;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.session.HelpList;
import takeup.session.LastAnswer;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/** The rows above the prompt: what Enter would do with the line that is typed, or what was answered last. */
public final class MessageBar {
    /** What ends a message that has no room: the word that shows it whole. */
    private static final String CUT = " … more";

    private MessageBar() {}

    public static void draw(Grid grid, Session session, int row, int rows) {
        if (rows > 0) {
            draw(grid, message(session), row, rows);
        }
    }

    /**
     * The same above a row, whole: over as many rows as it needs, and over what stands there, with the warnings of the
     * answer in full. It needs no key to go: the next one does something else.
     *
     * @param end the row after the last
     * @param least rows that it may have anyway
     * @param most rows that it may take
     */
    static void drawOver(Grid grid, Session session, int end, int least, int most) {
        int margin = Layout.of(grid).margin();
        int width = Layout.of(grid).room() - 1;
        List<List<StyledText>> all = lines(session, width);
        // The last row of a part is the first of the next, since the word for more covers its end.
        int step = Math.max(1, most - 1);
        int parts = Math.max(1, (all.size() - 2) / step + 1);
        int skipped = session.lastAnswer().isRead() ? 0 : turned(grid, session) % parts * step;
        List<List<StyledText>> lines = all.subList(Math.min(skipped, all.size() - 1), all.size());
        boolean isRead = session.lastAnswer().isRead() && session.prompt().isEmpty();
        int shown = Math.min(isRead ? least : most, lines.size());
        int first = end - Math.max(shown, Math.min(least, most));
        for (int i = 0; i < shown; i++) {
            grid.fill(first + i, TextRole.NORMAL);
            int column = margin;
            List<StyledText> line = lines.get(i);
            for (StyledText part : line) {
                column = grid.put(column, first + i, part.text(), part.role());
            }
            if (i == shown - 1 && shown < lines.size()) {
                TextRole role = line.get(line.size() - 1).role();
                grid.put(Math.min(column, margin + width - Width.of(CUT)), first + i, CUT, role);
            }
        }
    }

    /**
     * Writes its first row into so many columns, with the word that shows the rest where there is more. A caution about
     * the sun in a finder or the voltage of a flash comes before what was answered.
     */
    static void drawFirst(Grid grid, Session session, int column, int row, int width) {
        List<List<StyledText>> lines = lines(session, width);
        int first = 0;
        for (int i = 0; i < lines.size(); i++) {
            String plate = lines.get(i).get(0).text().strip();
            if (plate.equals(Warning.Code.SUN.standing()) || plate.equals(Warning.Code.FLASH_VOLTAGE.standing())) {
                first = i;
            }
        }
        int at = column;
        for (StyledText part : lines.get(first)) {
            at = grid.put(at, row, part.text(), part.role());
        }
        if (lines.size() > 1) {
            TextRole role = lines.get(first).get(lines.get(first).size() - 1).role();
            int end = Math.min(at, column + width - Width.of(CUT));
            grid.fill(end, row, column + width - end, grid.role(column + width, row));
            grid.put(end, row, CUT, role);
        }
    }

    /** Whether something was said that no key followed yet. */
    static boolean isNew(Session session) {
        return !isRead(session);
    }

    /** How many parts were shown: of the smallest shoot screen one row only, so that the first time shows its start. */
    private static int turned(Grid grid, Session session) {
        int turned = session.lastAnswer().turned();
        boolean isOneRow = session.view().page() == Session.Page.SHOOT && grid.rows() < LargeFacts.ROWS + 5;
        return isOneRow ? Math.max(0, turned - 1) : turned;
    }

    /** How many rows a message takes above a row where it may grow so far. */
    static int rows(Grid grid, Session session, int least, int most) {
        boolean isRead = session.lastAnswer().isRead() && session.prompt().isEmpty();
        int said = lines(session, Layout.of(grid).room() - 1).size();
        return Math.max(least, Math.min(isRead ? least : most, said));
    }

    /** The rows of what is said, each in its parts: the plate of a warning, and words. */
    private static List<List<StyledText>> lines(Session session, int width) {
        StyledText message = message(session);
        List<List<StyledText>> lines = new ArrayList<>();
        for (String row : TextFit.rows(message.text(), width)) {
            lines.add(List.of(new StyledText(row, message.role())));
        }
        for (Warning warning : warnings(session)) {
            StyledText plate = TextFit.plate(warning.code().standing());
            List<String> rows = TextFit.rows(plate.text() + " " + warning.text(), width);
            String beside = rows.get(0).substring(plate.text().length());
            lines.add(List.of(new StyledText(plate.text(), TextRole.CAUTION), StyledText.normal(beside)));
            rows.subList(1, rows.size()).forEach(row -> lines.add(List.of(StyledText.normal(row))));
        }
        return lines;
    }

    /** The warnings that came with what is said; what is typed, and a quiet word, are not held up by them. */
    private static List<Warning> warnings(Session session) {
        LastAnswer.Tone tone = session.lastAnswer().tone();
        return session.prompt().isEmpty() && tone != LastAnswer.Tone.QUIET
                ? session.lastAnswer().warnings()
                : List.of();
    }

    /** Writes a text between the margins over so many rows at most; the last one is cut where it is too long. */
    public static void draw(Grid grid, StyledText text, int row, int rows) {
        int width = Layout.of(grid).right() - 1;
        List<String> lines = TextFit.rows(text.text(), width, rows);
        for (int i = 0; i < lines.size(); i++) {
            grid.put(Layout.of(grid).margin(), row + i, Width.cut(lines.get(i), width), text.role());
        }
    }

    private static StyledText message(Session session) {
        List<String> lines = session.prompt().lines();
        LastAnswer.Tone tone = session.lastAnswer().tone();
        if (lines.isEmpty() && session.question().isPresent()) {
            // Another theme or view leaves the question open: so it stays on the screen, too.
            return StyledText.strong(session.question().get().question());
        }
        if (lines.isEmpty() && session.view().menu().isPresent()) {
            Optional<Outcome> echo = isRead(session) ? session.echo() : Optional.empty();
            StyledText still = isRead(session) ? StyledText.quiet("") : lastAnswer(session);
            return echo.isPresent() ? onEnter(echo.get()) : still;
        }
        if (lines.isEmpty() || tone == LastAnswer.Tone.REFUSAL || tone == LastAnswer.Tone.CHOICES) {
            return lastAnswer(session);
        }
        Optional<HelpList.Entry> helpEntry = HelpList.onEnter(session);
        if (helpEntry.isPresent()) {
            return StyledText.normal(
                    HelpList.words(helpEntry.get(), session.view().helpWord()));
        }
        if (lines.size() > 1) {
            return StyledText.strong(lines.size() + " lines: Enter runs them one after another, Esc drops them");
        }
        Optional<Outcome> echo = session.echo();
        return echo.isPresent() ? onEnter(echo.get()) : lastAnswer(session);
    }

    /** Whether a key was pressed since the last answer, such as why the key before it cannot act. */
    private static boolean isRead(Session session) {
        return session.lastAnswer().isRead() || session.lastAnswer().text().isEmpty();
    }

    private static StyledText onEnter(Outcome outcome) {
        if (outcome instanceof Outcome.Rejected rejected) {
            return StyledText.quiet("· " + rejected.why());
        }
        if (outcome instanceof Outcome.NeedsConfirmation asked) {
            return StyledText.strong("Enter asks: " + asked.question());
        }
        if (outcome instanceof Outcome.NeedsRoll needs) {
            return StyledText.quiet("Enter reads " + needs.roll() + " first");
        }
        Outcome.Answer answer = ((Outcome.Accepted) outcome).answer();
        return StyledText.normal("Enter: " + answer.text() + codes(answer.warnings()));
    }

    private static String codes(List<Warning> warnings) {
        return warnings.isEmpty() ? "" : " (" + FrameText.codes(warnings, ", ") + ")";
    }

    private static StyledText lastAnswer(Session session) {
        LastAnswer answer = session.lastAnswer();
        LastAnswer.Tone tone = answer.tone();
        if (tone == LastAnswer.Tone.QUIET) {
            return StyledText.quiet(answer.text());
        }
        if (tone == LastAnswer.Tone.ANSWER) {
            return new StyledText(saved(answer) + answer.text(), TextRole.GOOD);
        }
        if (tone == LastAnswer.Tone.LARGE) {
            return new StyledText(saved(answer) + inCapitals(session.shown()) + answer.text(), TextRole.READOUT);
        }
        return StyledText.strong(tone == LastAnswer.Tone.REFUSAL ? "! " + answer.text() : answer.text());
    }

    /** When it was saved: {@code ✓ 15:16:04 }; nothing where nothing was. */
    private static String saved(LastAnswer answer) {
        return answer.savedAt()
                .map(it -> "✓ " + ClockText.clock(it) + ":" + ClockText.twoDigits(it.getSecond()) + " ")
                .orElse("");
    }

    /** The camera and back in hand, where they changed: {@code 645 REFLEX BACK 2: }. */
    private static String inCapitals(ShootState state) {
        String back = state.placeInHand()
                .flatMap(CameraPlace::back)
                .map(it -> " BACK " + it)
                .orElse("");
        return state.cameraInHand().map(Camera::name).orElse("").toUpperCase(Locale.ROOT) + back + ": ";
    }
}
