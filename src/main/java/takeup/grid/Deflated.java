package takeup.grid;

import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;

/** Bytes made small quickly, as PNG files and terminals that draw pixels take them (RFC 1950). */
public final class Deflated {
    private Deflated() {}

    public static byte[] of(byte[] bytes) {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try {
            deflater.setInput(bytes);
            deflater.finish();
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            byte[] some = new byte[1 << 15];
            while (!deflater.finished()) {
                packed.write(some, 0, deflater.deflate(some));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }
}
