package takeup.journal;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Turns a single flipped bit of a record back, by its CRC-32C. Other damage looks like one flipped bit in less than one
 * line of a hundred thousand, and must then still come to JSON and to the record that is missing. Only for a record
 * without which all others are worthless: elsewhere one that is lost and named is better.
 */
final class FlippedBit {
    /** The polynomial of CRC-32C, its lowest bit first. */
    private static final int POLYNOMIAL = 0x82f63b78;

    private FlippedBit() {}

    /** The record with that bit turned back; empty where no single bit explains the damage. */
    static Optional<JournalLines.Sealed> turnedBack(byte[] bytes, int start, int end) {
        byte[] record = Arrays.copyOfRange(bytes, start, end);
        int front = record.length - JournalLines.TAIL;
        if (front < 2) {
            return Optional.empty();
        }
        int bit = flipped(record, front, JournalLines.tail(record, 0, front));
        if (bit < 0) {
            return Optional.empty();
        }
        record[bit / 8] ^= (byte) (1 << bit % 8);
        return JournalLines.record(record, 0, record.length);
    }

    /** Which bit of the record it is, counted from its start; below 0 where it is none, or more than one. */
    private static int flipped(byte[] record, int front, byte[] expected) {
        int found = -1;
        int differing = 0;
        for (int at = 0; at < expected.length; at++) {
            int difference = (record[front + at] ^ expected[at]) & 0xff;
            differing += Integer.bitCount(difference);
            found = difference == 0 ? found : (front + at) * 8 + Integer.numberOfTrailingZeros(difference);
        }
        return differing == 1 ? found : inFront(record, front, expected);
    }

    /** The bit in front of the tail whose turning makes the CRC the one that stands in the tail. */
    private static int inFront(byte[] record, int front, byte[] expected) {
        String stands = new String(record, front, expected.length, StandardCharsets.ISO_8859_1);
        if (!stands.matches(JournalLines.CRC + "[0-9a-f]{8}\"}")) {
            return -1;
        }
        int difference = crc(stands) ^ crc(new String(expected, StandardCharsets.ISO_8859_1));
        int[] ofBit = new int[8];
        for (int bit = 0; bit < 8; bit++) {
            ofBit[bit] = afterByte(1 << bit);
        }
        for (int at = front - 1; at >= 0; at--) {
            for (int bit = 0; bit < 8; bit++) {
                if (ofBit[bit] == difference) {
                    return at * 8 + bit;
                }
                ofBit[bit] = afterByte(ofBit[bit]);
            }
        }
        return -1;
    }

    private static int crc(String tail) {
        return Integer.parseUnsignedInt(tail.substring(JournalLines.CRC.length(), JournalLines.CRC.length() + 8), 16);
    }

    /** What a difference in the register is one byte of zeros later. */
    private static int afterByte(int register) {
        int after = register;
        for (int bit = 0; bit < 8; bit++) {
            after = (after & 1) == 0 ? after >>> 1 : after >>> 1 ^ POLYNOMIAL;
        }
        return after;
    }
}
