package takeup.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Warning;
import takeup.roll.RollId;

/** What a line comes to, before anything is written. */
public sealed interface Outcome {
    /** Whether something is written down for it, at once or after a yes. */
    default boolean isWriting() {
        return false;
    }

    /**
     * It cannot be followed; nothing is logged, and the line stays on the prompt.
     *
     * @param why what is wrong, and what to do
     * @param instead the line that was probably meant, which Tab takes over
     */
    record Rejected(String why, Optional<String> instead) implements Outcome {
        public Rejected(String why) {
            this(why, Optional.empty());
        }
    }

    /**
     * It needs a yes: {@code yes} or {@code y} on the next line answers it, {@code no} and any other line withdraw it.
     *
     * @param ifNo what no comes to; empty where it leaves all as it was
     */
    record NeedsConfirmation(String question, Accepted ifYes, Optional<Accepted> ifNo) implements Outcome {
        /** A question that no leaves alone. */
        public NeedsConfirmation(String question, Accepted ifYes) {
            this(question, ifYes, Optional.empty());
        }

        /** What yes or no comes to; empty for any other line, which is read as if nothing had been asked. */
        public Optional<Accepted> answer(String line, ShootState now) {
            return switch (line.strip().toLowerCase(Locale.ROOT)) {
                case "yes", "y" -> Optional.of(ifYes);
                case "no", "n" -> Optional.of(ifNo.orElseGet(() -> unchanged(now)));
                default -> Optional.empty();
            };
        }

        @Override
        public boolean isWriting() {
            return ifYes.isWriting();
        }

        private static Accepted unchanged(ShootState now) {
            Answer answer = new Answer("state", "All is left as it was.", Json.object(), List.of());
            return new Accepted(List.of(), now, answer, Optional.empty(), List.of());
        }
    }

    /** It speaks of a finished roll that was not read yet. */
    record NeedsRoll(RollId roll) implements Outcome {}

    /**
     * It does something.
     *
     * @param entries what is written down; empty if nothing is
     * @param after the state once it is written
     * @param answer what is said then
     * @param screenAction what else happens on the screen
     * @param export rolls whose file and export must follow
     * @param thenAsks what is asked once that is done; a line that does not answer it withdraws the question alone
     */
    record Accepted(
            List<JournalEntry> entries,
            ShootState after,
            Answer answer,
            Optional<ScreenAction> screenAction,
            List<RollId> export,
            Optional<NeedsConfirmation> thenAsks)
            implements Outcome {
        /** It does something and asks nothing more. */
        public Accepted(
                List<JournalEntry> entries,
                ShootState after,
                Answer answer,
                Optional<ScreenAction> screenAction,
                List<RollId> export) {
            this(entries, after, answer, screenAction, export, Optional.empty());
        }

        /** The same, and then asks something. */
        public Accepted thenAsking(Optional<NeedsConfirmation> question) {
            return new Accepted(entries, after, answer, screenAction, export, question);
        }

        @Override
        public boolean isWriting() {
            return !entries.isEmpty();
        }

        /** Whether it leaves the program. */
        public boolean isQuit() {
            return screenAction.filter(it -> it instanceof ScreenAction.Quit).isPresent();
        }

        /** The same, and something happens on the screen. */
        public Accepted showing(ScreenAction action) {
            return new Accepted(entries, after, answer, Optional.of(action), export, thenAsks);
        }

        public Accepted answering(Answer other) {
            return new Accepted(entries, after, other, screenAction, export, thenAsks);
        }

        /** The same once a question about what was typed is answered with yes; at once where there is none. */
        public Outcome askedFirst(Optional<String> question) {
            return question.isPresent()
                    ? new NeedsConfirmation(question.get() + ". Take it as typed? y/n", this)
                    : this;
        }
    }

    /**
     * What is said once a line has done its work.
     *
     * @param event frame, light, state, load, unload, fix, undo, redo, note, shoot, plan, bag, day-end, question or
     *     help
     * @param title what was done, in few words: {@code Frame 7 on R0003}
     * @param text a sentence
     * @param onceExported what is said behind it once the files of the rolls are written too; often nothing
     * @param fields what other programs read
     * @param warnings what the photographer must know now
     */
    record Answer(
            String event, String title, String text, String onceExported, AnswerFields fields, List<Warning> warnings) {
        public Answer {
            warnings = List.copyOf(warnings);
        }

        /** An answer to a line that writes nothing, so that nothing of it can fail to be saved. */
        public Answer(String event, String text, Json.Obj fields, List<Warning> warnings) {
            this(event, "", text, "", new AnswerFields.Given(fields), warnings);
        }

        public Answer saying(String other) {
            return new Answer(event, title, other, onceExported, fields, warnings);
        }

        /** The same with what is said once the files of the rolls are written. */
        public Answer exported() {
            return new Answer(event, title, text + onceExported, "", fields, warnings);
        }

        public Answer warning(List<Warning> others) {
            return new Answer(event, title, text, onceExported, fields, others);
        }
    }
}
