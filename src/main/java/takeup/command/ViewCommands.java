package takeup.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.prompt.Token;
import takeup.prompt.Tokens;
import takeup.report.NightBefore;
import takeup.report.StatusText;
import takeup.roll.Roll;
import takeup.text.English;
import takeup.text.Nearest;

/** Words that log nothing: views, help, the state in words, and what is unknown. */
final class ViewCommands {
    private final CommandContext context;

    ViewCommands(CommandContext in) {
        this.context = in;
    }

    Outcome read(String word, List<String> rest) {
        switch (word) {
            case "say":
                CommandContext.alone(word, rest);
                return shows(
                        Outcome.ScreenAction.NOTHING,
                        "state",
                        StatusText.words(context.state, context.now),
                        StatusText.json(context.state));
            case "shoot":
                return shows(
                        Outcome.ScreenAction.SHOW_SHOOT,
                        "state",
                        StatusText.words(context.state, context.now),
                        StatusText.json(context.state));
            case "frames":
                CommandContext.alone(word, rest);
                return shows(Outcome.ScreenAction.SHOW_FRAMES, "state", frames(), StatusText.json(context.state));
            case "rolls":
                CommandContext.alone(word, rest);
                return shows(Outcome.ScreenAction.SHOW_ROLLS, "state", rolls(), StatusText.json(context.state));
            case "plan":
                return shows(
                        Outcome.ScreenAction.SHOW_PLAN,
                        "plan",
                        PlanCommand.sentence(context.state, context.now),
                        NightBefore.plan(context.state, context.now));
            case "bag":
                return shows(
                        Outcome.ScreenAction.SHOW_BAG,
                        "bag",
                        NightBefore.bagSentence(context.state, context.now),
                        NightBefore.bag(context.state, context.now));
            case "help":
                return help(rest);
            case "theme":
                return theme(rest);
            case "big":
                CommandContext.alone(word, rest);
                return shows(
                        Outcome.ScreenAction.BIG,
                        "state",
                        context.state
                                .rollInHand()
                                .map(it -> "Next frame " + it.next() + ", " + StatusText.leftWords(it) + ".")
                                .orElse("No film in hand."),
                        StatusText.json(context.state));
            case "quiet":
                return quiet(rest);
            case "quit":
                if (!rest.isEmpty() && !rest.equals(List.of("yes"))) {
                    throw new CommandRejected("quit stands alone; quit yes leaves also while something is not saved");
                }
                return shows(
                        rest.equals(List.of("yes")) ? Outcome.ScreenAction.QUIT_ANYWAY : Outcome.ScreenAction.QUIT,
                        "state",
                        "Left; everything is on disk.",
                        Json.object());
            default:
                throw unknown(word, rest);
        }
    }

    private Outcome shows(Outcome.ScreenAction act, String event, String text, Json.Obj fields) {
        return new Outcome.Accepted(
                List.of(), context.before, new Outcome.Answer(event, text, fields, List.of()), act, List.of());
    }

    private String frames() {
        Roll roll = context.roll();
        if (roll.frames().isEmpty()) {
            return roll.id() + ": no frame yet.";
        }
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= roll.frames().size(); i++) {
            String words = CorrectionCommands.words(roll, roll.frames().get(from));
            if (i == roll.frames().size()
                    || !words.equals(
                            CorrectionCommands.words(roll, roll.frames().get(i)))
                    || roll.frames().get(i).number() != roll.frames().get(i - 1).number() + 1) {
                all.add(CommandContext.numbers(
                                roll.frames().get(from).number(),
                                roll.frames().get(i - 1).number()) + ", " + words);
                from = i;
            }
        }
        return roll.id() + ": " + String.join("; ", all) + ".";
    }

    private String rolls() {
        List<String> all = new ArrayList<>();
        context.state
                .rolls()
                .values()
                .forEach(it -> all.add(
                        it.id() + ", " + it.film().stock().name() + " in " + it.place() + ", " + it.state() + ", "
                                + (it.state() == Roll.State.OPEN || it.state() == Roll.State.REWOUND
                                        ? StatusText.leftWords(it)
                                        : it.framesUsed() + " frames")));
        int earlier = context.state.known().size() - context.state.rolls().size();
        String more = earlier > 0
                ? "Not read here, since finished before: " + English.count(earlier, "roll")
                        + "; takeup rolls lists all."
                : "";
        return all.isEmpty()
                ? more.isEmpty() ? "No roll yet." : more
                : String.join("; ", all) + "." + (more.isEmpty() ? "" : " " + more);
    }

    private Outcome help(List<String> rest) {
        if (rest.isEmpty()) {
            return shows(
                    Outcome.ScreenAction.SHOW_HELP,
                    "help",
                    "Words: " + String.join(", ", CommandTable.firstWords())
                            + ". A frame is its numbers (4 125), or a point for the same again. help and a word "
                            + "says more.",
                    Json.object());
        }
        String word = CommandContext.one("help", rest, "help fix");
        CommandTable.Word found = CommandTable.find(word)
                .orElseThrow(() -> new CommandRejected(
                        word + " is no word known here" + Nearest.question(word, CommandTable.firstWords())));
        return shows(
                Outcome.ScreenAction.EXPLAIN,
                "help",
                explained(found),
                Json.object()
                        .and("word", found.word())
                        .and("usage", found.usage())
                        .and("does", found.does()));
    }

    /** A word, what it does and its forms, to be read aloud. */
    private static String explained(CommandTable.Word word) {
        List<String> forms = new ArrayList<>();
        CommandForms.of(word).forEach(it -> forms.add("\"" + it.typed() + "\", " + it.means()));
        return word.word() + ": " + word.does() + "."
                + (forms.size() == 1
                        ? " For example \"" + word.example() + "\"."
                        : " Type " + String.join("; ", forms) + ".");
    }

    private Outcome theme(List<String> rest) {
        Optional<String> name =
                rest.isEmpty() ? Optional.empty() : Optional.of(CommandContext.one("theme", rest, "theme sun"));
        if (name.isPresent() && !CommandTable.THEMES.contains(name.get())) {
            throw new CommandRejected(name.get() + " is no theme known here: " + String.join(", ", CommandTable.THEMES)
                    + Nearest.question(name.get(), CommandTable.THEMES));
        }
        return shows(
                Outcome.ScreenAction.NEXT_THEME,
                "state",
                "Theme " + name.orElse("changed") + ".",
                Json.object().and("theme", name));
    }

    private Outcome quiet(List<String> rest) {
        List<String> codes = new ArrayList<>();
        for (Warning.Code code : Warning.Code.values()) {
            codes.add(code.toString());
        }
        String word = CommandContext.one("quiet", rest, "quiet hand-held");
        Warning.Code code = Warning.Code.named(word)
                .orElseThrow(() -> new CommandRejected(
                        word + " is no warning" + Nearest.question(word, codes) + "; such as hand-held"));
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.WarningSilenced(code)));
        ShootState after = context.after(entries);
        return context.does(
                entries,
                after,
                context.state(after, code + " is silenced for the day, and that is recorded.", List.of()),
                List.of());
    }

    private static CommandRejected unknown(String word, List<String> rest) {
        if (word.equals("scans")) {
            return new CommandRejected(
                    "scans are laid beside the log by a command of its own, once this is left: takeup scans 7 FOLDER");
        }
        if (word.equals("order")) {
            return new CommandRejected(
                    "order is a command of its own, for when the day is over: leave with quit, then type takeup "
                            + "order new");
        }
        if (word.startsWith("+") || word.startsWith("-")) {
            return new CommandRejected(word + " could be " + (word.startsWith("+") ? "more" : "less")
                    + " light on the film (bias " + word + ") or an order to the lab ("
                    + (word.startsWith("+") ? "push " : "pull ") + word.substring(1) + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.INDEX)) {
            return new CommandRejected(word + " could be the meter's speed (m 5.6 125 " + word
                    + ") or the roll's index (load cn400 " + word + ", fix roll " + word + "): say which");
        }
        if (Tokens.token(word).is(Token.Kind.EV)
                || Tokens.token(word).is(Token.Kind.LUX)
                || Tokens.token(word).is(Token.Kind.CANDELAS)) {
            return new CommandRejected(word + " is light: m " + word + " takes a reading");
        }
        String ours = ours(word);
        return new CommandRejected(word + " is no word known here"
                + (ours.isEmpty()
                        ? Nearest.question(word, CommandTable.firstWords()) + "; help lists them"
                        : ": " + ours));
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
