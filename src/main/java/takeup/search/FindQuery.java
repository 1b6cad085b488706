package takeup.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.review.Density;
import takeup.roll.RollId;

/**
 * Which frames are looked for, as it is typed: {@code bw400 f2.8 lens 28 since 2026-05}. A frame must meet all of it.
 *
 * @param typed the words
 */
public record FindQuery(String typed, List<FindTerm> terms) {
    /** What is said of how it is typed. */
    public static final String EXAMPLE = "bw400 f2.8 lens 28";

    /** The words that others stand behind, for completion. */
    public static final String[] WORDS_OF_QUERY = {
        "lens",
        "filter",
        "with",
        "at",
        "judged",
        "since",
        "until",
        "on",
        "error",
        "over",
        "under",
        "roll",
        "frame",
        "shoot",
        "scan",
        "released",
        "unreleased"
    };

    private static final List<FrameColumn> WORDS = List.of(
            FrameColumn.NOTE,
            FrameColumn.PEOPLE,
            FrameColumn.PLACE,
            FrameColumn.SHOOT,
            FrameColumn.LENS,
            FrameColumn.FILTERS,
            FrameColumn.FLASH,
            FrameColumn.TRIPOD,
            FrameColumn.KIND,
            FrameColumn.SCAN);

    /** Reads what was typed; an IllegalArgumentException says in a sentence what it cannot be. */
    public static FindQuery of(String typed) {
        List<String> words = words(typed);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("say what to look for, such as " + EXAMPLE);
        }
        List<FindTerm> terms = new ArrayList<>();
        FindWords left = new FindWords(words);
        while (left.isMore()) {
            terms.add(term(left));
        }
        return new FindQuery(typed.strip(), List.copyOf(terms));
    }

    /** Words of a command line as one text: a word that a shell kept together stays together. */
    public static String joined(List<String> words) {
        return String.join(
                " ",
                words.stream()
                        .map(it -> words.size() > 1 && it.indexOf(' ') >= 0 ? '"' + it + '"' : it)
                        .toList());
    }

    public boolean matches(FrameRow row) {
        for (FindTerm term : terms) {
            if (!term.test().test(row)) {
                return false;
            }
        }
        return true;
    }

    /**
     * What the line of a frame of that roll must have in it, in small letters, to be found; empty text where nothing.
     */
    public String mustHave(RollHead roll) {
        String longest = "";
        for (FindTerm term : terms) {
            String one = term.mustHave(roll);
            longest = one.length() > longest.length() ? one : longest;
        }
        return longest;
    }

    /** Cut at blanks; what stands between quotation marks is one word. */
    private static List<String> words(String typed) {
        List<String> words = new ArrayList<>();
        String[] quoted = typed.toLowerCase(Locale.ROOT).split("\"", -1);
        for (int i = 0; i < quoted.length; i++) {
            if (i % 2 == 1) {
                words.add(quoted[i]);
            } else {
                words.addAll(List.of(quoted[i].strip().split("\\s+")));
            }
        }
        words.removeIf(String::isBlank);
        return words;
    }

    private static FindTerm term(FindWords words) {
        String word = words.next();
        return switch (word) {
            case "lens" -> lens(words.after(word, "28"));
            case "since", "until", "on", "in" -> date(word, words.after(word, "2026-05"));
            case "error" -> error(words);
            case "over", "under" -> off(word, words.after(word, "1"));
            case "judged" -> judged(words.after(word, "thin"));
            case "filter" -> text(FrameColumn.FILTERS, words.after(word, "red"));
            case "scan" -> text(FrameColumn.SCAN, words.after(word, "0042"));
            case "roll" -> roll(words.after(word, "r7"));
            case "frame" -> frame(words.after(word, "7"));
            case "shoot" -> text(FrameColumn.SHOOT, words.after(word, "regatta"));
            case "with" -> people(words);
            case "released", "unreleased" ->
                FindTerm.of(row -> row.text(FrameColumn.RELEASE).equals(word)).onlyWith(word);
            case "at" -> text(FrameColumn.PLACE, words.after(word, "boathouse"));
            default -> setting(word);
        };
    }

    private static FindTerm text(FrameColumn column, String words) {
        return FindTerm.of(row -> row.has(column, words)).onlyWith(words);
    }

    /** {@code with ann, ben}: both are on the frame. */
    private static FindTerm people(FindWords words) {
        List<String> names = new ArrayList<>();
        boolean isMore = true;
        while (isMore) {
            String name = words.after("with", "ann");
            isMore = name.endsWith(",") && words.isMore();
            names.add(name.endsWith(",") ? name.substring(0, name.length() - 1) : name);
        }
        return FindTerm.of(row -> names.stream().allMatch(it -> row.has(FrameColumn.PEOPLE, it)))
                .onlyWith(names.get(0));
    }

    /** A lens by its focal length, or by words of its name. */
    private static FindTerm lens(String typed) {
        String focal = typed.endsWith("mm") ? typed.substring(0, typed.length() - 2) : typed;
        Optional<Double> mm = number(focal);
        return mm.isPresent()
                ? FindTerm.of(row -> is(row, FrameColumn.FOCAL_LENGTH, mm.get()))
                : text(FrameColumn.LENS, typed);
    }

    /** Dates of one length compare as texts: 2026, 2026-05 or 2026-05-03 with as much of the frame's own. */
    private static FindTerm date(String word, String date) {
        if (!date.matches("\\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\\d|3[01]))?)?")) {
            throw new IllegalArgumentException(
                    word + " takes a date, such as 2026, 2026-05 or 2026-05-03; " + date + " is none");
        }
        FindTerm term = FindTerm.of(row -> {
            String at = row.text(FrameColumn.AT);
            int way = at.length() < date.length()
                    ? 0
                    : at.substring(0, date.length()).compareTo(date);
            return at.length() >= date.length()
                    && switch (word) {
                        case "since" -> way >= 0;
                        case "until" -> way <= 0;
                        default -> way == 0;
                    };
        });
        return word.equals("since") || word.equals("until") ? term : term.onlyWith(date);
    }

    /** {@code error over 1}: off by more than a stop, to either side; {@code error under 0.5}: by less. */
    private static FindTerm error(FindWords words) {
        String way = words.after("error", "over 1");
        if (!way.equals("over") && !way.equals("under")) {
            throw new IllegalArgumentException("error takes over or under and stops, such as error over 1");
        }
        double stops = stops("error " + way, words.after("error " + way, "1"));
        return FindTerm.of(row -> {
            OptionalDouble error = row.number(FrameColumn.ERROR);
            return error.isPresent()
                    && (way.equals("over")
                            ? Math.abs(error.getAsDouble()) > stops
                            : Math.abs(error.getAsDouble()) < stops);
        });
    }

    /** {@code over 1}: overexposed by more than a stop. */
    private static FindTerm off(String way, String typed) {
        double stops = stops(way, typed);
        return FindTerm.of(row -> {
            OptionalDouble error = row.number(FrameColumn.ERROR);
            return error.isPresent() && (way.equals("over") ? error.getAsDouble() : -error.getAsDouble()) > stops;
        });
    }

    private static double stops(String word, String typed) {
        return number(typed)
                .filter(it -> it >= 0)
                .orElseThrow(() -> new IllegalArgumentException(
                        word + " takes stops, such as " + word + " 1; " + typed + " is no number of them"));
    }

    private static FindTerm judged(String verdict) {
        if (Density.named(verdict).isEmpty()) {
            throw new IllegalArgumentException("judged takes thin, good or dense; " + verdict + " is none of them");
        }
        return FindTerm.of(row -> row.text(FrameColumn.VERDICT).equals(verdict)).onlyWith(verdict);
    }

    private static FindTerm roll(String typed) {
        Optional<RollId> id = RollId.parse(typed);
        return FindTerm.of(row -> Optional.of(row.roll().summary().id()).equals(id)
                || row.roll().summary().name().filter(typed::equalsIgnoreCase).isPresent());
    }

    private static FindTerm frame(String typed) {
        double number = number(typed)
                .orElseThrow(() -> new IllegalArgumentException(typed + " is no frame number, such as frame 7"));
        return FindTerm.of(row -> is(row, FrameColumn.FRAME, number));
    }

    /** {@code f2.8}, {@code 1/125}, {@code 2s}, or a word. */
    private static FindTerm setting(String word) {
        String bare = word.startsWith("f/") ? word.substring(2) : word.substring(1);
        Optional<Double> fNumber = word.startsWith("f") ? number(bare) : Optional.empty();
        if (fNumber.isPresent()) {
            return FindTerm.of(row -> is(row, FrameColumn.F_NUMBER, fNumber.get()));
        }
        Optional<Double> below = word.startsWith("1/") ? number(word.substring(2)) : Optional.empty();
        if (below.isPresent() && below.get() > 0) {
            return FindTerm.of(
                    row -> row.text(FrameColumn.TIME).equals(word) || is(row, FrameColumn.SECONDS, 1 / below.get()));
        }
        Optional<Double> seconds = word.endsWith("s") ? number(word.substring(0, word.length() - 1)) : Optional.empty();
        return seconds.isPresent() ? FindTerm.of(row -> is(row, FrameColumn.SECONDS, seconds.get())) : word(word);
    }

    /** A word is the key of a film or camera, or stands in one of the texts of a frame or its roll. */
    private static FindTerm word(String word) {
        return FindTerm.of(row -> {
                    if (isOfRoll(row.roll(), word)) {
                        return true;
                    }
                    for (FrameColumn column : WORDS) {
                        if (row.has(column, word)) {
                            return true;
                        }
                    }
                    return false;
                })
                .onlyWith(word)
                .orOnRoll(it -> isOfRoll(it, word));
    }

    private static boolean isOfRoll(RollHead roll, String word) {
        return roll.summary().film().stock().equals(word)
                || roll.summary().place().camera().equals(word)
                || FrameRow.has(roll.summary().name().orElse(""), word)
                || FrameRow.has(roll.summary().film().stockName(), word)
                || FrameRow.has(roll.developed().orElse(""), word);
    }

    /** Equal but for what is lost where a number is written down. */
    private static boolean is(FrameRow row, FrameColumn column, double wanted) {
        OptionalDouble value = row.number(column);
        return value.isPresent() && Math.abs(value.getAsDouble() - wanted) <= 1e-6 * Math.abs(wanted);
    }

    private static Optional<Double> number(String typed) {
        boolean isNumber = typed.matches("\\d{1,6}(\\.\\d{1,6})?");
        return isNumber ? Optional.of(Double.parseDouble(typed)) : Optional.empty();
    }
}
