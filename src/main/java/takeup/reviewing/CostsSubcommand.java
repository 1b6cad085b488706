package takeup.reviewing;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.AllRolls;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.roll.Assignment;
import takeup.roll.Costs;
import takeup.roll.Roll;
import takeup.text.CsvCell;
import takeup.text.Nearest;
import takeup.text.Padding;

/** {@code takeup costs}: what film, development and scans cost, by roll, shoot or month. Only reads. */
@Command(
        name = "costs",
        description = "Adds up what rolls cost, as cost on the prompt noted it: by shoot, roll or month.",
        footer = {"", "For example:", "  takeup costs --by month", "  takeup costs --by roll --csv > costs.csv"})
public final class CostsSubcommand implements Callable<Integer> {
    private static final List<String> GROUPS = List.of("shoot", "roll", "month");

    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Option(names = "--by", paramLabel = "WHAT", description = "shoot, roll or month.")
    String by = "shoot";

    @Option(names = "--csv", description = "As CSV, for a spreadsheet.")
    boolean csv;

    /** Sums of a group; a kind that nothing is known of is 0. */
    private record Sums(int rolls, Map<Costs.Kind, BigDecimal> amounts) {
        Sums and(Sums other) {
            Map<Costs.Kind, BigDecimal> all = new LinkedHashMap<>();
            for (Costs.Kind kind : Costs.Kind.values()) {
                all.put(kind, of(kind).add(other.of(kind)));
            }
            return new Sums(rolls + other.rolls, all);
        }

        BigDecimal of(Costs.Kind kind) {
            return amounts.getOrDefault(kind, BigDecimal.ZERO.setScale(2));
        }

        BigDecimal total() {
            return amounts.values().stream().reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
        }
    }

    /** What is kept of a roll. */
    private record Paid(String group, Sums sums) {}

    @Override
    public Integer call() throws IOException {
        if (!GROUPS.contains(by)) {
            throw new CommandFailed(2, "--by takes shoot, roll or month, not " + by + Nearest.question(by, GROUPS));
        }
        if (csv && json.isAsked()) {
            throw new CommandFailed(2, "--csv and --json exclude each other");
        }
        Console console = global.console();
        AllRolls<Paid> all = AllRolls.of(global.archive(), this::paid);
        all.problems().forEach(console::error);
        Map<String, Sums> groups = new LinkedHashMap<>();
        Sums sum = new Sums(0, Map.of());
        for (Paid roll : all.rolls()) {
            if (!roll.sums.amounts.isEmpty()) {
                groups.merge(roll.group, roll.sums, Sums::and);
                sum = sum.and(roll.sums);
            }
        }
        if (json.isAsked()) {
            List<Json> rows = new ArrayList<>();
            groups.forEach((group, it) -> rows.add(json(group, it)));
            console.json("costs", Json.object().and("by", by).and("costs", rows));
        } else if (csv) {
            console.raw(by + ",rolls,film,development,scans,total\r\n");
            groups.forEach((group, it) -> console.raw(CsvCell.text(group) + cells(it, ",") + "\r\n"));
        } else if (groups.isEmpty()) {
            console.line("No costs noted yet. On the prompt: cost r1 film 9.80 development 12");
        } else {
            console.line(Padding.cell(by, 30) + "rolls      film  development     scans     total");
            groups.forEach((group, it) -> console.line(row(group, it)));
            console.line(row("all", sum));
        }
        return all.problems().isEmpty() ? 0 : 1;
    }

    private Paid paid(Roll roll) {
        String group = switch (by) {
            case "roll" -> roll.id().toString();
            case "month" -> roll.loadedAt().toLocalDate().toString().substring(0, 7);
            default -> roll.assignment().map(Assignment::name).orElse("no shoot");
        };
        boolean isThere = roll.state() != Roll.State.WITHDRAWN;
        return new Paid(group, new Sums(1, isThere ? roll.notes().costs().amounts() : Map.of()));
    }

    private static String cells(Sums sums, String separator) {
        StringBuilder cells = new StringBuilder(separator).append(sums.rolls);
        for (Costs.Kind kind : Costs.Kind.values()) {
            cells.append(separator).append(sums.of(kind).toPlainString());
        }
        return cells.append(separator).append(sums.total().toPlainString()).toString();
    }

    private static String row(String group, Sums sums) {
        return Padding.cell(group, 30)
                + right(Integer.toString(sums.rolls), 5)
                + right(sums.of(Costs.Kind.FILM).toPlainString(), 10)
                + right(sums.of(Costs.Kind.DEVELOPMENT).toPlainString(), 13)
                + right(sums.of(Costs.Kind.SCANS).toPlainString(), 10)
                + right(sums.total().toPlainString(), 10);
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }

    private static Json json(String group, Sums sums) {
        Json.Obj row = Json.object().and("group", group).and("rolls", sums.rolls);
        for (Costs.Kind kind : Costs.Kind.values()) {
            row.and(kind + "Cost", new Json.Decimal(sums.of(kind).doubleValue(), 0));
        }
        return row.and("totalCost", new Json.Decimal(sums.total().doubleValue(), 0));
    }
}
