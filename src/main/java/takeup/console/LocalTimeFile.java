package takeup.console;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;

/**
 * The offsets of this machine's local time, as the system's own file has them (TZif, RFC 8536). To ask the class
 * library takes 3 ms, as it reads the zones of the whole world first. What this file does not tell, and a machine where
 * something else sets the zone, is left to the library.
 */
final class LocalTimeFile {
    private static final String SYSTEM = "/etc/localtime";
    private static final int LARGEST = 1 << 16;
    private static final int MAGIC = 0x545a6966;

    /** Since the epoch in seconds: another offset begins here; it is the one at the same place. */
    private final long[] changes;

    private final int[] offsets;
    /** Whether the last offset stays for good. Else the changes go on by a rule, which is not read here. */
    private final boolean isForGood;

    private LocalTimeFile(long[] changes, int[] offsets, boolean isForGood) {
        this.changes = changes;
        this.offsets = offsets;
        this.isForGood = isForGood;
    }

    /** The file of this machine; empty where a variable or a property names its zone, or there is no such file. */
    static Optional<LocalTimeFile> ofSystem() {
        String property = System.getProperty("user.timezone");
        if (System.getenv("TZ") != null || property != null && !property.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = new FileInputStream(SYSTEM)) {
            return read(in.readNBytes(LARGEST));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** From the bytes of a file; empty where it is none, of the first version, or counts leap seconds. */
    static Optional<LocalTimeFile> read(byte[] file) {
        try {
            ByteBuffer in = ByteBuffer.wrap(file);
            Header old = Header.read(in);
            in.position(in.position() + old.size(Integer.BYTES));
            Header header = Header.read(in);
            if (header.leaps > 0) {
                return Optional.empty();
            }
            long[] changes = new long[header.changes + 1];
            changes[0] = Long.MIN_VALUE;
            for (int i = 1; i < changes.length; i++) {
                changes[i] = in.getLong();
            }
            int[] types = new int[changes.length];
            for (int i = 1; i < types.length; i++) {
                types[i] = in.get();
            }
            int[] offsets = new int[changes.length];
            int first = in.position();
            for (int i = 0; i < types.length; i++) {
                offsets[i] = in.getInt(first + Header.TYPE * types[i]);
            }
            in.position(first + header.afterChanges());
            return Optional.of(new LocalTimeFile(changes, offsets, isForGood(in)));
        } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** The rule of the years to come, a line such as {@code CET-1CEST,M3.5.0,M10.5.0/3}: no comma, no change. */
    private static boolean isForGood(ByteBuffer in) {
        String rule = new String(in.array(), in.position(), in.remaining(), StandardCharsets.US_ASCII);
        return rule.length() > 2 && rule.endsWith("\n") && rule.indexOf(',') < 0;
    }

    /** The offset at a time since the epoch, in seconds; empty after the last change that is listed. */
    Optional<ZoneOffset> at(long second) {
        int found = Arrays.binarySearch(changes, second);
        int at = found >= 0 ? found : -found - 2;
        if (at == changes.length - 1 && !isForGood) {
            return Optional.empty();
        }
        try {
            return Optional.of(ZoneOffset.ofTotalSeconds(offsets[at]));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** How many of each thing a block of the file holds. */
    private record Header(int universal, int standard, int leaps, int changes, int types, int letters) {
        private static final int TYPE = 6;
        private static final int RESERVED = 15;

        static Header read(ByteBuffer in) {
            if (in.getInt() != MAGIC || in.get() < '2') {
                throw new IllegalArgumentException("no file of local times with 64 bits");
            }
            in.position(in.position() + RESERVED);
            Header header = new Header(in.getInt(), in.getInt(), in.getInt(), in.getInt(), in.getInt(), in.getInt());
            if (header.changes < 0 || header.changes > in.remaining()) {
                throw new IllegalArgumentException("more changes than bytes");
            }
            return header;
        }

        /** The bytes of a block whose times have so many. */
        int size(int time) {
            return changes * (time + 1) + leaps * (time + Integer.BYTES) + afterChanges();
        }

        /** Those behind the changes, where there are no leap seconds. */
        int afterChanges() {
            return types * TYPE + letters + standard + universal;
        }
    }
}
