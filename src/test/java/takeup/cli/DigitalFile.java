package takeup.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * A digital camera of our own: a JPEG with an Exif part, laid out by hand after TIFF 6.0, section 2, and Exif 2.32,
 * 4.6.
 */
final class DigitalFile {
    private DigitalFile() {}

    /**
     * Writes a file.
     *
     * @param at DateTimeOriginal, {@code 2026:09:12 15:12:40}
     * @param offset OffsetTimeOriginal, {@code +02:00}; "" for none
     */
    static void write(Path file, BufferedImage image, String camera, String at, String offset) throws IOException {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", jpeg);
        byte[] plain = jpeg.toByteArray();
        byte[] exif = exif(camera, at, offset);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.write(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (exif.length + 8 >> 8), (byte) (exif.length + 8)});
        out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.write(exif);
        out.write(plain, 2, plain.length - 2);
        Files.write(file, out.toByteArray());
    }

    /** f/4, 1/250, ISO 800, and what was asked for. */
    private static byte[] exif(String camera, String at, String offset) {
        ByteBuffer out = ByteBuffer.allocate(400);
        out.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        out.putShort((short) 2);
        entry(out, 0x0110, 2, camera.length() + 1, 300);
        entry(out, 0x8769, 4, 1, 60);
        out.putInt(0).position(60);
        out.putShort((short) (offset.isEmpty() ? 4 : 5));
        entry(out, 0x829a, 5, 1, 200);
        entry(out, 0x829d, 5, 1, 208);
        out.putShort((short) 0x8827)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) 800)
                .putShort((short) 0);
        entry(out, 0x9003, 2, 20, 220);
        if (!offset.isEmpty()) {
            entry(out, 0x9011, 2, 7, 250);
        }
        out.putInt(0).position(200);
        out.putInt(1).putInt(250).putInt(40).putInt(10).position(220);
        out.put((at + "\0").getBytes(StandardCharsets.US_ASCII)).position(250);
        out.put((offset + "\0").getBytes(StandardCharsets.US_ASCII)).position(300);
        out.put((camera + "\0").getBytes(StandardCharsets.US_ASCII));
        return out.array();
    }

    private static void entry(ByteBuffer out, int tag, int type, int count, int value) {
        out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }
}
