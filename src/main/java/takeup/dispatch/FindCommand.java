package takeup.dispatch;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.search.FindQuery;

/**
 * {@code find bw400 f2.8 lens 28}: frames of any roll. The line is read here; the archive is gone through elsewhere.
 */
final class FindCommand implements Command {
    private static final CommandInfo INFO = CommandInfo.of("find", "frames of all rolls that meet what is said")
            .usage("find " + FindQuery.EXAMPLE, "find judged thin since 2026-05")
            .form("find " + FindQuery.EXAMPLE, "film, aperture and lens; a camera, 1/125 or filter red too")
            .form("find since 2026-05 bow seat", "from that month on, with these words in the note")
            .form("find judged thin", "by your verdict: thin, good or dense")
            .form("find error over 1", "off by more than a stop; over 1 is too much light, under 1 too little")
            .form("find shoot regatta with ann at boathouse", "of a shoot, with somebody, somewhere")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        try {
            FindQuery query = FindQuery.of(arguments.textAfterWords(1));
            return context.shows(new ScreenAction.Find(query), "found", "Looking …", Json.object());
        } catch (IllegalArgumentException e) {
            throw new CommandRejected(e.getMessage());
        }
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.with(state.kit().keys(Kit.Sort.STOCKS), FindQuery.WORDS_OF_QUERY);
    }
}
