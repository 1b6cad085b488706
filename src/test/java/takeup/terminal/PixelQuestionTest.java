package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.Bitmap;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.PixelPair;
import takeup.grid.Placement;
import takeup.grid.Size;
import takeup.grid.TextRole;
import takeup.grid.Theme;

class PixelQuestionTest {
    private static final String YES = "\u001b_Gi=31;OK\u001b\\";
    private static final String CELL = "\u001b[6;18;9t";

    private final List<PixelProtocol> found = new ArrayList<>();
    private final PixelQuestion question = new PixelQuestion(new Size(100, 32), found::add);

    /** xterm with sixels, one without, kitty, foot, and one that knows sixels and not its cells. */
    @Test
    void whatTheTerminalAnswersDecides() {
        assertTrue(question.takes(CELL) && question.takes("\u001b[?63;1;2;4;6;9;15;22c"));
        assertEquals(List.of(new Sixels(9, 18)), found);
        found.clear();
        assertTrue(question.takes(CELL) && question.takes("\u001b[?64;1;2;6;9;14;15;22c"));
        assertEquals(List.of(), found, "14 is not 4");
        assertTrue(question.takes(YES) && question.takes(CELL) && question.takes("\u001b[?62;c"));
        assertEquals(List.of(new KittyGraphics(9, 18)), found);
        found.clear();
        PixelQuestion xterm = new PixelQuestion(new Size(100, 32), found::add);
        assertTrue(xterm.takes("\u001b[?2;0;905;548S") && xterm.takes("\u001b[?63;1;2;4;6;9;15;16;22;28c"));
        assertEquals(List.of(new Sixels(9, 17)), found, "it says how large all sixels are, and not a cell");
        List<PixelProtocol> none = new ArrayList<>();
        new PixelQuestion(new Size(100, 32), none::add).takes("\u001b[?62;4c");
        PixelQuestion refused = new PixelQuestion(new Size(100, 32), none::add);
        refused.takes("\u001b_Gi=31;ENOTSUPPORTED:no\u001b\\");
        refused.takes("\u001b[?62c");
        assertEquals(List.of(), none);
    }

    @Test
    void keysAreNoAnswers() {
        for (String key : List.of("\u001b[A", "\u001b[6~", "\u001b[1;5C", "\u001bOP", "\u001b[200~", "\u001b[24;80R")) {
            assertFalse(question.takes(key), key.substring(1));
        }
    }

    /** Torn as a slow line tears them, among keys: only the keys come through. */
    @Test
    void answersAreTakenOutOfTheKeys() throws IOException {
        String sent = "g" + YES + CELL + "\u001b[A" + "\u001b[?62;4;22c" + "d";
        EscapeFilter filter = new EscapeFilter(
                new ByteArrayInputStream(sent.getBytes(StandardCharsets.ISO_8859_1)), millis -> millis);
        filter.expect(question);
        assertEquals("g\u001b[Ad", new String(filter.readAllBytes(), StandardCharsets.ISO_8859_1));
        assertEquals(List.of(new KittyGraphics(9, 18)), found);
    }

    @ParameterizedTest
    @CsvSource({"xterm-256color, true", "linux, false", "vt220, false", "dumb, false", "xterm-kitty, true"})
    void aConsoleThatWouldPrintTheQuestionIsNotAsked(String term, boolean isAsked) {
        assertEquals(isAsked, PixelQuestion.mayBeAsked(TerminalEnvironment.of(Map.of("TERM", term), false)));
    }

    /** The protocol's own text says how pieces are joined: a reader written from it finds every dot. */
    @Test
    void theKittyProtocolCarriesEveryDotInPiecesOf4096() throws IOException {
        int[] dots = new Random(3).ints(120 * 80, 0, 1 << 24).toArray();
        String drawn = new KittyGraphics(0, 0).drawn(new Placement(2, 3, 12, 5, new Bitmap(120, 80, dots)));
        Matcher piece = Pattern.compile("\u001b_G([^;\u001b]*);([A-Za-z0-9+/=]*)\u001b\\\\")
                .matcher(drawn);
        StringBuilder data = new StringBuilder();
        int end = 0;
        while (piece.find()) {
            assertEquals(end, piece.start(), "nothing stands between two pieces");
            end = piece.end();
            assertTrue(piece.group(2).length() <= 4096);
            assertEquals(data.isEmpty(), piece.group(1).startsWith("a=T,q=2,C=1,f=24,o=z,s=120,v=80,c=12,r=5,"));
            data.append(piece.group(2));
            assertTrue(piece.group(1).endsWith(end == drawn.length() ? "m=0" : "m=1"), piece.group(1));
        }
        assertEquals(drawn.length(), end);
        byte[] bytes = new InflaterInputStream(
                        new ByteArrayInputStream(Base64.getDecoder().decode(data.toString())))
                .readAllBytes();
        int[] read = new int[dots.length];
        for (int i = 0; i < bytes.length; i++) {
            read[i / 3] = read[i / 3] << 8 | bytes[i] & 0xff;
        }
        assertArrayEquals(dots, read);
    }

    @Test
    void aPictureIsDrawnOnceOverBlankCellsAndElsewhereAsCells() throws IOException {
        Grid grid = Grid.of(20, 6);
        grid.put(0, 0, "Scans", TextRole.NORMAL);
        grid.putPixels(2, 1, new PixelPair(0x102030, 0x405060));
        grid.put(new Placement(2, 1, 1, 1, new Bitmap(2, 2, new int[4])));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Painter painter = new Painter(
                out, ColourDepth.TRUE, CharacterSet.UNICODE, Theme.named("dark").orElseThrow());
        painter.show(grid);
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("▄"), "two dots to a cell");
        out.reset();
        painter.pixels(new Sixels(9, 18));
        painter.show(grid);
        String drawn = out.toString(StandardCharsets.UTF_8);
        assertTrue(drawn.contains("\u001b[2;3H\u001bP0;1;0q") && !drawn.contains("▄"), "true pixels and no blocks");
        out.reset();
        painter.show(grid);
        assertEquals("", out.toString(StandardCharsets.UTF_8), "it is there already");
        painter.show(Grid.of(20, 6));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("\u001b[2J"), "the picture is wiped away");
    }
}
