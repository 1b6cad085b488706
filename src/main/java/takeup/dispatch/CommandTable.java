package takeup.dispatch;

import java.util.List;
import java.util.Optional;
import takeup.command.AnswerCommand;
import takeup.command.BagCommand;
import takeup.command.BareFrameCommand;
import takeup.command.CameraCommand;
import takeup.command.CameraStateCommand;
import takeup.command.Command;
import takeup.command.CommandInfo;
import takeup.command.ConditionCommand;
import takeup.command.CounterCommand;
import takeup.command.DayEndCommand;
import takeup.command.DevelopmentCommand;
import takeup.command.DoubleCommand;
import takeup.command.DropCommand;
import takeup.command.FilterCommand;
import takeup.command.FixCommand;
import takeup.command.FlashCommand;
import takeup.command.FrameLineCommand;
import takeup.command.FrameNoteCommand;
import takeup.command.HoldCommand;
import takeup.command.InsertCommand;
import takeup.command.LoadCommand;
import takeup.command.LostCommand;
import takeup.command.MeterCommand;
import takeup.command.MoveCommand;
import takeup.command.PaperCommand;
import takeup.command.PlanCommand;
import takeup.command.RatingCommand;
import takeup.command.ReadingCommand;
import takeup.command.RewindCommand;
import takeup.command.RollNoteCommand;
import takeup.command.RoutineCommand;
import takeup.command.SetCommand;
import takeup.command.ShootCommand;
import takeup.command.SlateCommand;
import takeup.command.TimeCommand;
import takeup.command.UndoCommand;
import takeup.command.UnloadCommand;
import takeup.command.WhyCommand;
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
            CameraStateCommand.BIAS,
            new FilterCommand(),
            CameraStateCommand.EXT,
            CameraStateCommand.TUBE,
            CameraStateCommand.MAG,
            CameraStateCommand.LENS,
            new FlashCommand(),
            CameraStateCommand.TRIPOD,
            new WhyCommand(),
            new TimeCommand(),
            DevelopmentCommand.PUSH,
            DevelopmentCommand.PULL,
            DevelopmentCommand.NORMAL,
            new RollNoteCommand(),
            new ConditionCommand(),
            ViewCommand.SAY,
            new QuietCommand(),
            new ShootCommand(),
            new PlanCommand(),
            new BagCommand(),
            new DayEndCommand(),
            ViewCommand.FRAMES,
            ViewCommand.ROLLS,
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
        return ALL.stream().map(Command::info).toList();
    }

    /** The command of a line. */
    static Optional<Command> of(Tokens tokens) {
        return ALL.stream().filter(it -> it.takes(tokens)).findFirst();
    }

    /** The command of a word, in any of its spellings. */
    static Optional<Command> named(String word) {
        return ALL.stream().filter(it -> it.info().isNamed(word)).findFirst();
    }

    /** What is known of a word, in any of its spellings. */
    public static Optional<CommandInfo> find(String word) {
        return named(word).map(Command::info);
    }

    /** The first words that are made of letters. */
    public static List<String> firstWords() {
        return words().stream()
                .filter(CommandInfo::isSpelledOut)
                .map(CommandInfo::word)
                .toList();
    }
}
