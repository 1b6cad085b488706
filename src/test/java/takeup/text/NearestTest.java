package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edits are counted by hand, a swap of neighbours as one: at most two, and at most a third of the longer word. */
class NearestTest {
    private static final List<String> WORDS = List.of(
            "m",
            "set",
            "load",
            "unload",
            "cam",
            "blank",
            "frames",
            "rolls",
            "filter",
            "hand-held",
            "cn400",
            "cn800",
            "80",
            "150");

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            nullValues = "-",
            value = {
                // one edit in a word of three to five letters
                "laod, load",
                "lod, load",
                "lload, load",
                "load, load",
                "st, set",
                "cma, cam",
                "LAOD, load",
                "cn40, cn400",
                "81, 80",
                // two from six letters on
                "unlaodd, unload",
                "framse, frames",
                "frmaes, frames",
                "fitler, filter",
                "hnad-hed, hand-held",
                // too far: two edits in four letters, three in six, and words of another kind
                "lxxd, -",
                "banana, -",
                "frxxxs, -",
                "velvet, -",
                "n, -",
                "q, -",
                "zz, -",
                "boathouse, -",
                "150x, 150",
                "x150x, -",
                "'', -"
            })
    void whatWasProbablyMeant(String typed, String known) {
        assertEquals(known == null ? "none" : known, Nearest.to(typed, WORDS).orElse("none"));
    }

    @Test
    void ofTwoThatAreEquallyNearTheFirstIsNamed() {
        assertEquals("; did you mean cn400?", Nearest.question("cn600", WORDS));
        assertEquals("", Nearest.question("banana", WORDS));
    }
}
