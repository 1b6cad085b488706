package takeup.reviewing;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.Version;
import takeup.index.ArchiveIndex;
import takeup.index.FoundInRoll;
import takeup.journal.Archive;
import takeup.json.JsonText;
import takeup.options.GlobalOptions;
import takeup.search.FindQuery;
import takeup.search.FoundFrame;
import takeup.search.FrameRow;
import takeup.text.English;

/** {@code takeup find}: the frames of the whole archive that meet all that is asked. Only reads. */
@Command(
        name = "find",
        description = {
            "Finds frames in all rolls by film, camera, setting, date, verdict, or words of their notes.",
            "It is asked with f2.8, 1/125, lens 28, filter red, shoot NAME, with NAME, at PLACE, since, until or "
                    + "on 2026-05, judged thin, error over 1, over 1, under 1, roll r7. A frame must meet "
                    + "all that is said."
        },
        footer = {"", "For example:", "  takeup find bw400", "  takeup find cn400 since 2026-05 --json"})
public final class FindSubcommand implements Callable<Integer> {
    /** So many lines go out in one write. */
    private static final int LINES = 1000;

    @ParentCommand
    GlobalOptions global;

    @Parameters(
            paramLabel = "WORD",
            arity = "1..*",
            description = "What to look for, such as " + FindQuery.EXAMPLE + ".")
    List<String> words;

    @Option(names = "--json", description = "As JSON lines.")
    boolean json;

    /** The command with nothing but these. */
    public static FindSubcommand of(GlobalOptions global, List<String> words, boolean isJson) {
        FindSubcommand find = new FindSubcommand();
        find.global = global;
        find.words = words;
        find.json = isJson;
        return find;
    }

    @Override
    public Integer call() throws IOException {
        FindQuery query;
        try {
            query = FindQuery.of(FindQuery.joined(words));
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
        Console console = global.console();
        StringBuilder lines = new StringBuilder();
        AtomicLong rolls = new AtomicLong();
        AtomicLong frames = new AtomicLong();
        Archive archive = global.archive();
        ArchiveIndex index = global.index().alsoMaking(new FrameLinesKind(() -> Version.madeBy(archive)));
        List<String> problems = index.forEach(FoundInRoll.by(query), roll -> {
            for (FrameRow row : roll.frames()) {
                lines.append(json ? JsonText.line(FoundFrame.json(row)) : FoundFrame.line(row))
                        .append('\n');
                if (frames.incrementAndGet() % LINES == 0) {
                    write(lines);
                }
            }
            rolls.addAndGet(roll.frames().isEmpty() ? 0 : 1);
            return !console.failed();
        });
        write(lines);
        problems.forEach(console::error);
        if (!json) {
            console.line(
                    rolls.get() == 0
                            ? "No frame meets all of: " + query.typed()
                            : English.count((int) frames.get(), "frame") + " on " + English.count(rolls.get(), "roll"));
        }
        return problems.isEmpty() ? 0 : 1;
    }

    private void write(StringBuilder lines) {
        if (json) {
            global.console().raw(lines.toString());
        } else {
            global.console().lines(lines.toString());
        }
        lines.setLength(0);
    }
}
