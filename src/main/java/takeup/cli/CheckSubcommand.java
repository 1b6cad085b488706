package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.disk.IoErrorText;
import takeup.files.CameraClocks;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.files.ProfileFiles;
import takeup.files.Settings;
import takeup.journal.Archive;
import takeup.journal.InterruptedMove;
import takeup.journal.JournalRecords;
import takeup.kit.Kit;
import takeup.options.GlobalOptions;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.text.English;

/** {@code takeup check}: reads every journal and profile of data folders and says what is wrong. */
@Command(name = "check", description = "Reads everything in data folders and says what is wrong; changes nothing.")
final class CheckSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "DIR", arity = "0..*", description = "Data folders; else the usual one.")
    List<String> folders = List.of();

    @Override
    public Integer call() {
        boolean bad = false;
        List<Path> chosen = folders.isEmpty()
                ? List.of(global.folder())
                : folders.stream().map(Path::of).toList();
        for (Path folder : chosen) {
            List<String> problems = new ArrayList<>();
            String counts = check(folder, problems);
            problems.forEach(it -> global.console().line(it));
            global.console()
                    .line(folder + ": " + counts
                            + (problems.isEmpty()
                                    ? ", all in order"
                                    : ", " + English.count(problems.size(), "problem")));
            bad |= !problems.isEmpty();
        }
        return bad ? 1 : 0;
    }

    private static String check(Path folder, List<String> problems) {
        if (!Files.isDirectory(folder)) {
            problems.add(folder + " is no folder");
            return "nothing read";
        }
        Archive archive = new Archive(folder, Settings.of(folder).writer());
        int frames = 0;
        int days = 0;
        Map<RollId, List<RollRecord>> rolls = new TreeMap<>();
        try {
            List<RollId> open = archive.openRolls();
            open.forEach(it -> rolls.put(it, List.of()));
            archive.finishedRolls().forEach(it -> rolls.put(it, List.of()));
            for (RollId id : List.copyOf(rolls.keySet())) {
                JournalRecords<RollRecord> opened = archive.roll(id);
                problems.addAll(opened.problems());
                rolls.put(id, opened.records());
                boolean isTold =
                        opened.records().isEmpty() && !opened.problems().isEmpty();
                frames += isTold
                        ? 0
                        : check(
                                id,
                                opened.records(),
                                open.contains(id) && id.letters().equals(archive.writer()) && !archive.isLater(id),
                                problems);
            }
            InterruptedMove.among(rolls)
                    .forEach(it -> problems.add(it.words() + ": a move was cut short; the next start puts that right"));
            for (String writer : archive.writers()) {
                Archive of = new Archive(folder, writer);
                for (LocalDate date : of.days()) {
                    days++;
                    problems.addAll(of.dayOf(date).problems());
                }
            }
            problems.addAll(archive.leftOvers());
            for (RollId id : archive.reviewedRolls()) {
                problems.addAll(archive.reviewOf(id).problems().stream()
                        .map(it -> "reviews/" + it)
                        .toList());
            }
        } catch (IOException e) {
            problems.add(folder + ": " + IoErrorText.words(e));
        }
        problems.addAll(Settings.of(folder).problems());
        try {
            CameraClocks.of(folder);
        } catch (IOException | CommandFailed e) {
            problems.add(e.getMessage());
        }
        problems.addAll(new Kit(ProfileFiles.of(folder)).allProblems());
        problems.addAll(LabFiles.of(folder).problems());
        problems.addAll(new OrderFolder(folder, false).allOrders().problems());
        return English.count(rolls.size(), "roll") + ", "
                + English.count(frames, "frame") + ", "
                + English.count(days, "day");
    }

    /** How many frames a roll holds. */
    private static int check(RollId id, List<RollRecord> records, boolean mayMove, List<String> problems) {
        Optional<Roll> roll = Roll.of(records);
        if (roll.isEmpty()) {
            problems.add(id + ".journal:1: the record of its loading is missing, so the roll cannot be shown");
            return 0;
        }
        if (roll.get().state() == Roll.State.FINISHED && mayMove) {
            problems.add(
                    id + " is finished but lies with the open rolls: the next start moves it and writes its export");
        }
        return roll.get().frames().size();
    }
}
