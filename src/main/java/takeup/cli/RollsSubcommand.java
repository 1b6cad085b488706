package takeup.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.disk.Folders;
import takeup.files.OrderFolder;
import takeup.files.StartupState;
import takeup.files.Version;
import takeup.handoff.RollCsv;
import takeup.handoff.RollJson;
import takeup.handoff.RollText;
import takeup.journal.Archive;
import takeup.journal.JournalRecords;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.order.Lab;
import takeup.order.Order;
import takeup.order.OrderTracker;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.text.Hidden;
import takeup.text.IsoTime;
import takeup.text.Padding;

/** {@code takeup rolls} and {@code takeup roll}: what was shot, to read and to hand on. Only reads. */
final class RollsSubcommand {
    private final Subcommands commands;

    RollsSubcommand(Subcommands commands) {
        this.commands = commands;
    }

    int list(boolean json) throws IOException {
        List<String> problems = new ArrayList<>();
        List<RollSummary> rolls = StartupState.allRolls(commands.archive(), RollSummary::of, problems);
        OrderFolder.Found<Order> orders = new OrderFolder(commands.folder(), false).allOrders();
        problems.addAll(orders.problems());
        problems.forEach(commands.out()::error);
        OrderTracker where = new OrderTracker(orders.all());
        if (json) {
            commands.out()
                    .raw(JsonText.pretty(Json.object()
                            .and(
                                    "rolls",
                                    rolls.stream().map(it -> json(it, where)).toList())));
        } else if (rolls.isEmpty()) {
            commands.out().line("no roll yet in " + commands.folder());
        } else {
            List<String> lines = new ArrayList<>();
            rolls.forEach(it -> lines.add(words(it)
                    + (it.state() == Roll.State.FINISHED
                            ? "  " + where.words(it.id().toString())
                            : "")));
            lines.addAll(due(rolls, where));
            commands.out().lines(lines);
        }
        return problems.isEmpty() ? 0 : 1;
    }

    /** What is due of the orders, and which exposed rolls have waited too long. */
    private static List<String> due(List<RollSummary> rolls, OrderTracker where) {
        LocalDate today = Clock.of(Optional.empty()).now().toLocalDate();
        List<String> due = new ArrayList<>(where.due(today));
        int days = where.orders().isEmpty()
                ? Lab.WAIT
                : where.orders().get(where.orders().size() - 1).lab().sendWithinDays();
        Map<String, LocalDate> since = new LinkedHashMap<>();
        rolls.stream()
                .filter(it -> it.state() == Roll.State.FINISHED)
                .forEach(it -> it.finishedAt().ifPresent(at -> since.put(it.id().toString(), at.toLocalDate())));
        where.waiting(since, today, days).ifPresent(due::add);
        return due;
    }

    private static String where(RollSummary roll, OrderTracker orders) {
        return switch (roll.state()) {
            case FINISHED -> orders.stage(roll.id().toString());
            case WITHDRAWN -> "withdrawn";
            case REWOUND -> "rewound";
            default -> "in camera";
        };
    }

    private static Json.Obj json(RollSummary roll, OrderTracker orders) {
        return Json.object()
                .and("roll", roll.id())
                .and("state", roll.state())
                .and("camera", roll.camera())
                .and("back", roll.back())
                .and("stock", roll.stock())
                .and("exposureIndex", roll.exposureIndex())
                .and("framesUsed", roll.framesUsed())
                .and("framesNominal", roll.framesNominal())
                .and("loadedAt", IsoTime.of(roll.loadedAt()))
                .and("finishedAt", roll.finishedAt().map(IsoTime::of))
                .and("where", where(roll, orders))
                .and("order", orders.order(roll.id().toString()).map(Order::order));
    }

    private static String words(RollSummary roll) {
        return roll.id() + "  " + Padding.cell(roll.state().toString(), 10) + Padding.cell(roll.place(), 14)
                + Padding.cell(roll.stock(), 12)
                + Padding.cell(roll.framesUsed() + " of " + roll.framesNominal(), 10)
                + roll.loadedAt().toLocalDate() + "  " + roll.development();
    }

    /** The roll of that number; what of its journal could not be read is said. */
    Roll found(String typed) throws IOException {
        return found(typed, new ArrayList<>());
    }

    private Roll found(String typed, List<String> problems) throws IOException {
        RollId id = RollId.parse(typed)
                .or(() -> RollId.parse(commands.settings().writer() + typed))
                .orElseThrow(() -> new CommandFailed(2, typed + " is no roll number: R0007, r7, or 7"));
        Archive archive = commands.archive();
        if (!archive.openRolls().contains(id) && !archive.finishedRolls().contains(id)) {
            throw new CommandFailed(1, "there is no roll " + id + " in " + commands.folder());
        }
        JournalRecords<RollRecord> opened = archive.roll(id);
        opened.problems().forEach(commands.out()::error);
        problems.addAll(opened.problems());
        return Roll.of(opened.records())
                .orElseThrow(() -> new CommandFailed(1, id + " cannot be shown: the record of its loading is missing"));
    }

    int one(String typed, boolean json, boolean csv, boolean withClient, Optional<String> file) throws IOException {
        List<String> problems = new ArrayList<>();
        Roll roll = found(typed, problems);
        String text = json
                ? withClient ? RollJson.textWithClient(roll, Version.number()) : RollJson.text(roll, Version.number())
                : csv ? RollCsv.of(roll) : RollText.of(roll);
        if (file.isPresent()) {
            write(Path.of(file.get()), (json || csv ? text : shown(text)).getBytes(StandardCharsets.UTF_8));
        } else if (json || csv) {
            commands.out().raw(text);
        } else {
            commands.out().lines(text);
        }
        return problems.isEmpty() ? 0 : 1;
    }

    /** Text that goes to a file is shown by some other program, which may obey what is in it. */
    private static String shown(String text) {
        StringBuilder lines = new StringBuilder();
        text.lines().forEach(it -> lines.append(Hidden.shown(it)).append('\n'));
        return lines.toString();
    }

    /**
     * A file is replaced whole or not at all; what is no file, such as /dev/stdout, is written into and stays what it
     * is.
     */
    static void write(Path path, byte[] bytes) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path)) {
            throw new CommandFailed(1, path + " is a folder: name a file");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new CommandFailed(1, folder + " is no folder: make it first");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            Files.write(path, bytes, StandardOpenOption.WRITE);
        } else {
            Folders.replace(Files.exists(path) ? path.toRealPath() : path, bytes);
        }
    }
}
