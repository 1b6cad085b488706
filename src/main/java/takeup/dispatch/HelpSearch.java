package takeup.dispatch;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import takeup.command.CommandInfo;

/**
 * What help finds a word by besides its name: its forms and examples, and what people call it who do not know it yet.
 */
public final class HelpSearch {
    /**
     * A command outside the screen, and what it is for.
     *
     * @param also what people call it who do not know it yet
     */
    public record Outside(String typed, String does, String also) {
        /** Whether it is meant by what is looked for, in lower case. */
        public boolean isMeant(String wanted) {
            return has(also, wanted);
        }
    }

    /** Commands outside the screen that people look for in it. */
    public static final List<Outside> OUTSIDE = List.of(
            new Outside("takeup order new", "a lab order with sheet and labels to print", "pdf contact sheet"),
            new Outside("takeup roll 7 --csv", "exports a roll: text, JSON, CSV, to copy or to print", "save table"),
            new Outside("takeup frames --json", "exports all frames for a spreadsheet", "table database statistics"),
            new Outside(
                    "takeup digital 7 FOLDER",
                    "lays digital files of the same day beside a roll",
                    "exif metadata digitise digitize camera clock"),
            new Outside(
                    "takeup scans 7 FOLDER",
                    "lays what came back beside a roll",
                    "digitise digitize contact sheet compare exif"),
            new Outside(
                    "takeup scans 7 --sidecars=full",
                    "writes what is known of each frame beside its scan, as XMP",
                    "exif metadata sidecars keywords tags gps location catalogue rename"),
            new Outside("takeup paper", "prints a form to write on", "pdf pen battery"),
            new Outside("takeup stock cn400", "what is known about a film", "reciprocity long exposures table curve"),
            new Outside("takeup camera 645", "what is known about a camera", "rangefinder reflex lenses sync body"),
            new Outside("takeup review", "what the verdicts on all frames teach", "statistics stats learn"),
            new Outside("takeup costs", "what rolls cost, by shoot, roll or month", "money price statistics"),
            new Outside(
                    "takeup check", "reads all that is kept, and says what is wrong", "backup restore repair damage"),
            new Outside(
                    "takeup paths",
                    "where everything is, to copy it",
                    "backup restore usb save second folder disk sync settings data another computer"));

    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("fix", "wrong mistake error correct change edit amend rename restore"),
            Map.entry("undo", "wrong mistake back revert restore save"),
            Map.entry("redo", "restore"),
            Map.entry("drop", "delete remove wrong"),
            Map.entry(
                    "m",
                    "light meter light speed iso incident reflected spot zone digital reading ev lux grey card "
                            + "gray card sunny cloudy overcast weather sunset moon"),
            Map.entry("meter", "light meter incident spot digital"),
            Map.entry("load", "film speed iso asa rating ei roll insert expired"),
            Map.entry("set", "speed aperture shutter f-stop exposure"),
            Map.entry("hold", "aperture shutter priority keep"),
            Map.entry("sharp", "depth of field dof hyperfocal focus distance"),
            Map.entry("bias", "exposure compensation over under"),
            Map.entry("filter", "polariser polarizer nd neutral density red orange yellow"),
            Map.entry("ext", "macro close-up bellows extension"),
            Map.entry("tube", "macro close-up extension ring"),
            Map.entry("mag", "macro close-up magnification"),
            Map.entry("flash", "flash sync x-sync strobe fill guide number"),
            Map.entry("tripod", "handheld hand-held shake blur"),
            Map.entry("double", "double exposure multiple exposure second exposure"),
            Map.entry("push", "speed develop process"),
            Map.entry("unload", "finish end export done"),
            Map.entry("lost", "dark slide light leak fogged"),
            Map.entry("blank", "dark slide lens cap wasted"),
            Map.entry("condition", "x-ray airport customs scanner light leak heat damaged label"),
            Map.entry("order", "label print lab sheet copy send hand over contact sheet scan pdf"),
            Map.entry("day-end", "label finish"),
            Map.entry("plan", "schedule moment sun sunset sunrise golden hour blue hour"),
            Map.entry("shoot", "job assignment project sunset sunrise golden hour blue hour rename"),
            Map.entry("place", "location gps sunset sunrise"),
            Map.entry("at", "location place"),
            Map.entry("with", "people models portrait"),
            Map.entry("find", "search tag keyword statistics"),
            Map.entry("bag", "stock fridge film expired price money"),
            Map.entry("fridge", "freezer expired"),
            Map.entry("time", "bulb timer long exposure reciprocity"),
            Map.entry("scans", "digital files lab back digitise digitize contact sheet"),
            Map.entry("note", "comment words label"),
            Map.entry("cam", "body back switch rangefinder reflex half frame"),
            Map.entry("theme", "colour color dark bright contrast"),
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
