package takeup.session;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import takeup.action.Menu;
import takeup.action.PickList;
import takeup.action.Window;
import takeup.command.Outcome;
import takeup.dispatch.Dispatcher;
import takeup.history.ShootState;
import takeup.kit.MeteredPair;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.message.HeldKey;
import takeup.message.PendingLines;
import takeup.message.SaveError;
import takeup.metering.LastAdvice;
import takeup.planning.ShootCommand;
import takeup.prompt.PromptLine;
import takeup.report.DayEnd;
import takeup.report.RollSummary;
import takeup.roll.RollId;

/**
 * The whole model of the screen: what the disk holds, what is on its way there, what is being typed, what is shown. It
 * only answers questions; what a message makes of it is worked out by {@link Update}.
 *
 * @param saveQueue what the disk holds and what waits for it
 * @param prompt the line being typed
 * @param dialogue what was said last and what is asked
 * @param pendingLines lines still to be read, and what they wait for
 * @param heldKey presses of Space or Ctrl-T that may be a held key
 * @param view what is shown
 * @param clock the time
 * @param settings what stays for the whole run
 */
public record Session(
        SaveQueue saveQueue,
        PromptLine prompt,
        Dialogue dialogue,
        PendingLines pendingLines,
        HeldKey heldKey,
        View view,
        SessionClock clock,
        Settings settings) {
    /** Which view. */
    public enum Page {
        SHOOT,
        FRAMES,
        ROLLS,
        PLAN,
        BAG,
        DAY_END,
        FIND,
        ORDER,
        HELP,
        ACTIONS
    }

    /**
     * What stays for the whole run.
     *
     * @param letters the writer's letters for new roll numbers
     * @param folder the data folder, as it is named to the photographer
     * @param readOnly why nothing can be written; empty if it can
     * @param lastAdvice the advice that was worked out last
     */
    public record Settings(String letters, String folder, Optional<String> readOnly, LastAdvice lastAdvice) {
        public Settings(String letters, String folder, Optional<String> readOnly) {
            this(letters, folder, readOnly, new LastAdvice());
        }
    }

    /** The model at the start. */
    public static Session begin(
            ShootState state, Settings settings, String theme, List<String> problems, OffsetDateTime now, long ticks) {
        LastAnswer first = problems.isEmpty()
                ? LastAnswer.quiet(ShootCommand.stillIn(state, now))
                : new LastAnswer(LastAnswer.Tone.REFUSAL, firstOf(problems), List.of());
        return new Session(
                SaveQueue.of(state),
                PromptLine.EMPTY,
                Dialogue.begin(first),
                PendingLines.NONE,
                HeldKey.NONE,
                View.first(theme),
                new SessionClock(now, ticks, 0),
                settings);
    }

    private static String firstOf(List<String> problems) {
        int more = problems.size() - 1;
        return problems.get(0) + (more > 0 ? " (and " + more + " more: takeup check)" : "");
    }

    /** The same, offering back what was being typed when the program ended last. */
    public Session offering(String draft) {
        Session offered = with(prompt.with(draft).cleared());
        return lastAnswer().tone() == LastAnswer.Tone.QUIET
                ? offered.with(LastAnswer.quiet("PgUp brings back what was being typed: " + draft))
                : offered;
    }

    // One part changed, the others kept.

    Session with(SaveQueue other) {
        return new Session(other, prompt, dialogue, pendingLines, heldKey, view, clock, settings);
    }

    Session with(PromptLine other) {
        return new Session(saveQueue, other, dialogue, pendingLines, heldKey, view, clock, settings);
    }

    Session with(Dialogue other) {
        return new Session(saveQueue, prompt, other, pendingLines, heldKey, view, clock, settings);
    }

    Session with(LastAnswer other) {
        return with(dialogue.saying(other));
    }

    Session with(PendingLines other) {
        return new Session(saveQueue, prompt, dialogue, other, heldKey, view, clock, settings);
    }

    Session with(HeldKey other) {
        return new Session(saveQueue, prompt, dialogue, pendingLines, other, view, clock, settings);
    }

    Session with(View other) {
        return new Session(saveQueue, prompt, dialogue, pendingLines, heldKey, other, clock, settings);
    }

    Session with(SessionClock other) {
        return new Session(saveQueue, prompt, dialogue, pendingLines, heldKey, view, other, settings);
    }

    /** In a window of that size. */
    public Session in(int columns, int rows) {
        Window now = view.window();
        return now.columns() == columns && now.rows() == rows ? this : with(view.in(new Window(columns, rows)));
    }

    /** With a sentence; a warning stays beside it, but for a refusal and a question. */
    Session say(LastAnswer.Tone tone, String text) {
        boolean isNew = tone == LastAnswer.Tone.REFUSAL || tone == LastAnswer.Tone.QUESTION;
        return with(new LastAnswer(tone, text, isNew ? List.of() : lastAnswer().warnings()));
    }

    Session saysNothing() {
        return with(LastAnswer.NOTHING);
    }

    /** Without the question that was not answered, and without its words. */
    Session withoutQuestion() {
        Session without = with(dialogue.asking(Optional.empty()));
        return lastAnswer().tone() == LastAnswer.Tone.QUESTION ? without.saysNothing() : without;
    }

    /** With nothing highlighted. */
    Session withoutChoice() {
        return with(view.unchosen());
    }

    // What is so now.

    /** The end of the day, as the view of it shows it. */
    public DayEnd dayEnd() {
        return DayEnd.withListed(
                shown(), allRolls(), now(), settings.letters(), view.subject().heldRolls());
    }

    public LastAnswer lastAnswer() {
        return dialogue.lastAnswer();
    }

    /** What a yes would do. */
    public Optional<Outcome.NeedsConfirmation> question() {
        return dialogue.question();
    }

    public OffsetDateTime now() {
        return clock.now();
    }

    /** All rolls that are known by now, as they are now: those of the list, and those in memory. */
    public List<RollSummary> allRolls() {
        Map<RollId, RollSummary> all = new TreeMap<>();
        view.rolls().ifPresent(listed -> listed.forEach(it -> all.put(it.id(), it)));
        shown().rolls().values().forEach(it -> all.put(it.id(), RollSummary.of(it)));
        return List.copyOf(all.values());
    }

    /** The state as the disk holds it; this is what the counter shows. */
    public ShootState saved() {
        return saveQueue.saved();
    }

    /** Steps that the disk has not acknowledged yet, oldest first. */
    public List<SaveQueue.Waiting> waiting() {
        return saveQueue.waiting();
    }

    /** Why the first of them could not be written; empty while all is well. */
    public Optional<SaveError> saveError() {
        return saveQueue.saveError();
    }

    /** The state once all that waits is on the disk: what a line is read in. */
    public ShootState afterPending() {
        return saveQueue.afterPending();
    }

    /** The saved state, as it is on this day. */
    public ShootState shown() {
        return settings.lastAdvice().shown(saved(), now());
    }

    /** The suggestions that stand on the screen; none without film or light. */
    List<Suggestion> choices() {
        Optional<Suggestions> advice = advice();
        return advice.isPresent() ? advice.get().suggestions() : List.of();
    }

    /** Which of them is the best; -1 where there is none. */
    int bestChoice() {
        Optional<Suggestions> advice = advice();
        return advice.isPresent() ? advice.get().best() : -1;
    }

    /** What the light of the day asks for, without what the shutter cannot do. */
    public Optional<Suggestions> advice() {
        return settings.lastAdvice().of(shown());
    }

    /** The pair that the meter showed for that light. */
    public Optional<MeteredPair> shownByMeter() {
        return settings.lastAdvice().shownByMeter(shown());
    }

    /** What can be picked where there is nothing to suggest yet. */
    public PickList picks() {
        return Guide.of(this).isPresent() ? PickList.guided(shown()) : PickList.of(shown());
    }

    /** The row of it that is highlighted. */
    Optional<PickList.Row> highlightedPick() {
        return view.page() == Page.SHOOT && view.chosen() >= 0 ? picks().row(view.chosen()) : Optional.empty();
    }

    /** The suggestion that is highlighted. */
    Optional<Suggestion> highlighted() {
        List<Suggestion> choices = choices();
        return view.page() == Page.SHOOT && view.chosen() >= 0 && view.chosen() < choices.size()
                ? Optional.of(choices.get(view.chosen()))
                : Optional.empty();
    }

    /**
     * What the one line on the prompt would do; empty while nothing, or more than one line, stands there. In Help what
     * is typed is looked for, so there only what Enter would really do is said.
     */
    public Optional<Outcome> echo() {
        if (prompt.isEmpty() && view.menu().isPresent()) {
            return view.menu().filter(Menu::isLast).map(it -> outcome(it.preview()));
        }
        List<String> lines = prompt.lines();
        if (lines.size() != 1) {
            return Optional.empty();
        }
        Outcome outcome = outcome(lines.get(0));
        return view.page() == Page.HELP && outcome instanceof Outcome.Rejected
                ? Optional.empty()
                : Optional.of(outcome);
    }

    /** What a line comes to now: yes or no answers a question that stands; nothing is written where that cannot be. */
    public Outcome outcome(String line) {
        Outcome outcome = read(line);
        return settings.readOnly().isPresent() && outcome.isWriting()
                ? new Outcome.Rejected("read only: " + settings.readOnly().get())
                : outcome;
    }

    private Outcome read(String line) {
        Optional<Outcome.Accepted> answer =
                question().isPresent() ? question().get().answer(line, afterPending()) : Optional.empty();
        if (answer.isPresent()) {
            return answer.get();
        }
        return Dispatcher.read(afterPending(), line, now(), clock.drift(), settings.letters());
    }
}
