package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.dispatch.ThemeCommand;
import takeup.grid.Colour;
import takeup.grid.ColourDepth;
import takeup.grid.ColourVision;
import takeup.grid.Contrast;
import takeup.grid.Style;
import takeup.grid.TextRole;
import takeup.grid.Theme;
import takeup.terminal.ThemeSample;

class ThemeTest {
    private static final Set<TextRole> AFAR = EnumSet.of(TextRole.READOUT, TextRole.CAUTION, TextRole.ALARM);

    /**
     * The sixteen colours of xterm, as its resource file XTerm-color gives them; those of Linux are in
     * {@link ColourDepth}.
     */
    private static final int[] XTERM = {
        0x000000, 0xcd0000, 0x00cd00, 0xcdcd00, 0x0000ee, 0xcd00cd, 0x00cdcd, 0xe5e5e5,
        0x7f7f7f, 0xff0000, 0x00ff00, 0xffff00, 0x5c5cff, 0xff00ff, 0x00ffff, 0xffffff
    };

    @ParameterizedTest(name = "{0} with {1} colours: 7:1 for what is read from afar, 4.5:1 for all else")
    @CsvSource({
        "dark, TRUE",
        "dark, INDEXED",
        "dark, SIXTEEN",
        "sun, TRUE",
        "sun, INDEXED",
        "sun, SIXTEEN",
        "night, TRUE",
        "night, INDEXED"
    })
    void everyRoleHasTheContrastThatReadingNeeds(String name, ColourDepth depth) {
        for (TextRole look : TextRole.values()) {
            reads(name, look, depth, AFAR.contains(look) ? 7 : 4.5);
        }
    }

    /** 5.25 is (0.2126 + 0.05) / 0.05, pure red on black: of sixteen colours no red does better on every terminal. */
    @Test
    void nightWithSixteenColoursHasTheContrastOfTheBrightestRed() {
        for (TextRole look : TextRole.values()) {
            reads("night", look, ColourDepth.SIXTEEN, 5.25);
        }
    }

    @Test
    void nightHasNoBlueAtAllAndGreenOnlyWhereItMustBeReadFromAfar() {
        for (TextRole look : TextRole.values()) {
            Style style = theme("night").style(look);
            assertEquals(0, style.foreground().value() & 0xff, look + " has blue in it");
            int green = (style.foreground().value() | style.background().value()) & 0xff00;
            assertEquals(0, style.background().value() & 0xff, look + " has blue in its ground");
            assertTrue(AFAR.contains(look) || green == 0, look + " has green in it");
            assertFalse(style.reverse() && look != TextRole.CURSOR, look + " lights a whole area");
        }
    }

    @Test
    void nightTakesTheLeastGreenWithWhichItCanBeReadFromAfar() {
        int far = theme("night").style(TextRole.READOUT).foreground().value();
        assertTrue(contrast(far, 0) >= 7);
        assertTrue(contrast(far - 0x000100, 0) < 7, "one step less of green would do");
        assertTrue(contrast(0xff0000, 0) < 7, "pure red would do");
    }

    @Test
    void nightTakesTheIndexedColourWithTheLeastGreenThatCanBeReadFromAfar() {
        int chosen = ColourDepth.rgb(theme("night")
                .style(TextRole.READOUT)
                .foreground()
                .at(ColourDepth.INDEXED)
                .value());
        for (int index = 16; index < 256; index++) {
            int other = ColourDepth.rgb(index);
            boolean isDarker = (other >> 8 & 0xff) < (chosen >> 8 & 0xff)
                    || (other >> 8 & 0xff) == (chosen >> 8 & 0xff) && (other & 0xff) < (chosen & 0xff);
            assertFalse(isDarker && contrast(other, 0) >= 7, index + " has less green or blue");
        }
    }

    /**
     * Every role, as each of the three kinds of colour blindness sees it, where brightness must do alone: what is read
     * from afar has 4.5:1, all else 3:1. These limits are our own, one step of WCAG 2.x below those for all eyes.
     */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"dark", "sun", "night"})
    void everyRoleCanBeReadByEveryEye(String name) {
        for (double[][] eye : ColourVision.ALL) {
            for (TextRole look : TextRole.values()) {
                Style style = theme(name).style(look);
                double ratio = ColourVision.contrast(
                        style.foreground().value(), style.background().value(), eye);
                assertTrue(ratio >= (AFAR.contains(look) ? 4.5 : 3), look + " of " + name + " has " + ratio);
            }
        }
    }

    /** On sunlit screens thin strokes go first. */
    @Test
    void sunIsHeavyThroughout() {
        for (TextRole look : TextRole.values()) {
            assertTrue(theme("sun").style(look).bold(), look.name());
        }
    }

    /** Grounds above 7 are not shown by every console, and a terminal swaps only the eight it has. */
    @ParameterizedTest
    @ValueSource(strings = {"dark", "sun", "night"})
    void withSixteenColoursTheGroundIsOneOfTheFirstEight(String name) {
        for (TextRole look : TextRole.values()) {
            Style style = theme(name).style(look);
            assertTrue(style.background().at(ColourDepth.SIXTEEN).value() < 8, look.name());
            assertFalse(style.reverse() && look != TextRole.CURSOR, look.name());
        }
    }

    @Test
    void withSixteenColoursWeightIsNoColourOfItsOwn() {
        assertFalse(
                theme("sun")
                        .style(TextRole.READOUT)
                        .sequence(ColourDepth.SIXTEEN)
                        .startsWith("\u001b[0;1"),
                "bold black is a grey on a console");
        assertTrue(theme("sun")
                .style(TextRole.READOUT)
                .sequence(ColourDepth.INDEXED)
                .startsWith("\u001b[0;1"));
        assertTrue(theme("mono")
                .style(TextRole.READOUT)
                .sequence(ColourDepth.SIXTEEN)
                .startsWith("\u001b[0;1"));
    }

    /**
     * What differs by its hue is told apart by every kind of eye: by 20 or more in CIE 1976 L*a*b*, some nine times the
     * 2.3 that is just noticed. Night has one hue and mono none: there words and marks tell.
     */
    @ParameterizedTest(name = "{0}: {1} and {2}")
    @CsvSource({
        "dark, GOOD, CAUTION",
        "dark, QUIET, CAUTION",
        "dark, NORMAL, CAUTION",
        "dark, CHOSEN, NORMAL",
        "dark, CHOSEN, STRONG",
        "dark, ALARM, NORMAL",
        "dark, ALARM, BAR",
        "dark, FRAME, EMPTY",
        "dark, KEY, BAR",
        "dark, READOUT, LABEL",
        "dark, GOOD, READOUT",
        "sun, GOOD, CAUTION",
        "sun, QUIET, CAUTION",
        "sun, NORMAL, CAUTION",
        "sun, CHOSEN, NORMAL",
        "sun, ALARM, NORMAL",
        "sun, ALARM, BAR",
        "sun, ALARM, CAUTION",
        "sun, CHOSEN, CAUTION"
    })
    void coloursThatTellStatesApartDoSoForEveryEye(String name, TextRole one, TextRole other) {
        for (double[][] eye : ColourVision.ALL) {
            Style a = theme(name).style(one);
            Style b = theme(name).style(other);
            double apart = Math.max(
                    ColourVision.apart(a.foreground().value(), b.foreground().value(), eye),
                    ColourVision.apart(a.background().value(), b.background().value(), eye));
            assertTrue(apart >= 20, one + " and " + other + " are " + apart + " apart");
        }
    }

    /**
     * An alarm and a warning are no matter of hue: their ground is lighter or darker than that of plain text by 20 of
     * 100 in CIE 1976 L*, for every kind of eye, and where there is no colour it is turned round. Twenty is our own
     * limit: no source.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "dark, ALARM",
        "dark, CAUTION",
        "sun, ALARM",
        "sun, CAUTION",
        "night, ALARM",
        "night, CAUTION",
        "mono, ALARM",
        "mono, CAUTION"
    })
    void anAlarmDiffersFromPlainTextByBrightnessOrShapeForEveryEye(String name, TextRole loud) {
        Style plain = theme(name).style(TextRole.NORMAL);
        Style alarm = theme(name).style(loud);
        if (name.equals("mono")) {
            assertTrue(alarm.reverse() && !plain.reverse(), "a plate");
            return;
        }
        for (double[][] eye : ColourVision.ALL) {
            double apart = Math.abs(ColourVision.lightness(alarm.background().value(), eye)
                    - ColourVision.lightness(plain.background().value(), eye));
            assertTrue(apart >= 20, loud + " in " + name + " is a plate of " + apart);
        }
    }

    @Test
    void monoUsesNoColour() {
        for (TextRole look : TextRole.values()) {
            String sequence = theme("mono").style(look).sequence(ColourDepth.TRUE);
            assertFalse(sequence.contains("38;") || sequence.contains("48;"), sequence);
        }
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"dark", "sun", "mono"})
    void theRolesThatCostAFrameWhenMistakenDifferInEveryTheme(String name) {
        Set<Style> styles = new HashSet<>();
        for (TextRole look : EnumSet.of(TextRole.NORMAL, TextRole.CAUTION, TextRole.ALARM, TextRole.CHOSEN)) {
            styles.add(theme(name).style(look));
        }
        assertEquals(4, styles.size());
    }

    @Test
    void eachThemeHasItsOwnNameAndNoOtherIsKnown() {
        for (String name : ThemeCommand.THEMES) {
            assertEquals(name, theme(name).name());
        }
        assertEquals(List.of("dark", "sun", "night", "mono"), ThemeCommand.THEMES);
        assertEquals(Optional.empty(), Theme.named("neon"));
    }

    /** Values from xterm's own list of the 256 colours: 16 black, 21 blue, 208 dark orange, 232 and 255 greys. */
    @Test
    void theColoursOf256AreThoseOfXterm() {
        assertEquals(0x000000, ColourDepth.rgb(16));
        assertEquals(0x0000ff, ColourDepth.rgb(21));
        assertEquals(0xff8700, ColourDepth.rgb(208));
        assertEquals(0x080808, ColourDepth.rgb(232));
        assertEquals(0xeeeeee, ColourDepth.rgb(255));
        assertEquals(208, ColourDepth.INDEXED.nearest(0xff8702));
    }

    @Test
    void aStyleStartsFromNothing() {
        assertEquals(
                "\u001b[0;1;38;2;1;2;3;48;2;4;5;6m",
                Style.of(0x010203, 0x040506).strong().sequence(ColourDepth.TRUE));
        assertEquals(
                "\u001b[0;7;91;40m",
                Style.of(Colour.ansi(9), Colour.ansi(0)).reversed().sequence(ColourDepth.SIXTEEN));
        assertEquals("\u001b[0;4m", Style.of(0x010203, 0x040506).underlined().sequence(ColourDepth.NONE));
        assertEquals(
                "\u001b[0;38;5;203;40m",
                new Style(Colour.rgb(0xff6300, 203, 9), Colour.ansi(0), false, false, false)
                        .sequence(ColourDepth.INDEXED));
    }

    /** White on black is 21:1 by the definition; 0x767676 on white is known as the lightest grey that has 4.5:1. */
    @Test
    void theContrastThatIsPrintedIsThatOfTheStandard() {
        assertEquals(21, Contrast.of(0xffffff, 0x000000), 1e-9);
        assertTrue(Contrast.of(0x767676, 0xffffff) >= 4.5 && Contrast.of(0x777777, 0xffffff) < 4.5);
        for (ThemeSample sample : ThemeSample.of(theme("dark"))) {
            Style style = theme("dark").style(TextRole.valueOf(sample.role().toUpperCase(Locale.ROOT)));
            assertEquals(
                    contrast(style.foreground().value(), style.background().value()),
                    sample.contrast().orElseThrow(),
                    0.01);
        }
    }

    @Test
    void theSamplesSayTheSameInEveryTheme() {
        List<String> said = new ArrayList<>();
        for (String name : ThemeCommand.THEMES) {
            String painted =
                    String.join("\n", ThemeSample.painted(theme(name), Map.of("TERM", "xterm", "LANG", "C.UTF-8")));
            assertTrue(painted.contains("\u001b["), "nothing is painted");
            said.add(painted.replaceAll("\u001b\\[[0-9;]*m", "").replaceAll(" +(\n|$)", "$1"));
        }
        assertEquals(1, new HashSet<>(said).size());
        assertEquals(String.join("\n", ThemeSample.words()), said.get(0));
        assertNotEquals("", said.get(0));
    }

    private static void reads(String name, TextRole look, ColourDepth depth, double least) {
        Style style = theme(name).style(look);
        Colour letters = style.foreground().at(depth);
        Colour ground = style.background().at(depth);
        double contrast = contrast(rgb(letters), rgb(ground));
        assertTrue(contrast >= least, look + " in " + name + " has a contrast of " + contrast);
        if (depth == ColourDepth.SIXTEEN) {
            double inXterm = contrast(XTERM[letters.value()], XTERM[ground.value()]);
            assertTrue(inXterm >= least, look + " in " + name + " has a contrast of " + inXterm + " in xterm");
        }
    }

    private static Theme theme(String name) {
        return Theme.named(name).orElseThrow();
    }

    private static int rgb(Colour colour) {
        return colour.kind() == Colour.Kind.RGB ? colour.value() : ColourDepth.rgb(colour.value());
    }

    /**
     * Contrast ratio: WCAG 2.1, definitions, "contrast ratio" and "relative luminance", with the threshold as 2.1
     * prints it.
     */
    private static double contrast(int one, int other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int level) {
        double share = level / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
