package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import takeup.console.Console;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.message.Key;
import takeup.session.HelpList;
import takeup.session.Playing;
import takeup.session.Session;

/** {@code takeup keys --json} and the help of each view name the same keys and words. */
class KeysSubcommandTest {
    @ParameterizedTest(name = "help on {0} lists its keys, none more and none less")
    @EnumSource(
            value = Session.Page.class,
            names = {"HELP", "ACTIONS"},
            mode = EnumSource.Mode.EXCLUDE)
    void helpListsTheKeysOfItsView(Session.Page page) {
        String view = page.name().toLowerCase(Locale.ROOT);
        TreeSet<String> told = new TreeSet<>();
        for (Json.Obj key : list("keys")) {
            if (((Json.Arr) key.fields().get("views")).items().stream().anyMatch(it -> text(it).equals(view))) {
                told.add(
                        text(key.fields().get("key")) + ": " + text(key.fields().get("does")));
            }
        }
        TreeSet<String> shown = new TreeSet<>();
        help(page).stream().filter(it -> it.key().isPresent()).forEach(it -> shown.add(it.typed() + ": " + it.does()));
        assertEquals(told, shown);
    }

    @Test
    void helpListsEachWordOnceWithItsExample() {
        List<String> told = new ArrayList<>();
        list("words")
                .forEach(it -> told.add(
                        text(it.fields().get("word")) + ": " + text(it.fields().get("example"))));
        List<String> shown = new ArrayList<>();
        help(Session.Page.SHOOT).stream()
                .filter(it -> it.key().isEmpty())
                .forEach(it -> shown.add(it.word() + ": " + it.typed()));
        assertEquals(new TreeSet<>(told), new TreeSet<>(shown));
        assertEquals(told.size(), shown.size());
    }

    @Test
    void aWordIsToldWithItsFormAndWhatItDoes() {
        for (Json.Obj word : list("words")) {
            String name = text(word.fields().get("word"));
            assertTrue(text(word.fields().get("usage")).startsWith(name), word.toString());
            assertFalse(text(word.fields().get("does")).isBlank(), word.toString());
        }
    }

    /** The word that does the same as a key stands beside it, and is one of the words. */
    @Test
    void aKeyNamesTheWordThatDoesTheSame() {
        TreeSet<String> words = new TreeSet<>();
        list("words").forEach(it -> words.add(text(it.fields().get("word"))));
        TreeSet<String> named = new TreeSet<>();
        for (Json.Obj key : list("keys")) {
            if (key.fields().get("word") instanceof Json.Text word) {
                named.add(text(key.fields().get("key")) + " " + word.value());
                assertTrue(words.contains(word.value()), word.value());
            }
        }
        assertTrue(
                named.containsAll(List.of("Space .", "Tab cam", "Ctrl-Z undo", "F2 frames", "F9 theme")),
                named::toString);
    }

    private static List<HelpList.Entry> help(Session.Page page) {
        Playing day = Playing.medium("4 125");
        if (page != Session.Page.SHOOT) {
            day.press(Key.of(page == Session.Page.FRAMES ? Key.Name.F2 : Key.Name.F3));
        }
        return HelpList.of(day.press(Key.of(Key.Name.F1)).shoot()).entries();
    }

    private static List<Json.Obj> list(String name) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(0, Subcommands.run(new String[] {"keys", "--json"}, new Console(out, out, Map.of())));
        try {
            return ((Json.Arr) ((Json.Obj) JsonText.read(out.toString(StandardCharsets.UTF_8)))
                            .fields()
                            .get(name))
                    .items().stream().map(it -> (Json.Obj) it).toList();
        } catch (JsonText.NotJson e) {
            throw new AssertionError(e);
        }
    }

    private static String text(Json json) {
        return ((Json.Text) json).value();
    }
}
