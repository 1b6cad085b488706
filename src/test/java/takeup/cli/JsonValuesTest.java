package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Values in answers to --json that a neighbouring field of the same kind could be mistaken for. */
class JsonValuesTest {
    private static String answer(String... words) {
        Installed.Ended ended = InProcess.run("", List.of(words));
        assertEquals(0, ended.status(), ended.toString());
        return ended.out();
    }

    /** The shipped colour negative 400 is rated 200. */
    @Test
    void theListOfStocksTellsBoxSpeedAndUsualIndexApart() {
        assertTrue(Pattern.compile("\"key\" : \"cn400\"[^}]*\"boxSpeed\" : 400(\\.0)?,\\s*\"usualEI\" : 200(\\.0)?\\s")
                .matcher(answer("stock", "--json", "--data", "target/nowhere"))
                .find());
    }

    /** In black and white, bold stands where nothing is reversed, and is missing where something is. */
    @Test
    void aThemeTellsBoldFromReversed() {
        String themes = answer("themes", "--json");
        assertTrue(
                Pattern.compile("\"bold\" : true,\\s*\"underline\" : \\w+,\\s*\"reverse\" : false")
                        .matcher(themes)
                        .find(),
                themes);
    }
}
