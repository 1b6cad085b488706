package takeup.panel;

import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.advice.NextMoment;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.history.ShootState;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.report.MomentText;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;
import takeup.text.ClockText;
import takeup.text.Width;

/**
 * The last rows of the smallest shoot screen: prompt and footer alone. What was said stands beside the empty prompt,
 * and {@code more} shows the rest of it, so that the large figures stay whole; without it stands there what there is to
 * know besides them. A line that is typed, a question, and what {@code more} shows have the rows above, as elsewhere.
 */
public final class SmallBars {
    /** The column behind the empty prompt. */
    private static final int BESIDE = 3;

    private SmallBars() {}

    /** The first row that they take. */
    public static int top(Grid grid, Session session) {
        return isOver(session) ? BottomBars.covered(grid, session, 1) : grid.rows() - 2;
    }

    /**
     * Draws them.
     *
     * @param rest what else there is to know; stands there where nothing was said
     */
    public static void draw(Grid grid, Session session, StyledText rest) {
        if (isOver(session)) {
            BottomBars.draw(grid, session, 1, FooterKeys.List.WHOLE);
            return;
        }
        int prompt = grid.rows() - 2;
        PromptBar.draw(grid, session, prompt);
        FooterKeys.of(session, FooterKeys.List.WHOLE).draw(grid, prompt + 1);
        boolean isAsked = PromptBar.loadCheck(session).isPresent();
        if (isAsked && WarningPlate.isNotSaved(session)) {
            grid.fill(BESIDE, prompt, grid.columns(), TextRole.PROMPT);
        }
        if (WarningPlate.isNotSaved(session) || !isAsked && !MessageBar.isNew(session)) {
            if (!AlarmBar.drawAtPrompt(grid, session, BESIDE, prompt)) {
                grid.put(BESIDE, prompt, Width.cut(rest.text(), grid.columns() - BESIDE), rest.role());
            }
        } else if (!isAsked) {
            MessageBar.drawFirst(grid, session, BESIDE, prompt, grid.columns() - BESIDE - 1);
        }
    }

    /**
     * Whether what is said has the rows above the prompt: whoever reads it has the keys at hand, or has just put a film
     * in.
     */
    private static boolean isOver(Session session) {
        boolean isShownAgain = session.lastAnswer().turned() > 0 && MessageBar.isNew(session);
        Optional<Roll> roll = session.shown().rollInHand();
        boolean isJustIn = roll.isPresent()
                && roll.get().frames().isEmpty()
                && PromptBar.loadCheck(session).isPresent();
        return !session.prompt().isEmpty() || session.question().isPresent() || isJustIn || isShownAgain;
    }

    /** Whether what was said finds the prompt taken by a question about the film, and stands below the counter. */
    static boolean isBelowCounter(Session session) {
        return !isOver(session) && PromptBar.loadCheck(session).isPresent() && MessageBar.isNew(session);
    }

    /** What there is to know besides the large figures: the one thing to do now, else how things stand. */
    public static StyledText rest(Session session, int columns) {
        int room = columns - BESIDE;
        ShootState state = session.shown();
        Optional<NextMoment> next = NextMoment.of(state, session.now());
        Optional<String> guide = GuidePanel.line(session);
        if (guide.isPresent() && !(next.isPresent() && next.get().isUrgent())) {
            return StyledText.strong(guide.get());
        }
        if (next.isPresent() && next.get().minutes() <= NextMoment.LEAD) {
            String brief = TextFit.first(
                    room,
                    MomentText.fitting(next.get(), room),
                    MomentText.briefly(next.get()),
                    MomentText.countdown(next.get()));
            return StyledText.strong(brief);
        }
        String clock = ClockText.clock(session.now());
        Optional<Roll> roll = state.rollInHand();
        if (roll.isEmpty()) {
            return StyledText.normal(clock);
        }
        boolean isWrong = ExposureInHand.fault(state).isPresent();
        String instead = isWrong ? SettingText.instead(session.advice()) : "";
        String error = SettingText.errorBriefly(state);
        if (!instead.isEmpty()) {
            return StyledText.strong(
                    TextFit.first(room, instead + "  " + error + "  " + clock, instead + "  " + clock));
        }
        String left = RollText.left(roll.get());
        List<String> all =
                List.of("EI " + roll.get().film().index(), roll.get().id().toString(), left, error, clock);
        List<String> brief = List.of(roll.get().id().toString(), left, clock);
        return StyledText.normal(TextFit.first(
                room, String.join("  ", all), String.join(" ", all).replace("  ", " "), String.join("  ", brief)));
    }
}
