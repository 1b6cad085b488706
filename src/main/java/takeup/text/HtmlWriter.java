package takeup.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.function.UnaryOperator;

/**
 * Writes an HTML page from its first element to its last. Markup of the program's own goes through {@link #raw}, all
 * that somebody typed through {@link #text}, which is the one place where it is escaped. A page runs and fetches
 * nothing: there is no method for a script or a link.
 */
public final class HtmlWriter {
    private final StringBuilder body = new StringBuilder();
    private final UnaryOperator<String> wording;

    /** A writer of words as they are. */
    public HtmlWriter() {
        this(UnaryOperator.identity());
    }

    /** A writer that puts all words through a function first, before it escapes them. */
    public HtmlWriter(UnaryOperator<String> wording) {
        this.wording = wording;
    }

    /** Markup, as it is. */
    public HtmlWriter raw(String markup) {
        body.append(markup);
        return this;
    }

    /** Words, escaped. */
    public HtmlWriter text(String words) {
        return raw(escaped(wording.apply(words)));
    }

    /** An element that holds words; attributes stand behind the name: {@code td class="number"}. */
    public HtmlWriter element(String tag, String words) {
        int end = tag.indexOf(' ');
        return raw("<" + tag + ">").text(words).raw("</" + (end < 0 ? tag : tag.substring(0, end)) + ">");
    }

    /** The whole page: the head is markup, the body what was written so far. */
    public String page(String head) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" + head + "</head>\n<body>\n"
                + body + "</body>\n</html>\n";
    }

    /**
     * The head of a page with one style block. The page may run and fetch nothing: its policy allows that block alone,
     * by its hash.
     */
    public static String head(String title, String style) {
        return head(title, style, "");
    }

    /** The same for a page whose pictures stand in it: no other is fetched. */
    public static String headWithPictures(String title, String style) {
        return head(title, style, " img-src data:;");
    }

    private static String head(String title, String style, String allowed) {
        return "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-"
                + hash(style) + "';" + allowed + " base-uri 'none'; form-action 'none'\">\n<title>" + escaped(title)
                + "</title>\n<style>" + style + "</style>\n";
    }

    private static String hash(String style) {
        try {
            return Base64.getEncoder()
                    .encodeToString(
                            MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Words that are safe as text and in quoted attributes: characters with a meaning in HTML as references, control
     * characters as blanks.
     */
    public static String escaped(String words) {
        StringBuilder safe = new StringBuilder(words.length() + 16);
        for (int at = 0; at < words.length(); at++) {
            char c = words.charAt(at);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '`' -> safe.append("&#96;");
                default -> safe.append(Character.isISOControl(c) ? ' ' : c);
            }
        }
        return safe.toString();
    }
}
