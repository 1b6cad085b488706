package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.scans.Picture;
import takeup.scans.Scan;

/** What labs and scanners return: read, or named with the reason. */
class ScanFolderTest {
    @TempDir
    Path folder;

    @Test
    void tiffWithAPredictorIsReadInEightAndSixteenBits() throws IOException {
        for (TiffFile.Packing packing : TiffFile.Packing.values()) {
            for (int bits : new int[] {8, 16}) {
                Files.write(folder.resolve(packing + "_" + bits + ".tif"), TiffFile.of(600, 400, bits, packing));
            }
        }
        ScanFolder read = ScanFolder.read(folder, false);
        assertEquals(List.of(), read.problems());
        assertEquals(4, read.scans().size());
        for (Scan scan : read.scans()) {
            Picture picture = read.pictures().get(scan.name());
            assertEquals(600, scan.width());
            for (int column : new int[] {0, picture.columns() / 2, picture.columns() - 1}) {
                double wanted = (column + 0.5) / picture.columns();
                assertEquals(wanted, picture.lightness(column, picture.rows() / 2), 0.02, scan.name() + " " + column);
            }
        }
    }

    @Test
    void pngIsRead() throws IOException {
        Files.write(folder.resolve("crew_1.png"), picture("png"));
        ScanFolder read = ScanFolder.read(folder, false);
        assertEquals(List.of(), read.problems());
        assertEquals("crew_1.png", read.scans().get(0).name());
    }

    @Test
    void whatIsNotReadIsNamedWithItsReason() throws IOException {
        for (String name : List.of("a.webp", "b.HEIC", "c.dng", "d.raf")) {
            Files.write(folder.resolve(name), new byte[100]);
        }
        Files.write(folder.resolve("e.jpg"), "no picture".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        Files.writeString(folder.resolve("read me.txt"), "from the lab");
        ScanFolder read = ScanFolder.read(folder, false);
        assertEquals(
                List.of(
                        "a.webp is not read: WEBP has no reader here; save it as JPEG, PNG or TIFF",
                        "b.HEIC is not read: HEIC has no reader here; save it as JPEG, PNG or TIFF",
                        "c.dng is not read: a raw file (DNG) holds no finished picture; save it as JPEG, PNG or TIFF",
                        "d.raf is not read: a raw file (RAF) holds no finished picture; save it as JPEG, PNG or TIFF",
                        "e.jpg cannot be read: it is not a JPEG, PNG or TIFF, whatever its name says"),
                read.problems());
        assertEquals(List.of(), read.scans());
    }

    @Test
    void aCutJpegKeepsItsPlaceAndIsNamed() throws IOException {
        byte[] whole = picture("jpg");
        Files.write(folder.resolve("1.jpg"), whole);
        Files.write(folder.resolve("2.jpg"), Arrays.copyOf(whole, whole.length / 2));
        ScanFolder read = ScanFolder.read(folder, false);
        assertEquals(2, read.scans().size());
        assertEquals(1, read.problems().size(), read.problems().toString());
        assertTrue(
                read.problems().get(0).startsWith("2.jpg was cut off"),
                read.problems().toString());
    }

    private static byte[] picture(String kind) throws IOException {
        BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(7);
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 200; y++) {
                image.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, kind, out));
        return out.toByteArray();
    }
}
