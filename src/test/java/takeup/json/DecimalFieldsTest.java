package takeup.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The name of a field says whether its numbers are decimals. */
class DecimalFieldsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        {"fNumber":8}                         | {"fNumber":8.0}
        {"errorStops":-1,"frame":7}           | {"errorStops":-1.0,"frame":7}
        {"rows":[{"seconds":30,"count":2}]}   | {"rows":[{"seconds":30.0,"count":2}]}
        {"points":[[1,2],[10,60]]}            | {"points":[[1.0,2.0],[10.0,60.0]]}
        {"distanceM":null,"focalMm":80}       | {"distanceM":null,"focalMm":80.0}
        {"exposureIndex":12.5,"boxSpeed":25}  | {"exposureIndex":12.5,"boxSpeed":25.0}
        {"note":"8","minutes":90,"must":true} | {"note":"8","minutes":90,"must":true}
        """)
    void stopsSecondsAndLengthsHaveAPointAndCountsHaveNone(String given, String written) throws JsonText.NotJson {
        assertEquals(written, JsonText.line(DecimalFields.in(JsonText.read(given))));
    }
}
