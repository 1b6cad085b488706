package takeup.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.exposure.Scale;
import takeup.text.Hidden;

/** JSON text to plain data and back. */
class JsonTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"a\":[1,2.5,-0.00024414,true,false,null,\"b\"],\"c\":{}}",
                "[]",
                "\"\\u0007 bell, \\\" quote, é\"",
                "0.1",
                "[[[]]]"
            })
    void whatIsReadIsWrittenAsItStood(String text) throws JsonText.NotJson {
        assertEquals(text, JsonText.line(JsonText.read(text)));
        assertEquals(text, JsonText.line(JsonText.read(JsonText.pretty(JsonText.read(text)))));
    }

    @Test
    void eachValueKnowsItsLine() throws JsonText.NotJson {
        Json.Obj object = (Json.Obj) JsonText.read("{\n\"a\": 1,\n\n\"b\": [\n2]}");
        assertEquals(2, object.field("a").orElseThrow().line());
        assertEquals(4, object.field("b").orElseThrow().line());
        assertEquals(5, ((Json.Arr) object.field("b").get()).items().get(0).line());
    }

    /** Some editors end lines with a carriage return alone. */
    @Test
    void aLineMayEndInACarriageReturn() throws JsonText.NotJson {
        assertEquals(
                2,
                ((Json.Obj) JsonText.read("{\r\"a\": 1}"))
                        .field("a")
                        .orElseThrow()
                        .line());
    }

    @Test
    void notKnownIsNullAndNeverZero() {
        assertEquals(
                "{\"a\":null,\"b\":null,\"c\":2.5,\"d\":[1,\"f/8\"]}",
                JsonText.line(Json.object()
                        .and("a", Optional.empty())
                        .and("b", OptionalDouble.empty())
                        .and("c", OptionalDouble.of(2.5))
                        .and("d", List.of(1, Scale.anyAperture(8)))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"a\":1,\"a\":2}", "1 2", "NaN", "1e999", "{'a':1}", "[1,]", "{\"a\":01}"})
    void whatIsNotStrictJsonIsRefused(String text) {
        assertThrows(JsonText.NotJson.class, () -> JsonText.read(text));
    }

    /** What steers a terminal, or is no whole letter, leaves as an escape that any reader of JSON turns back. */
    @Test
    void whatATerminalMightObeyIsWrittenAsAnEscape() throws JsonText.NotJson {
        String text = "bow \u009b2J\u202e seat \ud83d\udea3 \ud83d";
        String written =
                JsonText.line(Json.object().and("note", Optional.of(text)).and("frame", OptionalInt.of(3)));
        assertEquals("{\"note\":\"bow \\u009b2J\\u202e seat \ud83d\udea3 \\ud83d\",\"frame\":3}", written);
        assertEquals(
                text,
                ((Json.Text) ((Json.Obj) JsonText.read(written)).field("note").orElseThrow()).value());
    }

    /**
     * Whatever stands in a text, another reader of JSON finds the same text, and nothing that a terminal might obey.
     */
    @Test
    void whateverIsWrittenIsReadBackByAnotherReader() throws IOException, JsonText.NotJson {
        Random random = new Random(20260913);
        for (int i = 0; i < 2000; i++) {
            String text = any(random, "aé\u001b\u0000\u007f\u009b\u202e\u2028\ufeff\ud83d\udea3\ud800\\\"\u3164");
            String written = JsonText.line(Json.of(text));
            assertEquals(written.length(), Hidden.first(written), written);
            try (JsonParser parser = new JsonFactory().createParser(written)) {
                parser.nextToken();
                assertEquals(text, parser.getText());
            }
            assertEquals(text, ((Json.Text) JsonText.read(written)).value());
        }
    }

    /** A text of these letters, cut anywhere. */
    private static String any(Random random, String letters) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(6); length > 0; length--) {
            int from = random.nextInt(letters.length());
            boolean isPair = Character.isSurrogatePair(
                    letters.charAt(from), letters.charAt(Math.min(from + 1, letters.length() - 1)));
            text.append(letters, from, from + (isPair ? 2 : 1));
        }
        return text.toString();
    }

    /** The limits are those of the class; the last that fits is read. */
    @ParameterizedTest(name = "{1}")
    @MethodSource("limits")
    void whatIsLargerThanAnyFileNeedsIsRefusedInWords(String fits, String why, String beyond) throws JsonText.NotJson {
        JsonText.read(fits);
        JsonText.NotJson refused = assertThrows(JsonText.NotJson.class, () -> JsonText.read(beyond));
        assertEquals(why, refused.getMessage());
        assertEquals(1, refused.line());
    }

    static Stream<Arguments> limits() {
        return Stream.of(
                Arguments.of(
                        "[".repeat(32) + "]".repeat(32),
                        "brackets stand in brackets, more than 32 deep",
                        "[".repeat(33) + "]".repeat(33)),
                Arguments.of("9".repeat(64), "a number has more than 64 digits", "9".repeat(65)),
                Arguments.of(
                        "{\"" + "x".repeat(200) + "\":1}",
                        "a field's name has more than 200 letters",
                        "{\"" + "x".repeat(201) + "\":1}"),
                Arguments.of(
                        "\"" + "x".repeat(20_000) + "\"",
                        "a text has more than 20000 letters",
                        "\"" + "x".repeat(40_000) + "\""),
                Arguments.of(
                        "1" + " ".repeat(7_000_000),
                        "it is longer than anything that is read here",
                        "1" + " ".repeat(9_000_000)));
    }

    /** A name may hold a line feed; what is told of it stays on one line. */
    @Test
    void theReasonIsOneLine() {
        assertEquals(
                "this is not JSON: Duplicate field 'bow",
                assertThrows(JsonText.NotJson.class, () -> JsonText.read("{\"bow\\nseat\":1,\"bow\\nseat\":2}"))
                        .getMessage());
    }

    @Test
    void aDeepNestIsRefusedRatherThanClimbed() {
        assertThrows(JsonText.NotJson.class, () -> JsonText.read("[".repeat(5000) + "]".repeat(5000)));
    }

    @Test
    void aLineThatIsSurelyReadableIsReadAndOneThatCannotBeIsNeverCalledSo() throws JsonText.NotJson {
        Json.Obj frame = Json.object()
                .and("event", "frame")
                .and("note", "NaN Infinity [[[ \\ \"quoted\" }")
                .and("numbers", List.of(1, -0.25, 0.001))
                .and("known", Optional.empty());
        assertTrue(JsonText.isSurelyReadable(JsonText.line(frame)));
        assertEquals(JsonText.line(frame), JsonText.line(JsonText.readLine(JsonText.line(frame))));
        Json deep = Json.object();
        for (int i = 0; i < 40; i++) {
            deep = Json.object().and("in", deep);
        }
        for (Json no : List.of(
                Json.object().and("number", Double.NaN),
                Json.object().and("number", Double.NEGATIVE_INFINITY),
                Json.object().and("number", 1e300),
                Json.object().and("note", "x".repeat(20_001)),
                deep)) {
            assertFalse(JsonText.isSurelyReadable(JsonText.line(no)), JsonText.line(no));
        }
        assertFalse(JsonText.isSurelyReadable("{\"number\":1e999}"));
        assertFalse(JsonText.isSurelyReadable("{\"note\":\"torn"));
        assertFalse(JsonText.isSurelyReadable("{\"note\":\n1}"));
        assertFalse(
                JsonText.isSurelyReadable(JsonText.line(Json.object().and("note", "é"))), "not sure, so it is read");
    }
}
