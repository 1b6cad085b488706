package takeup.handoff;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The mark by which takeup knows a sidecar of its own that nobody changed since: SHA-256 over its text, as a property
 * in takeup's own namespace. It is worked out with noughts in its place.
 */
public final class SidecarDigest {
    static final String SPACE = "urn:takeup:sidecar:1#";
    static final String NAME = "digest";
    /** What stands in its place until it is known. */
    static final String OPEN = "0".repeat(64);

    private static final Pattern DIGEST = Pattern.compile("<takeup:digest>([0-9a-f]{64})</takeup:digest>");

    private SidecarDigest() {}

    /** The text with its digest in place of the noughts. */
    static String sealed(String text) {
        return text.replace(element(OPEN), element(of(text)));
    }

    /** Whether takeup wrote this text, to the last byte. */
    public static boolean isOwn(String text) {
        Matcher found = DIGEST.matcher(text);
        if (!found.find()) {
            return false;
        }
        String open = text.substring(0, found.start()) + element(OPEN) + text.substring(found.end());
        return of(open).equals(found.group(1));
    }

    private static String element(String digest) {
        return "<takeup:digest>" + digest + "</takeup:digest>";
    }

    private static String of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }
}
