package takeup.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.CommandTable;
import takeup.command.Outcome;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.history.ClockShiftDetector;
import takeup.history.ClockShiftNotes;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.session.Session.HeldKey;
import takeup.session.Session.LastAnswer;
import takeup.session.Session.Leaving;
import takeup.session.Session.Tone;
import takeup.session.Session.View;

/**
 * The part of a turn that does the work: reads lines, hands steps to the disk, hears its answers, and leaves. It begins
 * with the model, gathers what changes and what is asked of the outside, and ends in a {@link Transition}.
 */
class SaveFlow {
    /** What became of a line. */
    enum Came {
        DONE,
        REFUSED,
        WAITS
    }

    final Session.Settings settings;
    final List<Effect> effects = new ArrayList<>();
    final OffsetDateTime now;
    private final OffsetDateTime before;
    final long ticks;
    private long drift;
    SaveQueue ledger;
    PromptLine prompt;
    LastAnswer said;
    Optional<Outcome.NeedsConfirmation> question;
    List<PendingLines> todo;
    Optional<RollId> fetching;
    HeldKey spaces;
    View view;
    boolean moved;
    List<RollSummary> rolls;
    Leaving leaving;

    SaveFlow(Session shoot, OffsetDateTime now, long ticks) {
        this.settings = shoot.settings();
        this.now = now;
        this.before = shoot.now();
        this.ticks = ticks;
        this.drift = shoot.drift() + ClockShiftDetector.jump(shoot.now(), shoot.ticks(), now, ticks);
        this.ledger = shoot.saveQueue();
        this.prompt = shoot.prompt();
        this.said = shoot.lastAnswer();
        this.question = shoot.question();
        this.todo = new ArrayList<>(shoot.todo());
        this.fetching = shoot.awaitedRoll();
        this.spaces = shoot.heldKey();
        this.view = shoot.view();
        this.moved = shoot.cameraChanged();
        this.rolls = shoot.allRolls();
        this.leaving = shoot.leaving();
    }

    Transition step() {
        return new Transition(shoot(), effects);
    }

    Session shoot() {
        return new Session(
                ledger, prompt, said, question, todo, fetching, spaces, view, moved, rolls, settings, leaving, now,
                ticks, drift);
    }

    /**
     * Rings once for each timed exposure whose time came since the last message, and asks to be woken for one that is
     * near.
     */
    void ring() {
        for (BulbTimer timer : ledger.saved().day().timers().values()) {
            if (timer.targetSeconds().isEmpty()) {
                continue;
            }
            double left = timer.targetSeconds().getAsDouble() - timer.elapsed(now);
            if (left <= 0 && timer.elapsed(before) < timer.targetSeconds().getAsDouble()) {
                effects.add(new Effect.Bell());
            } else if (left > 0 && left < 1 && spaces.count() == 0) {
                effects.add(new Effect.Wake((long) Math.ceil(left * 1000)));
            }
        }
    }

    // The outside answers.

    Transition kept(long step) {
        if (!ledger.expects(step)) {
            return step();
        }
        SaveQueue.Waiting first = ledger.first();
        List<Suggestion> before = shoot().choices();
        PickList offered = PickList.of(shoot());
        // A question, or why the line on the prompt was refused, came later than this step and is not talked over.
        boolean isOpen = question.isPresent()
                || said.tone() == Tone.REFUSAL
                        && !prompt.isEmpty()
                        && ledger.saveError().isEmpty();
        said = isOpen
                ? new LastAnswer(said.tone(), said.text(), first.answer().warnings())
                : new LastAnswer(
                        first.isLarge() ? Tone.LARGE : Tone.ANSWER,
                        first.answer().text(),
                        first.answer().warnings());
        ledger = ledger.written();
        if (view.chosen() >= 0
                && !(shoot().choices().equals(before) && PickList.of(shoot()).equals(offered))) {
            view = view.chosen(-1);
        }
        if (ledger.canWrite()) {
            hand();
        } else if (isEnding()) {
            quit();
        }
        listIfShown();
        return step();
    }

    Transition notKept(long step, String why) {
        if (!ledger.expects(step)) {
            return step();
        }
        ledger = ledger.failed(why);
        if (leaving == Leaving.ANYWAY) {
            quit();
        } else if (leaving == Leaving.WHEN_SAVED) {
            say(
                    Tone.REFUSAL,
                    "still NOT SAVED, so it does not leave; quit yes leaves all the same and prints it on the terminal");
            giveUp();
        }
        return step();
    }

    Transition told(String words) {
        say(Tone.REFUSAL, words);
        return step();
    }

    Transition fetched(RollId roll, List<JournalStep> steps, List<String> problems) {
        boolean isAsked = fetching.equals(Optional.of(roll));
        if (!ledger.saved().rolls().containsKey(roll) && (isAsked || problems.isEmpty())) {
            ledger = ledger.with(steps);
        }
        if (isAsked) {
            boolean isThere = ledger.saved().rolls().containsKey(roll);
            if (!isThere || !problems.isEmpty()) {
                say(
                        Tone.REFUSAL,
                        (problems.isEmpty() ? roll + " cannot be read" : problems.get(0))
                                + (isThere ? "; Enter goes on with what could be read" : ""));
                giveUp();
            } else {
                fetching = Optional.empty();
                said = LastAnswer.NOTHING;
                run();
            }
        }
        return step();
    }

    Transition listed(List<RollSummary> lines) {
        rolls = lines;
        return step();
    }

    // Lines are read.

    void take(PendingLines.From from, List<String> lines) {
        todo.add(new PendingLines(lines, from));
        run();
    }

    boolean isBlocked() {
        return fetching.isPresent() || isEnding();
    }

    private boolean isEnding() {
        return leaving == Leaving.WHEN_SAVED || leaving == Leaving.ANYWAY;
    }

    /**
     * Reads the lines that are to be read, until one waits. A refused one goes back to the prompt, with the rest of its
     * kind.
     */
    private void run() {
        while (!todo.isEmpty() && !isBlocked()) {
            PendingLines first = todo.get(0);
            Came came = read(first.first(), first.from());
            if (came == Came.REFUSED) {
                todo.remove(0);
                putBack(first);
            } else if (came == Came.DONE && first.isLast()) {
                todo.remove(0);
            } else if (came == Came.DONE) {
                todo.set(0, first.rest());
            }
        }
    }

    /** Lines of the prompt go back to it; where something else is being typed by now, PgUp brings them. */
    private void putBack(PendingLines entered) {
        String text = String.join("\n", entered.lines());
        if (entered.from() == PendingLines.From.PROMPT && prompt.isEmpty()) {
            prompt = prompt.with(text);
        } else if (entered.from() == PendingLines.From.PROMPT) {
            prompt = prompt.remembering(text);
            say(Tone.REFUSAL, said.text() + "; PgUp brings the line back");
        }
    }

    private Came read(String line, PendingLines.From from) {
        Outcome outcome = shoot().outcome(line);
        withdraw();
        if (outcome instanceof Outcome.Rejected refused) {
            say(Tone.REFUSAL, refused.why());
            return Came.REFUSED;
        }
        if (outcome instanceof Outcome.NeedsConfirmation asked) {
            question = Optional.of(asked);
            say(Tone.QUESTION, asked.question());
            return Came.DONE;
        }
        if (outcome instanceof Outcome.NeedsRoll needs) {
            fetching = Optional.of(needs.roll());
            effects.add(new Effect.Fetch(needs.roll()));
            say(Tone.QUIET, "reading " + needs.roll() + " …");
            return Came.WAITS;
        }
        Outcome.Accepted does = (Outcome.Accepted) outcome;
        if (does.entries().isEmpty()) {
            return act(does);
        }
        accept(does, from);
        return Came.DONE;
    }

    /** Takes back a question that was not answered, and its words. */
    boolean withdraw() {
        boolean wasAsked = question.isPresent();
        question = Optional.empty();
        if (said.tone() == Tone.QUESTION) {
            said = LastAnswer.NOTHING;
        }
        return wasAsked;
    }

    void accept(Outcome.Accepted does, PendingLines.From from) {
        Optional<CameraPlace> before = ledger.afterPending().placeInHand();
        moved |= before.isPresent() && !before.equals(does.after().placeInHand());
        boolean isSpace = from == PendingLines.From.SPACE || from == PendingLines.From.SUGGESTION;
        Outcome.Answer answer = from != PendingLines.From.SUGGESTION
                ? does.answer()
                : new Outcome.Answer(
                        does.answer().event(),
                        "The highlighted setting was taken. " + does.answer().text(),
                        does.answer().fields(),
                        does.answer().warnings());
        // Worked out with the time of the yes, not of the question: what is shown is what the disk gets.
        drift = ClockShiftNotes.isMet(does.entries()) ? 0 : drift;
        JournalStep step = new JournalStep(ledger.afterPending().nextStep(), now.withNano(0), does.entries());
        ShootState after = ledger.afterPending().and(step);
        List<Roll> settle =
                does.export().stream().map(it -> after.rolls().get(it)).toList();
        ledger = ledger.and(new SaveQueue.Waiting(step, after, answer, isSpace && moved, settle));
        moved &= !isSpace;
        if (said.tone() == Tone.REFUSAL) {
            said = LastAnswer.NOTHING;
        }
        if (ledger.canWrite() && ledger.saveError().isEmpty()) {
            hand();
        }
        boolean stays = view.page() == Session.Page.SHOOT
                || view.page() == Session.Page.FRAMES
                || view.page() == Session.Page.PLAN && does.answer().event().equals("plan")
                || view.page() == Session.Page.BAG && does.answer().event().equals("bag");
        view = stays ? view.chosen(-1) : view.page(Session.Page.SHOOT);
        view = does.screenAction() == Outcome.ScreenAction.SHOW_SLATE
                ? view.withSheet("slate")
                : view.sheet().isEmpty() ? view : view.page(Session.Page.SHOOT);
    }

    void hand() {
        effects.add(new Effect.Save(ledger.first().step(), ledger.first().rollsToExport()));
        ledger = ledger.writing();
    }

    Came act(Outcome.Accepted does) {
        switch (does.screenAction()) {
            case SHOW_SHOOT -> show(Session.Page.SHOOT);
            case SHOW_FRAMES -> show(Session.Page.FRAMES);
            case SHOW_ROLLS -> show(Session.Page.ROLLS);
            case SHOW_PLAN -> show(Session.Page.PLAN);
            case SHOW_BAG -> show(Session.Page.BAG);
            case SHOW_DAY_END -> {
                view = view.ending(text(does, "held"));
                listIfShown();
            }
            case SHOW_SLATE, SHOW_CLOCK -> {
                view = view.withSheet(does.screenAction() == Outcome.ScreenAction.SHOW_CLOCK ? "clock" : "slate");
                said = new LastAnswer(
                        Tone.ANSWER, does.answer().text(), does.answer().warnings());
            }
            case SHOW_HELP -> show(Session.Page.HELP);
            case EXPLAIN -> view = view.explaining(text(does, "word"));
            case NEXT_THEME -> {
                return theme(does.answer()
                        .fields()
                        .field("theme")
                        .map(it -> it instanceof Json.Text text ? text.value() : ""));
            }
            case BIG -> big();
            case QUIT -> {
                return leaveWhenSaved();
            }
            case QUIT_ANYWAY -> {
                leaveAnyway();
                return Came.WAITS;
            }
            case NOTHING ->
                said = new LastAnswer(
                        Tone.ANSWER, does.answer().text(), does.answer().warnings());
        }
        return Came.DONE;
    }

    private static String text(Outcome.Accepted does, String field) {
        return does.answer()
                .fields()
                .field(field)
                .map(it -> it instanceof Json.Text text ? text.value() : "")
                .orElse("");
    }

    /** No longer waits for a roll or for leaving: the line that did goes back, what came after it goes on. */
    void giveUp() {
        fetching = Optional.empty();
        leaving = Leaving.NO;
        if (!todo.isEmpty()) {
            putBack(todo.remove(0));
        }
        run();
    }

    // Leaving.

    Came leaveWhenSaved() {
        if (ledger.saveError().isPresent()) {
            say(Tone.REFUSAL, notSavedWords());
            return Came.REFUSED;
        }
        leaving = Leaving.WHEN_SAVED;
        if (ledger.isWritten()) {
            quit();
        }
        return Came.WAITS;
    }

    static String notSavedWords() {
        return "NOT SAVED yet, so it does not leave; quit yes leaves all the same and prints it on the terminal";
    }

    /** Leaves once the disk has answered; asked a second time, at once. */
    void leaveAnyway() {
        boolean again = leaving == Leaving.ANYWAY;
        leaving = Leaving.ANYWAY;
        if (ledger.isWritten() || again) {
            quit();
            return;
        }
        if (ledger.canWrite()) {
            hand();
        }
        say(Tone.QUIET, "leaving as soon as the disk answers; Ctrl-C leaves now");
    }

    void quit() {
        effects.add(new Effect.Quit(ExitMessage.of(shoot())));
    }

    // What is shown and said.

    void show(Session.Page page) {
        view = view.page(page);
        listIfShown();
    }

    private void listIfShown() {
        if (view.page() == Session.Page.ROLLS || view.page() == Session.Page.DAY_END) {
            effects.add(new Effect.ListRolls());
        }
    }

    void big() {
        view = view.big(!view.big());
    }

    Came theme(Optional<String> name) {
        List<String> known = CommandTable.THEMES;
        String next = name.orElseGet(() -> known.get((known.indexOf(view.theme()) + 1) % known.size()));
        if (!known.contains(next)) {
            say(Tone.REFUSAL, next + " is no theme known here: " + String.join(", ", known));
            return Came.REFUSED;
        }
        view = view.theme(next);
        say(Tone.QUIET, "theme " + next);
        return Came.DONE;
    }

    void say(Tone tone, String words) {
        said = new LastAnswer(
                tone, words, tone == Tone.REFUSAL || tone == Tone.QUESTION ? List.<Warning>of() : said.warnings());
    }
}
