package takeup.shell;

import java.util.List;
import takeup.files.Version;

/** The completion for fish: a line for each command, option and place. */
public record FishCompletion(SubcommandTree tree) {
    public String script() {
        StringBuilder lines = new StringBuilder(
                "# Completion of takeup " + Version.number() + " for fish, printed by: takeup completion fish\n");
        lines.append("complete -c takeup -f\n");
        for (SubcommandTree command : tree.all()) {
            String here = " -n " + ShellTables.quoted(condition(command));
            for (SubcommandTree below : command.below()) {
                lines.append("complete -c takeup")
                        .append(here)
                        .append(" -a ")
                        .append(ShellTables.quoted(below.name()))
                        .append(about(below.about().get(0)));
            }
            for (SubcommandTree.Flag flag : command.flags()) {
                lines.append("complete -c takeup").append(here);
                for (String name : flag.names()) {
                    lines.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
                }
                lines.append(flag.kind().isEmpty() ? "" : " -r" + values(flag.kind()))
                        .append(about(flag.about()));
            }
            for (SubcommandTree.Place place : command.places()) {
                if (!place.kind().equals("any")) {
                    lines.append("complete -c takeup")
                            .append(here)
                            .append(values(place.kind()))
                            .append(about(place.label()));
                }
            }
        }
        return lines.toString();
    }

    private static String condition(SubcommandTree command) {
        if (command.path().isEmpty()) {
            return "__fish_use_subcommand";
        }
        StringBuilder seen = new StringBuilder();
        for (String word : command.path().split(" ")) {
            seen.append(seen.isEmpty() ? "" : "; and ")
                    .append("__fish_seen_subcommand_from ")
                    .append(word);
        }
        if (!command.below().isEmpty()) {
            seen.append("; and not __fish_seen_subcommand_from ").append(ShellTables.below(command));
        }
        return seen.toString();
    }

    private static String values(String kind) {
        return switch (kind) {
            case "any" -> " -f";
            case "files" -> " -F";
            case "folders" -> " -f -a '(__fish_complete_directories)'";
            default ->
                " -f -a "
                        + ShellTables.quoted(
                                kind.startsWith("=")
                                        ? kind.substring(1)
                                        : "(takeup completion --words " + kind + " 2>/dev/null)");
        };
    }

    private static String about(String text) {
        return " -d " + quoted(List.of(text.split("(?<=[.]) (?=[A-Z])", 2)).get(0)) + "\n";
    }

    /** fish knows a backslash inside quotes, other shells do not. */
    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
