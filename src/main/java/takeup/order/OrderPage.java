package takeup.order;

import java.util.function.Consumer;
import takeup.text.HtmlWriter;

/**
 * One page of an order's paper.
 *
 * @param look the name of its look: sheet, labels, roll
 * @param body writes what is below the line that each page begins with
 */
record OrderPage(String look, Consumer<HtmlWriter> body) {
    /** Cut with a mark where it is too long for its place; plain text and JSON have all of it. */
    static String shortened(String words, int longest) {
        int end = words.offsetByCodePoints(0, Math.min(words.codePointCount(0, words.length()), longest));
        return end == words.length() ? words : words.substring(0, end) + "…";
    }

    /** A push or a pull in a box of its own, so that neither is taken for NORMAL or for the other. */
    static void development(HtmlWriter html, LabDevelopment development) {
        String words = development.order();
        if (words.startsWith("PUSH")) {
            html.element("b class=\"push\"", "▲ " + words);
        } else if (words.startsWith("PULL")) {
            html.element("b class=\"pull\"", "▼ " + words);
        } else {
            html.element("span class=\"normal\"", words);
        }
    }
}
