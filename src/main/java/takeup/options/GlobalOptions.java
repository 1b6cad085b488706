package takeup.options;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.disk.FolderInUse;
import takeup.disk.IoErrorText;
import takeup.dispatch.ThemeCommand;
import takeup.files.DataFolder;
import takeup.files.JournalStore;
import takeup.files.ProcessEnvironment;
import takeup.files.ProfileFiles;
import takeup.files.Settings;
import takeup.files.StartupState;
import takeup.files.Version;
import takeup.grid.Theme;
import takeup.index.ArchiveIndex;
import takeup.journal.Archive;
import takeup.kit.Kit;
import takeup.terminal.TerminalEnvironment;
import takeup.text.Nearest;

/**
 * The options of {@code takeup} itself, and what they lead every sub-command to: console, data folder, settings,
 * profiles. Not what an option of a single sub-command asks for.
 */
public abstract class GlobalOptions {
    private final Console console;
    private Optional<Settings> settings = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = CommandLine.ScopeType.INHERIT,
            description = "The data folder.")
    String data;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = CommandLine.ScopeType.INHERIT,
            description = "Shows this help.")
    boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            scope = CommandLine.ScopeType.INHERIT,
            description = "Shows the version.")
    boolean version;

    @Option(names = "--ascii", description = "Draws the screen with plain characters.")
    boolean ascii;

    @Option(names = "--theme", paramLabel = "NAME", description = "The look of the screen: dark, sun, night, mono.")
    String theme;

    public GlobalOptions(Console console) {
        this.console = console;
    }

    /** All commands with their options, also where only the one that was named is built. */
    public abstract CommandSpec allCommands();

    /** Does what another command line asks for; its exit status. */
    public abstract int answer(String[] arguments, Console into);

    public final Console console() {
        return console;
    }

    /** As if this data folder had been typed. */
    public final void dataIn(String folder) {
        data = folder;
    }

    /** The data folder as it was typed; empty where the usual one is meant. */
    public final Optional<String> typedFolder() {
        return Optional.ofNullable(data);
    }

    public final Path folder() {
        if (data != null && data.isBlank()) {
            throw new CommandFailed(2, "--data names no folder");
        }
        return DataFolder.data(typedFolder());
    }

    /** The photographer's settings, read once. */
    public final Settings settings() {
        if (settings.isEmpty()) {
            settings = Optional.of(Settings.of(folder()));
        }
        return settings.get();
    }

    public final Archive archive() {
        return new Archive(folder(), settings().writer());
    }

    /** What is listed and found in all rolls; a sentence on how far it is goes to the console. */
    public final ArchiveIndex index() {
        return new ArchiveIndex(archive(), Version.number(), console::error);
    }

    public final Kit kit() {
        return new Kit(ProfileFiles.of(folder()), settings().framesLeft());
    }

    /** What the data folder holds, to read only; problems go to the console. */
    public final StartupState open() throws IOException {
        return reported(StartupState.of(archive(), kit()).withMovesCompleted(Optional.empty()));
    }

    /** The same as the one sees it who may write. */
    public final StartupState open(JournalStore disk) throws IOException {
        return reported(StartupState.of(disk, kit()).withMovesCompleted(Optional.of(disk)));
    }

    private StartupState reported(StartupState state) {
        settings().problems().forEach(console::error);
        state.problems().forEach(console::error);
        return state;
    }

    /** Takes the data folder to write in. */
    public final JournalStore take() {
        try {
            return JournalStore.take(archive());
        } catch (FolderInUse e) {
            throw new CommandFailed(1, folder() + ": " + e.getMessage() + ". Type it on its screen, or leave it first");
        } catch (IOException e) {
            throw unusable(folder(), e);
        }
    }

    /** What a command says that could not write in a data folder. */
    public static CommandFailed unusable(Path folder, IOException why) {
        return new CommandFailed(1, "the data folder " + folder + " cannot be used: " + IoErrorText.words(why));
    }

    /** The terminal as the environment describes it, with plain characters where options or settings ask for them. */
    public final TerminalEnvironment terminal() {
        return TerminalEnvironment.of(
                ProcessEnvironment.variables(), ascii || settings().ascii());
    }

    /** The theme to start in: the one that was asked for, else that of the settings. */
    public final String theme() {
        if (theme != null && Theme.named(theme).isEmpty()) {
            throw new CommandFailed(
                    2,
                    theme + " is no theme known here: " + String.join(", ", ThemeCommand.THEMES)
                            + Nearest.question(theme, ThemeCommand.THEMES));
        }
        return theme == null ? settings().startTheme(ProcessEnvironment.variables()) : theme;
    }
}
