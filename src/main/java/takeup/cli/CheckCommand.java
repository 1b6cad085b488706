package takeup.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import takeup.journal.Archive;
import takeup.journal.Trouble;
import takeup.kit.Kit;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code takeup check}: reads every journal and profile of data folders and says what is wrong. */
final class CheckCommand {
    private final Commands commands;

    CheckCommand(Commands commands) {
        this.commands = commands;
    }

    int run(List<Path> folders) {
        boolean bad = false;
        for (Path folder : folders) {
            List<String> problems = new ArrayList<>();
            String counts = check(folder, problems);
            problems.forEach(it -> commands.out().line(it));
            commands.out().line(folder + ": " + counts + (problems.isEmpty() ? ", all in order" : ", " + problems.size() + (problems.size() == 1 ? " problem" : " problems")));
            bad |= !problems.isEmpty();
        }
        return bad ? 1 : 0;
    }

    private static String check(Path folder, List<String> problems) {
        if (!Files.isDirectory(folder)) {
            problems.add(folder + " is no folder");
            return "nothing read";
        }
        Archive archive = new Archive(folder);
        int rolls = 0;
        int frames = 0;
        int days = 0;
        try {
            List<Roll> all = Opening.allRolls(archive, problems);
            List<RollId> open = archive.openRolls();
            for (Roll roll : all) {
                rolls++;
                frames += roll.frames().size();
                if (roll.state() == Roll.State.FINISHED && open.contains(roll.id())) {
                    problems.add(roll.id() + " is finished but lies with the open rolls: the next start moves it and writes its export");
                }
            }
            for (LocalDate date : archive.days()) {
                days++;
                problems.addAll(archive.dayOf(date).problems());
            }
        } catch (IOException e) {
            problems.add(folder + ": " + Trouble.words(e));
        }
        problems.addAll(new Kit(new ProfileShelf(folder.resolve("profiles"), Folder.profiles())).allProblems());
        return rolls + (rolls == 1 ? " roll, " : " rolls, ") + frames + (frames == 1 ? " frame, " : " frames, ") + days + (days == 1 ? " day" : " days");
    }
}
