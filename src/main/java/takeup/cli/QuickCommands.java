package takeup.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import takeup.console.Console;
import takeup.options.JsonOption;
import takeup.options.PlainLine;
import takeup.options.RollArgument;
import takeup.ordering.OrderSubcommand;
import takeup.profiles.CameraSubcommand;
import takeup.profiles.StockSubcommand;
import takeup.reviewing.FindSubcommand;
import takeup.reviewing.FramesSubcommand;
import takeup.reviewing.ReviewSubcommand;

/** The commands of lines that are read by hand. */
final class QuickCommands {
    private QuickCommands() {}

    /** Does what the line asks for; its exit status, or empty where it is no such line. */
    static Optional<Integer> run(String[] arguments, Console console) {
        Optional<PlainLine> line = PlainLine.of(arguments);
        if (line.isEmpty()) {
            return Optional.empty();
        }
        RootCommand root = new RootCommand(console);
        try {
            return Optional.of(of(line.get(), root).call());
        } catch (Exception | Error e) {
            return Optional.of(root.failed(e));
        }
    }

    /** The command, ready to be called. */
    private static Callable<Integer> of(PlainLine line, RootCommand root) {
        if (line.data().isPresent()) {
            root.dataIn(line.data().get());
        }
        switch (line.name()) {
            case "rolls" -> {
                RollsSubcommand rolls = new RollsSubcommand();
                rolls.global = root;
                rolls.json = JsonOption.asked(line.isJson());
                return rolls;
            }
            case "frames" -> {
                return FramesSubcommand.of(root, line.isJson());
            }
            case "day-end" -> {
                DayEndSubcommand end = new DayEndSubcommand();
                end.global = root;
                end.json = JsonOption.asked(line.isJson());
                return end;
            }
            case "paths" -> {
                PathsSubcommand paths = new PathsSubcommand();
                paths.global = root;
                return paths;
            }
            case "check" -> {
                CheckSubcommand check = new CheckSubcommand();
                check.global = root;
                return check;
            }
            case "keys" -> {
                KeysSubcommand keys = new KeysSubcommand();
                keys.global = root;
                keys.json = JsonOption.asked(line.isJson());
                return keys;
            }
            case "stock" -> {
                return StockSubcommand.of(root, line.word(), line.isJson());
            }
            case "camera" -> {
                return CameraSubcommand.of(root, line.word(), line.isJson());
            }
            case "find" -> {
                return FindSubcommand.of(
                        root, line.words().subList(1, line.words().size()), line.isJson());
            }
            case "review" -> {
                return ReviewSubcommand.of(root, line.isJson());
            }
            case "line" -> {
                return LineSubcommand.of(root, line.isJson());
            }
            case "order" -> {
                return OrderSubcommand.list(root, line.isJson());
            }
            default -> {
                return RollSubcommand.of(root, new RollArgument(line.words().get(1)), line.isJson());
            }
        }
    }
}
