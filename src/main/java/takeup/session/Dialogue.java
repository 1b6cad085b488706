package takeup.session;

import java.util.Optional;
import takeup.command.Outcome;
import takeup.message.GivenAnswer;

/**
 * What was said last and what is asked.
 *
 * @param lastAnswer what was said last
 * @param question what a yes would do
 * @param cameraChanged whether another camera or back came in hand since the last Space, so that the answer to the next
 *     one is large
 * @param given the answer that was given by one key just now
 */
record Dialogue(
        LastAnswer lastAnswer, Optional<Outcome.NeedsConfirmation> question, boolean cameraChanged, GivenAnswer given) {
    static Dialogue begin(LastAnswer first) {
        return new Dialogue(first, Optional.empty(), false, GivenAnswer.NOTHING);
    }

    Dialogue saying(LastAnswer answer) {
        return new Dialogue(answer, question, cameraChanged, given);
    }

    Dialogue asking(Optional<Outcome.NeedsConfirmation> what) {
        return new Dialogue(lastAnswer, what, cameraChanged, given);
    }

    Dialogue cameraChanged(boolean isChanged) {
        return new Dialogue(lastAnswer, question, isChanged, given);
    }

    Dialogue given(GivenAnswer other) {
        return new Dialogue(lastAnswer, question, cameraChanged, other);
    }
}
