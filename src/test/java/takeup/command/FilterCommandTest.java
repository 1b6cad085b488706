package takeup.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.ReferenceTable;
import takeup.report.SetupText;

/** What is on the lens, as a loss in words. */
class FilterCommandTest {
    // stops = log2(factor) = density / log10(2) = log2(ND number): the textbook formulas; factors: Filter.
    @ParameterizedTest(name = "{0} takes {1} stops")
    @CsvSource({
        "filter yellow,1",
        "filter red,3",
        "filter 3x,1.584963",
        "filter 1.5x,0.584963",
        "filter +1.5,1.5",
        "filter +1/3,0.333333",
        "filter nd0.9,2.989735",
        "'filter nd0,9',2.989735",
        "filter nd 0.9,2.989735",
        "filter nd3.0,9.965784",
        "filter nd8,3",
        "filter nd1000,9.965784",
        "filter nd2,1",
        "filter yellow and nd0.9,3.989735",
        "filter yellow and red and nd8,7",
        "filter yellow 3x,1.584963",
        "filter mist +1/2,0.5",
        "filter yellow 4x and nd8,5",
        "filter FILTER 2x,1",
        "filter off,0"
    })
    void aFilterIsNamedOrGivenByItsLoss(String line, double stops) {
        assertEquals(stops, Shooting.medium("filter orange", line).setting().filterStops(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "filter yellow | On 645: yellow takes 1 stop (2x).",
                "filter yellow and nd0.9 | On 645: yellow takes 1 stop (2x), nd0.9 takes 3 stops (7.9x), "
                        + "together 4 stops.",
                "filter 3x | On 645: 3x = 1.6 stops.",
                "filter +1.5 | On 645: a filter takes 1.5 stops (2.8x).",
                "filter nd1000 | On 645: nd1000 takes 10 stops (1000x).",
                "filter off | No filter on 645."
            })
    void theEchoSaysTheLossInWords(String line, String words) {
        assertEquals(words, Shooting.medium().type(line));
    }

    @Test
    void aNewFilterTakesThePlaceOfWhatWasThere() {
        assertEquals(
                "[FILTER red]",
                SetupText.marks(Shooting.medium("filter yellow and nd0.9", "filter red")
                                .inHand())
                        .toString());
    }

    @Test
    void aLossInStopsIsNeverPrintedAsABarePlusOne() {
        assertEquals(
                "[FILTER +1 stop]",
                SetupText.marks(Shooting.medium("filter +1").inHand()).toString());
    }

    @Test
    void aBareNumberIsRefusedWithTheTwoThingsItCouldMean() {
        String why = Shooting.medium().refused("filter 2");
        assertTrue(why.contains("2x") && why.contains("+2"), why);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "filter",
                "filter violet",
                "filter and",
                "filter yellow and",
                "filter and yellow",
                "filter yellow and and red",
                "filter yellow 3",
                "filter yellow red",
                "filter 3x yellow",
                "filter 0.5x",
                "filter nd0",
                "filter nd0.5x",
                "filter -1",
                "filter yellow 3x 4x",
                "filter +31",
                "filter off 3x",
                "filter 2 3x",
                "filter yellow ; words",
                "filter off and red"
            })
    void whatIsNoFilterIsRefused(String line) {
        Shooting.medium("filter orange").refused(line);
    }

    @Test
    void aNearlyRightNameIsAskedFor() {
        assertTrue(Shooting.medium().refused("filter yelow").contains("did you mean yellow?"));
        assertTrue(Shooting.medium().refused("filter mist").contains("filter mist 4x"));
    }

    @Test
    void theDensityTableIsReadAsPrinted() {
        long read = ReferenceTable.rows("nd_filters")
                .filter(it -> it.number("nd_number") != 10000)
                .peek(it -> {
                    String density = it.text("density").contains(".") ? it.text("density") : it.text("density") + ".0";
                    assertEquals(
                            it.number("stops"),
                            Shooting.medium("filter nd" + density).setting().filterStops(),
                            1e-4,
                            it.toString());
                    // An ND number is rounded: ND8 and density 0.9 differ by 0.01 stop, ND512 and 2.7 by 0.03.
                    assertEquals(
                            it.number("stops"),
                            Shooting.medium("filter nd" + it.text("nd_number"))
                                    .setting()
                                    .filterStops(),
                            0.035,
                            it.toString());
                })
                .count();
        assertTrue(read > 5);
    }

    /**
     * Yellow takes 1 stop, as the trade has it (factor 2, common practice, no source); f/8 then lets through 1 stop
     * less again.
     */
    @Test
    void whatTheLightMakesOfTheSettingIsSaidOnceItIsOtherThanBefore() {
        Shooting shooting = Shooting.medium("m 5.6 125");
        assertTrue(
                shooting.type("filter yellow").endsWith(" For this light 1.0 under."),
                shooting.answer().text());
        assertTrue(
                shooting.type("set 8").endsWith(" For this light 2.0 under."),
                shooting.answer().text());
        assertTrue(
                !shooting.type("tripod on").contains("For this light"),
                shooting.answer().text());
        assertTrue(
                shooting.type("filter off").endsWith(" For this light 1.0 under."),
                shooting.answer().text());
    }
}
