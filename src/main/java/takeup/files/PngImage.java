package takeup.files;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import takeup.grid.Deflated;
import takeup.scans.Picture;

/**
 * A picture as the bytes of a PNG file: eight bits of red, green and blue to a dot (Portable Network Graphics, ISO/IEC
 * 15948:2004, sections 5 and 11.2). It needs no library of pictures, and leaves out what none of its readers asks for.
 */
public final class PngImage {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int BITS = 8;
    private static final int TRUE_COLOUR = 2;
    /** Each byte as the difference from the dot to its left: section 9.2, type 1. */
    private static final int FILTER = 1;

    private PngImage() {}

    /** The whole file. */
    public static byte[] of(Picture picture) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(SIGNATURE);
        ByteBuffer header = ByteBuffer.allocate(13)
                .putInt(picture.columns())
                .putInt(picture.rows())
                .put((byte) BITS)
                .put((byte) TRUE_COLOUR);
        chunk(file, "IHDR", header.array());
        chunk(file, "IDAT", Deflated.of(filtered(picture)));
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] filtered(Picture picture) {
        ByteBuffer bytes = ByteBuffer.allocate((3 * picture.columns() + 1) * picture.rows());
        for (int row = 0; row < picture.rows(); row++) {
            bytes.put((byte) FILTER);
            int before = 0;
            for (int column = 0; column < picture.columns(); column++) {
                int dot = picture.at(column, row);
                bytes.put((byte) ((dot >> 16) - (before >> 16)));
                bytes.put((byte) ((dot >> 8) - (before >> 8)));
                bytes.put((byte) (dot - before));
                before = dot;
            }
        }
        return bytes.array();
    }

    /** Its length, its name, its bytes, and a checksum of the last two. */
    private static void chunk(ByteArrayOutputStream file, String name, byte[] bytes) {
        CRC32 checksum = new CRC32();
        byte[] letters = name.getBytes(StandardCharsets.US_ASCII);
        checksum.update(letters);
        checksum.update(bytes);
        file.writeBytes(ByteBuffer.allocate(4).putInt(bytes.length).array());
        file.writeBytes(letters);
        file.writeBytes(bytes);
        file.writeBytes(ByteBuffer.allocate(4).putInt((int) checksum.getValue()).array());
    }
}
