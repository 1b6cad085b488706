package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;
import takeup.grid.Bitmap;
import takeup.grid.Placement;

class SixelsTest {
    /** A hundredth of 255, and half a level for each of two roundings: finer than that the format cannot say. */
    private static final int COARSE = 2;

    @TempDir
    Path scratch;

    /** Deep greys first: shadows are what a scan is judged by. */
    private static Bitmap greys() {
        int[] dots = new int[256 * 12];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = i % 256 * 0x010101;
        }
        return new Bitmap(256, 12, dots);
    }

    private static Bitmap portrait() {
        int[] dots = new int[90 * 60];
        Random grain = new Random(7);
        for (int i = 0; i < dots.length; i++) {
            int light = Math.min(255, 40 + i % 90 * 2 + grain.nextInt(20));
            dots[i] = light << 16 | light * 3 / 4 << 8 | light / 2;
        }
        return new Bitmap(90, 60, dots);
    }

    @Test
    void everyGreyIsSentAsNearAsTheFormatCanSayIt() {
        assertTrue(farthest(greys(), SixelReader.read(Sixels.of(greys()))) <= COARSE);
    }

    @Test
    void aPictureOfManyColoursStaysNearToItself() {
        Bitmap portrait = portrait();
        assertTrue(farthest(portrait, SixelReader.read(Sixels.of(portrait))) <= 12, "256 colours for all of it");
    }

    @Test
    void aLoneDotAndAnOddHeightAreWhole() {
        for (int rows : new int[] {1, 5, 6, 7, 13}) {
            Bitmap red = new Bitmap(
                    3,
                    rows,
                    new Random(rows)
                            .ints(3L * rows, 0, 2)
                            .map(it -> it * 0xff0000)
                            .toArray());
            assertEquals(0, farthest(red, SixelReader.read(Sixels.of(red))), rows + " rows");
        }
    }

    /** It fills its cells as far as its shape allows, in whole bands, so that no terminal scrolls. */
    @Test
    void aPlacementStaysInsideItsCells() {
        String drawn = new Sixels(8, 17).drawn(new Placement(0, 0, 20, 5, new Bitmap(40, 80, new int[3200])));
        assertTrue(drawn.startsWith("\u001bP0;1;0q\"1;1;42;84#"), drawn.substring(0, 30));
    }

    /** libsixel is the other side. */
    @Test
    void anotherReaderFindsTheSamePicture() throws IOException, InterruptedException {
        Outside.needs("sixel2png");
        for (Bitmap bitmap : new Bitmap[] {greys(), portrait()}) {
            Path sixel = Files.writeString(scratch.resolve("a.six"), Sixels.of(bitmap), StandardCharsets.US_ASCII);
            Path png = scratch.resolve("a.png");
            assertEquals(
                    0,
                    new ProcessBuilder("sixel2png", "-i", sixel.toString(), "-o", png.toString())
                            .inheritIO()
                            .start()
                            .waitFor());
            BufferedImage read = ImageIO.read(png.toFile());
            assertEquals(bitmap.columns(), read.getWidth());
            Bitmap ours = SixelReader.read(Sixels.of(bitmap));
            for (int i = 0; i < bitmap.columns() * bitmap.rows(); i++) {
                int column = i % bitmap.columns();
                int row = i / bitmap.columns();
                assertTrue(
                        apart(ours.at(column, row), read.getRGB(column, row)) <= 1,
                        column + ", " + row + ": percent to levels is rounded either way");
            }
        }
    }

    private static int farthest(Bitmap one, Bitmap other) {
        assertEquals(one.columns(), other.columns());
        assertEquals(one.rows(), other.rows());
        int farthest = 0;
        for (int i = 0; i < one.columns() * one.rows(); i++) {
            farthest = Math.max(
                    farthest,
                    apart(
                            one.at(i % one.columns(), i / one.columns()),
                            other.at(i % one.columns(), i / one.columns())));
        }
        return farthest;
    }

    private static int apart(int one, int other) {
        int most = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            most = Math.max(most, Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)));
        }
        return most;
    }
}
