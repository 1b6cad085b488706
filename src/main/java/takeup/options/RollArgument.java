package takeup.options;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.console.CommandFailed;
import takeup.files.AllRolls;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.prompt.CommandRejected;
import takeup.prompt.RollListParser;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * A roll number as it is typed behind a command: {@code R0007}, {@code r7} or {@code 7}. A bare number means the roll
 * that this laptop's writer gave it, {@code AB0007} where the settings say {@code "writer": "AB"}.
 */
public record RollArgument(String typed) {
    /** A roll as it could be read, and what of it could not. */
    public record Found(Roll roll, List<String> problems) {}

    /** The number that it means; what is none ends the command. */
    public RollId id(GlobalOptions global) {
        return RollId.parse(typed)
                .or(() -> RollId.parse(global.settings().writer() + typed))
                .or(() -> named(global))
                .orElseThrow(() -> new CommandFailed(2, typed + " is no roll number: R0007, r7, or 7"));
    }

    /** The roll that the photographer calls so. */
    private Optional<RollId> named(GlobalOptions global) {
        try {
            return AllRolls.summaries(global.index()).rolls().stream()
                    .filter(it -> it.state() != Roll.State.WITHDRAWN)
                    .filter(it -> it.name().filter(typed::equalsIgnoreCase).isPresent())
                    .map(RollSummary::id)
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The roll that is called so, where the word is no number or row of numbers. */
    private Optional<RollId> nameOnly(GlobalOptions global) {
        boolean isNumbers = typed.matches("(?i)[a-z]{0,3}\\d+(-[a-z]{0,3}\\d+)?");
        return isNumbers ? Optional.empty() : named(global);
    }

    /** All numbers of several arguments, of which each may be a row of them too, {@code 4-7}. */
    public static Set<RollId> rows(List<RollArgument> typed, GlobalOptions global) {
        try {
            return RollListParser.read(
                    typed.stream().map(RollArgument::typed).toList(),
                    Optional.of(global.settings().writer()),
                    it -> new RollArgument(it).nameOnly(global));
        } catch (CommandRejected e) {
            throw new CommandFailed(2, e.getMessage());
        }
    }

    /** The roll of that number; what of its journal could not be read goes to the console too. */
    public Found find(GlobalOptions global) throws IOException {
        RollId id = id(global);
        Archive archive = global.archive();
        if (!archive.openRolls().contains(id) && !archive.finishedRolls().contains(id)) {
            throw new CommandFailed(1, "there is no roll " + id + " in " + global.folder());
        }
        JournalRecords<RollRecord> opened = archive.roll(id);
        opened.problems().forEach(global.console()::error);
        Roll roll = Roll.of(opened.records())
                .orElseThrow(() -> new CommandFailed(1, id + " cannot be shown: the record of its loading is missing"));
        return new Found(roll, opened.problems());
    }
}
