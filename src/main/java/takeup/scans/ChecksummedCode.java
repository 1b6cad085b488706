package takeup.scans;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

/**
 * The text of a code of takeup's own: {@code TAKEUP:R0007:1:} and the CRC-32C of all before it in eight hexadecimal
 * digits. Another program's code, or one of ours that was read with a fault, has no such check and says nothing. All
 * characters are of the alphanumeric set of a QR code (ISO/IEC 18004, 7.4.4), which keeps it small.
 */
final class ChecksummedCode {
    private static final String FIRST = "TAKEUP:";
    private static final int CHECK = 8;
    private static final Pattern CODE = Pattern.compile("(" + FIRST + "(.*):)(.{" + CHECK + "})", Pattern.DOTALL);

    private ChecksummedCode() {}

    /** The whole text of a code. */
    static String text(String body) {
        String all = FIRST + body + ":";
        return all + check(all);
    }

    /** The text between the first word and the check; empty where the check does not fit. */
    static Optional<String> read(String text) {
        return Optional.of(CODE.matcher(text))
                .filter(it -> it.matches() && check(it.group(1)).equals(it.group(3)))
                .map(it -> it.group(2));
    }

    private static String check(String text) {
        CRC32C sum = new CRC32C();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        String digits = Long.toHexString(sum.getValue()).toUpperCase(Locale.ROOT);
        return "0".repeat(CHECK - digits.length()) + digits;
    }
}
