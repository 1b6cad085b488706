package takeup.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntBiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.console.Clock;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.JournalStore;
import takeup.files.ProfileFiles;
import takeup.files.StartupState;
import takeup.journal.Archive;
import takeup.kit.Kit;

/**
 * The demo's rolls, plan, bag, orders and verdicts, made from a script by the same lines and commands that anybody
 * types. Not the tour through them.
 *
 * @param folder the data folder, empty so far
 * @param now the time at which the demo begins: the script reckons from it
 * @param commands what answers a command line
 */
record DemoDay(Path folder, OffsetDateTime now, ToIntBiFunction<String[], Console> commands) {
    private static final String SCRIPT = "/takeup/demo.txt";
    /** The regatta began so many minutes before. */
    private static final int MINUTES_UNDER_WAY = 95;

    /** The first rolls were shot so many days before. */
    private static final int DAYS_BEFORE = 40;

    private static final Pattern BRACES = Pattern.compile("\\{([^}]*)\\}");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    /** Words, those in quotation marks together. */
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** Makes all of it. A line that is refused is a mistake of the script: it fails. */
    void make() throws IOException {
        Clock clock = Clock.of(Optional.of(now.minusDays(DAYS_BEFORE)));
        List<String> typed = new ArrayList<>();
        for (String line : script()) {
            if (line.startsWith("$ ")) {
                type(typed, clock);
                command(line.substring(2), clock);
            } else {
                typed.add(line);
            }
        }
        type(typed, clock);
    }

    /** The lines of the script, with what their braces stand for. */
    List<String> script() throws IOException {
        try (InputStream file = DemoDay.class.getResourceAsStream(SCRIPT)) {
            if (file == null) {
                throw new IOException("the demo's day is missing from this program");
            }
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return BRACES.matcher(text)
                    .replaceAll(it -> Matcher.quoteReplacement(value(it.group(1))))
                    .lines()
                    .toList();
        }
    }

    /**
     * What stands for the words in braces: {@code +13}, {@code day +13}, {@code at -95}, {@code year}, {@code place}.
     */
    private String value(String braces) {
        String[] words = braces.split(" ");
        OffsetDateTime begun = now.minusMinutes(MINUTES_UNDER_WAY);
        return switch (words[0]) {
            case "year" -> Integer.toString(now.getYear() + 1);
            case "place" -> place();
            case "at" -> minutesOn(words[1]).toString();
            case "day" -> {
                LocalDate day = minutesOn(words[1]).toLocalDate();
                yield day.equals(begun.toLocalDate()) ? "" : " on " + day;
            }
            default -> minutesOn(words[0]).format(TIME);
        };
    }

    private OffsetDateTime minutesOn(String minutes) {
        return now.plusMinutes(Long.parseLong(minutes));
    }

    /** A river at the middle of this machine's time zone, so that the sun stands where the clock lets expect it. */
    private String place() {
        int longitude = (now.getOffset().getTotalSeconds() / 240 + 540) % 360 - 180;
        return "50.00," + longitude + ".00";
    }

    /** Types lines on the prompt, and forgets them. */
    private void type(List<String> lines, Clock clock) throws IOException {
        if (lines.isEmpty()) {
            return;
        }
        Archive archive = new Archive(folder);
        byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        lines.clear();
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        Console console = new Console(OutputStream.nullOutputStream(), errors, Map.of());
        try (JournalStore disk = JournalStore.take(archive)) {
            StartupState opened = StartupState.of(disk, new Kit(ProfileFiles.of(folder)));
            PromptPipe pipe = new PromptPipe(
                    disk, opened.withToday(archive, clock.now()), clock, console, PromptPipe.Format.TEXT);
            refuseUnless(pipe.run(new ByteArrayInputStream(bytes)) == 0, errors);
        }
    }

    private void command(String line, Clock clock) {
        List<String> words = new ArrayList<>(List.of("--data=" + folder));
        WORD.matcher(line).results().forEach(it -> words.add(it.group(1) == null ? it.group(2) : it.group(1)));
        if (words.get(1).equals("order")) {
            words.add(2, "--clock=" + clock.now());
        }
        ByteArrayOutputStream errors = new ByteArrayOutputStream();
        Console console = new Console(OutputStream.nullOutputStream(), errors, Map.of());
        refuseUnless(commands.applyAsInt(words.toArray(String[]::new), console) == 0, errors);
    }

    private static void refuseUnless(boolean isTaken, ByteArrayOutputStream errors) {
        if (!isTaken) {
            throw new CommandFailed(1, "the demo's day could not be made: " + errors.toString(StandardCharsets.UTF_8));
        }
    }
}
