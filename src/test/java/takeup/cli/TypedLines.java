package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import takeup.json.Json;
import takeup.json.JsonText;

/** Lines typed into {@code takeup line} in a data folder, and what is answered; the clock stands still. */
record TypedLines(Path folder) {
    private static final String CLOCK = "2026-09-12T15:00+02:00";

    /** The answer to each line, in words. */
    List<String> words(String... lines) {
        return run(lines, "line", "--clock", CLOCK).out().lines().toList();
    }

    /** The answer to the last line, in words. */
    String last(String... lines) {
        List<String> all = words(lines);
        return all.get(all.size() - 1);
    }

    /** The answer to the last line, as other programs read it. */
    Json.Obj lastJson(String... lines) throws JsonText.NotJson {
        List<String> all =
                run(lines, "line", "--json", "--clock", CLOCK).out().lines().toList();
        return (Json.Obj) JsonText.read(all.get(all.size() - 1));
    }

    /** The codes of the warnings that the last line was answered with. */
    List<String> codes(String... lines) throws JsonText.NotJson {
        List<String> codes = new ArrayList<>();
        if (lastJson(lines).fields().get("warnings") instanceof Json.Arr warnings) {
            warnings.items().forEach(it -> codes.add(text((Json.Obj) it, "code")));
        }
        return codes;
    }

    /** What a command prints. */
    Installed.Ended command(String... arguments) {
        return run(new String[0], arguments);
    }

    /** What a command prints as JSON. */
    Json.Obj json(String... arguments) throws JsonText.NotJson {
        Installed.Ended ended = command(arguments);
        assertEquals("", ended.err());
        return (Json.Obj) JsonText.read(ended.out());
    }

    private Installed.Ended run(String[] lines, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--data", folder.toString()));
        return InProcess.run(lines.length == 0 ? "" : String.join("\n", lines) + "\n", all);
    }

    static String text(Json.Obj object, String field) {
        return ((Json.Text) object.fields().get(field)).value();
    }

    static double number(Json.Obj object, String field) {
        return ((Json.Num) object.fields().get(field)).value();
    }
}
