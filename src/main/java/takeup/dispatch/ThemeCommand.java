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

/** {@code theme sun}: the look of the screen. */
public final class ThemeCommand implements Command {
    /** The looks of the screen, in the order in which F9 goes through them. */
    public static final List<String> THEMES = List.of("dark", "sun", "night", "mono");

    public static final CommandInfo INFO = CommandInfo.of("theme", "the look of the screen: dark, sun, night or mono")
            .usage("theme sun")
            .form("theme", "the next look")
            .form("theme mono", "this one")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return theme(arguments, context);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, THEMES);
    }

    private static Outcome theme(Arguments arguments, CommandContext context) {
        Optional<String> name = arguments.rest().isEmpty() ? Optional.empty() : Optional.of(arguments.one("theme sun"));
        if (name.isPresent() && !THEMES.contains(name.get())) {
            throw new CommandRejected(name.get() + " is no theme known here: " + String.join(", ", THEMES)
                    + Nearest.question(name.get(), THEMES));
        }
        return context.shows(
                new ScreenAction.ChangeTheme(name),
                "state",
                "Theme " + name.orElse("changed") + ".",
                Json.object().and("theme", name));
    }
}
