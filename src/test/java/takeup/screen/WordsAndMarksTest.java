package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.dispatch.ThemeCommand;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Theme;
import takeup.message.Key;
import takeup.session.Playing;
import takeup.session.Playing.Disk;
import takeup.session.Session;
import takeup.terminal.Painter;

/** Whoever sees no colour misses nothing: each state is a word or a mark too. */
class WordsAndMarksTest {
    static List<String> moments() {
        return States.names();
    }

    @ParameterizedTest(name = "{0}: the same letters reach the terminal in every theme")
    @MethodSource("moments")
    void everyThemeSaysTheSame(String moment) throws IOException {
        Set<String> said = new HashSet<>();
        for (String name : ThemeCommand.THEMES) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            new Painter(
                            out,
                            ColourDepth.TRUE,
                            CharacterSet.UNICODE,
                            Theme.named(name).orElseThrow())
                    .show(Screen.render(States.of(moment), 80, 24));
            said.add(out.toString(StandardCharsets.UTF_8)
                    .replaceAll("\u001b\\[[0-9;]*m", "")
                    .replaceAll("\u001b\\[[0-9;?]*[A-Za-z]", "")
                    .strip());
        }
        assertEquals(1, said.size());
    }

    @Test
    void theHighlightedSuggestionStandsInBrackets() {
        Playing day = Playing.medium("m 5.6 125");
        assertTrue(!text(day.shoot()).contains("["));
        String pair = day.press(Key.of(Key.Name.DOWN))
                .shoot()
                .advice()
                .orElseThrow()
                .suggestions()
                .get(day.shoot().view().chosen())
                .aperture()
                .toString();
        assertTrue(text(day.shoot()).contains("[" + pair), text(day.shoot()));
        assertTrue(text(day.shoot()).contains("]"));
    }

    @Test
    void aRefusalAndAnAnswerBeginDifferently() {
        assertTrue(text(Playing.medium().lines("8 11").shoot()).contains("\n! "), "a refusal has its mark");
        assertTrue(!text(Playing.medium().lines("4 125").shoot()).contains("\n! "), "an answer has none");
    }

    @Test
    void theNextFrameIsPointedAtInTheStrip() {
        String strip = text(Playing.medium("m 5.6 125", "4 125 x3").shoot())
                .lines()
                .filter(it -> it.startsWith("│"))
                .skip(1)
                .findFirst()
                .orElseThrow();
        assertTrue(strip.matches("│[▁▂▃▄▅▆▇█]+ [▁▂▃▄▅▆▇█]+ [▁▂▃▄▅▆▇█]+ +◇ +·.*"), strip);
    }

    /** Thin, blank, lost, unlogged, exposed without light, not exposed: six signs. */
    @Test
    void eachKindOfFrameHasItsOwnSignInTheStrip() {
        String text =
                text(Playing.medium("4 125 x3", "blank", "unlogged", "lost 2").shoot());
        for (String sign : List.of("▪", "×", "–", "▫", "·", "◇")) {
            assertTrue(
                    text.lines().filter(it -> it.startsWith("│")).anyMatch(it -> it.contains(sign)),
                    sign + " is missing:\n" + text);
        }
    }

    @Test
    void savedSavingAndNotSavedAreThreeTexts() {
        Set<String> texts = new HashSet<>();
        for (Disk disk : List.of(Disk.SLOW, Disk.FULL)) {
            texts.add(text(Playing.medium("4 125").disk(disk).space().shoot()));
        }
        texts.add(text(Playing.medium("4 125").space().shoot()));
        assertEquals(3, texts.size());
    }

    @Test
    void aSumBeyondTheFilmIsWrittenInCapitals() {
        assertTrue(text(Playing.medium("m 5.6 125", "set 16 500").shoot()).contains("THIN"));
        assertTrue(text(Playing.medium("m 5.6 125", "set 2.8 8").shoot()).contains("DENSE"));
        String right = text(Playing.medium("m 5.6 125", "set 5.6 125").shoot());
        assertTrue(
                right.contains("thin")
                        && right.contains("dense")
                        && !right.contains("THIN")
                        && !right.contains("DENSE"),
                right);
    }

    @Test
    void aFrameWithAWarningHasTheWordsOfItInTheList() {
        Playing day = Playing.medium("m 5.6 125", "5.6 125", "11 500");
        List<String> rows = text(day.press(Key.of(Key.Name.F2)).shoot())
                .lines()
                .filter(it -> it.contains("f/"))
                .toList();
        assertTrue(rows.get(0).contains("thin"), rows.toString());
        assertNotEquals(rows.get(0).contains("thin"), rows.get(1).contains("thin"));
    }

    private static String text(Session shoot) {
        return "\n" + Screen.render(shoot, 80, 24).text();
    }
}
