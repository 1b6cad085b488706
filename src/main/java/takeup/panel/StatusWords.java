package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import takeup.advice.StandingWarnings;
import takeup.history.ShootState;
import takeup.lettering.StyledText;
import takeup.lettering.TextFit;
import takeup.report.RatingText;
import takeup.report.SetupText;
import takeup.report.StatusText;
import takeup.roll.Scene;
import takeup.session.Session;

/** The words for all that is not neutral: warnings that stand, then filter, bias, hold and the like. */
public final class StatusWords {
    private StatusWords() {}

    public static List<StyledText> of(Session session) {
        ShootState state = session.shown();
        List<StyledText> words = new ArrayList<>();
        StandingWarnings.of(state, session.now()).forEach(it -> words.add(TextFit.plate(it.standing())));
        state.day().paper().ifPresent(it -> words.add(TextFit.plate("PAPER OF " + it.roll() + ", done ends it")));
        RatingText.nextCard(state).map(TextFit::plate).ifPresent(words::add);
        StatusText.reciprocity(state).map(TextFit::plate).ifPresent(words::add);
        SetupText.marks(state.inHand()).forEach(it -> words.add(StyledText.strong(it)));
        state.day().showing().scene().ifPresent(it -> addScene(it, words));
        return words;
    }

    private static void addScene(Scene kept, List<StyledText> words) {
        if (!kept.people().isEmpty()) {
            words.add(StyledText.strong("WITH " + String.join(", ", kept.people())));
        }
        kept.place().name().ifPresent(it -> words.add(StyledText.strong("AT " + it)));
    }

    /** The standing warnings alone, on one line. */
    public static String warnings(Session session) {
        List<String> words = new ArrayList<>();
        RatingText.nextCard(session.shown()).ifPresent(words::add);
        StandingWarnings.of(session.shown(), session.now()).forEach(it -> words.add(it.standing()));
        return String.join(" · ", words);
    }
}
