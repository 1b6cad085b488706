package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing that a lab could take for a push is printed as a sign. */
class PrintedTextTest {
    @ParameterizedTest(name = "{0} is printed {1}")
    @CsvSource(ignoreLeadingAndTrailingWhitespace = true, textBlock = """
        +1,                     plus 1
        push+1,                 push plus 1
        -1 stop,                minus 1 stop
        (-1),                   ( minus 1)
        +1/3,                   plus 1/3
        f/5.6+3/10,             f/5.6 plus 3/10
        \uff0b2 \u22121,        plus 2 minus 1
        C-41,                   C-41
        2-4 rolls,              2-4 rolls
        2026-09-12,             2026-09-12
        +49 30 1234,            +49 30 1234
        bow - 2 seats,          bow - 2 seats
        """)
    void aSignBeforeANumberBelowTenBecomesAWord(String typed, String printed) {
        assertEquals(printed, PrintedText.of(typed));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "0, NORMAL",
        "1, PUSH 1 STOP",
        "2, PUSH 2 STOPS",
        "0.5, PUSH 0.5 STOPS",
        "-1, PULL 1 STOP",
        "-0.333, PULL 0.3 STOPS",
        "0.04, NORMAL"
    })
    void developmentIsToldInWords(double stops, String order) {
        assertEquals(order + " (rated 200, box 400)", new LabDevelopment("C-41", stops, 200, 400).words());
    }
}
