package takeup.files;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.Deflater;

/**
 * A TIFF of three samples a dot, written by the letter of TIFF 6.0 (sections 7, 13 and 14) and its technical note on
 * ZIP: brighter from left to right.
 */
final class TiffFile {
    enum Packing {
        LZW(5),
        ZIP(8);

        final int code;

        Packing(int code) {
            this.code = code;
        }
    }

    private static final int ROWS_A_STRIP = 16;

    private TiffFile() {}

    /** The bytes of the file, with the horizontal predictor. */
    static byte[] of(int width, int height, int bits, Packing packing) {
        ByteBuffer out = ByteBuffer.allocate(1 << 20 | width * height * 7).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(0);
        int strips = (height + ROWS_A_STRIP - 1) / ROWS_A_STRIP;
        int[] at = new int[strips];
        int[] length = new int[strips];
        for (int i = 0; i < strips; i++) {
            int rows = Math.min(ROWS_A_STRIP, height - i * ROWS_A_STRIP);
            byte[] strip = strip(width, rows, bits);
            byte[] packed = packing == Packing.LZW ? lzw(strip) : zip(strip);
            at[i] = out.position();
            length[i] = packed.length;
            out.put(packed).position(out.position() + (packed.length & 1));
        }
        int depths = out.position();
        out.putShort((short) bits).putShort((short) bits).putShort((short) bits).putShort((short) 0);
        int offsets = out.position();
        for (int each : at) {
            out.putInt(each);
        }
        int lengths = out.position();
        for (int each : length) {
            out.putInt(each);
        }
        out.putInt(4, out.position());
        int[][] fields = {
            {256, 4, 1, width},
            {257, 4, 1, height},
            {258, 3, 3, depths},
            {259, 3, 1, packing.code},
            {262, 3, 1, 2},
            {273, 4, strips, offsets},
            {277, 3, 1, 3},
            {278, 4, 1, ROWS_A_STRIP},
            {279, 4, strips, lengths},
            {284, 3, 1, 1},
            {317, 3, 1, 2}
        };
        out.putShort((short) fields.length);
        for (int[] field : fields) {
            out.putShort((short) field[0])
                    .putShort((short) field[1])
                    .putInt(field[2])
                    .putInt(field[3]);
        }
        out.putInt(0);
        byte[] file = new byte[out.position()];
        out.flip().get(file);
        return file;
    }

    private static byte[] strip(int width, int rows, int bits) {
        ByteBuffer strip = ByteBuffer.allocate(width * rows * 3 * bits / 8).order(ByteOrder.LITTLE_ENDIAN);
        int most = (1 << bits) - 1;
        for (int row = 0; row < rows; row++) {
            for (int x = 0; x < width; x++) {
                int value = (int) ((long) most * x / width) - (x == 0 ? 0 : (int) ((long) most * (x - 1) / width));
                for (int sample = 0; sample < 3; sample++) {
                    if (bits == 8) {
                        strip.put((byte) value);
                    } else {
                        strip.putShort((short) value);
                    }
                }
            }
        }
        return strip.array();
    }

    private static byte[] zip(byte[] plain) {
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        while (!deflater.finished()) {
            out.write(part, 0, deflater.deflate(part));
        }
        deflater.end();
        return out.toByteArray();
    }

    private static byte[] lzw(byte[] plain) {
        Bits bits = new Bits();
        bits.put(256, 9);
        Map<Integer, Integer> table = new HashMap<>();
        int next = 258;
        int width = 9;
        int now = plain[0] & 0xff;
        for (int i = 1; i < plain.length; i++) {
            int longer = now << 8 | plain[i] & 0xff;
            Integer known = table.get(longer);
            if (known != null) {
                now = known;
                continue;
            }
            bits.put(now, width);
            table.put(longer, next++);
            if (next == 4095) {
                bits.put(256, width);
                table.clear();
                next = 258;
                width = 9;
            } else if (next == 1 << width) {
                width++;
            }
            now = plain[i] & 0xff;
        }
        bits.put(now, width);
        bits.put(257, next + 1 == 1 << width ? width + 1 : width);
        return bits.bytes();
    }

    private static final class Bits {
        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private long held;
        private int count;

        void put(int code, int width) {
            held = held << width | code;
            count += width;
            while (count >= 8) {
                count -= 8;
                out.write((int) (held >> count));
            }
            held &= (1L << count) - 1;
        }

        byte[] bytes() {
            if (count > 0) {
                out.write((int) (held << (8 - count)));
            }
            return out.toByteArray();
        }
    }
}
