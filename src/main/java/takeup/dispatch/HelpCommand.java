package takeup.dispatch;

import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.text.Nearest;

/** {@code help}: all keys and words of this place, or one word. */
public final class HelpCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("help", "all keys and words of this place, or one word")
            .usage("help fix")
            .form("help", "all keys and words of this place")
            .form("help fix", "one word with its forms")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return help(arguments, context);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, CommandTable.firstWords());
    }

    private static Outcome help(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            return context.shows(
                    new ScreenAction.ShowHelp(Optional.empty()),
                    "help",
                    "Words: " + String.join(", ", CommandTable.firstWords())
                            + ". A frame is its numbers (4 125), or a point for the same again. help and a word "
                            + "says more.",
                    Json.object());
        }
        String word = arguments.one("help fix");
        CommandInfo found = CommandTable.find(word)
                .orElseThrow(() -> new CommandRejected(
                        word + " is no word known here" + Nearest.question(word, CommandTable.firstWords())));
        return context.shows(
                new ScreenAction.ShowHelp(Optional.of(found.word())),
                "help",
                explained(found),
                Json.object()
                        .and("word", found.word())
                        .and("usage", found.usage())
                        .and("does", found.summary()));
    }

    /** A word, what it does and its forms, to be read aloud. */
    private static String explained(CommandInfo info) {
        List<String> forms = info.forms().stream()
                .map(it -> "\"" + it.typed() + "\", " + it.meaning())
                .toList();
        return info.word() + ": " + info.summary() + "."
                + (forms.size() == 1
                        ? " For example \"" + info.example() + "\"."
                        : " Type " + String.join("; ", forms) + ".");
    }
}
