package takeup.profiles;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.options.GlobalOptions;
import takeup.options.JsonOption;
import takeup.text.Padding;

/** What {@code takeup stock} and {@code takeup camera} have in common: all of a sort, or one of them. */
abstract class ProfileSubcommand<T> implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    private final Kit.Sort sort;

    ProfileSubcommand(Kit.Sort sort) {
        this.sort = sort;
    }

    /** The profile of a key; empty if there is none or its file is wrong. */
    abstract Optional<T> find(Kit kit, String key);

    abstract String key(T profile);

    /** One in the list of all, behind its key. */
    abstract String summary(T profile);

    /** One in the list of all, as JSON. */
    abstract Json.Obj summaryJson(T profile);

    /** All that is known about one. */
    abstract List<String> lines(T profile);

    /** The same as JSON. */
    abstract Json.Obj json(T profile);

    final int run(Optional<String> key, JsonOption json) {
        return key.isEmpty() ? list(json) : show(key.get(), json);
    }

    private int show(String key, JsonOption json) {
        Kit kit = global.kit();
        Console console = global.console();
        T profile = find(kit, key).orElseThrow(() -> new CommandFailed(2, kit.whyNot(sort, key)));
        kit.problems(sort, key).forEach(console::error);
        if (json.isAsked()) {
            console.json(singular(), json(profile));
        } else {
            lines(profile).forEach(console::line);
        }
        return 0;
    }

    /** How a list of them is named: {@code stocks}. */
    private String plural() {
        return sort.name().toLowerCase(Locale.ROOT);
    }

    /** How one of them is named: {@code stock}. */
    private String singular() {
        return plural().substring(0, plural().length() - 1);
    }

    /** All of them, a line each; a file with a mistake is reported and left out. */
    private int list(JsonOption json) {
        Kit kit = global.kit();
        Console console = global.console();
        List<T> all =
                kit.keys(sort).stream().flatMap(it -> find(kit, it).stream()).toList();
        kit.keys(sort).forEach(it -> kit.problems(sort, it).forEach(console::error));
        if (json.isAsked()) {
            console.json(
                    plural(),
                    Json.object()
                            .and(plural(), all.stream().map(this::summaryJson).toList()));
        } else {
            int widest = all.stream().mapToInt(it -> key(it).length()).max().orElse(0);
            all.forEach(it -> console.line(Padding.cell(key(it), widest + 2) + summary(it)));
        }
        return 0;
    }
}
