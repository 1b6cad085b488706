package takeup.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.scans.Picture;

class PngImageTest {
    /** Java's own reader of PNG files is the other side. */
    @ParameterizedTest
    @CsvSource({"1, 1", "7, 3", "96, 64", "300, 200", "1, 400"})
    void anotherReaderFindsEveryDot(int columns, int rows) throws IOException {
        int[] dots = new Random(columns).ints((long) columns * rows, 0, 1 << 24).toArray();
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngImage.of(new Picture(columns, rows, dots))));
        assertEquals(columns, read.getWidth());
        assertEquals(rows, read.getHeight());
        int[] found = read.getRGB(0, 0, columns, rows, null, 0, columns);
        for (int i = 0; i < found.length; i++) {
            found[i] &= 0xffffff;
        }
        assertArrayEquals(dots, found);
    }
}
