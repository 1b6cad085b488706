package takeup.session;

import java.util.Optional;
import takeup.command.Outcome;

/**
 * What was said last and what is asked.
 *
 * @param lastAnswer what was said last
 * @param question what a yes would do
 * @param cameraChanged whether another camera or back came in hand since the last Space, so that the answer to the next
 *     one is large
 */
record Dialogue(LastAnswer lastAnswer, Optional<Outcome.NeedsConfirmation> question, boolean cameraChanged) {
    Dialogue saying(LastAnswer answer) {
        return new Dialogue(answer, question, cameraChanged);
    }

    Dialogue asking(Optional<Outcome.NeedsConfirmation> what) {
        return new Dialogue(lastAnswer, what, cameraChanged);
    }

    Dialogue cameraChanged(boolean isChanged) {
        return new Dialogue(lastAnswer, question, isChanged);
    }
}
