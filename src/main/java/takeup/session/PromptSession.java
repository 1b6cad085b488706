package takeup.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.dispatch.Dispatcher;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.message.Message;
import takeup.message.SaveError;
import takeup.message.StepStore;
import takeup.search.FindQuery;
import takeup.search.FoundFrames;

/**
 * The prompt without a screen: each line is read, and what it does is safe before it is answered. It remembers what is
 * true now and what was asked last; nothing else.
 */
public final class PromptSession {
    private final StepStore store;
    private final String letters;
    private ShootState state;
    private SessionClock clock;
    private Optional<Outcome.NeedsConfirmation> question = Optional.empty();

    /**
     * Begins where nothing was typed yet.
     *
     * @param letters the writer's letters for new roll numbers
     * @param ticks milliseconds on a clock that only runs forward
     */
    public PromptSession(ShootState state, StepStore store, String letters, OffsetDateTime now, long ticks) {
        this.state = state;
        this.store = store;
        this.letters = letters;
        this.clock = new SessionClock(now, ticks, 0);
    }

    /**
     * The answer to a line.
     *
     * @param outcome what it came to: done, asked or rejected
     * @param remarks what was met in rolls that were read for it; often nothing
     * @param exportError why the files of a roll could not be brought up to date; empty if they were
     */
    public record Reply(Outcome outcome, List<String> remarks, Optional<String> exportError) {}

    public ShootState state() {
        return state;
    }

    /** What was put right on the disk, or is about to go wrong there: asked once a line is answered, often nothing. */
    public List<String> remarks() {
        return store.remarks();
    }

    /** Reads a line, and writes down what it does. */
    public Reply read(String line, OffsetDateTime now, long ticks) {
        clock = clock.at(now, ticks);
        List<String> remarks = new ArrayList<>();
        Outcome outcome = question.flatMap(it -> it.answer(line, state))
                .map(it -> (Outcome) it)
                .orElseGet(() -> outcome(line, remarks));
        question = asked(outcome);
        Optional<FindQuery> wanted = query(outcome);
        if (wanted.isPresent()) {
            FoundFrames found = store.find(wanted.get());
            remarks.addAll(found.problems());
            Outcome.Answer answer = new Outcome.Answer("found", found.words(), found.json(), List.of());
            return new Reply(((Outcome.Accepted) outcome).answering(answer), remarks, Optional.empty());
        }
        return outcome instanceof Outcome.Accepted accepted
                        && !accepted.entries().isEmpty()
                ? save(accepted, remarks)
                : new Reply(outcome, remarks, Optional.empty());
    }

    private static Optional<Outcome.NeedsConfirmation> asked(Outcome outcome) {
        if (outcome instanceof Outcome.NeedsConfirmation asked) {
            return Optional.of(asked);
        }
        return outcome instanceof Outcome.Accepted accepted ? accepted.thenAsks() : Optional.empty();
    }

    private static Optional<FindQuery> query(Outcome outcome) {
        return outcome instanceof Outcome.Accepted accepted
                        && accepted.screenAction().isPresent()
                        && accepted.screenAction().get() instanceof ScreenAction.Find find
                ? Optional.of(find.query())
                : Optional.empty();
    }

    /** What a line comes to; finished rolls that it speaks of are read in, each once. */
    private Outcome outcome(String line, List<String> remarks) {
        Outcome outcome = commandOutcome(line);
        while (outcome instanceof Outcome.NeedsRoll needs) {
            Message.Fetched read = store.read(needs.roll());
            remarks.addAll(read.problems());
            state = state.with(read.steps());
            outcome = commandOutcome(line);
            if (outcome.equals(needs)) {
                return new Outcome.Rejected(needs.roll() + " cannot be read: takeup check says why");
            }
        }
        return outcome;
    }

    private Outcome commandOutcome(String line) {
        return Dispatcher.read(state, line, clock.now(), clock.drift(), letters);
    }

    /** The state once a step is written: as the line was answered with, unless another one came between. */
    private ShootState after(Outcome.Accepted accepted, JournalStep step) {
        ShootState after = accepted.after();
        boolean isNext =
                after.history().steps().size() == state.history().steps().size() + 1
                        && after.history().newest().equals(Optional.of(step));
        return isNext ? after : state.and(step);
    }

    private Reply save(Outcome.Accepted accepted, List<String> remarks) {
        JournalStep step = new JournalStep(state.nextStep(), clock.now(), accepted.entries());
        Optional<SaveError> saveError = store.save(step);
        if (saveError.isPresent()) {
            question = Optional.empty();
            return new Reply(new Outcome.Rejected("NOT SAVED: " + saveError.get()), remarks, Optional.empty());
        }
        state = after(accepted, step);
        clock = step.isFrameOrReading() ? clock.withoutDrift() : clock;
        Optional<String> exportError = store.export(
                accepted.export().stream().map(it -> state.rolls().get(it)).toList());
        Outcome.Accepted done = exportError.isPresent()
                ? accepted
                : accepted.answering(accepted.answer().exported());
        return new Reply(done, remarks, exportError);
    }
}
