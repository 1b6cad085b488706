package takeup.cli;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.Clock;
import takeup.files.StartupState;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.journal.JournalRecords;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.options.RollArgument;
import takeup.report.CheckList;
import takeup.report.DayEnd;
import takeup.report.DayEndJson;
import takeup.report.DayEndText;
import takeup.report.PlanTable;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * {@code takeup day-end}: where every roll of the day is, what is odd, and what to write on each. Only reads; 1 while a
 * roll is missing.
 */
@Command(
        name = "day-end",
        description = {
            "Says where every roll of the day is: closed, in a camera, or missing; what is odd; and what to "
                    + "write on each.",
            "With the rolls that you hold it names those that you do not. The exit status is 1 while a roll is missing."
        },
        footer = {"", "For example:", "  takeup day-end", "  takeup day-end 1-3"})
final class DayEndSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(
            paramLabel = "ROLL",
            arity = "0..*",
            description = "The rolls in your hand: R0007, r7, 7, or a row of them, 4-7.")
    List<RollArgument> rolls;

    @Mixin
    JsonOption json;

    @Option(names = "--clock", paramLabel = "TIME", description = "Another time than now: 2026-09-12T23:00+02:00.")
    String clock;

    @Override
    public Integer call() throws IOException {
        Optional<Set<RollId>> held = Optional.ofNullable(rolls).map(it -> RollArgument.rows(it, global));
        OffsetDateTime now = Clock.ofOption(clock).now();
        ShootState s = read(now);
        DayEnd end = DayEnd.of(s.asOf(now), others(), now, global.settings().writer(), held);
        if (json.isAsked()) {
            global.console().json("day-end", DayEndJson.of(end));
        } else {
            global.console()
                    .line("End of the day: " + PlanTable.title(s)
                            + (s.day().shoot().isPresent() ? "" : ", " + end.date()));
            for (CheckList.Section section : DayEndText.sections(end)) {
                global.console().line(section.title());
                section.items().forEach(it -> global.console().line("  " + it.text()));
            }
        }
        return end.isRollMissing() ? 1 : 0;
    }

    /** The rolls of other laptops, as far as they were copied here. */
    private List<Roll> others() throws IOException {
        Set<RollId> ids = new TreeSet<>(global.archive().openRolls());
        ids.addAll(global.archive().finishedRolls());
        List<Roll> all = new ArrayList<>();
        for (RollId id : ids) {
            if (!id.letters().equals(global.settings().writer())) {
                JournalRecords<RollRecord> roll = global.archive().roll(id);
                roll.problems().forEach(global.console()::error);
                Roll.of(roll.records()).ifPresent(all::add);
            }
        }
        return all;
    }

    /**
     * All rolls of the day, those that were finished on it too; what cannot be read goes to the console, and counts as
     * missing.
     */
    private ShootState read(OffsetDateTime now) throws IOException {
        ShootState s = global.open().state();
        Set<RollId> passed = new HashSet<>();
        for (Optional<RollId> next = RollsOfDay.unread(s, now, global.settings().writer(), passed);
                next.isPresent();
                next = RollsOfDay.unread(s, now, global.settings().writer(), passed)) {
            JournalRecords<RollRecord> roll = global.archive().roll(next.get());
            roll.problems().forEach(global.console()::error);
            s = s.with(StartupState.stepsOf(next.get(), roll.records()));
            passed.add(next.get());
        }
        return s;
    }
}
