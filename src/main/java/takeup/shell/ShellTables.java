package takeup.shell;

import java.util.List;
import takeup.files.Version;

/**
 * The tables that bash and zsh share, as {@code case} statements: what follows an option, and what stands in a place.
 */
record ShellTables(SubcommandTree tree) {
    /**
     * A script with its tables, its functions {@code _takeup_after} and {@code _takeup_in_place} and the lists of each
     * command in their places.
     */
    String fill(String script, CharSequence lists) {
        return script.replace("%VERSION%", Version.number())
                .replace("%FUNCTIONS%", """
                _takeup_after() {
                    kind=
                    case "$1:$2" in
                %AFTER%    esac
                }

                _takeup_in_place() {
                    kind=
                    case "$1:$2" in
                %PLACE%    esac
                }
                """)
                .replace("%AFTER%", afterOption("        "))
                .replace("%PLACE%", inPlace("        "))
                .replace("%PATHS%", paths())
                .replace("%LISTS%", lists);
    }

    /**
     * Lines of a function that sets {@code kind} from {@code $command} and {@code $prev}, and leaves it alone for a
     * flag without a value.
     */
    private String afterOption(String indent) {
        StringBuilder lines = new StringBuilder();
        for (SubcommandTree command : tree.all()) {
            for (SubcommandTree.Flag flag : command.flags()) {
                if (!flag.kind().isEmpty()) {
                    lines.append(indent);
                    for (int i = 0; i < flag.names().size(); i++) {
                        lines.append(i == 0 ? "" : "|")
                                .append(pattern(
                                        command.path() + ":" + flag.names().get(i)));
                    }
                    lines.append(") kind=").append(quoted(flag.kind())).append(" ;;\n");
                }
            }
        }
        return lines.toString();
    }

    /** Lines that set {@code kind} from {@code $command} and {@code $place}, which counts from 0. */
    private String inPlace(String indent) {
        StringBuilder lines = new StringBuilder();
        for (SubcommandTree command : tree.all()) {
            List<SubcommandTree.Place> places = command.places();
            for (int i = 0; i < places.size(); i++) {
                String number = places.get(i).isRepeated() ? "*" : Integer.toString(i);
                lines.append(indent)
                        .append(pattern(command.path() + ":"))
                        .append(number)
                        .append(") kind=")
                        .append(quoted(places.get(i).kind()))
                        .append(" ;;\n");
            }
        }
        return lines.toString();
    }

    /** All paths but the program's own, as one pattern: {@code line|meter|'order new'}. */
    private String paths() {
        StringBuilder all = new StringBuilder();
        for (SubcommandTree command : tree.all()) {
            if (!command.path().isEmpty()) {
                all.append(all.isEmpty() ? "" : "|").append(pattern(command.path()));
            }
        }
        return all.toString();
    }

    static String names(SubcommandTree command) {
        return String.join(
                " ",
                command.flags().stream().map(it -> String.join(" ", it.names())).toList());
    }

    static String below(SubcommandTree command) {
        return String.join(
                " ", command.below().stream().map(SubcommandTree::name).toList());
    }

    /** A text that a shell takes as it stands. */
    static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }

    static String pattern(String text) {
        return text.isEmpty() ? "''" : quoted(text);
    }
}
