package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the test vectors of FNV-1a, 64 bits, that its authors publish (from memory). */
class StableIdTest {
    @ParameterizedTest
    @CsvSource({"'', cbf29ce484222325", "a, af63dc4c8601ec8c", "foobar, 85944171f73967e8"})
    void itIsFnv1aOf64Bits(String text, String id) {
        assertEquals(id, StableId.of(text));
    }
}
