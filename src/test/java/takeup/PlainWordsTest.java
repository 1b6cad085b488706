package takeup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The README is short and in short sentences: it is read by someone who has not decided yet. */
class PlainWordsTest {
    private static final int LONGEST_SENTENCE = 35;
    private static final double MEAN_SENTENCE = 16;

    /** The paragraphs and list items of a page without headings, tables, pictures and blocks of code. */
    private static List<String> sentences(String page) {
        String prose = page.replaceAll("(?s)```.*?```", "").replaceAll("(?m)^(\\||#|!).*$", "");
        List<String> sentences = new ArrayList<>();
        for (String paragraph : prose.split("\n\\s*\n|\n(?=- )")) {
            for (String sentence :
                    paragraph.strip().replaceAll("\\s+", " ").split("(?<=[.?!:]\\*{0,2}) +(?=[A-Z`*\\[])")) {
                if (words(sentence) > 0) {
                    sentences.add(sentence);
                }
            }
        }
        return sentences;
    }

    private static int words(String text) {
        return (int) Pattern.compile(" ")
                .splitAsStream(text)
                .filter(word -> word.matches(".*[\\p{L}\\p{N}].*"))
                .count();
    }

    @Test
    void theReadmeIsReadInFiveMinutesAndInShortSentences() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        List<String> sentences = sentences(readme);
        List<String> tooLong = sentences.stream()
                .filter(sentence -> words(sentence) > LONGEST_SENTENCE)
                .toList();
        assertEquals(List.of(), tooLong);
        double mean =
                sentences.stream().mapToInt(PlainWordsTest::words).average().orElseThrow();
        assertTrue(
                sentences.size() > 30 && mean <= MEAN_SENTENCE, sentences.size() + " sentences of " + mean + " words");
        int all = readme.split("\\s+").length;
        assertTrue(all >= 900 && all <= 1200, all + " words");
    }
}
