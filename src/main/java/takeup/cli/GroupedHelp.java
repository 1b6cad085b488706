package takeup.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import takeup.text.Padding;

/** The list of commands in {@code takeup --help}: in parts of the day, the screen first. */
final class GroupedHelp {
    private static final int WIDTH = 80;

    private GroupedHelp() {}

    static String commands(Help help) {
        CommandSpec takeup = help.commandSpec();
        int column = takeup.subcommands().keySet().stream()
                        .mapToInt(String::length)
                        .max()
                        .orElse(0)
                + 4;
        StringBuilder lines = new StringBuilder();
        for (PartOfDay part : PartOfDay.values()) {
            lines.append('\n').append(part.title()).append(":\n");
            if (part == PartOfDay.SCREEN) {
                row(lines, takeup.name(), "Opens the shoot screen.", column);
            }
            for (String name : part.names()) {
                String about = takeup.subcommands()
                        .get(name)
                        .getCommandSpec()
                        .usageMessage()
                        .description()[0];
                row(lines, name, about, column);
            }
        }
        return Ansi.OFF.string(lines.toString());
    }

    private static void row(StringBuilder lines, String name, String about, int column) {
        List<String> wrapped = wrapped(about, WIDTH - column - 1);
        for (int i = 0; i < wrapped.size(); i++) {
            lines.append(Padding.cell(i == 0 ? "  " + name : "", column))
                    .append(wrapped.get(i))
                    .append('\n');
        }
    }

    private static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
