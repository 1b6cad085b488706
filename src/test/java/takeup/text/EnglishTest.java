package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnglishTest {
    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({"0, 0 frames", "1, 1 frame", "2, 2 frames", "36, 36 frames"})
    void onlyOneIsWrittenWithoutAnS(int number, String words) {
        assertEquals(words, English.count(number, "frame"));
    }

    @Test
    void aVerbAgreesWithItsNumber() {
        assertEquals("is", English.agree(1, "is", "are"));
        assertEquals("are", English.agree(0, "is", "are"));
        assertEquals("are", English.agree(2, "is", "are"));
    }

    @ParameterizedTest(name = "{0} is listed as: {1}")
    @CsvSource(
            delimiter = '|',
            value = {"'' | ''", "a | a", "a b | a and b", "a b c | a, b and c"})
    void onlyTheLastOfAListStandsBehindAnd(String words, String listed) {
        List<String> all =
                Arrays.stream(words.split(" ")).filter(it -> !it.isEmpty()).toList();
        assertEquals(listed, English.list(all));
    }

    @Test
    void aSentenceBeginsWithACapitalAndKeepsItsOtherLetters() {
        assertEquals("F/11 from R0007", English.capitalised("f/11 from R0007"));
        assertEquals("", English.capitalised(""));
    }
}
