package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON text to plain data and back. */
class JsonTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"{\"a\":[1,2.5,-0.00024414,true,false,null,\"b\"],\"c\":{}}", "[]", "\"\\u0007 bell, \\\" quote, é\"", "0.1", "[[[]]]"})
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

    @Test
    void notKnownIsNullAndNeverZero() {
        assertEquals("{\"a\":null,\"b\":null,\"c\":2.5,\"d\":[1,\"f/8\"]}", JsonText.line(Json.object().and("a", Optional.empty())
                .and("b", OptionalDouble.empty()).and("c", OptionalDouble.of(2.5)).and("d", List.of(1, takeup.exposure.Scale.anyAperture(8)))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"a\":1,\"a\":2}", "1 2", "NaN", "1e999", "{'a':1}", "[1,]", "{\"a\":01}"})
    void whatIsNotStrictJsonIsRefused(String text) {
        assertThrows(JsonText.NotJson.class, () -> JsonText.read(text));
    }

    @Test
    void aDeepNestIsRefusedRatherThanClimbed() {
        assertThrows(JsonText.NotJson.class, () -> JsonText.read("[".repeat(5000) + "]".repeat(5000)));
    }
}
