package takeup.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.console.StandardStreams;
import takeup.disk.IoErrorText;
import takeup.files.CameraClocks;
import takeup.files.DataFolder;
import takeup.files.JournalStore;
import takeup.files.ProcessEnvironment;
import takeup.files.ProfileFiles;
import takeup.files.Settings;
import takeup.files.StartupState;
import takeup.files.Version;
import takeup.handoff.Schemas;
import takeup.history.ShootState;
import takeup.journal.Archive;
import takeup.kit.Kit;
import takeup.screen.Theme;
import takeup.shell.SubcommandTree;
import takeup.terminal.TerminalEnvironment;
import takeup.text.Nearest;

/**
 * All commands but the plain start of the screen. Exit status: 0 done, 1 it could not be done or problems were found, 2
 * the command line was wrong.
 */
@Command(
        name = "takeup",
        sortOptions = false,
        synopsisSubcommandLabel = "[COMMAND]",
        description = {
            "A full-screen companion for the shoot day of a photographer who shoots film beside digital.",
            "Without a command it opens the shoot screen."
        },
        footer = {
            "",
            "First roll: cam 645, load cn400, m 5.6 125, then the space bar for each frame.",
            "Exit status: 0 done; 1 it could not be done, or problems were found; 2 the command line was wrong."
        })
public final class Subcommands implements Callable<Integer> {
    /** In the order of the help. */
    private static final List<Class<?>> ALL = List.of(
            Line.class,
            MeterIt.class,
            Rolls.class,
            OneRoll.class,
            Check.class,
            Keys.class,
            Paths.class,
            Schema.class,
            Demo.class,
            OneStock.class,
            OneCamera.class,
            OrderSubcommands.class,
            Themes.class,
            CompletionSubcommand.class,
            ManSubcommand.class,
            PrepareIt.class,
            PlanIt.class,
            DayEndSubcommand.class,
            PaperSubcommand.class,
            ReviewSubcommands.Scans.class,
            ReviewSubcommands.Lessons.class,
            ReviewSubcommands.Frames.class,
            SlateSubcommand.class,
            DigitalSubcommand.class,
            RatingSubcommand.class);

    private final Console out;
    private Optional<Settings> settings = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = CommandLine.ScopeType.INHERIT,
            description = "The data folder.")
    String data;

    @Option(names = "--help", usageHelp = true, scope = CommandLine.ScopeType.INHERIT, description = "Shows this help.")
    boolean help;

    @Option(
            names = "--version",
            versionHelp = true,
            scope = CommandLine.ScopeType.INHERIT,
            description = "Shows the version.")
    boolean version;

    @Option(names = "--ascii", description = "Draws the screen with plain characters.")
    boolean ascii;

    @Option(names = "--theme", paramLabel = "NAME", description = "The look of the screen: dark, sun, night, mono.")
    String theme;

    @Option(
            names = "--warm",
            description = "Alone: makes the archive that lets takeup start quickly; again after a move or a new Java.")
    boolean warm;

    private Subcommands(Console out) {
        this.out = out;
    }

    /**
     * Does what a command line asks for. Building all commands takes longer than most of them take to answer, so the
     * one that is named is built alone; what cannot be read with it goes to all of them, which know what to say.
     */
    public static int run(String[] arguments, Console out) {
        StringWriter answer = new StringWriter();
        Optional<Class<?>> named = named(arguments);
        CommandLine line = line(named.map(it -> List.<Class<?>>of(it)).orElse(ALL), answer, out);
        if (named.isPresent()) {
            line.setParameterExceptionHandler((problem, args) -> execute(line(ALL, answer, out), args));
        }
        int status = execute(line, arguments);
        out.lines(answer.toString());
        return status;
    }

    private static int execute(CommandLine line, String[] arguments) {
        try {
            return line.execute(arguments);
        } catch (RuntimeException | Error e) {
            return line.<Subcommands>getCommand().mistaken(e);
        }
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

    private static CommandLine line(List<Class<?>> commands, StringWriter answer, Console out) {
        Subcommands all = new Subcommands(out);
        CommandLine line = new CommandLine(all);
        commands.forEach(line::addSubcommand);
        line.setExpandAtFiles(false).setCaseInsensitiveEnumValuesAllowed(false);
        String version = "takeup " + Version.number();
        line.getCommandSpec().version(version);
        line.getSubcommands().values().forEach(it -> {
            it.getCommandSpec().version(version);
            it.getSubcommands().values().forEach(below -> below.getCommandSpec().version(version));
        });
        line.setUnmatchedOptionsAllowedAsOptionParameters(false);
        line.setOut(new PrintWriter(answer));
        line.setParameterExceptionHandler((problem, args) -> {
            out.error(wrong(problem));
            String command = problem.getCommandLine().getCommandSpec().qualifiedName();
            out.error(command
                    + (command.equals("takeup") ? " --help shows the commands" : " --help shows what it takes"));
            return 2;
        });
        line.setExecutionExceptionHandler((problem, command, result) -> {
            if (problem instanceof IOException io) {
                out.error(IoErrorText.words(io));
                return 1;
            }
            if (problem instanceof InvalidPathException path) {
                out.error(noPath(path));
                return 2;
            }
            if (problem instanceof CommandFailed unfit) {
                out.error(unfit.getMessage());
                return unfit.status();
            }
            return all.mistaken(problem);
        });
        return line;
    }

    /** Why a path cannot be one; where the locale is at fault, what to do about it. */
    static String noPath(InvalidPathException problem) {
        boolean isUnnamed = problem.getInput().indexOf('\ufffd') >= 0;
        return "this is no path: " + problem.getInput()
                + (isUnnamed ? "; with LC_ALL=C.UTF-8 in the environment it may be one" : "");
    }

    private int mistaken(Throwable mistake) {
        Path folder = DataFolder.data(Optional.ofNullable(data).filter(it -> !it.isBlank()));
        CrashReport.told(mistake, folder, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS))
                .forEach(it -> out.error(it.startsWith("takeup ") ? it.substring(7) : it));
        return 1;
    }

    /** What is wrong with a command line, in words; of what nobody knows the first, with the nearest name. */
    private static String wrong(CommandLine.ParameterException problem) {
        if (problem instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            CommandSpec command = problem.getCommandLine().getCommandSpec();
            String word = unmatched.getUnmatched().get(0);
            if (word.startsWith("-")) {
                return word + " is no option of " + command.qualifiedName()
                        + Nearest.question(word, command.optionsMap().keySet());
            }
            return !command.subcommands().isEmpty()
                    ? word + " is no command" + (command.parent() == null ? "" : " of " + command.qualifiedName())
                            + Nearest.question(word, command.subcommands().keySet())
                    : word + " is one word too many for " + command.qualifiedName();
        }
        String words = problem.getMessage();
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }

    Console out() {
        return out;
    }

    /** All commands with what they take. */
    SubcommandTree tree() {
        return SubcommandTree.of(line(ALL, new StringWriter(), out).getCommandSpec());
    }

    Path folder() {
        if (data != null && data.isBlank()) {
            throw new CommandFailed(2, "--data names no folder");
        }
        return DataFolder.data(Optional.ofNullable(data));
    }

    Archive archive() {
        return new Archive(folder(), settings().writer());
    }

    /** The photographer's settings, read once. */
    Settings settings() {
        if (settings.isEmpty()) {
            settings = Optional.of(Settings.of(folder()));
        }
        return settings.get();
    }

    Kit kit() {
        return new Kit(ProfileFiles.of(folder()), settings().framesLeft());
    }

    StartupState opening() throws IOException {
        return opening(Optional.empty());
    }

    StartupState opening(Optional<JournalStore> disk) throws IOException {
        StartupState opening = (disk.isPresent()
                        ? StartupState.of(disk.get(), kit())
                        : StartupState.of(archive(), kit()))
                .mended(disk);
        settings().problems().forEach(out::error);
        opening.problems().forEach(out::error);
        return opening;
    }

    @Override
    public Integer call() {
        if (warm) {
            throw new CommandFailed(2, "--warm stands alone: takeup --warm");
        }
        return new ScreenCommand(folder(), settings(), out)
                .run(
                        TerminalEnvironment.of(
                                ProcessEnvironment.variables(),
                                ascii || settings().ascii()),
                        look());
    }

    /** The theme to start in: the one that was asked for, else that of the settings. */
    String look() {
        if (theme != null && Theme.named(theme).isEmpty()) {
            throw new CommandFailed(
                    2,
                    theme + " is no theme known here: " + String.join(", ", Theme.names())
                            + Nearest.question(theme, Theme.names()));
        }
        return theme == null ? Main.theme(settings()) : theme;
    }

    @Command(
            name = "line",
            description = "Reads lines as on the prompt, answers each with one line, in order, after what it logged "
                    + "is safe on disk.")
    static final class Line implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "Answers are JSON objects.")
        boolean json;

        @Option(
                names = "--clock",
                paramLabel = "TIME",
                description = "A clock that stands still until a line \"clock +10min\" moves it, such as "
                        + "2026-09-12T15:00+02:00.")
        String clock;

        @Override
        public Integer call() throws IOException {
            Clock time = clock(clock);
            StandardStreams.closed().ifPresent(it -> {
                throw new CommandFailed(2, it);
            });
            JournalStore taken;
            try {
                taken = JournalStore.take(commands.archive());
            } catch (IOException e) {
                throw new CommandFailed(
                        1, "the data folder " + commands.folder() + " cannot be used: " + IoErrorText.words(e));
            }
            try (JournalStore disk = taken) {
                disk.sweep();
                ShootState situation = commands.opening(Optional.of(disk)).withToday(commands.archive(), time.now());
                try {
                    disk.settleLeftOvers(situation.rolls().values());
                } catch (IOException e) {
                    commands.out().error("the export of a finished roll could not be written: " + IoErrorText.words(e));
                }
                return new LineSubcommand(disk, situation, time, commands.out(), json).run(System.in);
            }
        }
    }

    @Command(name = "meter", description = "Turns a light reading into settings, as m does on the prompt.")
    static final class MeterIt implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(
                paramLabel = "READING",
                arity = "1..*",
                description = "As behind m: 5.6 125, ev11.3, low 5.6 125 and 11 125, 2500lx, sky shade.")
        List<String> reading;

        @Option(names = "--camera", paramLabel = "K", description = "The camera's key.")
        String camera;

        @Option(names = "--lens", paramLabel = "K", description = "The lens's key.")
        String lens;

        @Option(names = "--stock", paramLabel = "K", description = "The stock's key.")
        String stock;

        @Option(names = "--ei", paramLabel = "EI", description = "The exposure index; else the stock's usual one.")
        String index;

        @Option(names = "--meter", paramLabel = "K", description = "The meter's key.")
        String meter;

        @Option(names = "--hold", paramLabel = "V", description = "Keeps an aperture or a time: f2.8, 1/250.")
        String hold;

        @Option(names = "--bias", paramLabel = "S", description = "Deliberate deviation in stops, with its sign: +1/3.")
        String bias;

        @Option(names = "--filter", paramLabel = "F", description = "A filter: yellow, 3x, +1.5, nd0.9; several stack.")
        List<String> filters;

        @Option(names = "--extension", paramLabel = "MM", description = "From lens to film, the whole draw, in mm.")
        String extension;

        @Option(names = "--magnification", paramLabel = "M", description = "Size on film against size in life.")
        String magnification;

        @Option(names = "--distance", paramLabel = "D", description = "The distance of the subject: 3m, 10ft.")
        String distance;

        @Option(names = "--flash", description = "Flash is on.")
        boolean flash;

        @Option(names = "--tripod", description = "The camera stands on a tripod.")
        boolean tripod;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return new MeterSubcommand(this, commands).run();
        }
    }

    @Command(
            name = "stock",
            description = {
                "Prints what is known about a film, its long exposures as a table and as a curve.",
                "stock new KEY writes a file to start one of your own from."
            })
    static final class OneStock implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(
                paramLabel = "KEY",
                arity = "0..2",
                description = "The stock's key, such as bw400; or new and a key; without it all are listed.")
        List<String> words = List.of();

        @Option(names = "--like", paramLabel = "KEY", description = "With new: starts as a copy of that stock.")
        String like;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return isNew(words, like)
                    ? new NewProfile(commands).write(Kit.Sort.STOCKS, words.get(1), Optional.ofNullable(like))
                    : words.isEmpty()
                            ? new StockSubcommand(commands).list(json)
                            : new StockSubcommand(commands).run(words.get(0), json);
        }
    }

    @Command(
            name = "camera",
            description = {
                "Prints what is known about a camera.",
                "camera new KEY writes a file to start one of your own from."
            })
    static final class OneCamera implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(
                paramLabel = "KEY",
                arity = "0..2",
                description = "The camera's key, such as 645; or new and a key; without it all are listed.")
        List<String> words = List.of();

        @Option(names = "--like", paramLabel = "KEY", description = "With new: starts as a copy of that camera.")
        String like;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return isNew(words, like)
                    ? new NewProfile(commands).write(Kit.Sort.CAMERAS, words.get(1), Optional.ofNullable(like))
                    : words.isEmpty()
                            ? new CameraSubcommand(commands).list(json)
                            : new CameraSubcommand(commands).run(words.get(0), json);
        }
    }

    private static boolean isNew(List<String> words, String like) {
        boolean saysNew = !words.isEmpty() && words.get(0).equals("new");
        boolean isNew = saysNew && words.size() == 2;
        if (!isNew && (words.size() == 2 || saysNew)) {
            throw new CommandFailed(
                    2, saysNew ? "new needs the key of the new one" : words.get(1) + " is one word too many");
        }
        if (!isNew && like != null) {
            throw new CommandFailed(2, "--like goes with new");
        }
        return isNew;
    }

    @Command(name = "rolls", description = "Lists all rolls in the order of loading.")
    static final class Rolls implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() throws IOException {
            return new RollsSubcommand(commands).list(json);
        }
    }

    @Command(name = "roll", description = "Prints a roll, finished or open.")
    static final class OneRoll implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(paramLabel = "ROLL", description = "Its number: R0007, r7, or 7.")
        String roll;

        @Option(names = "--json", description = "As JSON (takeup schema roll).")
        boolean json;

        @Option(
                names = "--csv",
                description = "As CSV, a row a frame. JSON is the faithful form: in CSV a text that a spreadsheet "
                        + "would run gets a quote in front.")
        boolean csv;

        @Option(names = "--text", description = "As text to read; this is the default.")
        boolean text;

        @Option(
                names = "--with-client",
                description = "With --json: the words about the client too; otherwise they stay on this machine.")
        boolean withClient;

        @Option(names = "-o", paramLabel = "FILE", description = "Writes it to a file.")
        String file;

        @Override
        public Integer call() throws IOException {
            if ((json ? 1 : 0) + (csv ? 1 : 0) + (text ? 1 : 0) > 1) {
                throw new CommandFailed(2, "--json, --csv or --text, one of them");
            }
            if (withClient && !json) {
                throw new CommandFailed(2, "--with-client goes with --json");
            }
            return new RollsSubcommand(commands).one(roll, json, csv, withClient, Optional.ofNullable(file));
        }
    }

    @Command(
            name = "prepare",
            description = "The night-before list: film in the bag, what is in the cameras, whether it is enough for "
                    + "the plan, what to check.")
    static final class PrepareIt implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Option(
                names = "--with-client",
                description = "The words about the client too; otherwise they stay on this machine.")
        boolean withClient;

        @Option(
                names = "--clock",
                paramLabel = "TIME",
                description = "As if it were that time, such as 2026-09-12T15:00+02:00.")
        String clock;

        @Override
        public Integer call() throws IOException {
            return new PlanSubcommand(commands, clock(clock)).prepare(json, withClient);
        }
    }

    @Command(
            name = "plan",
            description = {
                "Prints the plan of the day.",
                "plan import FILE reads moments from a CSV file whose first line names the columns: "
                        + "time, moment, and any of date, wants, must, camera, back, light."
            })
    static final class PlanIt implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(
                paramLabel = "FILE",
                arity = "0..2",
                description = "The word import and a CSV file with a moment a line; without them the plan is printed.")
        List<String> words;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Option(
                names = "--clock",
                paramLabel = "TIME",
                description = "As if it were that time, such as 2026-09-12T15:00+02:00.")
        String clock;

        @Override
        public Integer call() throws IOException {
            PlanSubcommand command = new PlanSubcommand(commands, clock(clock));
            if (words == null) {
                return command.list(json);
            }
            if (!words.get(0).equals("import") || words.size() != 2) {
                throw new CommandFailed(2, "plan import FILE, or plan alone");
            }
            return command.read(Path.of(words.get(1)), json);
        }
    }

    /** The clock of an option, else that of the computer. */
    static Clock clock(String typed) {
        try {
            return Clock.of(Optional.ofNullable(typed).map(Clock::parse));
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
    }

    @Command(name = "check", description = "Reads everything in data folders and says what is wrong; changes nothing.")
    static final class Check implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(paramLabel = "DIR", arity = "0..*", description = "Data folders; else the usual one.")
        List<String> folders;

        @Override
        public Integer call() throws IOException {
            return new CheckSubcommand(commands)
                    .run(
                            folders == null
                                    ? List.of(commands.folder())
                                    : folders.stream().map(Path::of).toList());
        }
    }

    @Command(name = "keys", description = "Lists the keys and the words of the prompt.")
    static final class Keys implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "The answer is a JSON object.")
        boolean json;

        @Override
        public Integer call() {
            return new KeysSubcommand(commands.out()).run(json);
        }
    }

    @Command(name = "paths", description = "Says where things are.")
    static final class Paths implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Override
        public Integer call() {
            Path folder = commands.folder();
            commands.out().line("data folder        " + folder);
            commands.out().line("open rolls         " + folder.resolve("rolls").resolve("open"));
            commands.out().line("finished rolls     " + folder.resolve("rolls").resolve("finished"));
            commands.out().line("days               " + folder.resolve("days"));
            commands.out().line("exports            " + folder.resolve("exports"));
            commands.out().line("orders             " + folder.resolve("orders"));
            commands.out().line("reviews of scans   " + folder.resolve("reviews"));
            commands.out().line("camera clocks      " + folder.resolve(CameraClocks.NAME));
            commands.out().line("settings           " + folder.resolve(Settings.NAME));
            commands.out().line("your own profiles  " + folder.resolve("profiles"));
            commands.out().line("shipped profiles   " + DataFolder.profiles());
            return 0;
        }
    }

    @Command(name = "schema", description = "Prints the JSON Schema of a document that takeup writes.")
    static final class Schema implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Parameters(paramLabel = "NAME", description = "Which document: roll, order, frames.")
        String name;

        @Override
        public Integer call() {
            String schema = Schemas.named(name)
                    .orElseThrow(() -> new CommandFailed(
                            2,
                            name + " is no document known here (" + String.join(", ", Schemas.names()) + ")"
                                    + Nearest.question(name, Schemas.names())));
            commands.out().raw(schema);
            return 0;
        }
    }

    @Command(name = "themes", description = "Shows the looks of the screen, some lines in each.")
    static final class Themes implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Option(names = "--json", description = "The answer is a JSON object, with colours and contrast.")
        boolean json;

        @Override
        public Integer call() {
            return new ThemesSubcommand(commands.out()).run(json);
        }
    }

    @Command(
            name = "demo",
            description = "Regatta day: the shoot screen in a temporary folder, with some rolls already shot.")
    static final class Demo implements Callable<Integer> {
        @ParentCommand
        Subcommands commands;

        @Override
        public Integer call() throws IOException {
            return new DemoSubcommand(commands).run();
        }
    }
}
