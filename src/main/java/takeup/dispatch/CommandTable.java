package takeup.dispatch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Command;
import takeup.command.CommandInfo;
import takeup.framing.BareFrameCommand;
import takeup.framing.CounterCommand;
import takeup.framing.DoubleCommand;
import takeup.framing.DropCommand;
import takeup.framing.FixCommand;
import takeup.framing.FrameLineCommand;
import takeup.framing.FrameNoteCommand;
import takeup.framing.InsertCommand;
import takeup.framing.LostCommand;
import takeup.framing.MoveCommand;
import takeup.framing.PaperCommand;
import takeup.framing.RatingCommand;
import takeup.framing.SceneCommand;
import takeup.framing.SlateCommand;
import takeup.framing.UndoCommand;
import takeup.loading.AnswerCommand;
import takeup.loading.CameraCommand;
import takeup.loading.ConditionCommand;
import takeup.loading.CostCommand;
import takeup.loading.DayEndCommand;
import takeup.loading.DevelopedCommand;
import takeup.loading.DevelopmentCommand;
import takeup.loading.LoadCommand;
import takeup.loading.ReleaseCommand;
import takeup.loading.RewindCommand;
import takeup.loading.RollNoteCommand;
import takeup.loading.RoutineCommand;
import takeup.loading.UnloadCommand;
import takeup.metering.CameraStateCommand;
import takeup.metering.ClearCommand;
import takeup.metering.FilterCommand;
import takeup.metering.FlashCommand;
import takeup.metering.HoldCommand;
import takeup.metering.MeterCommand;
import takeup.metering.ReadingCommand;
import takeup.metering.SetCommand;
import takeup.metering.SharpCommand;
import takeup.metering.TimeCommand;
import takeup.metering.WhyCommand;
import takeup.planning.BagCommand;
import takeup.planning.FridgeCommand;
import takeup.planning.PlaceCommand;
import takeup.planning.PlanCommand;
import takeup.planning.ShootCommand;
import takeup.prompt.Tokens;

/**
 * All words that are understood on the prompt: for dispatch, help, completion, {@code takeup keys} and the manual page.
 */
public final class CommandTable {
    /** The words, the usual ones first. */
    public static final List<Command> ALL = List.of(
            FrameLineCommand.NUMBERS,
            FrameLineCommand.SAME,
            FrameNoteCommand.SEMICOLON,
            FrameNoteCommand.N,
            new ReadingCommand(),
            new SetCommand(),
            new LoadCommand(),
            new UnloadCommand(),
            new RewindCommand(),
            CameraCommand.CAM,
            CameraCommand.BACK,
            UndoCommand.UNDO,
            UndoCommand.REDO,
            new FixCommand(),
            new InsertCommand(),
            new DropCommand(),
            new MoveCommand(),
            new CounterCommand(),
            BareFrameCommand.BLANK,
            BareFrameCommand.UNLOGGED,
            new SlateCommand(),
            BareFrameCommand.TALLY,
            PaperCommand.PAPER,
            PaperCommand.DONE,
            new RatingCommand(),
            new LostCommand(),
            new DoubleCommand(),
            new MeterCommand(),
            new HoldCommand(),
            new SharpCommand(),
            CameraStateCommand.BIAS,
            new FilterCommand(),
            CameraStateCommand.EXT,
            CameraStateCommand.TUBE,
            CameraStateCommand.MAG,
            CameraStateCommand.LENS,
            new FlashCommand(),
            CameraStateCommand.TRIPOD,
            new ClearCommand(),
            new WhyCommand(),
            new TimeCommand(),
            DevelopmentCommand.PUSH,
            DevelopmentCommand.PULL,
            DevelopmentCommand.NORMAL,
            new RollNoteCommand(),
            new DevelopedCommand(),
            new CostCommand(),
            new ReleaseCommand(),
            new ConditionCommand(),
            ViewCommand.SAY,
            ViewCommand.MORE,
            new QuietCommand(),
            SceneCommand.WITH,
            SceneCommand.AT,
            new ShootCommand(),
            new PlaceCommand(),
            new PlanCommand(),
            new BagCommand(),
            new FridgeCommand(),
            new DayEndCommand(),
            new OrderCommand(),
            new ScansCommand(),
            ViewCommand.FRAMES,
            ViewCommand.ROLLS,
            new FindCommand(),
            new HelpCommand(),
            new ThemeCommand(),
            ViewCommand.BIG,
            new RoutineCommand(),
            AnswerCommand.YES,
            AnswerCommand.NO,
            new QuitCommand());

    private CommandTable() {}

    /** What is known of each word, the usual ones first. */
    public static List<CommandInfo> words() {
        List<CommandInfo> words = new ArrayList<>();
        for (Command command : ALL) {
            words.add(command.info());
        }
        return words;
    }

    // Loops, since the first lambda of a class takes milliseconds: every line that is typed is looked up here.

    /** The command of a line. */
    static Optional<Command> of(Tokens tokens) {
        for (Command command : ALL) {
            if (command.takes(tokens)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    /** The command of a word, in any of its spellings. */
    static Optional<Command> named(String word) {
        for (Command command : ALL) {
            if (command.info().isNamed(word)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    /** What is known of a word, in any of its spellings. */
    public static Optional<CommandInfo> find(String word) {
        Optional<Command> command = named(word);
        return command.isPresent() ? Optional.of(command.get().info()) : Optional.empty();
    }

    /** The first words that are made of letters. */
    public static List<String> firstWords() {
        List<String> words = new ArrayList<>();
        for (Command command : ALL) {
            if (command.info().isSpelledOut()) {
                words.add(command.info().word());
            }
        }
        return words;
    }
}
