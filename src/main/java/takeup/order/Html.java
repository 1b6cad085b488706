package takeup.order;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * HTML written from the inside out: text goes through one encoder, and the page may run and fetch nothing (its content
 * security policy allows the one style block that it has, by its hash).
 */
final class Html {
    private final StringBuilder body = new StringBuilder();

    /** Markup of our own. */
    Html raw(String markup) {
        body.append(markup);
        return this;
    }

    /** Words from a file, made harmless and plain. */
    Html text(String words) {
        body.append(encoded(PrintedText.of(words)));
        return this;
    }

    /** An element that holds words. */
    Html element(String tag, String words) {
        int end = tag.indexOf(' ');
        return raw("<" + tag + ">").text(words).raw("</" + (end < 0 ? tag : tag.substring(0, end)) + ">");
    }

    /** The signs that mean something in HTML as references, in text and in quoted attributes alike. */
    static String encoded(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '`' -> safe.append("&#96;");
                default -> safe.append(c);
            }
        }
        return safe.toString();
    }

    /** The whole page. */
    String page(String title, String style) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta "
                + "http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                + "style-src 'sha256-" + hash(style) + "'; base-uri 'none'; form-action 'none'\">\n<title>"
                + encoded(PrintedText.of(title)) + "</title>\n<style>" + style
                + "</style>\n</head>\n<body>\n" + body + "</body>\n</html>\n";
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
}
