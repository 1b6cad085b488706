package takeup.reviewing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.Version;
import takeup.handoff.FrameJsonLines;
import takeup.handoff.MadeBy;
import takeup.handoff.RollPlainText;
import takeup.options.GlobalOptions;
import takeup.review.Review;
import takeup.roll.Roll;

/** {@code takeup frames}: every frame of the archive, roll by roll. */
@Command(
        name = "frames",
        description = "Prints every frame of the archive, roll by roll; with --json as flat lines for a spreadsheet "
                + "or a query engine (takeup schema frames).",
        footer = {"", "For example:", "  takeup frames --json > frames.jsonl", "  takeup frames --partition studio"})
public final class FramesSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Option(names = "--json", description = "As JSON lines.")
    boolean json;

    @Option(
            names = "--partition",
            paramLabel = "DIR",
            description = "Adds the lines of rolls that are new or changed to a folder of partitions by year and "
                    + "writer, for a query engine. No file there is ever rewritten.")
    String partition;

    /** The command with nothing but these. */
    public static FramesSubcommand of(GlobalOptions global, boolean isJson) {
        FramesSubcommand frames = new FramesSubcommand();
        frames.global = global;
        frames.json = isJson;
        return frames;
    }

    @Override
    public Integer call() throws IOException {
        Console console = global.console();
        ArchivedRolls rolls = ArchivedRolls.all(global);
        MadeBy madeBy = Version.madeBy(global.archive());
        if (partition != null) {
            return partition(rolls, madeBy);
        }
        boolean isWhole = json
                ? rolls.forEach(new FrameLinesKind(() -> madeBy), console::raw)
                : rolls.forEach((roll, review) -> RollPlainText.of(roll) + "\n", console::lines);
        return isWhole ? 0 : 1;
    }

    private int partition(ArchivedRolls rolls, MadeBy madeBy) throws IOException {
        if (json || partition.isBlank()) {
            throw new CommandFailed(2, "--partition takes a folder, and stands without --json");
        }
        FramePartitions partitions =
                new FramePartitions(Path.of(partition), madeBy.folder().orElse("0"));
        List<IOException> failed = new ArrayList<>();
        boolean isWhole = rolls.forEachEver(
                (roll, review) -> new FramePartitions.RollLines(
                        roll.id(),
                        roll.loadedAt().getYear(),
                        roll.state() == Roll.State.WITHDRAWN ? "" : jsonLines(roll, review, madeBy),
                        FrameJsonLines.withdrawn(roll.id(), madeBy)),
                it -> {
                    try {
                        if (failed.isEmpty()) {
                            partitions.add(it);
                        }
                    } catch (IOException e) {
                        failed.add(e);
                    }
                });
        if (!failed.isEmpty()) {
            throw failed.get(0);
        }
        global.console().line(partitions.end());
        return isWhole ? 0 : 1;
    }

    private static String jsonLines(Roll roll, Review review, MadeBy madeBy) {
        return FrameJsonLines.ofValues(FrameLinesKind.values(roll, review, madeBy));
    }
}
