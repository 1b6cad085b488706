package takeup.shoot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.DayEvent;
import takeup.kit.Json;
import takeup.kit.Nearest;
import takeup.kit.Warning;
import takeup.roll.Roll;

/** Words that log nothing: views, help, the state in words, and what is unknown. */
final class ScreenLines {
    private final Interpreter in;

    ScreenLines(Interpreter in) {
        this.in = in;
    }

    Outcome read(String word, List<String> rest) {
        switch (word) {
            case "say":
                Interpreter.alone(word, rest);
                return shows(Outcome.Act.NOTHING, "state", State.words(in.s, in.now), State.json(in.s));
            case "shoot":
                return shows(Outcome.Act.SHOW_SHOOT, "state", State.words(in.s, in.now), State.json(in.s));
            case "frames":
                Interpreter.alone(word, rest);
                return shows(Outcome.Act.SHOW_FRAMES, "state", frames(), State.json(in.s));
            case "rolls":
                Interpreter.alone(word, rest);
                return shows(Outcome.Act.SHOW_ROLLS, "state", rolls(), State.json(in.s));
            case "plan":
                return shows(
                        Outcome.Act.SHOW_PLAN, "plan", PlanLines.sentence(in.s, in.now), Prepare.plan(in.s, in.now));
            case "bag":
                return shows(Outcome.Act.SHOW_BAG, "bag", Prepare.bagSentence(in.s, in.now), Prepare.bag(in.s, in.now));
            case "help":
                return help(rest);
            case "theme":
                return theme(rest);
            case "big":
                Interpreter.alone(word, rest);
                return shows(
                        Outcome.Act.BIG,
                        "state",
                        in.s.roll()
                                .map(it -> "Next frame " + it.next() + ", " + State.leftWords(it) + ".")
                                .orElse("No film in hand."),
                        State.json(in.s));
            case "quiet":
                return quiet(rest);
            case "quit":
                if (!rest.isEmpty() && !rest.equals(List.of("yes"))) {
                    throw new Refusal("quit stands alone; quit yes leaves also while something is not saved");
                }
                return shows(
                        rest.equals(List.of("yes")) ? Outcome.Act.QUIT_ANYWAY : Outcome.Act.QUIT,
                        "state",
                        "Left; everything is on disk.",
                        Json.object());
            default:
                throw unknown(word, rest);
        }
    }

    private Outcome shows(Outcome.Act act, String event, String text, Json.Obj fields) {
        return new Outcome.Does(
                List.of(), in.original, new Outcome.Answer(event, text, fields, List.of()), act, List.of());
    }

    private String frames() {
        Roll roll = in.roll();
        if (roll.frames().isEmpty()) {
            return roll.id() + ": no frame yet.";
        }
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= roll.frames().size(); i++) {
            String words = Corrections.words(roll, roll.frames().get(from));
            if (i == roll.frames().size()
                    || !words.equals(Corrections.words(roll, roll.frames().get(i)))
                    || roll.frames().get(i).number() != roll.frames().get(i - 1).number() + 1) {
                all.add(Interpreter.numbers(
                                roll.frames().get(from).number(),
                                roll.frames().get(i - 1).number()) + ", " + words);
                from = i;
            }
        }
        return roll.id() + ": " + String.join("; ", all) + ".";
    }

    private String rolls() {
        List<String> all = new ArrayList<>();
        in.s.rolls()
                .values()
                .forEach(it -> all.add(
                        it.id() + ", " + it.film().stock().name() + " in " + it.place() + ", " + it.state() + ", "
                                + (it.state() == Roll.State.OPEN || it.state() == Roll.State.REWOUND
                                        ? State.leftWords(it)
                                        : it.framesUsed() + " frames")));
        int earlier = in.s.known().size() - in.s.rolls().size();
        String more = earlier > 0
                ? "Not read here, since finished before: " + earlier + (earlier == 1 ? " roll" : " rolls")
                        + "; takeup rolls lists all."
                : "";
        return all.isEmpty()
                ? more.isEmpty() ? "No roll yet." : more
                : String.join("; ", all) + "." + (more.isEmpty() ? "" : " " + more);
    }

    private Outcome help(List<String> rest) {
        if (rest.isEmpty()) {
            return shows(
                    Outcome.Act.SHOW_HELP,
                    "help",
                    "Words: " + String.join(", ", Lexicon.firstWords())
                            + ". A frame is its numbers (4 125), or a point for the same again. help and a word "
                            + "says more.",
                    Json.object());
        }
        String word = Interpreter.one("help", rest, "help fix");
        Lexicon.Word found = Lexicon.find(word)
                .orElseThrow(() ->
                        new Refusal(word + " is no word known here" + Nearest.question(word, Lexicon.firstWords())));
        return shows(
                Outcome.Act.EXPLAIN,
                "help",
                explained(found),
                Json.object()
                        .and("word", found.word())
                        .and("usage", found.usage())
                        .and("does", found.does()));
    }

    /** A word, what it does and its forms, to be read aloud. */
    private static String explained(Lexicon.Word word) {
        List<String> forms = new ArrayList<>();
        Articles.of(word).forEach(it -> forms.add("\"" + it.typed() + "\", " + it.means()));
        return word.word() + ": " + word.does() + "."
                + (forms.size() == 1
                        ? " For example \"" + word.example() + "\"."
                        : " Type " + String.join("; ", forms) + ".");
    }

    private Outcome theme(List<String> rest) {
        Optional<String> name =
                rest.isEmpty() ? Optional.empty() : Optional.of(Interpreter.one("theme", rest, "theme sun"));
        if (name.isPresent() && !Lexicon.THEMES.contains(name.get())) {
            throw new Refusal(name.get() + " is no theme known here: " + String.join(", ", Lexicon.THEMES)
                    + Nearest.question(name.get(), Lexicon.THEMES));
        }
        return shows(
                Outcome.Act.NEXT_THEME,
                "state",
                "Theme " + name.orElse("changed") + ".",
                Json.object().and("theme", name));
    }

    private Outcome quiet(List<String> rest) {
        List<String> codes = new ArrayList<>();
        for (Warning.Code code : Warning.Code.values()) {
            codes.add(code.toString());
        }
        String word = Interpreter.one("quiet", rest, "quiet hand-held");
        Warning.Code code = Warning.Code.named(word)
                .orElseThrow(() ->
                        new Refusal(word + " is no warning" + Nearest.question(word, codes) + "; such as hand-held"));
        List<Entry> entries = List.of(new Entry.OnDay(new DayEvent.Quieted(code)));
        Situation after = in.after(entries);
        return in.does(
                entries,
                after,
                in.state(after, code + " is silenced for the day, and that is recorded.", List.of()),
                List.of());
    }

    private static Refusal unknown(String word, List<String> rest) {
        if (word.equals("scans")) {
            return new Refusal(
                    "scans are laid beside the log by a command of its own, once this is left: takeup scans 7 FOLDER");
        }
        if (word.equals("order")) {
            return new Refusal(
                    "order is a command of its own, for when the day is over: leave with quit, then type takeup "
                            + "order new");
        }
        if (word.startsWith("+") || word.startsWith("-")) {
            return new Refusal(word + " could be " + (word.startsWith("+") ? "more" : "less")
                    + " light on the film (bias " + word + ") or an order to the lab ("
                    + (word.startsWith("+") ? "push " : "pull ") + word.substring(1) + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.INDEX)) {
            return new Refusal(word + " could be the meter's speed (m 5.6 125 " + word
                    + ") or the roll's index (load cn400 " + word + ", fix roll " + word + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.EV)
                || Tokens.token(word).is(Token.Kind.LUX)
                || Tokens.token(word).is(Token.Kind.CANDELAS)) {
            return new Refusal(word + " is light: m " + word + " takes a reading");
        }
        String ours = ours(word);
        return new Refusal(word + " is no word known here"
                + (ours.isEmpty() ? Nearest.question(word, Lexicon.firstWords()) + "; help lists them" : ": " + ours));
    }

    /** What serves whoever types a word of habit that is none here; "" for any other. */
    private static String ours(String word) {
        return switch (word) {
            case "exit", "q", ":q", "bye", "close" -> "quit leaves";
            case "save", ":w" -> "what was answered is on disk already";
            case "delete", "del", "remove", "rm" -> "undo takes back the last line, drop 7 a frame that never was";
            case "iso", "asa" -> "the film's index goes with load or fix roll (@400), the meter's with a reading";
            case "film", "stock" -> "load cn400 puts a film in";
            default -> "";
        };
    }
}
