package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.advice.StandingWarnings;
import takeup.history.ShootState;
import takeup.kit.Warning;
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
        return beside(session, Optional.empty());
    }

    /** The same without the warning that stands there on a large plate. */
    public static List<StyledText> beside(Session session, Optional<WarningPlate> large) {
        ShootState state = session.shown();
        List<StyledText> words = new ArrayList<>();
        for (Warning.Code code : StandingWarnings.of(state, session.now())) {
            if (large.filter(it -> it.code() == code).isEmpty()) {
                words.add(TextFit.plate(code.standing()));
            }
        }
        state.day().paper().ifPresent(it -> words.add(TextFit.plate("PAPER OF " + it.roll() + ", done ends it")));
        RatingText.nextCard(state).map(TextFit::plate).ifPresent(words::add);
        StatusText.reciprocity(state).map(TextFit::plate).ifPresent(words::add);
        ExposureInHand.handHeld(state)
                .ifPresent(it -> words.add(TextFit.plate(it.code().standing())));
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
