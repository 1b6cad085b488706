package takeup.prompt;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import takeup.roll.DevelopedIn;

/** How a roll was developed, as it is typed: {@code in "fine-grain 1+1" 9m45s at 20C agitation 10s a minute by me}. */
public final class RecipeParser {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern TIME = Pattern.compile(
            "(?:(\\d{1,2})h)?(?:(\\d{1,3})(?:m|min))?(?:(\\d{1,4})(?:s|sec))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):([0-5]\\d)");
    private static final Pattern TEMPERATURE =
            Pattern.compile("(\\d{1,3}(?:\\.\\d)?)\\u00b0?([cf])", Pattern.CASE_INSENSITIVE);

    private final Map<String, List<String>> words = new LinkedHashMap<>();
    private final LocalDate today;
    private OptionalInt seconds = OptionalInt.empty();
    private OptionalDouble celsius = OptionalDouble.empty();

    private RecipeParser(LocalDate today) {
        this.today = today;
    }

    /** Reads the words behind the roll; a word that cannot be read is refused. */
    public static RecipeParser of(String text, LocalDate today) {
        RecipeParser parser = new RecipeParser(today);
        String part = "in";
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            boolean isQuoted = word.group(1) != null;
            String typed = isQuoted ? word.group(1) : word.group(2);
            String small = typed.toLowerCase(Locale.ROOT);
            if (!isQuoted && List.of("in", "agitation", "by", "on").contains(small)) {
                part = small;
            } else if (!isQuoted && part.equals("in") && small.equals("every")) {
                part = "agitation";
                parser.words.computeIfAbsent(part, it -> new ArrayList<>()).add(typed);
            } else if (isQuoted || !part.equals("in") || !parser.isMeasured(small)) {
                parser.words.computeIfAbsent(part, it -> new ArrayList<>()).add(typed);
            }
        }
        parser.day();
        return parser;
    }

    /** Whether a word of the recipe is its time, its temperature, or the at in front of it. */
    private boolean isMeasured(String word) {
        Matcher time = TIME.matcher(word);
        Matcher clock = CLOCK.matcher(word);
        Matcher temperature = TEMPERATURE.matcher(word);
        if (word.equals("at")) {
            return true;
        }
        if (temperature.matches()) {
            double degrees = Double.parseDouble(temperature.group(1));
            celsius = OptionalDouble.of(
                    temperature.group(2).equals("c") ? degrees : Math.round((degrees - 32) / 1.8 * 10) / 10.0);
            return true;
        }
        if (!word.isEmpty() && time.matches()) {
            int more = 3600 * number(time.group(1)) + 60 * number(time.group(2)) + number(time.group(3));
            add(more, more < 60 && seconds.orElse(1) % 60 == 0, word);
            return true;
        }
        if (clock.matches()) {
            add(60 * number(clock.group(1)) + number(clock.group(2)), false, word);
            return true;
        }
        return false;
    }

    /** {@code 9m 45s} is one time in two words; any other second time is one too many. */
    private void add(int more, boolean isRest, String word) {
        if (seconds.isPresent() && !isRest) {
            throw new CommandRejected("two times; " + word + " is the second. How it was agitated stands behind "
                    + "agitation: agitation 10s a minute, or every 30s");
        }
        seconds = OptionalInt.of(seconds.orElse(0) + more);
    }

    private static int number(String digits) {
        return digits == null ? 0 : Integer.parseInt(digits);
    }

    private Optional<String> text(String part) {
        return Optional.ofNullable(words.get(part))
                .map(it -> String.join(" ", it))
                .filter(it -> !it.isBlank());
    }

    private Optional<LocalDate> day() {
        return text("on")
                .map(it -> DateTimeParser.date(it, today)
                        .orElseThrow(() -> new CommandRejected(it + " is no date, such as " + today)));
    }

    /** The whole recipe; empty where no developer was named. */
    public Optional<DevelopedIn> whole() {
        if (text("in").isEmpty() && (seconds.isPresent() || celsius.isPresent())) {
            throw new CommandRejected("name the developer: in fine-grain 1+1 9m45s at 20C");
        }
        return text("in").map(it -> new DevelopedIn(it, seconds, celsius, text("agitation"), by(), on()));
    }

    public Optional<String> by() {
        return text("by");
    }

    public Optional<LocalDate> on() {
        return day();
    }
}
