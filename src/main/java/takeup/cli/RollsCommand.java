package takeup.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.handoff.IsoTime;
import takeup.handoff.RollCsv;
import takeup.handoff.RollJson;
import takeup.handoff.RollText;
import takeup.journal.Archive;
import takeup.journal.Folders;
import takeup.kit.Json;
import takeup.kit.JsonText;
import takeup.roll.Recorded;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code takeup rolls} and {@code takeup roll}: what was shot, to read and to hand on. Only reads. */
final class RollsCommand {
    private final Commands commands;

    RollsCommand(Commands commands) {
        this.commands = commands;
    }

    int list(boolean json) throws IOException {
        List<String> problems = new ArrayList<>();
        List<Roll> rolls = Opening.allRolls(commands.archive(), problems);
        problems.forEach(commands.out()::error);
        if (json) {
            commands.out().raw(JsonText.pretty(Json.object().and("rolls", rolls.stream().map(RollsCommand::json).toList())));
        } else if (rolls.isEmpty()) {
            commands.out().line("no roll yet in " + commands.folder());
        } else {
            rolls.forEach(it -> commands.out().line(words(it)));
        }
        return problems.isEmpty() ? 0 : 1;
    }

    private static Json.Obj json(Roll roll) {
        return Json.object().and("roll", roll.id()).and("state", roll.state()).and("camera", roll.camera().key()).and("back", roll.back())
                .and("stock", roll.film().stock().key()).and("exposureIndex", roll.film().index().arithmetic()).and("framesUsed", roll.framesUsed())
                .and("framesNominal", roll.film().framesNominal()).and("loadedAt", IsoTime.of(roll.loadedAt())).and("finishedAt", roll.finishedAt().map(IsoTime::of));
    }

    private static String words(Roll roll) {
        return roll.id() + "  " + pad(roll.state().toString(), 10) + pad(roll.place(), 14) + pad(roll.film().stock().key(), 12)
                + pad(roll.framesUsed() + " of " + roll.film().framesNominal(), 10) + roll.loadedAt().toLocalDate() + "  " + roll.film().developmentWords();
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    int one(String typed, boolean json, boolean csv, Optional<String> file) throws IOException {
        RollId id = RollId.parse(typed).or(() -> RollId.parse(LineCommand.LETTERS + typed))
                .orElseThrow(() -> new Commands.Unfit(2, typed + " is no roll number: R0007, r7, or 7"));
        Archive archive = commands.archive();
        if (!archive.openRolls().contains(id) && !archive.finishedRolls().contains(id)) {
            throw new Commands.Unfit(1, "there is no roll " + id + " in " + commands.folder());
        }
        Archive.Opened<Recorded> opened = archive.roll(id);
        opened.problems().forEach(commands.out()::error);
        Roll roll = Roll.of(opened.records()).orElseThrow(() -> new Commands.Unfit(1, id + " cannot be shown: the record of its loading is missing"));
        String text = json ? RollJson.text(roll, Version.number()) : csv ? RollCsv.of(roll) : RollText.of(roll);
        if (file.isPresent()) {
            write(Path.of(file.get()), text.getBytes(StandardCharsets.UTF_8));
        } else if (json || csv) {
            commands.out().raw(text);
        } else {
            commands.out().lines(text);
        }
        return opened.problems().isEmpty() ? 0 : 1;
    }

    /** A file is replaced whole or not at all; what is no file, such as /dev/stdout, is written into and stays what it is. */
    private static void write(Path path, byte[] bytes) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path)) {
            throw new Commands.Unfit(1, path + " is a folder: name a file");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Commands.Unfit(1, folder + " is no folder: make it first");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            Files.write(path, bytes, StandardOpenOption.WRITE);
        } else {
            Folders.replace(Files.exists(path) ? path.toRealPath() : path, bytes);
        }
    }
}
