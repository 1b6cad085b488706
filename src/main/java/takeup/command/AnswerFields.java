package takeup.command;

import takeup.history.ShootState;
import takeup.json.Json;
import takeup.report.StatusJson;

/**
 * What other programs read of an answer. It is worked out where one asks for it: the screen reads a line at each key,
 * and shows none of it.
 */
public interface AnswerFields {
    Json.Obj json();

    /** Fields that are there. */
    record Given(Json.Obj json) implements AnswerFields {}

    /** All that is true then. */
    record WholeState(ShootState state) implements AnswerFields {
        @Override
        public Json.Obj json() {
            return StatusJson.of(state);
        }
    }
}
