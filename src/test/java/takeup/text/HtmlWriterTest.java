package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HtmlWriterTest {
    /** The five characters of HTML Living Standard, 13.3, Escaping a string, with the quotes that old browsers read. */
    @ParameterizedTest(name = "{0} is written as {1}")
    @CsvSource(quoteCharacter = '|', textBlock = """
            Bow & stroke,        Bow &amp; stroke
            <b>,                 &lt;b&gt;
            "wet" slip,          &quot;wet&quot; slip
            cox's seat,          cox&#39;s seat
            `run`,               &#96;run&#96;
            Ünal at f/8 → 1/125, Ünal at f/8 → 1/125
            """)
    void escapesWhatHasAMeaningInHtml(String words, String written) {
        assertEquals(written, HtmlWriter.escaped(words));
    }

    @Test
    void writesAControlCharacterAsABlank() {
        assertEquals("a b c d", HtmlWriter.escaped("a\tb\u001bc\u0085d"));
    }

    @Test
    void anElementKeepsItsAttributesAndEscapesItsWords() {
        assertEquals(
                page("<td class=\"note\">4 &lt; 5</td>"),
                new HtmlWriter().element("td class=\"note\"", "4 < 5").page(""));
    }

    @Test
    void wordsGoThroughTheWordingBeforeTheyAreEscaped() {
        HtmlWriter loud = new HtmlWriter(it -> it.toUpperCase(Locale.ROOT));
        assertEquals(
                page("<i>raw</i>FRAME &amp; NOTE"),
                loud.raw("<i>raw</i>").text("frame & note").page(""));
    }

    private static String page(String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n</head>\n<body>\n" + body
                + "</body>\n</html>\n";
    }
}
