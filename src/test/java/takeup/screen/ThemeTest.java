package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
    private static final Set<Look> LARGEST = EnumSet.of(Look.READOUT, Look.STRONG, Look.CAUTION, Look.ALARM);

    @ParameterizedTest
    @EnumSource(Look.class)
    void everyThemeSaysHowEveryLookIsDrawn(Look look) {
        for (String name : Theme.names()) {
            assertTrue(theme(name).style(look) != null, name);
        }
    }

    @ParameterizedTest(name = "{0} can be read in the dark theme")
    @EnumSource(Look.class)
    void darkHasTheContrastThatReadingNeeds(Look look) {
        reads(look, Depth.TRUE, LARGEST.contains(look) ? 7 : 4.5);
    }

    @ParameterizedTest(name = "{0} can be read with 256 colours")
    @EnumSource(Look.class)
    void theNearestOf256ColoursCanBeReadToo(Look look) {
        reads(look, Depth.INDEXED, LARGEST.contains(look) ? 7 : 4.5);
    }

    @ParameterizedTest(name = "{0} can be read with 16 colours")
    @EnumSource(Look.class)
    void theNearestOf16ColoursCanBeToldFromTheirGround(Look look) {
        reads(look, Depth.SIXTEEN, 3);
    }

    @Test
    void monoUsesNoColour() {
        for (Look look : Look.values()) {
            String sequence = theme("mono").style(look).sequence(Depth.TRUE);
            assertFalse(sequence.contains("38;") || sequence.contains("48;"), sequence);
        }
    }

    @Test
    void withoutColourTheLooksThatCostAFrameStillDiffer() {
        Set<Style> styles = new HashSet<>();
        for (Look look : EnumSet.of(Look.NORMAL, Look.READOUT, Look.CAUTION, Look.ALARM, Look.CHOSEN)) {
            styles.add(theme("mono").style(look));
        }
        assertEquals(5, styles.size());
    }

    @Test
    void theThemesGoRound() {
        Theme theme = theme("dark");
        for (int times = 0; times < Theme.names().size(); times++) {
            theme = theme.next();
        }
        assertEquals("dark", theme.name());
        assertEquals("mono", theme("dark").next().name());
        assertEquals(Optional.empty(), Theme.named("neon"));
    }

    /** Values from xterm's own list of the 256 colours: 16 black, 21 blue, 208 dark orange, 232 and 255 greys. */
    @Test
    void theColoursOf256AreThoseOfXterm() {
        assertEquals(0x000000, Depth.rgb(16));
        assertEquals(0x0000ff, Depth.rgb(21));
        assertEquals(0xff8700, Depth.rgb(208));
        assertEquals(0x080808, Depth.rgb(232));
        assertEquals(0xeeeeee, Depth.rgb(255));
        assertEquals(208, Depth.INDEXED.nearest(0xff8702));
    }

    @Test
    void aStyleStartsFromNothing() {
        assertEquals("\u001b[0;1;38;2;1;2;3;48;2;4;5;6m", Style.of(0x010203, 0x040506).strong().sequence(Depth.TRUE));
        assertEquals("\u001b[0;7;91;40m", new Style(Colour.ansi(9), Colour.ansi(0), false, true, false).sequence(Depth.SIXTEEN));
        assertEquals("\u001b[0;4m", Style.of(0x010203, 0x040506).underlined().sequence(Depth.NONE));
    }

    private static void reads(Look look, Depth depth, double least) {
        Style style = theme("dark").style(look);
        double contrast = contrast(rgb(style.foreground().at(depth)), rgb(style.background().at(depth)));
        assertTrue(contrast >= least, look + " has a contrast of " + contrast);
    }

    private static Theme theme(String name) {
        return Theme.named(name).orElseThrow();
    }

    private static int rgb(Colour colour) {
        return colour.kind() == Colour.Kind.RGB ? colour.value() : Depth.rgb(colour.value());
    }

    /** Contrast ratio: WCAG 2.1, definitions, "contrast ratio" and "relative luminance". */
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
