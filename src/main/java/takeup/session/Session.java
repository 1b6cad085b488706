package takeup.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.ShootCommand;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.report.RollSummary;
import takeup.report.StatusText;
import takeup.roll.RollId;

/**
 * The whole model of the screen: what the disk holds, what is on its way there, what is being typed, what is shown.
 *
 * @param saveQueue what the disk holds and what waits for it
 * @param prompt the line being typed
 * @param lastAnswer what was said last
 * @param question what a yes would do
 * @param todo lines still to be read: the first waits for a roll to be read in, or to leave
 * @param awaitedRoll the roll that is being read in; no line is read until it is there
 * @param heldKey Spaces on an empty prompt that may be a held key
 * @param view what is shown
 * @param cameraChanged whether another camera or back came in hand since the last Space, so that the next one says so
 *     large
 * @param allRolls all rolls, once they were listed
 * @param settings what stays for the whole run
 * @param leaving how far leaving has come
 * @param now the time of day
 * @param ticks milliseconds on a clock that only runs forward
 * @param drift by how many seconds the time of day was moved against it since the last frame or reading
 */
public record Session(
        SaveQueue saveQueue,
        PromptLine prompt,
        LastAnswer lastAnswer,
        Optional<Outcome.NeedsConfirmation> question,
        List<PendingLines> todo,
        Optional<RollId> awaitedRoll,
        HeldKey heldKey,
        View view,
        boolean cameraChanged,
        List<RollSummary> allRolls,
        Settings settings,
        Leaving leaving,
        OffsetDateTime now,
        long ticks,
        long drift) {
    /** How something is said; {@code CHOICES} are what Tab could complete, until the line is typed on. */
    public enum Tone {
        QUIET,
        ANSWER,
        LARGE,
        QUESTION,
        REFUSAL,
        CHOICES
    }

    /** What was said last, and the warnings with it. */
    public record LastAnswer(Tone tone, String text, List<Warning> warnings) {
        static final LastAnswer NOTHING = new LastAnswer(Tone.QUIET, "", List.of());

        public LastAnswer {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Spaces, or Ctrl-T that counts frames, that came in: how many, when the last one did, and which of the two keys it
     * is.
     */
    public record HeldKey(int count, long lastTicks, boolean tally) {
        static final HeldKey NONE = new HeldKey(0, 0, false);
    }

    /**
     * How far leaving has come: Ctrl-C once, waiting for the disk to have everything, or leaving whatever the disk
     * answers.
     */
    public enum Leaving {
        NO,
        ONCE,
        WHEN_SAVED,
        ANYWAY
    }

    /** Which view. */
    public enum Page {
        SHOOT,
        FRAMES,
        ROLLS,
        PLAN,
        BAG,
        DAY_END,
        HELP
    }

    /**
     * What is shown.
     *
     * @param page which view
     * @param scroll how far it is scrolled, in lines
     * @param chosen the highlighted suggestion; -1 if none is
     * @param theme the name of the theme
     * @param big whether the counter fills the screen
     * @param previous the view that help is about, and that Esc goes back to from there
     * @param topic the word that help explains, the rolls that the end of the day is told are held, or the sheet that
     *     lies over the shoot screen; "" for all, or none
     */
    public record View(Page page, int scroll, int chosen, String theme, boolean big, Page previous, String topic) {
        View page(Page other) {
            Page from = other != Page.HELP ? Page.SHOOT : page == Page.HELP ? previous : page;
            return new View(other, 0, -1, theme, big && other == Page.SHOOT, from, "");
        }

        /** What lies over the shoot screen to be photographed: {@code slate}, {@code clock}, or nothing. */
        public String sheet() {
            return page == Page.SHOOT ? topic : "";
        }

        /** The shoot screen with a sheet over it. */
        View withSheet(String sheet) {
            return new View(Page.SHOOT, 0, -1, theme, false, Page.SHOOT, sheet);
        }

        /** Help on one word. */
        View explaining(String word) {
            View help = page(Page.HELP);
            return new View(help.page, 0, -1, theme, help.big, help.previous, word);
        }

        /** The end of the day; the rolls that were named as held are its topic. */
        View ending(String held) {
            View end = page(Page.DAY_END);
            return new View(end.page, 0, -1, theme, end.big, end.previous, held);
        }

        View scrolledTo(int line) {
            return new View(page, line, chosen, theme, big, previous, topic);
        }

        View chosen(int index) {
            return new View(page, scroll, index, theme, big, previous, topic);
        }

        View theme(String name) {
            return new View(page, scroll, chosen, name, big, previous, topic);
        }

        View big(boolean on) {
            return new View(Page.SHOOT, 0, -1, theme, on, Page.SHOOT, "");
        }
    }

    /**
     * What stays for the whole run.
     *
     * @param letters the writer's letters for new roll numbers
     * @param folder the data folder, as it is named to the photographer
     * @param readOnly why nothing can be written; empty if it can
     */
    public record Settings(String letters, String folder, Optional<String> readOnly) {}

    public Session {
        todo = List.copyOf(todo);
        allRolls = List.copyOf(allRolls);
    }

    /** The model at the start. */
    public static Session begin(
            ShootState situation,
            Settings settings,
            String theme,
            List<String> problems,
            OffsetDateTime now,
            long ticks) {
        LastAnswer said = problems.isEmpty()
                ? ShootCommand.stillIn(situation, now)
                        .map(it -> new LastAnswer(Tone.QUIET, it, List.of()))
                        .orElse(LastAnswer.NOTHING)
                : new LastAnswer(
                        Tone.REFUSAL,
                        problems.get(0)
                                + (problems.size() > 1
                                        ? " (and " + (problems.size() - 1) + " more: takeup check)"
                                        : ""),
                        List.of());
        return new Session(
                SaveQueue.of(situation),
                PromptLine.EMPTY,
                said,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                HeldKey.NONE,
                new View(Page.SHOOT, 0, -1, theme, false, Page.SHOOT, ""),
                false,
                List.of(),
                settings,
                Leaving.NO,
                now,
                ticks,
                0);
    }

    /** The same, offering back what was being typed when the program ended last. */
    public Session offering(String draft) {
        LastAnswer offer = lastAnswer.tone() == Tone.QUIET
                ? new LastAnswer(Tone.QUIET, "PgUp brings back what was being typed: " + draft, List.of())
                : lastAnswer;
        return new Session(
                saveQueue,
                prompt.with(draft).cleared(),
                offer,
                question,
                todo,
                awaitedRoll,
                heldKey,
                view,
                cameraChanged,
                allRolls,
                settings,
                leaving,
                now,
                ticks,
                drift);
    }

    /** The model after a message, and what it asks of the outside. */
    public static Transition update(Session shoot, Message message) {
        return message.appliedTo(shoot);
    }

    /** The situation as the disk holds it; this is what the counter shows. */
    public ShootState saved() {
        return saveQueue.saved();
    }

    /** Steps that the disk has not acknowledged yet, oldest first. */
    public List<SaveQueue.Waiting> waiting() {
        return saveQueue.waiting();
    }

    /** Why the first of them could not be written; empty while all is well. */
    public Optional<String> saveError() {
        return saveQueue.saveError();
    }

    /** The situation once all that waits is on the disk: what a line is read in. */
    public ShootState afterPending() {
        return saveQueue.afterPending();
    }

    /** The kept situation, as it is on this day. */
    public ShootState shown() {
        return saved().asOf(now);
    }

    /** The suggestions that stand on the screen; none without film or light. */
    public List<Suggestion> choices() {
        return advice().map(Suggestions::suggestions).orElse(List.of());
    }

    /** Which of them is the best; -1 where there is none. */
    public int bestChoice() {
        return advice().map(Suggestions::best).orElse(-1);
    }

    private Optional<Suggestions> advice() {
        ShootState situation = shown();
        return situation
                .day()
                .light()
                .flatMap(light -> StatusText.asking(situation).map(it -> it.advice(light)));
    }

    /** The row of what is offered that is highlighted. */
    Optional<PickList.Row> picked() {
        List<PickList.Row> rows = view.chosen() >= 0 && view.page() == Page.SHOOT
                ? PickList.of(this).rows()
                : List.of();
        return view.chosen() < rows.size() && view.chosen() >= 0
                ? Optional.of(rows.get(view.chosen()))
                : Optional.empty();
    }

    /** The suggestion that is highlighted. */
    Optional<Suggestion> highlighted() {
        List<Suggestion> choices = choices();
        return view.chosen() >= 0 && view.chosen() < choices.size()
                ? Optional.of(choices.get(view.chosen()))
                : Optional.empty();
    }

    /**
     * What the one line on the prompt would do; empty while nothing, or more than one line, stands there. In Help what
     * is typed is looked for, so there only what Enter would really do is said.
     */
    public Optional<Outcome> echo() {
        List<String> lines = prompt.lines();
        return lines.size() == 1
                ? Optional.of(outcome(lines.get(0)))
                        .filter(it -> view.page() != Page.HELP || !(it instanceof Outcome.Rejected))
                : Optional.empty();
    }

    /**
     * What a line comes to now: yes or no answers the question that stands, and nothing is written where that cannot
     * be.
     */
    public Outcome outcome(String line) {
        Outcome outcome = question.flatMap(it -> it.answer(line, afterPending()))
                .map(it -> (Outcome) it)
                .orElseGet(() -> CommandContext.read(afterPending(), line, now, drift, settings.letters()));
        Outcome.Accepted does = outcome instanceof Outcome.NeedsConfirmation asked
                ? asked.ifYes()
                : outcome instanceof Outcome.Accepted one ? one : null;
        return does != null && !does.entries().isEmpty() && settings.readOnly().isPresent()
                ? new Outcome.Rejected(readOnlyWords())
                : outcome;
    }

    String readOnlyWords() {
        return "read only: " + settings.readOnly().orElse("");
    }
}
