package takeup.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.InvalidPathException;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.IoErrorText;
import takeup.files.Version;
import takeup.options.RollArgument;
import takeup.ordering.OrderSubcommand;
import takeup.reviewing.DigitalSubcommand;
import takeup.reviewing.FramesSubcommand;
import takeup.reviewing.RatingSubcommand;
import takeup.reviewing.ReviewSubcommand;
import takeup.reviewing.ScansSubcommand;
import takeup.reviewing.SlateSubcommand;

/**
 * All commands but the plain start of the screen, and how a command line becomes one of them. Exit status: 0 done, 1 it
 * could not be done or problems were found, 2 the command line was wrong.
 */
public final class Subcommands {
    /** In the order of the help. */
    private static final List<Class<?>> ALL = List.of(
            LineSubcommand.class,
            MeterSubcommand.class,
            RollsSubcommand.class,
            RollSubcommand.class,
            CheckSubcommand.class,
            KeysSubcommand.class,
            PathsSubcommand.class,
            SchemaSubcommand.class,
            DemoSubcommand.class,
            StockSubcommand.class,
            CameraSubcommand.class,
            OrderSubcommand.class,
            ThemesSubcommand.class,
            CompletionSubcommand.class,
            ManSubcommand.class,
            PrepareSubcommand.class,
            PlanSubcommand.class,
            DayEndSubcommand.class,
            PaperSubcommand.class,
            ScansSubcommand.class,
            ReviewSubcommand.class,
            FramesSubcommand.class,
            FindSubcommand.class,
            SlateSubcommand.class,
            DigitalSubcommand.class,
            RatingSubcommand.class);

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
        Subcommands commands = new Subcommands(console);
        Optional<Class<?>> named = named(arguments);
        CommandLine line = commands.build(named.map(it -> List.<Class<?>>of(it)).orElse(ALL));
        if (named.isPresent()) {
            line.setParameterExceptionHandler((problem, args) -> commands.execute(commands.build(ALL), args));
        }
        int status = commands.execute(line, arguments);
        console.lines(commands.help.toString());
        return status;
    }

    private static Optional<Class<?>> named(String[] arguments) {
        Map<String, Class<?>> commands = new HashMap<>();
        ALL.forEach(it -> commands.put(it.getAnnotation(Command.class).name(), it));
        boolean isHelp = Arrays.stream(arguments).anyMatch(it -> it.startsWith("--help"));
        return Arrays.stream(arguments)
                .filter(it -> !isHelp && commands.containsKey(it))
                .findFirst()
                .map(commands::get);
    }

    private CommandLine build(List<Class<?>> commands) {
        CommandLine line =
                new CommandLine(new RootCommand(console, () -> build(ALL).getCommandSpec()));
        commands.forEach(line::addSubcommand);
        line.registerConverter(RollArgument.class, RollArgument::new);
        line.setExpandAtFiles(false).setCaseInsensitiveEnumValuesAllowed(false);
        String version = "takeup " + Version.number();
        line.getCommandSpec().version(version);
        line.getSubcommands().values().forEach(it -> {
            it.getCommandSpec().version(version);
            it.getSubcommands().values().forEach(below -> below.getCommandSpec().version(version));
        });
        line.setUnmatchedOptionsAllowedAsOptionParameters(false);
        line.setOut(new PrintWriter(help));
        line.setParameterExceptionHandler((problem, args) -> {
            console.error(UsageErrors.words(problem));
            console.error(UsageErrors.hint(problem));
            return 2;
        });
        line.setExecutionExceptionHandler((problem, command, result) -> failed(problem, line));
        return line;
    }

    private int execute(CommandLine line, String[] arguments) {
        try {
            return line.execute(arguments);
        } catch (RuntimeException | Error e) {
            return crashed(e, line);
        }
    }

    private int failed(Exception problem, CommandLine line) {
        if (problem instanceof IOException io) {
            console.error(IoErrorText.words(io));
            return 1;
        }
        if (problem instanceof InvalidPathException path) {
            console.error(UsageErrors.noPath(path));
            return 2;
        }
        if (problem instanceof CommandFailed why) {
            console.error(why.getMessage());
            return why.status();
        }
        return crashed(problem, line);
    }

    private int crashed(Throwable mistake, CommandLine line) {
        RootCommand root = line.getCommand();
        CrashReport.write(mistake, root.folderForReports(), Clock.wall().truncatedTo(ChronoUnit.SECONDS))
                .forConsole()
                .forEach(console::error);
        return 1;
    }
}
