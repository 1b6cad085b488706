package takeup.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import takeup.console.CommandFailed;
import takeup.dispatch.ThemeCommand;
import takeup.files.LabFiles;
import takeup.files.OrderFolder;
import takeup.files.ProfileFiles;
import takeup.files.Settings;
import takeup.handoff.Schemas;
import takeup.journal.Archive;
import takeup.kit.Kit;

/**
 * What may stand behind an option or in a place of a command, for completions: {@code folders}, {@code files},
 * {@code any}; a list after a sign, {@code =bash zsh fish}; or a kind that only the program knows, such as
 * {@code stocks}.
 */
public final class CompletionKinds {
    /** The kinds that {@link #words} answers. */
    public static final List<String> KINDS = List.of("cameras", "stocks", "meters", "labs", "rolls", "orders");

    /** The shells that {@code takeup completion} speaks to. */
    public static final List<String> SHELLS = List.of("bash", "zsh", "fish");

    private CompletionKinds() {}

    /** By the name of the option ("" for a place) and by the label, which say the same in every command. */
    public static String kind(String path, String option, String label) {
        switch (option) {
            case "--camera", "--stock", "--meter", "--lab":
                return option.substring(2) + "s";
            case "--like":
                return path.replace(" new", "s");
            case "--theme":
                return "=" + String.join(" ", ThemeCommand.THEMES);
            case "--words":
                return "=" + String.join(" ", KINDS);
            case "--paper":
                return "=A4 Letter";
            case "--sidecars":
                return "=full short";
            default:
                break;
        }
        return switch (label) {
            case "DIR", "FOLDER" -> "folders";
            case "FILE" -> "files";
            case "ROLL" -> "rolls";
            case "ORDER" -> "orders";
            case "STAGE" -> "=sent scans negatives ordered";
            case "SHELL" -> "=" + String.join(" ", SHELLS);
            case "NAME" -> path.equals("schema") ? "=" + String.join(" ", Schemas.names()) : "any";
            case "KEY" -> path.equals("stock") || path.equals("camera") ? path + "s" : "any";
            default -> "any";
        };
    }

    /** The words of a kind, as a data folder has them. */
    public static List<String> words(String kind, Path folder) throws IOException {
        Kit kit = new Kit(ProfileFiles.of(folder));
        return switch (kind) {
            case "cameras" -> kit.keys(Kit.Sort.CAMERAS);
            case "stocks" -> kit.keys(Kit.Sort.STOCKS);
            case "meters" -> kit.keys(Kit.Sort.METERS);
            case "labs" -> LabFiles.of(folder).keys();
            case "orders" ->
                new OrderFolder(folder, false)
                        .allOrders().all().stream().map(it -> it.order()).toList();
            case "rolls" -> {
                Archive archive = new Archive(folder, Settings.of(folder).writer());
                TreeSet<String> rolls = new TreeSet<>();
                archive.openRolls().forEach(it -> rolls.add(it.toString()));
                archive.finishedRolls().forEach(it -> rolls.add(it.toString()));
                yield new ArrayList<>(rolls);
            }
            default ->
                throw new CommandFailed(2, kind + " is no kind of words known here: " + String.join(", ", KINDS));
        };
    }
}
