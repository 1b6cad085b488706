package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.ShippedShelf;
import takeup.console.Clock;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Filter;
import takeup.kit.Kit;
import takeup.prompt.Sky;

/** The pages of the manual: what they tell to type can be typed, and where they point there is something. */
class ManualPagesTest {
    private static final Path FOLDER = Path.of("src/docs");
    /** The pages as one day goes through them. */
    private static final List<String> PAGES = List.of("prepare.md", "shoot.md", "close.md", "hand-over.md", "learn.md");

    /** The pages to look things up in. */
    private static final List<String> REFERENCE =
            List.of("reference-card.md", "settings.md", "files.md", "accuracy.md", "performance.md", "changelog.md");

    @TempDir
    Path day;

    private static String page(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name));
    }

    private static List<String> blocks(String page, String language) {
        List<String> lines = new ArrayList<>();
        for (Matcher block =
                        Pattern.compile("(?s)```" + language + "\n(.*?)\n```").matcher(page);
                block.find(); ) {
            lines.addAll(block.group(1).lines().toList());
        }
        return lines;
    }

    @Test
    void theLinesOfAllPagesAreOneDayAndOnlyWhatIsSaidToBeRefusedIs() throws IOException {
        List<String> typed = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (String name : PAGES) {
            for (String line : blocks(page(name), "prompt")) {
                String[] cells = line.split(" {2,}", 2);
                typed.add(cells[0]);
                if (cells.length > 1 && cells[1].startsWith("refused")) {
                    refused.add(cells[0]);
                }
            }
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Console out = new Console(said, said, Map.of("LC_ALL", "C.UTF-8"));
        Archive archive = new Archive(day);
        try (JournalStore disk = JournalStore.take(archive)) {
            new PromptPipe(
                            disk,
                            StartupState.of(archive, new Kit(new ShippedShelf()))
                                    .state(),
                            Clock.of(Optional.of(Clock.parse("2026-09-12T15:00+02:00"))),
                            out,
                            PromptPipe.Format.TEXT)
                    .run(new ByteArrayInputStream(String.join("\n", typed).getBytes(StandardCharsets.UTF_8)));
        }
        List<String> answers = said.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(typed.size(), answers.size());
        List<String> notDone = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            if (answers.get(i).startsWith("Not done")) {
                notDone.add(typed.get(i));
            }
        }
        assertEquals(refused, notDone, String.join("\n", answers));
        assertTrue(typed.size() > 40, typed.toString());
    }

    @Test
    void everyCommandOfThePagesAndTheReadmeIsThereWithItsOptions() throws IOException {
        TreeSet<String> commands = new TreeSet<>();
        List<String> texts = new ArrayList<>(List.of(Files.readString(Path.of("README.md"))));
        for (String name : PAGES) {
            texts.add(page(name));
            commands.addAll(blocks(page(name), "sh"));
        }
        for (String name : REFERENCE) {
            texts.add(page(name));
        }
        for (String text : texts) {
            for (Matcher inline = Pattern.compile("`(takeup [^`|>$]*)[^`]*`").matcher(text); inline.find(); ) {
                commands.add(inline.group(1).strip());
            }
        }
        for (String command : commands) {
            List<String> words =
                    List.of(command.replaceAll("\"[^\"]*\"", "words").split("[ \n]+"));
            String help = helpOf(words);
            for (String word : words) {
                if (word.startsWith("-")) {
                    assertTrue(
                            Pattern.compile("(?m)" + Pattern.quote(word.replaceAll("[=,].*", "")) + "\\b")
                                    .matcher(help)
                                    .find(),
                            command + ": no " + word + " in\n" + help);
                }
            }
        }
        assertTrue(commands.size() > 15, commands.toString());
    }

    /** The help of the command that the words name, or of the program where they name none. */
    private static String helpOf(List<String> words) {
        List<String> path = new ArrayList<>();
        String help = help(path);
        for (String word : words.subList(1, words.size())) {
            boolean isCommand = Pattern.compile("(?ms)^Commands:.*^  " + Pattern.quote(word) + " ")
                    .matcher(help)
                    .find();
            if (!isCommand) {
                assertTrue(
                        !path.isEmpty() || word.startsWith("-") || word.equals(word.toUpperCase(Locale.ROOT)),
                        word + " is no command: " + words);
                break;
            }
            path.add(word);
            help = help(path);
        }
        return help;
    }

    private static String help(List<String> path) {
        List<String> arguments = new ArrayList<>(path);
        arguments.add("--help");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(
                0,
                Subcommands.run(arguments.toArray(String[]::new), new Console(out, out, Map.of("LC_ALL", "C.UTF-8"))));
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void everyLinkLeadsToAFileAndEveryPageIsReached() throws IOException {
        TreeSet<String> reached = new TreeSet<>();
        List<String> all = Stream.concat(PAGES.stream(), REFERENCE.stream()).toList();
        for (String name : Stream.concat(all.stream().map(it -> "src/docs/" + it), Stream.of("README.md"))
                .toList()) {
            Path page = Path.of(name);
            for (Matcher link = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(Files.readString(page)); link.find(); ) {
                Path to = (page.getParent() == null ? Path.of("") : page.getParent())
                        .resolve(link.group(1))
                        .normalize();
                assertTrue(Files.isRegularFile(to), name + " points to " + to + ", which is not there");
                reached.add(to.toString());
            }
        }
        for (String name : all) {
            assertTrue(reached.contains("src/docs/" + name), name + " is not reached");
        }
    }

    /** A word that no page names is a word that nobody finds. */
    @Test
    void everyFilterAndEverySkyIsNamed() throws IOException {
        String page = page("shoot.md").replace('\n', ' ');
        for (String filter : Filter.names()) {
            assertTrue(page.contains(filter + " ("), filter);
        }
        for (String sky : Sky.words()) {
            assertTrue(Pattern.compile("[ `]" + sky + "[,.`]").matcher(page).find(), sky);
        }
    }
}
