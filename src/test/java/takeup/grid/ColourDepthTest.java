package takeup.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ColourDepthTest {
    /** By trying them all: the eye weighs green most, and of two that are as near the first counts. */
    @ParameterizedTest
    @EnumSource(names = {"SIXTEEN", "INDEXED"})
    void theNearestColourIsTheNearestOfAll(ColourDepth depth) {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            int rgb = i < 256 ? i * 0x010101 : random.nextInt(0x1000000);
            int nearest = depth == ColourDepth.SIXTEEN ? 0 : 16;
            for (int index = nearest; index < (depth == ColourDepth.SIXTEEN ? 16 : 256); index++) {
                nearest = distance(index, rgb) < distance(nearest, rgb) ? index : nearest;
            }
            assertEquals(nearest, depth.nearest(rgb), Integer.toHexString(rgb));
        }
    }

    private static int distance(int index, int rgb) {
        int has = ColourDepth.rgb(index);
        int red = (has >> 16) - (rgb >> 16);
        int green = (has >> 8 & 0xff) - (rgb >> 8 & 0xff);
        int blue = (has & 0xff) - (rgb & 0xff);
        return 2 * red * red + 4 * green * green + 3 * blue * blue;
    }
}
