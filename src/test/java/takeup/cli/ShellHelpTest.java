package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.command.CommandInfo;
import takeup.console.Console;
import takeup.dispatch.CommandTable;
import takeup.session.KeyHelp;
import takeup.shell.CompletionKinds;

/** Help, completions and the manual page name the same commands and the same options. */
class ShellHelpTest {
    private static final Pattern OPTION = Pattern.compile("(?m)^ {2,6}(?:(-\\w)(?=[=,]),? ?)?(--[a-z-]+)?");

    /** The options that help prints, by command; "" is the program itself. */
    private static final Map<String, Set<String>> HELP = new TreeMap<>();

    @BeforeAll
    static void readAllHelp() {
        helpOf("");
    }

    /** Help of a command, and of those that it lists. */
    private static void helpOf(String path) {
        String help = said((path + " --help").strip().split(" "));
        Set<String> options = new TreeSet<>();
        for (Matcher found = OPTION.matcher(help); found.find(); ) {
            Stream.of(found.group(1), found.group(2)).filter(Objects::nonNull).forEach(options::add);
        }
        HELP.put(path, options);
        int commands = help.indexOf("\nCommands:\n");
        if (commands >= 0) {
            int examples = help.indexOf("\nFor example:\n");
            for (Matcher found = Pattern.compile("(?m)^  ([a-z-]+) ").matcher(help.substring(commands, examples));
                    found.find(); ) {
                if (!found.group(1).equals("takeup")) {
                    helpOf((path + " " + found.group(1)).strip());
                }
            }
        }
    }

    private static String said(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Subcommands.run(arguments, new Console(out, err, Map.of("LC_ALL", "C.UTF-8")));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        assertEquals(0, status);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void helpIsReadRight() {
        assertTrue(
                HELP.keySet().containsAll(List.of("", "line", "meter", "order new", "completion", "man", "themes")),
                HELP.keySet().toString());
        assertEquals(
                new TreeSet<>(List.of("--clock", "--json", "--data", "-h", "--help", "-V", "--version")),
                HELP.get("line"));
        assertTrue(HELP.get("roll").contains("-o"));
        assertTrue(HELP.get("").containsAll(List.of("--ascii", "--theme", "--warm")));
    }

    @Test
    void bashCompletesTheCommandsAndOptionsOfHelp() {
        Map<String, Set<String>> options = new TreeMap<>();
        Set<String> commands = new TreeSet<>();
        for (Matcher found = Pattern.compile("(?m)^ +'([a-z -]*)'\\) options='([^']*)' below='([^']*)' ;;$")
                        .matcher(said("completion", "bash"));
                found.find(); ) {
            options.put(found.group(1), words(found.group(2)));
            words(found.group(3)).forEach(it -> commands.add((found.group(1) + " " + it).strip()));
        }
        assertEquals(HELP, options);
        Set<String> below = new TreeSet<>(HELP.keySet());
        below.remove("");
        assertEquals(below, commands);
    }

    @Test
    void zshCompletesTheOptionsOfHelp() {
        Map<String, Set<String>> options = new TreeMap<>();
        for (Matcher found = Pattern.compile(
                                "(?m)^ +'([a-z -]*)'\\)\n +options=\\(\n(.*?)\n +\\)\n +below=", Pattern.DOTALL)
                        .matcher(said("completion", "zsh"));
                found.find(); ) {
            Set<String> names = new TreeSet<>();
            found.group(2)
                    .lines()
                    .forEach(it -> names.add(it.strip().substring(1, it.strip().indexOf(':'))));
            options.put(found.group(1), names);
        }
        assertEquals(HELP, options);
    }

    @Test
    void fishCompletesTheOptionsOfHelp() {
        Map<String, Set<String>> options = new TreeMap<>();
        for (String line : said("completion", "fish").lines().toList()) {
            Matcher condition = Pattern.compile("-n '([^']*)'").matcher(line);
            Matcher option = Pattern.compile(" -(l|s) ([a-zA-Z-]+)").matcher(line.replaceAll(" -d .*", ""));
            if (condition.find() && option.find()) {
                option.reset();
                List<String> path = new ArrayList<>();
                for (String part : condition.group(1).split("; and ")) {
                    if (part.startsWith("__fish_seen_subcommand_from ")) {
                        path.add(part.substring(28));
                    }
                }
                while (option.find()) {
                    options.computeIfAbsent(String.join(" ", path), it -> new TreeSet<>())
                            .add((option.group(1).equals("l") ? "--" : "-") + option.group(2));
                }
            }
        }
        assertEquals(HELP, options);
    }

    /** What a command passes on to those below it is told once, with it. */
    @Test
    void theManualPageTellsEveryOptionOfHelpAndNoOther() {
        Map<String, Set<String>> told = manual();
        assertEquals(HELP.keySet(), told.keySet());
        HELP.forEach((path, options) -> {
            Set<String> here = new TreeSet<>(told.get(path));
            assertTrue(options.containsAll(here), path + " has no " + here);
            for (String above = path; !above.isEmpty(); ) {
                above = above.contains(" ") ? above.substring(0, above.lastIndexOf(' ')) : "";
                here.addAll(told.get(above));
            }
            assertTrue(here.containsAll(options), path + " is missing one of " + options + " in " + here);
        });
        assertEquals(Set.of("--json"), told.get("rolls"));
    }

    private static Map<String, Set<String>> manual() {
        Map<String, Set<String>> told = new TreeMap<>();
        String path = "";
        String section = "";
        List<String> lines = said("man").lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).replace("\\-", "-");
            section = line.startsWith(".SH ") ? line.substring(4) : section;
            if (line.startsWith(".SS ")) {
                path = line.substring(5, line.length() - 1).replaceAll("^takeup | \\[?[A-Z].*", "");
            }
            if (section.equals("OPTIONS") || section.equals("COMMANDS")) {
                told.computeIfAbsent(path, it -> new TreeSet<>());
                if (line.equals(".TP") && lines.get(i + 1).startsWith("\\-")) {
                    told.get(path)
                            .addAll(Arrays.asList(lines.get(i + 1)
                                    .replace("\\-", "-")
                                    .replaceAll("[ =][A-Z]+$", "")
                                    .split(", ")));
                }
            }
        }
        return told;
    }

    @Test
    void theManualPageTellsEveryKeyAndEveryWord() {
        String page = said("man")
                .replace("\\-", "-")
                .replace("\\[u00B7]", "·")
                .replace("\\(aq", "'")
                .replace("\\&", "");
        List<String> tags = page.lines().toList();
        for (KeyHelp key : KeyHelp.all()) {
            assertTrue(
                    tags.stream().anyMatch(it -> it.equals(key.key()) || it.startsWith(key.key() + " (")), key.key());
        }
        for (CommandInfo word : CommandTable.words()) {
            assertTrue(tags.contains(word.usage()), word.usage());
        }
    }

    /** man(7): a control line begins with a point; no line is longer than a terminal, and all is ASCII. */
    @Test
    void theManualPageHasNoLineThatManWouldMisread() {
        Set<String> requests = new TreeSet<>();
        for (String line : said("man").lines().toList()) {
            assertTrue(line.length() <= 80, line);
            assertTrue(line.chars().allMatch(it -> it >= ' ' && it < 0x7f), line);
            assertFalse(line.startsWith("'") || line.isBlank(), line);
            if (line.startsWith(".")) {
                requests.add(line.split(" ")[0]);
            }
        }
        assertEquals(
                new TreeSet<>(List.of(".TH", ".SH", ".SS", ".TP", ".PP", ".B", ".BR", ".br", ".nf", ".fi")), requests);
    }

    @ParameterizedTest(name = "what --{0} takes is completed by a kind that the program knows")
    @ValueSource(strings = {"stock", "camera", "meter", "lab"})
    void keysAreAskedOfTheProgram(String option) {
        assertTrue(CompletionKinds.KINDS.contains(CompletionKinds.kind("meter", "--" + option, "K")));
    }

    private static Set<String> words(String text) {
        return text.isBlank() ? new TreeSet<>() : new TreeSet<>(List.of(text.split(" ")));
    }
}
