package takeup.shoot;

import java.util.List;
import java.util.Optional;
import takeup.kit.Json;
import takeup.kit.Warning;
import takeup.roll.RollId;

/** What a line comes to, before anything is written. */
public sealed interface Outcome {
    /** It cannot be followed; nothing is logged, and the line stays on the prompt. */
    record Refused(String why) implements Outcome {}

    /** It needs a yes: {@code yes} on the next line answers it, {@code no} and any other line withdraw it. */
    record Asked(String question, Does ifYes) implements Outcome {
        /** What yes or no comes to; empty for any other line, which is read as if nothing had been asked. */
        public Optional<Does> answer(String line, Situation now) {
            String word = line.strip();
            return word.equalsIgnoreCase("yes")
                    ? Optional.of(ifYes)
                    : word.equalsIgnoreCase("no")
                            ? Optional.of(new Does(
                                    List.of(),
                                    now,
                                    new Answer("state", "All is left as it was.", Json.object(), List.of()),
                                    Act.NOTHING,
                                    List.of()))
                            : Optional.empty();
        }
    }

    /** It speaks of a finished roll that was not read yet. */
    record Needs(RollId roll) implements Outcome {}

    /**
     * It does something.
     *
     * @param entries what is written down; empty if nothing is
     * @param after the situation once it is written
     * @param answer what is said then
     * @param act what else happens on the screen
     * @param settle rolls whose file and export must follow
     */
    record Does(List<Entry> entries, Situation after, Answer answer, Act act, List<RollId> settle) implements Outcome {}

    /**
     * What is said once a line has done its work.
     *
     * @param event frame, light, state, load, unload, fix, undo, redo, note, shoot, plan, bag, day-end, question or
     *     help
     * @param text a sentence
     * @param fields what other programs read
     * @param warnings what the photographer must know now
     */
    record Answer(String event, String text, Json.Obj fields, List<Warning> warnings) {
        public Answer {
            warnings = List.copyOf(warnings);
        }
    }

    /** What a line does to the screen alone. */
    enum Act {
        NOTHING,
        SHOW_SHOOT,
        SHOW_FRAMES,
        SHOW_ROLLS,
        SHOW_PLAN,
        SHOW_BAG,
        SHOW_DAY_END,
        SHOW_SLATE,
        SHOW_CLOCK,
        SHOW_HELP,
        EXPLAIN,
        NEXT_THEME,
        BIG,
        QUIT,
        QUIT_ANYWAY
    }
}
