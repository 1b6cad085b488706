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
            if (large.isEmpty() || !large.get().code().equals(Optional.of(code))) {
                words.add(TextFit.plate(code.standing()));
            }
        }
        if (state.day().paper().isPresent()) {
            words.add(TextFit.plate("PAPER OF " + state.day().paper().get().roll() + ", done ends it"));
        }
        addPlate(RatingText.nextCard(state), words);
        addPlate(StatusText.reciprocity(state), words);
        Optional<Warning> handHeld = ExposureInHand.handHeld(state);
        if (handHeld.isPresent()) {
            words.add(TextFit.plate(handHeld.get().code().standing()));
        }
        for (String mark : SetupText.marks(state.inHand())) {
            words.add(StyledText.strong(mark));
        }
        Optional<Scene> scene = state.day().showing().scene();
        if (scene.isPresent()) {
            addScene(scene.get(), words);
        }
        return words;
    }

    private static void addPlate(Optional<String> text, List<StyledText> words) {
        if (text.isPresent()) {
            words.add(TextFit.plate(text.get()));
        }
    }

    private static void addScene(Scene kept, List<StyledText> words) {
        if (!kept.people().isEmpty()) {
            words.add(StyledText.strong("WITH " + String.join(", ", kept.people())));
        }
        Optional<String> place = kept.place().name();
        if (place.isPresent()) {
            words.add(StyledText.strong("AT " + place.get()));
        }
    }

    /** The standing warnings alone, on one line. */
    public static String warnings(Session session) {
        List<String> words = new ArrayList<>();
        Optional<String> card = RatingText.nextCard(session.shown());
        if (card.isPresent()) {
            words.add(card.get());
        }
        for (Warning.Code code : StandingWarnings.of(session.shown(), session.now())) {
            words.add(code.standing());
        }
        return String.join(" · ", words);
    }
}
