package takeup.loading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.prompt.CommandRejected;
import takeup.prompt.LabelWords;
import takeup.prompt.LoadArguments;
import takeup.report.RollText;
import takeup.roll.Film;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollId;
import takeup.roll.RollLabel;

/** {@code fix roll @400}: what was typed wrong of a whole roll. */
public final class RollFix {
    private RollFix() {}

    public static Outcome run(Arguments typed, CommandContext context) {
        LabelWords said = typed.rest().contains("shoot")
                ? new LabelWords(typed.line(), RollLabel.NONE)
                : LabelWords.of(typed.line());
        Arguments arguments = said.label().isNone() ? typed : Arguments.of(said.rest());
        RollNames.refuseTaken(said.label(), context);
        List<String> words = arguments.rest().subList(1, arguments.rest().size());
        // Many stocks are called as a roll could be: bw400.
        Optional<RollId> id = RollWords.named(words, context)
                .filter(it -> context.state().known().contains(it)
                        || context.state().kit().stock(words.get(0)).isEmpty());
        Roll roll = context.roll(id, "fix roll r7 @400");
        int named = id.isPresent() ? 1 : 0;
        if (words.size() > named && words.get(named).equals("shoot")) {
            return OtherShoot.run(roll, arguments.textAfterWords(3 + named), context);
        }
        RollChange change = LoadArguments.read(
                        words.subList(id.isPresent() ? 1 : 0, words.size()),
                        arguments.textAfter("process"),
                        context.state().kit())
                .labelled(said.label());
        if (change.equals(RollChange.NOTHING)) {
            throw new CommandRejected("what is right for the roll? fix roll @400, fix roll bw400 push 1");
        }
        return RollWords.corrected(
                roll,
                completed(change, roll),
                it -> ": " + it.film().stock().name() + ", " + it.film().size() + ", "
                        + it.film().framesNominal() + " frames, " + it.film().developmentWords() + RollNames.words(it)
                        + ", "
                        + RollText.left(it) + ".",
                context);
    }

    /** Another stock brings its own process, and another size its own number of frames, where nothing else is said. */
    private static RollChange completed(RollChange change, Roll roll) {
        Film before = roll.film();
        Film film = before.with(change);
        FilmFit.check(roll.camera(), film.stock(), film.size());
        boolean isOwnProcess =
                before.development().process().equals(before.stock().process());
        Optional<String> process =
                change.stock().isPresent() && change.process().isEmpty() && isOwnProcess
                        ? Optional.of(film.stock().process())
                        : change.process();
        OptionalInt frames =
                change.filmSize().isPresent() && change.framesNominal().isEmpty()
                        ? OptionalInt.of(roll.camera().frames().get(film.size()))
                        : change.framesNominal();
        return new RollChange(change.stock(), change.filmSize(), change.index(), change.pushStops(), process, frames)
                .labelled(change.label());
    }
}
