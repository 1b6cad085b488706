package takeup.files;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files laid out by hand after the TIFF 6.0 specification, section 2 (header, directory, entries of 12 bytes). */
class ScanDateTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "little endian: {0}")
    @ValueSource(booleans = {true, false})
    void theDateOfTheScannerIsReadFromJpegAndTiff(boolean little) throws IOException {
        byte[] tiff = tiff(little, "2026:10:01 09:30:00", "2026:10:02 10:00:00");
        assertEquals(Optional.of("2026-10-01T09:30:00"), of(tiff));
        assertEquals(Optional.of("2026-10-01T09:30:00"), of(jpeg(tiff)));
    }

    @Test
    void withoutADigitisedDateTheFilesOwnDateStands() throws IOException {
        assertEquals(Optional.of("2026-10-02T10:00:00"), of(tiff(true, "    :  :     :  :  ", "2026:10:02 10:00:00")));
        assertEquals(Optional.empty(), of(tiff(true, "0000:00:00 00:00:00", "yesterday, at noon.")));
    }

    @Test
    void whateverTheBytesAreNothingIsThrown() throws IOException {
        Random random = new Random(3);
        byte[] whole = jpeg(tiff(false, "2026:10:01 09:30:00", "2026:10:02 10:00:00"));
        for (int i = 0; i < 300; i++) {
            byte[] bytes = Arrays.copyOf(whole, 2 + random.nextInt(whole.length - 2));
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            assertDoesNotThrow(() -> of(bytes));
        }
        assertEquals(Optional.empty(), of(new byte[0]));
        assertEquals(Optional.empty(), ScanDate.of(folder.resolve("gone.jpg")));
    }

    private Optional<String> of(byte[] bytes) throws IOException {
        Path file = folder.resolve("scan");
        Files.write(file, bytes);
        return ScanDate.of(file);
    }

    private static byte[] tiff(boolean little, String digitised, String date) {
        ByteBuffer out = ByteBuffer.allocate(200).order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        out.put((little ? "II" : "MM").getBytes(StandardCharsets.US_ASCII))
                .putShort((short) 42)
                .putInt(8);
        out.putShort((short) 2);
        entry(out, 0x0132, 2, 20, 100);
        entry(out, 0x8769, 4, 1, 60);
        out.putInt(0).position(60);
        out.putShort((short) 1);
        entry(out, 0x9004, 2, 20, 130);
        out.putInt(0).position(100);
        out.put((date + "\0").getBytes(StandardCharsets.US_ASCII)).position(130);
        out.put((digitised + "\0").getBytes(StandardCharsets.US_ASCII));
        return out.array();
    }

    private static void entry(ByteBuffer out, int tag, int type, int count, int value) {
        out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static byte[] jpeg(byte[] tiff) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        // SOI; an APP0 to pass over; APP1 with Exif.
        out.write(new byte[] {
            (byte) 0xff,
            (byte) 0xd8,
            (byte) 0xff,
            (byte) 0xe0,
            0,
            4,
            1,
            2,
            (byte) 0xff,
            (byte) 0xe1,
            0,
            (byte) (tiff.length + 8)
        });
        out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.write(tiff);
        return out.toByteArray();
    }
}
