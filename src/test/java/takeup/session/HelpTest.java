package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.action.HelpLines;
import takeup.action.Window;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.Shooting;
import takeup.dispatch.CommandTable;
import takeup.message.Key;

/** Help that can be searched and run: keys and words, what works now before what does not, each with its reason. */
class HelpTest {
    private static final Key ENTER = Key.of(Key.Name.ENTER);

    /**
     * Moments that differ in what can be done. The last two have seven rolls, a zoom, light, flash light and more in
     * use.
     */
    private static Map<String, Supplier<Playing>> moments() {
        Map<String, Supplier<Playing>> all = new LinkedHashMap<>();
        all.put("an empty folder", Playing::of);
        all.put("a camera", () -> Playing.of("cam 645"));
        all.put("a fresh film", () -> Playing.medium());
        all.put("a frame", () -> Playing.two("m 5.6 125", "4 125"));
        all.put("a shoot", () -> Playing.of("cam 35", "shoot Regatta day at 59.33,18.07"));
        all.put("a filter", () -> Playing.medium("filter yellow"));
        all.put("somebody on a frame", () -> Playing.medium("4 125 with Anna"));
        all.put("a frame taken back", () -> Playing.two("m 5.6 125", "4 125", "undo"));
        all.put("a camera that sets itself", () -> Playing.of("cam compact", "load cn400", "."));
        all.put("a question", () -> Playing.medium("4 125", "unload"));
        all.put(
                "a plan and a bag",
                () -> Playing.medium(
                        "plan 15:30 Start", "plan 16:00 Final", "plan 16:30 Prize-giving", "bag add 2 cn400 120"));
        all.put(
                "a plan and a fridge",
                () -> Playing.of("cam 645", "fridge add 9 cn400 120", "plan 16:30 Prize-giving wants 12"));
        all.put(
                "a rewound roll",
                () -> Playing.of(
                        "cam 35",
                        "load bw400",
                        "unload yes",
                        "load bw400",
                        "unload yes",
                        "load bw400",
                        "4 250 x7",
                        "rewind"));
        all.put(
                "a rewound roll and a loaded one",
                () -> Playing.of(
                        "cam 35",
                        "load bw400",
                        "unload yes",
                        "load bw400",
                        "unload yes",
                        "load bw400",
                        "4 250 x7",
                        "rewind",
                        "load cn400"));
        all.put("paper being read", () -> Playing.of("cam 35", "load bw400", "4 250 x2", "paper r1"));
        all.put("seven rolls", HelpTest::seven);
        all.put("seven rolls, the last one out", () -> seven().lines("unload yes", "lens 45"));
        all.put("seven rolls, the first one developed", () -> {
            Playing day = Playing.of("cam 35");
            for (int roll = 1; roll <= 7; roll++) {
                day.lines("load bw400", "4 125", "unload yes");
            }
            return day.lines("developed r1 in fine-grain 1+1");
        });
        return all;
    }

    private static Playing seven() {
        Playing day = Playing.of("cam 645", "meter hand");
        for (int roll = 1; roll <= 6; roll++) {
            day.lines("load cn400", "4 125 x7", "unload yes");
        }
        return day.lines("cam 645 2", "load bw100", "cam 35", "load bw400", "m 5.6 125", "4 125 x8", "slate");
    }

    static List<String> names() {
        return List.copyOf(moments().keySet());
    }

    @ParameterizedTest(name = "{0}: what cannot be done says why, and is refused when it is typed")
    @MethodSource("names")
    void aReasonIsTrue(String name) {
        Playing day = moments().get(name).get();
        for (CommandInfo word : CommandTable.words()) {
            Optional<String> whyNot = HelpList.whyNot(word, day.shoot());
            Outcome outcome = day.shoot().outcome(word.example());
            assertFalse(
                    whyNot.isPresent() && !(outcome instanceof Outcome.Rejected),
                    word.example() + " works, though " + whyNot);
            assertFalse(
                    outcome instanceof Outcome.Rejected refused && refused.why().isBlank(),
                    word.example() + " is refused without a reason");
        }
    }

    @Test
    void eachExampleAndEachFormOfAWordCanBeTypedInSomeMoment() {
        List<Playing> all = moments().values().stream().map(Supplier::get).toList();
        List<String> never = new ArrayList<>();
        for (CommandInfo word : CommandTable.words()) {
            List<String> lines = new ArrayList<>(List.of(word.example()));
            word.forms().forEach(it -> lines.add(it.typed()));
            for (String line : lines) {
                if (all.stream().map(it -> it.shoot().outcome(line)).allMatch(it -> it instanceof Outcome.Rejected)) {
                    never.add(line + ": "
                            + all.stream()
                                    .map(it -> ((Outcome.Rejected) it.shoot().outcome(line)).why())
                                    .distinct()
                                    .toList());
                }
            }
        }
        assertEquals(List.of(), never);
    }

    @Test
    void eachLineThatWritesSomethingIsCalledByAShortName() {
        for (Supplier<Playing> moment : moments().values()) {
            Playing day = moment.get();
            for (CommandInfo word : CommandTable.words()) {
                for (CommandInfo.Form form : word.forms()) {
                    Outcome outcome = day.shoot().outcome(form.typed());
                    if (outcome instanceof Outcome.Accepted accepted
                            && !accepted.entries().isEmpty()) {
                        String title = accepted.answer().title();
                        assertTrue(!title.isBlank() && title.length() <= 80, form.typed() + ": " + title);
                    }
                }
            }
        }
    }

    /** The moments that are quickly played. */
    static List<String> quick() {
        return List.of("an empty folder", "a camera", "a frame", "a camera that sets itself", "a question");
    }

    @ParameterizedTest(name = "{0}: Enter on a key in help does what the key does")
    @MethodSource("quick")
    void enterOnAKeyIsTheKey(String name) {
        for (Session.Page page : List.of(
                Session.Page.SHOOT, Session.Page.FRAMES, Session.Page.ROLLS, Session.Page.PLAN, Session.Page.BAG)) {
            if (on(page, moments().get(name).get()).page() != page) {
                continue;
            }
            List<HelpList.Entry> entries = HelpList.of(
                            on(page, moments().get(name).get())
                                    .press(Key.Name.F1)
                                    .shoot())
                    .entries();
            for (int i = 0; i < entries.size(); i++) {
                if (entries.get(i).key().isPresent()) {
                    Playing run = chosen(on(page, moments().get(name).get()), i)
                            .press(ENTER)
                            .pass(200);
                    Playing pressed = on(page, moments().get(name).get())
                            .press(entries.get(i).key().get())
                            .pass(200);
                    same(entries.get(i), pressed, run);
                }
            }
        }
    }

    private static void same(HelpList.Entry entry, Playing pressed, Playing run) {
        String where = entry.typed() + " (" + entry.does() + ")";
        if (entry.whyNot().isPresent()) {
            assertEquals(Session.Page.HELP, run.page(), where);
            assertTrue(run.said().contains(entry.whyNot().get()), where + " says " + run.said());
        } else if (!HelpList.isRun(entry)) {
            assertEquals(entry.word(), run.prompt(), where + " is put on the prompt");
            assertEquals(
                    run.written().size(),
                    pressed.restart().written().size() - (entry.word().equals("quit") ? 0 : 1),
                    where);
        } else {
            assertEquals(pressed.page(), run.page(), where);
            assertEquals(pressed.allFrames(), run.allFrames(), where);
            assertEquals(pressed.camera(), run.camera(), where);
            assertEquals(pressed.shoot().view(), run.shoot().view(), where);
            assertEquals(pressed.written().size(), run.written().size(), where);
        }
    }

    @Test
    void enterOnAWordPutsItOnThePromptAndOnOneThatOnlyShowsShowsIt() {
        List<HelpList.Entry> entries =
                HelpList.of(day().press(Key.Name.F1).shoot()).entries();
        int lines = day().written().size();
        for (int i = 0; i < entries.size(); i++) {
            HelpList.Entry entry = entries.get(i);
            if (entry.key().isEmpty() && entry.whyNot().isEmpty()) {
                Playing day = chosen(day(), i).press(ENTER);
                assertEquals(lines, day.written().size(), entry.typed() + " is not done by looking it up");
                boolean shows = List.of("say", "why", "frames", "rolls", "day-end", "order", "big")
                        .contains(entry.word());
                assertEquals(!shows, !day.prompt().isEmpty(), entry.typed());
                assertTrue(day.page() != Session.Page.HELP, entry.typed());
                assertTrue(
                        shows
                                || day.prompt().strip().equals(entry.typed())
                                || day.prompt().equals(entry.word() + " "),
                        entry.typed() + " became " + day.prompt());
            }
        }
    }

    @Test
    void whatDoesNotWorkNowStandsBehindWhatDoesUnderItsReason() {
        List<HelpList.Section> sections =
                HelpList.of(Playing.of("cam 645").press(Key.Name.F1).shoot()).sections();
        assertEquals("Keys that work now", sections.get(0).title());
        assertTrue(sections.get(1).title().startsWith("Words"));
        assertTrue(sections.get(1).entries().stream().anyMatch(it -> it.word().equals("load")));
        HelpList.Section film = sections.stream()
                .filter(it -> it.title().startsWith("Not now: no film in 645 back 1"))
                .findFirst()
                .orElseThrow();
        assertTrue(film.entries().stream().anyMatch(it -> it.typed().equals("Space"))
                && film.entries().stream().anyMatch(it -> it.word().equals("unload")));
    }

    @ParameterizedTest(name = "looking for \"{0}\" finds {1}, and Enter puts \"{2}\" on the prompt")
    @CsvSource(
            delimiter = '|',
            value = {
                "fogged | lost 7 | lost",
                "tripod | tripod on | tripod",
                "darkroom | 0 | darkroom",
                "yello | filter yellow and nd0.9 | filter",
                "hand-hel | tripod on | tripod"
            })
    void typingLooksForAnEntryAndEnterRunsTheFirst(String wanted, String found, String prompt) {
        Playing day = seven().press(Key.Name.F1).type(wanted);
        List<HelpList.Entry> entries = HelpList.of(day.shoot()).entries();
        if (found.equals("0")) {
            assertEquals(0, entries.size());
        } else {
            assertEquals(found, entries.get(0).typed());
        }
        assertEquals(prompt, day.press(ENTER).prompt().strip());
    }

    @ParameterizedTest(name = "help finds something for {0}")
    @ValueSource(
            strings = {
                "spot",
                "zone",
                "wrong",
                "speed",
                "iso",
                "incident",
                "copy",
                "export",
                "label",
                "order",
                "print",
                "digital",
                "flash",
                "filter",
                "push",
                "undo",
                "plan"
            })
    void whatPeopleLookForIsFound(String wanted) {
        Playing day = seven().press(Key.Name.F1).type(wanted);
        List<HelpList.Entry> entries = HelpList.of(day.shoot()).entries();
        assertTrue(!entries.isEmpty(), wanted);
        // A key of the prompt would be a poor answer to all of them.
        assertTrue(entries.stream().anyMatch(it -> it.key().isEmpty()), wanted + ": " + entries);
    }

    /** Each with what it must lead to; words of the trade and of computers that stand in no form. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "exif, takeup scans 7 --sidecars=full",
        "metadata, takeup scans 7 --sidecars=full",
        "xmp, takeup scans 7 --sidecars=full",
        "sidecar, takeup scans 7 --sidecars=full",
        "backup, takeup paths",
        "usb, takeup paths",
        "save, takeup paths",
        "settings, takeup paths",
        "second folder, takeup paths",
        "restore, undo",
        "rename, fix",
        "delete, drop",
        "remove, drop",
        "digitise, scans",
        "contact, order",
        "contact sheet, order",
        "pdf, order",
        "grey card, m",
        "gray, m",
        "sunny, m",
        "weather, m",
        "moon, m",
        "light meter, m",
        "sunset, plan",
        "sunrise, plan",
        "golden hour, plan",
        "blue hour, plan",
        "gps, place",
        "location, place",
        "flash sync, flash",
        "sync, flash",
        "double exposure, double",
        "multiple exposure, double",
        "long exposure, time",
        "reciprocity, time",
        "depth of field, sharp",
        "hyperfocal, sharp",
        "focus, sharp",
        "polariser, filter",
        "macro, tube",
        "bellows, ext",
        "handheld, tripod",
        "shake, tripod",
        "dark slide, lost",
        "light leak, lost",
        "x-ray, condition",
        "airport, condition",
        "expired, bag",
        "price, bag",
        "money, cost",
        "search, find",
        "keyword, find",
        "people, with",
        "rangefinder, cam",
        "half frame, cam",
        "compensation, bias",
        "colour, theme",
        "statistics, takeup review"
    })
    void whatIsCalledOtherwiseElsewhereIsFound(String wanted, String leadsTo) {
        Playing day = seven().press(Key.Name.F1).type(wanted);
        List<HelpList.Entry> entries = HelpList.of(day.shoot()).entries();
        assertTrue(
                entries.stream()
                        .anyMatch(it -> it.word().equals(leadsTo) || it.typed().equals(leadsTo)),
                wanted + ": " + entries);
    }

    @Test
    void whatIsMeantButCalledOtherwiseIsFoundBehindItsName() {
        Playing day = seven().press(Key.Name.F1).type("wrong");
        assertTrue(HelpList.of(day.shoot()).entries().stream()
                .anyMatch(it -> it.word().equals("fix")));
        day = seven().press(Key.Name.F1).type("spot");
        assertEquals("m", HelpList.of(day.shoot()).entries().get(0).word());
        assertEquals("Help: \"spot\"", HelpList.of(day.shoot()).title(), "in plain characters too");
    }

    @Test
    void helpOnAWordShowsItsFormsAndEnterTakesOne() {
        Playing day = Playing.medium("help m");
        assertEquals(Session.Page.HELP, day.page());
        HelpList list = HelpList.of(day.shoot());
        assertEquals("Help: m", list.title());
        assertTrue(list.entries().stream()
                .anyMatch(it -> it.typed().equals("m spot 9.3 z3") && it.does().contains("zone III")));
        day.press(Key.Name.DOWN).press(Key.Name.DOWN).press(ENTER);
        assertEquals("m 5.6.3 125", day.prompt());
        assertEquals(Session.Page.SHOOT, day.page());
    }

    @Test
    void helpGoesBackToTheViewItWasAskedFrom() {
        Playing day = Playing.medium("4 125").press(Key.Name.F2).press(Key.Name.F1);
        assertEquals("Help for the view of frames", HelpList.of(day.shoot()).title());
        assertEquals(Session.Page.FRAMES, day.press(Key.Name.ESCAPE).page());
        assertEquals(
                Session.Page.FRAMES, day.press(Key.Name.F1).press(Key.Name.F1).page());
        assertEquals(Session.Page.SHOOT, day.press(Key.Name.ESCAPE).page());
    }

    @Test
    void theWordsOfHelpReadAsSentences() {
        assertEquals(
                "tube: what is added to the lens. Type \"tube 30mm\", what is added to the lens; \"tube off\", none.",
                Shooting.of().type("help tube"));
        assertEquals(
                "drop: frame 7 never happened; later ones are renumbered. Type \"drop 7\", frame 7 never "
                        + "happened; later ones are renumbered; \"drop r2 7\", the same on another roll.",
                Shooting.of().type("help drop"));
        assertEquals(
                "say: the state in words. For example \"say\".", Shooting.of().type("help say"));
    }

    /** A day on which every word but load, yes and redo can be typed. */
    private static Playing day() {
        return Playing.two("m 5.6 125", "4 125 x8", "slate");
    }

    private static Playing on(Session.Page page, Playing day) {
        return page == Session.Page.SHOOT ? day : day.press(Playing.keyTo(page));
    }

    private static Playing chosen(Playing day, int entry) {
        day.press(Key.Name.F1);
        for (int i = 0; i <= entry; i++) {
            day.press(Key.Name.DOWN);
        }
        assertEquals(entry, day.shoot().view().chosen());
        return day;
    }

    /** What is in the middle of the window is highlighted, so each page begins where the last one ended, or before. */
    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"80,24", "40,12", "120,40"})
    void spaceTurnsAPageAndSkipsNothing(int columns, int rows) {
        Window window = new Window(columns, rows);
        Playing day = Playing.two("m 5.6 125", "4 125").press(Key.typed("?")).in(columns, rows);
        HelpLines lines = HelpLines.of(HelpList.of(day.shoot()).parts(), window.room());
        int seen = window.listRows();
        int first = 0;
        for (int pages = 0; first + seen < lines.lines().size(); pages++) {
            day.press(Key.typed(" "));
            int next = Math.min(
                    lines.start(day.shoot().view().chosen()) - seen / 2,
                    lines.lines().size() - seen);
            assertTrue(next > first && next <= first + seen, first + " then " + next);
            first = next;
            assertTrue(pages < 1 + lines.lines().size() / (seen / 2), "the end is reached");
        }
    }

    @Test
    void aPartFoldsToItsTitleAndUnfolds() {
        Playing day = Playing.two("m 5.6 125", "4 125").press(Key.typed("?")).press(Key.Name.DOWN);
        int all = HelpList.of(day.shoot()).entries().size();
        day.press(Key.of(Key.Name.LEFT));
        HelpList.Section keys = HelpList.of(day.shoot()).sections().get(0);
        assertEquals(1, keys.entries().size());
        assertTrue(keys.entries().get(0).typed().startsWith("+ Keys that work now ("));
        assertEquals(0, day.shoot().view().chosen());
        day.press(Key.of(Key.Name.LEFT));
        assertEquals(
                HelpList.of(day.shoot()).sections().size(),
                HelpList.of(day.shoot()).entries().size(),
                "once more folds all parts");
        day.press(Key.of(Key.Name.DOWN), ENTER);
        assertTrue(HelpList.of(day.shoot()).sections().get(1).entries().size() > 20, "Enter unfolds one");
        assertEquals(Session.Page.HELP, day.page());
        day.type("zone");
        assertTrue(
                HelpList.of(day.shoot()).entries().stream()
                        .anyMatch(it -> it.word().equals("m")),
                "what is folded is found all the same");
        day.press(Key.Name.ESCAPE).press(Key.Name.ESCAPE).press(Key.typed("?"));
        assertEquals(all, HelpList.of(day.shoot()).entries().size(), "the next time all is there");
    }
}
