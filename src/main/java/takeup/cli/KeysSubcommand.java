package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import takeup.command.CommandInfo;
import takeup.console.Console;
import takeup.dispatch.CommandTable;
import takeup.json.Json;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.scanview.ScanKeys;
import takeup.session.KeyHelp;
import takeup.session.Session;
import takeup.text.Padding;

/** {@code takeup keys}: the table of keys and the words of the prompt. */
@Command(
        name = "keys",
        description = "Lists the keys and the words of the prompt.",
        footer = {"", "For example:", "  takeup keys", "  takeup keys --json"})
final class KeysSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() {
        Console out = global.console();
        if (json.isAsked()) {
            List<Json.Obj> keys = KeyHelp.all().stream()
                    .map(it -> Json.object()
                            .and("key", it.key())
                            .and("does", it.does())
                            .and("word", it.word().isEmpty() ? Optional.empty() : Optional.of(it.word()))
                            .and("views", it.pages())
                            .and("prompt", it.when()))
                    .toList();
            List<Json.Obj> words = CommandTable.words().stream()
                    .map(it -> Json.object()
                            .and("word", it.word())
                            .and("usage", it.usage())
                            .and("example", it.example())
                            .and("does", it.summary()))
                    .toList();
            List<Json.Obj> scans = ScanKeys.all().stream()
                    .map(it -> Json.object().and("key", it.key()).and("does", it.does()))
                    .toList();
            out.json("keys", Json.object().and("keys", keys).and("words", words).and("scanKeys", scans));
            return 0;
        }
        out.line("Keys");
        for (KeyHelp key : KeyHelp.all()) {
            String word = key.word().isEmpty() ? "" : "; word: " + key.word();
            out.line("  " + Padding.cell(key.key(), 11) + key.does() + limits(key) + word);
        }
        out.line("Words");
        for (CommandInfo word : CommandTable.words()) {
            out.line("  " + Padding.cell(word.usage(), 52) + word.summary());
        }
        out.line("Keys beside scans (takeup scans ROLL FOLDER)");
        ScanKeys.all().forEach(it -> out.line("  " + Padding.cell(it.key().toString(), 11) + it.does()));
        return 0;
    }

    /** Where and when it acts, in brackets; nothing for a key that always does. */
    private static String limits(KeyHelp key) {
        List<String> limits = new ArrayList<>();
        switch (key.when()) {
            case "empty" -> limits.add("empty prompt");
            case "typed" -> limits.add("while typing");
            default -> {}
        }
        if (key.pages().size() < Session.Page.values().length) {
            limits.add(key.where());
        }
        return limits.isEmpty() ? "" : " (" + String.join("; ", limits) + ")";
    }
}
