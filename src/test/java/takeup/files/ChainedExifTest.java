package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A JPEG whose Exif part is nothing but blocks that each name the next one (TIFF 6.0, section 2; Exif 2.32, 4.6.3). */
class ChainedExifTest {
    private static final int BLOCKS = 3600;
    private static final int EXIF_BLOCK = 0x8769;

    @TempDir
    Path folder;

    private Path chained(int tag, boolean isFollowed) throws IOException {
        ByteBuffer tiff = ByteBuffer.allocate(8 + 18 * BLOCKS);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        for (int block = 1; block <= BLOCKS; block++) {
            int next = block == BLOCKS ? 0 : 8 + 18 * block;
            tiff.putShort((short) 1)
                    .putShort((short) tag)
                    .putShort((short) 4)
                    .putInt(1)
                    .putInt(next);
            tiff.putInt(isFollowed ? next : 0);
        }
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        int length = tiff.capacity() + 8;
        jpeg.write(
                new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe1, (byte) (length >> 8), (byte) length});
        jpeg.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        jpeg.write(tiff.array());
        jpeg.write(new byte[] {(byte) 0xff, (byte) 0xd9});
        Path file = folder.resolve("chained.jpg");
        Files.write(file, jpeg.toByteArray());
        return file;
    }

    @Test
    void noChainOfBlocksIsFollowedToItsEnd() throws IOException {
        for (boolean isFollowed : new boolean[] {false, true}) {
            Path file = chained(isFollowed ? 0x0100 : EXIF_BLOCK, isFollowed);
            assertEquals(Optional.empty(), ExifFile.of(file, "chained.jpg"));
            assertEquals(Optional.empty(), ScanDate.of(file));
        }
    }
}
