package takeup.command;

import java.util.List;
import java.util.Optional;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Warning;
import takeup.roll.RollId;

/** What a line comes to, before anything is written. */
public sealed interface Outcome {
    /** It cannot be followed; nothing is logged, and the line stays on the prompt. */
    record Rejected(String why) implements Outcome {}

    /** It needs a yes: {@code yes} on the next line answers it, {@code no} and any other line withdraw it. */
    record NeedsConfirmation(String question, Accepted ifYes) implements Outcome {
        /** What yes or no comes to; empty for any other line, which is read as if nothing had been asked. */
        public Optional<Accepted> answer(String line, ShootState now) {
            String word = line.strip();
            return word.equalsIgnoreCase("yes")
                    ? Optional.of(ifYes)
                    : word.equalsIgnoreCase("no")
                            ? Optional.of(new Accepted(
                                    List.of(),
                                    now,
                                    new Answer("state", "All is left as it was.", Json.object(), List.of()),
                                    ScreenAction.NOTHING,
                                    List.of()))
                            : Optional.empty();
        }
    }

    /** It speaks of a finished roll that was not read yet. */
    record NeedsRoll(RollId roll) implements Outcome {}

    /**
     * It does something.
     *
     * @param entries what is written down; empty if nothing is
     * @param after the situation once it is written
     * @param answer what is said then
     * @param screenAction what else happens on the screen
     * @param export rolls whose file and export must follow
     */
    record Accepted(
            List<JournalEntry> entries, ShootState after, Answer answer, ScreenAction screenAction, List<RollId> export)
            implements Outcome {}

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
    enum ScreenAction {
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
