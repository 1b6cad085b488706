package takeup.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import takeup.console.Console;
import takeup.files.Version;
import takeup.options.RollArgument;

/**
 * All commands but the plain start of the screen, and how a command line becomes one of them. Exit status: 0 done, 1 it
 * could not be done or problems were found, 2 the command line was wrong.
 */
public final class Subcommands {
    /** Options that are passed on to a command and would change nothing there, so that it does not take them. */
    private static final Map<String, List<String>> UNUSED = Map.of(
            "help", List.of("--data"),
            "keys", List.of("--data"),
            "man", List.of("--data"),
            "schema", List.of("--data"),
            "themes", List.of("--data"),
            "version", List.of("--data"),
            "order labs", List.of("--from", "--clock"),
            "order sender", List.of("--from", "--clock"));

    private final Console console;
    private final StringWriter help = new StringWriter();

    private Subcommands(Console console) {
        this.console = console;
    }

    /**
     * Does what a command line asks for. Building all commands takes longer than most of them take to answer, so the
     * one that is named is built alone; what cannot be read with it goes to all of them, which know what to say.
     */
    public static int run(String[] arguments, Console console) {
        Optional<Integer> quick = QuickCommands.run(arguments, console);
        return quick.isPresent() ? quick.get() : parse(arguments, console);
    }

    /** The same of a line that {@link QuickCommands} does not know. */
    static int parse(String[] arguments, Console console) {
        Subcommands commands = new Subcommands(console);
        Optional<Class<?>> named = named(arguments);
        CommandLine line = named.map(it -> commands.build(List.of(it))).orElseGet(commands::buildAll);
        if (named.isPresent()) {
            line.setParameterExceptionHandler((problem, args) -> commands.execute(commands.buildAll(), args));
        }
        int status = commands.execute(line, arguments);
        console.lines(commands.help.toString());
        return status;
    }

    private static Optional<Class<?>> named(String[] arguments) {
        Map<String, Class<?>> commands = PartOfDay.commands();
        boolean isHelp = Arrays.stream(arguments).anyMatch(it -> it.equals("-h") || it.startsWith("--help"));
        return Arrays.stream(arguments)
                .filter(it -> !isHelp && commands.containsKey(it))
                .findFirst()
                .map(commands::get);
    }

    /** All commands with their options, for who describes them. */
    static CommandLine all(Console console) {
        return new Subcommands(console).buildAll();
    }

    private CommandLine buildAll() {
        return build(PartOfDay.commands().values());
    }

    private CommandLine build(Collection<Class<?>> commands) {
        CommandLine line = new CommandLine(new RootCommand(console));
        commands.forEach(line::addSubcommand);
        line.registerConverter(RollArgument.class, RollArgument::new);
        line.setExpandAtFiles(false).setCaseInsensitiveEnumValuesAllowed(false);
        each(line, it -> it.getCommandSpec().version(Version.text()));
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, GroupedHelp::commands);
        UNUSED.forEach((path, options) -> withoutUnused(line, List.of(path.split(" ")), options));
        line.setUnmatchedOptionsAllowedAsOptionParameters(false);
        // What picocli colours on a terminal is shown there as escapes.
        line.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
        line.setOut(new PrintWriter(help));
        line.setParameterExceptionHandler((problem, args) -> {
            console.error(UsageErrors.words(problem));
            console.error(UsageErrors.hint(problem));
            return 2;
        });
        line.setExecutionExceptionHandler(
                (problem, command, result) -> line.<RootCommand>getCommand().failed(problem));
        return line;
    }

    /** Where not all commands are built, one that is not there needs nothing taken away. */
    private static void withoutUnused(CommandLine line, List<String> path, List<String> options) {
        CommandLine at = line;
        for (String word : path) {
            at = at.getSubcommands().get(word);
            if (at == null) {
                return;
            }
        }
        // Not by findOption: to prove that what it answers may be removed, Java 25 loads picocli at each start, screen
        // too.
        for (ArgSpec argument : List.copyOf(at.getCommandSpec().args())) {
            if (argument.isOption() && options.contains(((OptionSpec) argument).longestName())) {
                at.getCommandSpec().remove(argument);
            }
        }
    }

    private static void each(CommandLine line, Consumer<CommandLine> action) {
        action.accept(line);
        line.getSubcommands().values().forEach(it -> each(it, action));
    }

    private int execute(CommandLine line, String[] arguments) {
        try {
            return line.execute(arguments);
        } catch (RuntimeException | Error e) {
            return line.<RootCommand>getCommand().failed(e);
        }
    }
}
