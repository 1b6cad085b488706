package takeup.dispatch;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.advice.LoadChecks;
import takeup.advice.TimedWarnings;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.exposure.Light;
import takeup.framing.PaperForm;
import takeup.framing.RatingCommand;
import takeup.history.ShootState;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.prompt.Tokens;
import takeup.report.WarningText;

/** Finds the command of a typed line and asks it what the line comes to. Pure: nothing is written. */
public final class Dispatcher {
    private static final int LONGEST_LINE = 1000;

    private Dispatcher() {}

    /** What a line comes to, under a clock that nobody moved while the program runs. */
    public static Outcome read(ShootState state, String line, OffsetDateTime now, String letters) {
        return read(state, line, now, 0, letters);
    }

    /**
     * What a line comes to.
     *
     * @param state what is true now
     * @param line as it was typed; not blank
     * @param now the time of day
     * @param drift by how many seconds the clock was moved since the last frame or reading, as a
     *     {@code ClockShiftDetector} finds
     * @param letters the writer's letters for new roll numbers
     */
    public static Outcome read(ShootState state, String line, OffsetDateTime now, long drift, String letters) {
        CommandContext context = CommandContext.of(state, now, drift, letters);
        String typed = line.strip();
        Outcome outcome = outcomeOf(isReading(typed, context) ? "m " + typed : typed, context);
        if (!(outcome instanceof Outcome.Rejected rejected)
                || state.day().paper().isPresent()
                || typed.length() > LONGEST_LINE) {
            return outcome;
        }
        Optional<String> meant = NaturalLine.meant(typed, context.state());
        Outcome natural = meant.isPresent() ? outcomeOf(meant.get(), context) : rejected;
        return natural instanceof Outcome.Rejected ? offering(rejected, typed, context) : natural;
    }

    /** A refusal with the line that was probably meant, where that one could be done. */
    private static Outcome offering(Outcome.Rejected rejected, String typed, CommandContext context) {
        Optional<String> line = NaturalLine.offered(typed, context.state());
        return line.isEmpty() || outcomeOf(line.get(), context) instanceof Outcome.Rejected
                ? rejected
                : new Outcome.Rejected(rejected.why() + ". Try: " + line.get(), line);
    }

    /** Within a minute of a reading a pair with a meter's tenth, {@code 5.6.3 125}, is the next one. */
    private static boolean isReading(String typed, CommandContext context) {
        Optional<Light> light = context.state().day().light();
        boolean isRecent = light.isPresent()
                && Math.abs(Duration.between(light.get().at(), context.now()).toSeconds()) <= 60;
        List<String> words = isRecent && Character.isDigit(typed.isEmpty() ? ' ' : typed.charAt(0))
                ? Tokens.of(typed).words()
                : List.of();
        return words.size() == 2
                && typed.indexOf(';') < 0
                && context.state().day().paper().isEmpty()
                && Tokens.token(words.get(0)).tenths() >= 0;
    }

    private static Outcome outcomeOf(String line, CommandContext context) {
        try {
            return withTimedWarnings(outcome(line, context), context);
        } catch (CommandRejected e) {
            return new Outcome.Rejected(e.getMessage());
        } catch (CommandContext.RollNotRead e) {
            return new Outcome.NeedsRoll(e.roll());
        }
    }

    private static Outcome outcome(String line, CommandContext context) {
        if (line.length() > LONGEST_LINE) {
            throw new CommandRejected(
                    "a line holds up to " + LONGEST_LINE + " characters, this one has " + line.length());
        }
        // A point stands for the space bar, which logs the next card while a rating test has it in hand.
        Optional<String> answer = answer(line, context.state());
        if (answer.isPresent()) {
            return outcome(answer.get(), context);
        }
        boolean isSpace = line.equals(".") && context.state().day().paper().isEmpty();
        Arguments arguments = Arguments.of(isSpace ? RatingCommand.space(context.state()) : line);
        Optional<Command> command = CommandTable.of(arguments.tokens());
        if (context.state().day().paper().isPresent() && !has(command, CommandInfo.Trait.WORKS_DURING_PAPER)) {
            if (command.isPresent() && !has(command, CommandInfo.Trait.IS_PAPER_LINE)) {
                throw PaperForm.isBeingRead(context);
            }
            return PaperForm.line(arguments, context);
        }
        boolean takesNote = command.isEmpty()
                || has(command, CommandInfo.Trait.TAKES_NOTE)
                || has(command, CommandInfo.Trait.TAKES_PROCESS)
                        && arguments.rest().contains("process");
        if (arguments.note().isPresent() && !takesNote) {
            throw new CommandRejected("a note belongs to a frame or a roll; " + arguments.word() + " takes none");
        }
        if (command.isEmpty()) {
            throw UnknownWord.rejected(arguments.word());
        }
        return command.get().run(arguments, context);
    }

    /** A letter answers a look of the load routine, as it does any question. */
    private static Optional<String> answer(String line, ShootState state) {
        boolean isLetter = line.equals("y") || line.equals("n");
        return isLetter && LoadChecks.of(state).isPresent()
                ? Optional.of(line.equals("y") ? "yes" : "no")
                : Optional.empty();
    }

    private static boolean has(Optional<Command> command, CommandInfo.Trait trait) {
        return command.isPresent() && command.get().info().has(trait);
    }

    /** A line that writes nothing leaves no trace, so nothing that began by the clock is said with it. */
    private static Outcome withTimedWarnings(Outcome outcome, CommandContext context) {
        if (outcome instanceof Outcome.NeedsConfirmation asked) {
            return new Outcome.NeedsConfirmation(asked.question(), warned(asked.ifYes(), context), asked.ifNo());
        }
        return outcome instanceof Outcome.Accepted accepted ? warned(accepted, context) : outcome;
    }

    private static Outcome.Accepted warned(Outcome.Accepted accepted, CommandContext context) {
        if (accepted.entries().isEmpty()) {
            return accepted;
        }
        List<Warning> all = new ArrayList<>(accepted.answer().warnings());
        Set<Warning.Code> codes = EnumSet.noneOf(Warning.Code.class);
        for (Warning warning : all) {
            codes.add(warning.code());
        }
        for (Warning begun :
                WarningText.of(TimedWarnings.begunBetween(context.before(), accepted.after(), context.now()))) {
            if (codes.add(begun.code())) {
                all.add(begun);
            }
        }
        return accepted.answering(accepted.answer().warning(all));
    }
}
