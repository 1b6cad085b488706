package takeup.dispatch;

import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.roll.RollId;

/** {@code scans r7 FOLDER}: lays what came back beside the log, on the screen. The pictures are not read here. */
final class ScansCommand implements Command {
    private static final CommandInfo INFO = CommandInfo.of("scans", "lays the scans of a folder beside a roll's frames")
            .usage("scans r7 FOLDER")
            .form("scans r7 FOLDER", "the folder that came back from the lab; takeup scans 7 FOLDER outside the screen")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        List<String> words = arguments.rest();
        RollId roll = words.stream()
                .findFirst()
                .flatMap(it ->
                        context.rollNamed(it).or(() -> RollId.parse(it)).or(() -> RollId.parse(context.letters() + it)))
                .filter(it -> context.state().known().contains(it)
                        || context.state().rolls().containsKey(it))
                .orElseThrow(() -> new CommandRejected("the scans of which roll? such as scans r7 FOLDER"));
        String folder = arguments.textAfterWords(2);
        if (folder.isEmpty()) {
            throw new CommandRejected("in which folder are they? such as scans " + roll.typed() + " FOLDER");
        }
        return context.shows(
                new ScreenAction.OpenScans(roll, folder),
                "state",
                "Scans are looked at on the screen, or with takeup scans " + roll.typed() + " FOLDER.",
                Json.object());
    }
}
