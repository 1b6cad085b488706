package takeup.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A JPEG whose Exif part is nothing but 3,600 blocks (TIFF 6.0, section 2; Exif 2.32, 4.6.3). */
public final class ChainedExif {
    private static final int BLOCKS = 3600;
    private static final int WIDTH = 0x0100;
    private static final int EXIF_BLOCK = 0x8769;

    private ChainedExif() {}

    /** Each block names the next one as the one behind it. */
    public static void writeFollowing(Path file) throws IOException {
        write(file, WIDTH, true);
    }

    /** Each block holds the next one. */
    public static void writeNested(Path file) throws IOException {
        write(file, EXIF_BLOCK, false);
    }

    private static void write(Path file, int tag, boolean isFollowed) throws IOException {
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
        Files.write(file, jpeg.toByteArray());
    }
}
