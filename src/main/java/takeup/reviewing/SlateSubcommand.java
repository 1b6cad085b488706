package takeup.reviewing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.files.ScanFolder;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.RollArgument;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.scans.QrCode;
import takeup.scans.Scan;
import takeup.scans.Slate;
import takeup.terminal.NoTerminal;
import takeup.text.English;

/** {@code takeup slate}: a sheet with a roll's number to photograph, or the slates read back off scans. */
@Command(
        name = "slate",
        description = {
            "Fills the terminal with a roll's number and its code, to be photographed on the film; any key ends it.",
            "With --read it says which roll the scans of a folder belong to, by the slates on them."
        },
        footer = {"", "For example:", "  takeup slate 1", "  takeup slate --read scans"})
public final class SlateSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "ROLL", arity = "0..1", description = "Its number: R0007, r7, or 7.")
    RollArgument roll;

    @Option(
            names = "--read",
            paramLabel = "FOLDER",
            description = "Reads the slates on the scans of a folder; they may be turned, mirrored or negative.")
    String folder;

    @Option(names = "--json", description = "With --read, the answer is a JSON object.")
    boolean json;

    @Override
    public Integer call() throws IOException {
        if ((roll == null) == (folder == null)) {
            throw new CommandFailed(2, "takeup slate takes a roll to show, or --read and a folder");
        }
        if (folder != null) {
            return read();
        }
        if (json) {
            throw new CommandFailed(2, "--json goes with --read");
        }
        show(roll.find(global).roll());
        return 0;
    }

    private void show(Roll found) throws IOException {
        Optional<Frame> logged = found.newest(Frame.Kind.SLATE);
        Slate slate = logged.map(it -> Slate.of(found, it))
                .orElseGet(() -> new Slate(found.id(), Math.max(0, Math.min(250, found.next()))));
        String words = logged.isPresent()
                ? found.id() + ", the slate that is logged as frame "
                        + logged.get().number() + "; any key ends this"
                : found.id() + ": photograph it as frame " + slate.frame()
                        + ", and log it with slate on the prompt; any key ends this";
        try {
            new KeyLoop().run(global, new SlateScreen(words), slate);
        } catch (NoTerminal e) {
            global.console().line(slate.toString());
            lines(QrCode.of(slate.text())).forEach(global.console()::line);
        }
    }

    /** The code in half blocks, light ones drawn: for a light letter on a dark ground. */
    private static List<String> lines(boolean[][] dark) {
        List<String> lines = new ArrayList<>();
        int side = dark.length + 2 * QrCode.QUIET;
        for (int row = 0; row < side; row += 2) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < side; column++) {
                line.append(halfBlocks(isLight(dark, column, row), isLight(dark, column, row + 1)));
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static char halfBlocks(boolean above, boolean below) {
        if (above) {
            return below ? '█' : '▀';
        }
        return below ? '▄' : ' ';
    }

    private static boolean isLight(boolean[][] dark, int column, int row) {
        int x = column - QrCode.QUIET;
        int y = row - QrCode.QUIET;
        return y < 0 || x < 0 || y >= dark.length || x >= dark.length || !dark[y][x];
    }

    private int read() throws IOException {
        ScanFolder read = ScanFolder.read(ScansSubcommand.folder(folder), true);
        read.problems().forEach(global.console()::error);
        Map<String, Slate> slates = new LinkedHashMap<>();
        for (Scan scan : read.scans()) {
            scan.slate().ifPresent(it -> slates.put(scan.name(), it));
        }
        if (json) {
            List<Json> all = new ArrayList<>();
            slates.forEach((file, slate) -> all.add(
                    Json.object().and("file", file).and("roll", slate.roll()).and("frame", slate.frame())));
            global.console()
                    .json(
                            "slates",
                            Json.object()
                                    .and("folder", read.folder())
                                    .and("scans", read.scans().size())
                                    .and("slates", all));
        } else {
            slates.forEach((file, slate) -> global.console().line(file + "  " + slate));
            for (RollId id :
                    new TreeSet<>(slates.values().stream().map(Slate::roll).toList())) {
                global.console().line(then(id));
            }
        }
        if (slates.isEmpty()) {
            global.console()
                    .error("no slate could be read in " + read.folder() + ": "
                            + English.count(read.scans().size(), "scan") + " looked at");
        }
        return slates.isEmpty() || !read.problems().isEmpty() ? 1 : 0;
    }

    private String then(RollId id) throws IOException {
        List<RollId> known = new ArrayList<>(global.archive().openRolls());
        known.addAll(global.archive().finishedRolls());
        return known.contains(id)
                ? "takeup scans " + id + " FOLDER lays them beside its log"
                : "there is no roll " + id + " in " + global.folder() + ": another data folder?";
    }
}
