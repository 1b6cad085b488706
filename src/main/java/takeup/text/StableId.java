package takeup.text;

import java.nio.charset.StandardCharsets;

/**
 * An id made of what it names, the same on every machine: the 64 bits of FNV-1a (RFC 9923) over its UTF-8, as 16 hex
 * digits. It tells things apart, and protects nothing.
 */
public final class StableId {
    private static final long OFFSET_BASIS = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private StableId() {}

    public static String of(String text) {
        long hash = OFFSET_BASIS;
        for (byte octet : text.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (octet & 0xff)) * PRIME;
        }
        String hex = Long.toHexString(hash);
        return "0".repeat(16 - hex.length()) + hex;
    }
}
