package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code sharp 2m-inf}: an aperture from near to far. */
class SharpCommandTest {
    @Test
    void theApertureIsHeldAndTheFocusIsSet() {
        Shooting day = Shooting.of("cam 35af", "load cn400");
        assertEquals(
                "Sharp from 2 m to infinity: f/22 focused at 4 m (blur up to 0.0288 mm, the diagonal / 1500)."
                        + " Suggestions keep f/22.",
                day.type("sharp 2m-inf"));
        assertTrue(day.type("m ev 14").contains("Set: f/22 "));
        String given = day.type("sharp 2-5m coc 0.05mm");
        assertTrue(
                given.startsWith("Sharp from 2 m to 5 m: f/8 focused at 2.86 m (blur up to 0.05 mm, as given)"), given);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        sharp                   | from where to where
        sharp 2m                | is no range
        sharp 5m-2m             | the near distance first
        sharp 2m-inf coc        | from where to where
        sharp 2m-inf coc 3mm    | is no circle of confusion
        sharp 0.05m-inf         | nearer than twice the focal length
        sharp -inf              | is no range
        """)
    void whatIsNoRangeIsNamed(String line, String why) {
        assertTrue(Shooting.of("cam 35af").refused(line).contains(why), line);
    }
}
