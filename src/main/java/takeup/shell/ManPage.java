package takeup.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import takeup.command.CommandInfo;
import takeup.dispatch.CommandTable;
import takeup.files.Settings;
import takeup.files.Version;
import takeup.session.KeyHelp;
import takeup.session.Session;

/**
 * The manual page, for {@code man}: commands and options from the commands themselves, keys and words of the prompt
 * from their tables. Written with the man macros (man(7)), no line longer than 80 characters, all text as ASCII with
 * {@code \[uXXXX]}.
 */
public record ManPage(SubcommandTree tree) {
    private static final int LINE = 78;

    public String roff() {
        Roff page = new Roff();
        page.raw(".TH TAKEUP 1 " + Version.date() + " \"takeup " + Version.number() + "\" \"takeup\"");
        page.section("NAME").raw("takeup \\- keeps the record of a shoot day on film");
        page.section("SYNOPSIS")
                .raw(".B takeup")
                .text("[OPTION]...")
                .raw(".br")
                .raw(".B takeup")
                .text("COMMAND [OPTION]... [WORD]...");
        page.section("DESCRIPTION");
        tree.about().forEach(page::text);
        page.text("The screen shows which roll is in which camera, how it is rated, which frame is next, how many "
                + "are left, and what to set for the light.");
        page.text("A frame counts when the disk has it.");
        page.section("OPTIONS");
        flags(page, tree, tree.flags());
        page.section("COMMANDS").text("The options of a command stand before or after its words.");
        commands(page, tree);
        keys(page);
        page.section("WORDS OF THE PROMPT").text("The same in the screen and in");
        page.raw(".BR \"takeup line\" .");
        for (CommandInfo word : CommandTable.words()) {
            page.item(word.usage(), word.summary() + ".");
        }
        places(page);
        page.section("EXIT STATUS")
                .item("0", "Done.")
                .item("1", "It could not be done, or problems were found.")
                .item("2", "The command line was wrong.");
        page.section("EXAMPLES")
                .text("A first roll, typed on the prompt:")
                .raw(".PP")
                .raw(".nf");
        List.of("cam 645", "load cn400", "m 5.6 125", "4 125 ; bow seat").forEach(page::line);
        page.raw(".fi").raw(".PP").text("The same in a pipe:").raw(".PP").raw(".nf");
        page.line("printf 'cam 645\\nload cn400\\n4 125\\n' | takeup line --data regatta");
        page.raw(".fi");
        return page.toString();
    }

    private static void commands(Roff page, SubcommandTree above) {
        for (SubcommandTree command : above.below()) {
            command(page, command, above);
            commands(page, command);
        }
    }

    private static void command(Roff page, SubcommandTree command, SubcommandTree above) {
        StringBuilder title = new StringBuilder("takeup " + command.path());
        for (SubcommandTree.Place place : command.places()) {
            title.append(place.isOptional() ? " [" : " ")
                    .append(place.label())
                    .append(place.isRepeated() ? "..." : "")
                    .append(place.isOptional() ? "]" : "");
        }
        page.subsection(title.toString());
        command.about().forEach(page::text);
        command.places().forEach(it -> page.item(it.label(), it.about()));
        flags(
                page,
                command,
                command.flags().stream().filter(it -> !above.passesOn(it)).toList());
        if (command.footer().stream().anyMatch(it -> !it.isBlank())) {
            footer(page, command.footer());
        }
    }

    /** What help says at the end: flowing text, and examples as they are typed. */
    private static void footer(Roff page, List<String> lines) {
        boolean isExample = false;
        page.raw(".PP");
        for (String line : lines) {
            if (!line.isBlank() && line.startsWith(" ") != isExample) {
                isExample = !isExample;
                page.raw(isExample ? ".nf" : ".fi");
            }
            if (isExample && !line.isBlank()) {
                page.line(line);
            } else if (!line.isBlank()) {
                page.text(line);
            }
        }
        if (isExample) {
            page.raw(".fi");
        }
    }

    /** Options that a command passes on are listed with it, not again with each command below it. */
    private static void flags(Roff page, SubcommandTree command, List<SubcommandTree.Flag> flags) {
        for (SubcommandTree.Flag flag : flags) {
            String names = String.join(", ", flag.names());
            page.item(names + value(names, flag), flag.about());
        }
        String below = command.path().isEmpty() ? "" : " of " + command.path();
        passed(page, "With every command" + below + " too: ", flags, command::passesToAll);
        passed(
                page,
                "With each command" + below + " that it changes: ",
                flags,
                it -> command.passesOn(it) && !command.passesToAll(it));
    }

    private static void passed(
            Roff page, String which, List<SubcommandTree.Flag> flags, Predicate<SubcommandTree.Flag> isOne) {
        List<String> names = flags.stream()
                .filter(isOne)
                .map(it -> it.names().get(it.names().size() - 1))
                .toList();
        if (!names.isEmpty()) {
            page.raw(".PP").text(which + String.join(", ", names) + ".");
        }
    }

    private static String value(String names, SubcommandTree.Flag flag) {
        if (flag.label().isEmpty()) {
            return "";
        }
        return (names.startsWith("--") ? "=" : " ") + flag.label();
    }

    private static void keys(Roff page) {
        page.section("KEYS")
                .text("A letter types on the prompt, which always has the focus. These do something at once, "
                        + "as do the words in brackets:");
        for (KeyHelp key : KeyHelp.all()) {
            String which = String.join("; ", limits(key));
            page.item(
                    key.key() + (which.isEmpty() ? "" : " (" + which + ")"),
                    key.does() + (key.word().isEmpty() ? "." : " (" + key.word() + ")."));
        }
    }

    /** Where and when a key acts; empty for one that always does. */
    private static List<String> limits(KeyHelp key) {
        List<String> limits = new ArrayList<>();
        switch (key.when()) {
            case "empty" -> limits.add("prompt empty");
            case "typed" -> limits.add("while typing");
            default -> {}
        }
        if (key.pages().size() < Session.Page.values().length) {
            limits.add(key.where());
        }
        return limits;
    }

    private static void places(Roff page) {
        page.section("FILES")
                .text("All of it lies in the data folder;")
                .raw(".B takeup paths")
                .text("says where that is.");
        page.item("rolls, days", "The journals: plain text, a record a line, only ever appended to.");
        page.item("exports", "The JSON of each finished roll.");
        page.item("profiles", "Cameras, stocks and meters of your own; they win over the shipped ones.");
        page.item(Settings.NAME, "The theme to start in, plain characters, and how many frames are few.");
        page.section("ENVIRONMENT");
        page.item("NO_COLOR", "If it is set and not empty, the screen has no colour.");
        page.item(
                "COLORTERM, TERM",
                "How many colours the terminal is asked for: all with truecolor, 16 on a console, else 256.");
        page.item(
                "LC_ALL, LC_CTYPE, LANG",
                "If the first of them that is set does not name UTF-8, the screen is drawn with plain characters.");
        page.item(
                "XDG_DATA_HOME",
                "Where the data folder lies unless --data names another; ~/.local/share if it is not set.");
        page.item("JAVA_HOME", "The Java to run with; else the first on the path.");
    }

    /** The lines of a page as they are built up. */
    private static final class Roff {
        private final StringBuilder page = new StringBuilder();

        Roff raw(String line) {
            page.append(line).append('\n');
            return this;
        }

        Roff section(String title) {
            return raw(".SH " + title.toUpperCase(Locale.ROOT));
        }

        void subsection(String title) {
            raw(".SS \"" + escaped(title) + "\"");
        }

        Roff item(String tag, String about) {
            return raw(".TP").raw(guarded(escaped(tag))).text(about);
        }

        /** A line as it stands. */
        void line(String text) {
            raw(guarded(escaped(text)));
        }

        /** Flowing text, a sentence to a line at least. */
        Roff text(String text) {
            for (String sentence : text.split("(?<=[.!?]) (?=[A-Z])")) {
                StringBuilder line = new StringBuilder();
                for (String word : escaped(sentence).split(" +")) {
                    if (!line.isEmpty() && line.length() + 1 + word.length() > LINE) {
                        raw(guarded(line.toString()));
                        line.setLength(0);
                    }
                    line.append(line.isEmpty() ? "" : " ").append(word);
                }
                raw(guarded(line.toString()));
            }
            return this;
        }

        /** A line that begins with a full stop or an apostrophe would be a macro, so it is escaped. */
        private static String guarded(String line) {
            return line.startsWith(".") || line.startsWith("'") ? "\\&" + line : line;
        }

        private static String escaped(String text) {
            StringBuilder out = new StringBuilder();
            text.codePoints().forEach(point -> {
                switch (point) {
                    case '\\' -> out.append("\\e");
                    case '-' -> out.append("\\-");
                    case '"' -> out.append("\\(dq");
                    case '\'' -> out.append("\\(aq");
                    case '~' -> out.append("\\(ti");
                    case '^' -> out.append("\\(ha");
                    case '`' -> out.append("\\(ga");
                    default -> {
                        if (point < 0x7f) {
                            out.append((char) point);
                        } else {
                            String hex = Integer.toHexString(point).toUpperCase(Locale.ROOT);
                            out.append("\\[u")
                                    .append("0000".substring(Math.min(4, hex.length())))
                                    .append(hex)
                                    .append(']');
                        }
                    }
                }
            });
            return out.toString();
        }

        @Override
        public String toString() {
            return page.toString();
        }
    }
}
