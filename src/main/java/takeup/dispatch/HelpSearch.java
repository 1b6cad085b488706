package takeup.dispatch;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import takeup.command.CommandInfo;

/**
 * What help finds a word by besides its name: its forms and examples, and what people call it who do not know it yet.
 */
public final class HelpSearch {
    /** A command outside the screen, and what it is for. */
    public record Outside(String typed, String does) {}

    /** Commands outside the screen that people look for in it. */
    public static final List<Outside> OUTSIDE = List.of(
            new Outside("takeup order new", "a lab order with sheet and labels to print"),
            new Outside("takeup roll 7 --csv", "exports a roll: text, JSON, CSV, to copy or to print"),
            new Outside("takeup frames --json", "exports all frames for a spreadsheet"),
            new Outside("takeup digital 7 FOLDER", "lays digital files of the same day beside a roll"),
            new Outside("takeup scans 7 FOLDER", "lays what came back beside a roll"),
            new Outside("takeup paper", "prints a form to write on"),
            new Outside("takeup paths", "where everything is, to copy it"));

    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("fix", "wrong mistake error correct change edit amend"),
            Map.entry("undo", "wrong mistake back revert"),
            Map.entry("drop", "delete remove wrong"),
            Map.entry("m", "meter light speed iso incident reflected spot zone digital reading ev lux"),
            Map.entry("meter", "incident spot digital"),
            Map.entry("load", "film speed iso asa rating ei roll"),
            Map.entry("set", "speed aperture shutter f-stop"),
            Map.entry("push", "speed develop process"),
            Map.entry("unload", "finish end export done"),
            Map.entry("order", "label print lab sheet copy send hand over"),
            Map.entry("day-end", "label finish"),
            Map.entry("plan", "schedule moment sun"),
            Map.entry("bag", "stock fridge film"),
            Map.entry("time", "bulb timer long"),
            Map.entry("scans", "digital files lab back"),
            Map.entry("note", "comment words label"),
            Map.entry("cam", "body back switch"),
            Map.entry("quit", "exit leave close"));

    private HelpSearch() {}

    /** Whether a word of the prompt is meant by what is looked for, in lower case. */
    public static boolean finds(CommandInfo word, String wanted) {
        if (has(SYNONYMS.getOrDefault(word.word(), ""), wanted) || has(word.usage(), wanted)) {
            return true;
        }
        return word.otherSpellings().contains(wanted)
                || word.forms().stream().anyMatch(it -> has(it.typed(), wanted) || has(it.meaning(), wanted));
    }

    private static boolean has(String text, String wanted) {
        return text.toLowerCase(Locale.ROOT).contains(wanted);
    }
}
