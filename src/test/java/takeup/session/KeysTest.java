package takeup.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.dispatch.CommandTable;
import takeup.dispatch.ThemeCommand;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.grid.Theme;
import takeup.kit.Suggestion;
import takeup.kit.Warning;
import takeup.message.Effect;
import takeup.message.Key;
import takeup.message.Message;
import takeup.prompt.PromptLine;
import takeup.screen.Screen;

/** The one table of keys: each key does what it says, or says why it cannot. */
class KeysTest {
    /**
     * Situations that differ in what a key can do: nothing there at all, one camera, two, light, a long roll, other
     * rolls.
     */
    private static List<Supplier<Playing>> situations() {
        return List.of(
                Playing::of,
                () -> Playing.of("cam 645"),
                () -> Playing.medium(),
                () -> Playing.medium("4 125 x16"),
                () -> Playing.two("m 5.6 125", "4 125 x12"),
                () -> Playing.two("4 125", "m ev8", "hold f2.8", "unload"),
                () -> Playing.of("cam compact", "load cn400", "."),
                () -> Playing.medium("m 5.6 125", "4 125").restartReadOnly());
    }

    static List<KeyBinding> bindings() {
        return KeyBindings.ALL;
    }

    @ParameterizedTest(name = "{0} does something or says why not, wherever it works")
    @MethodSource("bindings")
    void noKeyIsDead(KeyBinding binding) {
        int taken = 0;
        for (Supplier<Playing> situation : situations()) {
            for (Session.Page page : Session.Page.values()) {
                for (String typed : new String[] {"", "; bow seat"}) {
                    Playing day = on(page, situation.get());
                    if (day.page() != page) {
                        continue;
                    }
                    if (page != Session.Page.ACTIONS) {
                        day.type("; first")
                                .press(Key.Name.ESCAPE)
                                .type("; second")
                                .press(Key.Name.ESCAPE)
                                .type(typed);
                    }
                    if (!typed.isEmpty()) {
                        day.press(Key.Name.LEFT).press(Key.Name.LEFT);
                    }
                    if (binding.when() == KeyBinding.When.QUESTIONED && typed.isEmpty()) {
                        day.lines("unload");
                    }
                    day.send(new Message.Notice(""));
                    if (!KeyBindings.of(binding.key(), day.shoot()).equals(Optional.of(binding))) {
                        continue;
                    }
                    taken++;
                    Session before = day.shoot();
                    int asked = day.seen().size();
                    day.press(binding.key()).pass(200);
                    boolean changed = !looks(before).equals(looks(day.shoot()))
                            || asked < day.seen().size();
                    boolean isAtAnEnd = page != Session.Page.SHOOT
                            && before.view().scroll() == day.shoot().view().scroll()
                            && binding.description()
                                    .matches(".*(line|page) (up|down)|next page|to the (first|last) row");
                    assertTrue(
                            changed || isAtAnEnd,
                            binding.key() + " on " + page + " with \"" + typed + "\": nothing happens");
                }
            }
        }
        assertTrue(taken > 0, "the binding is reached somewhere");
    }

    private record Looks(PromptLine prompt, LastAnswer said, View view, SaveQueue ledger) {}

    private static Looks looks(Session shoot) {
        return new Looks(shoot.prompt(), shoot.lastAnswer(), shoot.view(), shoot.saveQueue());
    }

    /** Every key of the table, and some that stand in none, from every situation on every page: nothing throws. */
    @Test
    void anyTwoKeysInARowAreTakenOnEveryPage() {
        Set<Key> keys =
                new HashSet<>(KeyBindings.ALL.stream().map(KeyBinding::key).toList());
        for (Key.Name name : Key.Name.values()) {
            if (name != Key.Name.CHARACTER && name != Key.Name.CTRL && name != Key.Name.ALT) {
                keys.add(Key.of(name));
            }
        }
        keys.addAll(
                List.of(Key.typed("4"), Key.typed(";"), new Key(Key.Name.ALT, "x"), Key.ctrl('g'), Key.pasted("4\n8")));
        for (Supplier<Playing> situation : situations()) {
            Playing start = situation.get();
            for (Session.Page page : Session.Page.values()) {
                Playing day = on(page, start);
                for (Key first : keys) {
                    for (Key second : keys) {
                        Session after = Update.update(
                                        Update.update(
                                                        day.shoot(),
                                                        new Message.Pressed(first, day.now(), day.ticks() + 100))
                                                .session(),
                                        new Message.Pressed(second, day.now(), day.ticks() + 200))
                                .session();
                        assertTrue(
                                after.prompt().cursor() <= after.prompt().text().length());
                    }
                }
            }
        }
    }

    @Test
    void aKeyStandsOnceForAPageAndAPrompt() {
        Set<String> places = new HashSet<>();
        for (KeyBinding binding : KeyBindings.ALL) {
            for (Session.Page page : binding.pages()) {
                for (KeyBinding.When when : binding.when() == KeyBinding.When.ALWAYS
                        ? new KeyBinding.When[] {KeyBinding.When.EMPTY, KeyBinding.When.TYPED}
                        : new KeyBinding.When[] {binding.when()}) {
                    assertTrue(
                            places.add(binding.key() + " " + page + " " + when),
                            binding.key() + " is there twice on " + page);
                }
            }
        }
    }

    @Test
    void noUnmodifiedKeyIsSaidToRemoveALoggedFrame() {
        for (KeyBinding binding : KeyBindings.ALL) {
            if (binding.key().name() != Key.Name.CTRL) {
                Playing day = Playing.medium("m 5.6 125", "4 125 x3");
                day.press(binding.key()).press(binding.key()).pass(500);
                assertTrue(day.allFrames() >= 3, binding.key().toString());
            }
        }
    }

    @Test
    void whatAKeyNeedsItsWordNeeds() {
        for (Playing day :
                List.of(Playing.of(), Playing.medium(), Playing.medium("4 125"), Playing.medium("4 125", "undo"))) {
            for (Key key : List.of(Key.ctrl('z'), Key.ctrl('y'))) {
                KeyBinding binding = KeyBindings.of(key, day.shoot()).orElseThrow();
                assertEquals(
                        HelpList.whyNot(CommandTable.find(binding.word()).orElseThrow(), day.shoot()),
                        KeyObstacle.of(binding.action(), day.shoot()),
                        binding.word());
            }
        }
    }

    @Test
    void whatHasAWordDoesTheSameByItsWord() {
        for (KeyBinding binding : KeyBindings.ALL) {
            if (!binding.word().isEmpty()) {
                assertTrue(
                        binding.word().equals(".")
                                || CommandTable.find(binding.word()).isPresent(),
                        binding.word() + " is a word of the prompt");
            }
        }
        for (Key.Name name : List.of(Key.Name.F1, Key.Name.F2, Key.Name.F3, Key.Name.F9, Key.Name.F10)) {
            String word = KeyBindings.ALL.stream()
                    .filter(it -> it.key().equals(Key.of(name)))
                    .findFirst()
                    .orElseThrow()
                    .word();
            assertEquals(
                    Playing.medium("4 125").press(name).shoot().view(),
                    Playing.medium("4 125").lines(word).shoot().view(),
                    name + " and " + word);
        }
    }

    @Test
    void helpAndTheFooterReadTheSameTable() {
        Session shoot = Playing.medium("4 125").shoot();
        assertEquals(KeyBindings.ALL.size(), KeyHelp.all().size());
        List<String> now = KeyHelp.now(shoot, it -> true);
        List<String> all = KeyHelp.all().stream().map(KeyHelp::key).toList();
        assertTrue(all.containsAll(now), now.toString());
        assertTrue(now.contains("Space"));
        assertFalse(now.contains("Tab"), "one camera only: Tab cannot act");
        assertEquals(List.of("Space"), KeyHelp.now(shoot, "Space"::equals));
        KeyAction tab =
                KeyBindings.of(Key.of(Key.Name.TAB), shoot).orElseThrow().action();
        assertTrue(KeyObstacle.of(tab, shoot).isPresent());
        assertFalse(KeyHelp.now(Playing.of().shoot(), it -> true).contains("Space"));
    }

    @Test
    void tabGoesRoundThePlacesInUseAndShiftTabTheOtherWay() {
        Playing day = Playing.of("cam 35", "load bw400", "cam 645", "load cn400", "cam 645 2", "load bw100");
        List<String> round = new ArrayList<>(List.of(day.camera()));
        for (int i = 0; i < 3; i++) {
            round.add(day.press(Key.Name.TAB).camera());
        }
        assertEquals(List.of("645 back 2", "35", "645 back 1", "645 back 2"), round);
        assertEquals("645 back 1", day.press(Key.Name.SHIFT_TAB).camera());
        assertEquals("35", day.press(Key.Name.SHIFT_TAB).camera());
        assertTrue(day.said().contains("R0001"), day.said());
    }

    @Test
    void tabSaysWhyNotWhereThereIsOnlyOne() {
        Playing day = Playing.medium().press(Key.Name.TAB);
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertTrue(day.said().contains("one camera"), day.said());
        assertTrue(Playing.of().press(Key.Name.TAB).said().contains("no camera"));
    }

    @Test
    void aCameraThatWasUsedYesterdayAndIsEmptyIsNotInUseToday() {
        Playing day =
                Playing.of("cam 35", "cam 645", "load cn400").later(24 * 60).press(Key.Name.TAB);
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertEquals("645 back 1", day.camera());
        day = Playing.two().later(24 * 60).press(Key.Name.TAB);
        assertEquals("35", day.camera());
    }

    @Test
    void upAndDownMoveAHighlightThatEnterTakes() {
        Playing day = Playing.medium("m 5.6 125").press(Key.Name.DOWN);
        assertEquals(day.shoot().bestChoice(), day.shoot().view().chosen());
        day.press(Key.Name.UP);
        assertEquals(day.shoot().bestChoice() - 1, day.shoot().view().chosen());
        String row = day.shoot().highlighted().orElseThrow().aperture() + " "
                + day.shoot().highlighted().orElseThrow().time().orElseThrow();
        assertTrue(day.said().contains("Enter sets " + row), day.said());
        day.press(Key.Name.ENTER);
        assertEquals(row, day.pair());
        assertEquals(0, day.frames());
        assertEquals(-1, day.shoot().view().chosen());
        for (int i = 0; i < 99; i++) {
            day.press(Key.Name.DOWN);
        }
        assertEquals(day.shoot().choices().size() - 1, day.shoot().view().chosen());
    }

    @Test
    void withoutALightOrAFilmTheArrowsSayWhyNot() {
        assertTrue(Playing.medium("4 125").press(Key.Name.DOWN).said().contains("no suggestions yet"));
        assertTrue(Playing.of("cam 645", "m 5.6 125").press(Key.Name.UP).said().contains("load"));
    }

    @ParameterizedTest(name = "{0} takes the highlight away")
    @CsvSource({"TAB", "ESCAPE", "F2", "F10", "UNDO", "TYPED", "RECALLED"})
    void theHighlightDoesNotOutliveWhatItWasSetOn(String how) {
        Playing day =
                Playing.two("m 5.6 125", "8 60", "m 8 60").press(Key.Name.DOWN).press(Key.Name.DOWN);
        assertNotEquals(-1, day.shoot().view().chosen());
        day.press(
                switch (how) {
                    case "UNDO" -> Key.ctrl('z');
                    case "TYPED" -> Key.typed("4");
                    case "RECALLED" -> Key.of(Key.Name.PAGE_UP);
                    default -> Key.of(Key.Name.valueOf(how));
                });
        assertFalse(day.shoot().view().isChosen());
    }

    @ParameterizedTest(name = "on {0} Enter acts on the first row, and it is marked before any arrow")
    @CsvSource({"F2, 2  15:00", "F3, R0002", "F4, 16:30", "F5, 120", "F6, R0001"})
    void theRowThatEnterActsOnIsMarkedFromTheStart(Key.Name key, String words) {
        Playing day = Playing.medium("4 125 x2", "plan 16:30 Start wants 2", "plan 17:00 Prizes wants 2");
        day.lines("bag add 3 bw100 120", "bag add 2 cn400 120", "cam 35", "load bw400", "cam 645")
                .press(key)
                .pass(10);
        assertEquals(0, day.shoot().view().chosen());
        Grid grid = Screen.render(day.shoot(), 80, 24);
        List<String> marked = new ArrayList<>();
        String[] rows = grid.text().split("\n");
        for (int row = 0; row < rows.length; row++) {
            if (grid.role(2, row) == TextRole.CHOSEN) {
                marked.add(rows[row]);
            }
        }
        assertTrue(!marked.isEmpty() && marked.get(0).contains(words), marked + " in\n" + grid);
        assertFalse(day.shoot().view().isChosen());
        assertTrue(day.press(Key.Name.DOWN).shoot().view().isChosen() || key == Key.Name.F6);
    }

    @Test
    void theLightOfALaterAnswerTakesTheHighlightAway() {
        Playing day = Playing.medium("m 5.6 125")
                .disk(Playing.Disk.SLOW)
                .lines("m 11 250")
                .press(Key.Name.DOWN)
                .press(Key.Name.DOWN);
        day.disk(Playing.Disk.WELL);
        assertEquals(-1, day.shoot().view().chosen());
    }

    @Test
    void escComesBackFromEverywhereAndF1ToF5GoThereAndBack() {
        for (Key.Name name : List.of(Key.Name.F1, Key.Name.F2, Key.Name.F3, Key.Name.F4, Key.Name.F5)) {
            Playing day = Playing.medium("4 125").press(name);
            assertNotEquals(Session.Page.SHOOT, day.page(), name.toString());
            assertEquals(Session.Page.SHOOT, day.press(Key.Name.ESCAPE).page());
            day.press(name).press(name);
            assertEquals(Session.Page.SHOOT, day.page(), name.toString());
        }
        assertEquals(Session.Page.HELP, Playing.of().type("?").page());
        assertEquals(Session.Page.SHOOT, Playing.of().type("?").type("?").page());
        assertEquals("4 ?", Playing.medium().type("4 ?").prompt());
    }

    @Test
    void aWordForAViewShowsItAlsoWhereItIsShownAlready() {
        assertEquals(
                Session.Page.FRAMES, Playing.medium("4 125", "frames", "frames").page());
        assertEquals(Session.Page.HELP, Playing.medium("help", "help").page());
        assertEquals(Session.Page.SHOOT, Playing.medium("rolls", "shoot").page());
    }

    @Test
    void theListOfRollsIsAskedForAndShown() {
        Playing day =
                Playing.medium("4 125", "unload yes", "load bw400").restart().press(Key.Name.F3);
        assertEquals(
                List.of("R0001", "R0002"),
                day.shoot().allRolls().stream().map(it -> it.id().toString()).toList());
    }

    @Test
    void f8FindsFramesOfAnyRollAndGoesBack() {
        Playing day = Playing.medium("4 125 ; bow seat", "unload yes", "load bw400", "8 60")
                .press(Key.Name.F8);
        assertEquals(Session.Page.FIND, day.page());
        assertEquals("find ", day.prompt());
        day.type("bow").press(Key.Name.ENTER);
        assertEquals(Session.Page.FIND, day.page());
        assertEquals(
                "1 frame on 1 roll", day.shoot().view().found().orElseThrow().count());
        assertEquals("", day.prompt());
        assertEquals(Session.Page.SHOOT, day.press(Key.Name.ESCAPE).page());
        day.press(Key.Name.F8).press(Key.Name.ESCAPE);
        assertEquals(Session.Page.SHOOT, day.page());
        assertEquals("", day.prompt());
        day.press(Key.Name.F8).press(Key.Name.F8);
        assertEquals(Session.Page.SHOOT, day.page());
        assertEquals("", day.prompt());
        assertEquals(
                "No frame meets all of: f2.8",
                day.lines("find f2.8").shoot().view().found().orElseThrow().count());
        assertTrue(day.lines("find since may").said().contains("since takes a date"), day.said());
    }

    @Test
    void f10FillsTheScreenWithTheCounterWhereSpaceStillLogs() {
        Playing day = Playing.medium("4 125").press(Key.Name.F10);
        assertTrue(day.shoot().view().big());
        assertEquals(2, day.space().frames());
        assertTrue(day.shoot().view().big());
        assertFalse(day.press(Key.Name.ESCAPE).shoot().view().big());
        assertTrue(day.press(Key.Name.F2).press(Key.Name.F10).shoot().view().big());
        assertFalse(day.press(Key.Name.F10).shoot().view().big());
    }

    @Test
    void f9GoesRoundTheThemesAndAnUnknownOneIsRefusedAndStays() {
        Playing day = Playing.of();
        List<String> round = new ArrayList<>();
        for (int i = 0; i < ThemeCommand.THEMES.size(); i++) {
            round.add(day.press(Key.Name.F9).shoot().view().theme());
        }
        assertEquals(new HashSet<>(ThemeCommand.THEMES), new HashSet<>(round));
        assertEquals("dark", day.shoot().view().theme());
        assertEquals("mono", day.lines("theme mono").shoot().view().theme());
        day.lines("theme neon");
        assertEquals("mono", day.shoot().view().theme());
        assertEquals(LastAnswer.Tone.REFUSAL, day.tone());
        assertEquals("theme neon", day.prompt());
    }

    @Test
    void theThemesOfTheWordAreThoseThatCanBeDrawn() {
        ThemeCommand.THEMES.forEach(
                it -> assertEquals(it, Theme.named(it).orElseThrow().name()));
    }

    @Test
    void theHighlightOfAListGoesToItsLastRowAndBackUpAtOnce() {
        Playing day = Playing.medium("4 125 x9").press(Key.Name.F2);
        for (int i = 0; i < 50; i++) {
            day.press(Key.Name.PAGE_DOWN);
        }
        assertEquals(8, day.shoot().view().chosen());
        assertEquals(7, day.press(Key.Name.UP).shoot().view().chosen());
        for (int i = 0; i < 50; i++) {
            day.press(Key.Name.UP);
        }
        assertEquals(0, day.shoot().view().chosen());
        assertEquals(8, day.press(Key.Name.END).shoot().view().chosen());
        assertEquals(0, day.press(Key.Name.HOME).shoot().view().chosen());
    }

    @Test
    void inHelpASearchCanBeScrolledAndANewOneBeginsAtTheTop() {
        Playing day =
                Playing.of().press(Key.Name.F1).type("o").press(Key.Name.DOWN).press(Key.Name.DOWN);
        assertEquals(1, day.shoot().view().chosen());
        assertEquals(-1, day.type("n").shoot().view().chosen());
    }

    @Test
    void aLineEnteredOnAListIsDoneAndSpeaksOnTheScreenItBelongsTo() {
        Playing day = Playing.medium("4 125").press(Key.Name.F1).lines("8 250");
        assertEquals(2, day.frames());
        assertEquals(Session.Page.SHOOT, day.page());
        assertEquals(
                Session.Page.FRAMES, day.press(Key.Name.F2).lines("fix 1 5.6").page());
    }

    @Test
    void ctrlLPaintsAfresh() {
        assertTrue(Playing.of().press(Key.ctrl('l')).seen().get(0) instanceof Effect.Repaint);
    }

    /** A dial that ends at 1/1000: f/2.8 at 1/4000 cannot be set, and is what the meter said. */
    @Test
    void theMetersOwnPairStaysAmongTheSuggestionsThoughTheShutterCannotDoIt() {
        Playing day = Playing.medium("m 2.8 4000");
        List<Suggestion> rows = day.shoot().advice().orElseThrow().suggestions();
        assertTrue(
                rows.stream()
                        .anyMatch(it -> it.aperture().toString().equals("f/2.8") && it.has(Warning.Code.OUT_OF_RANGE)),
                rows.toString());
        assertEquals(
                1, rows.stream().filter(it -> it.has(Warning.Code.OUT_OF_RANGE)).count(), "and no other such row");
    }

    @Test
    void aResizedTerminalChangesNothing() {
        Playing day = Playing.medium("4 125").type("8 2");
        Session before = day.shoot();
        assertEquals(before, day.send(new Message.Resized()).shoot());
    }

    private static Playing on(Session.Page page, Playing day) {
        return page == Session.Page.SHOOT ? day : day.press(Key.Name.ESCAPE).press(Playing.keyTo(page));
    }
}
