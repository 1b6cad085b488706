package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.ReferenceTable;

/** Filters by name; factors read in the table filters. */
class FilterTest {
    @ParameterizedTest(name = "{0} is {1} in the table")
    @CsvSource({
        "yellow,yellow",
        "yellow-green,yellow-green",
        "red,red",
        "r25,red",
        "green,green",
        "polariser,polariser low",
        "pol,polariser low",
        "polarizer,polariser low",
        "polariser-high,polariser high",
        "blue,blue 3200K to 5500K",
        "80a,blue 3200K to 5500K",
        "warming,warming",
        "81a,warming",
        "amber,orange 5500K to 3200K",
        "85b,orange 5500K to 3200K",
        "skylight,skylight/UV",
        "uv,skylight/UV"
    })
    void aFilterTakesWhatTheTableSays(String name, String inTable) {
        ReferenceTable.Row row = ReferenceTable.rows("filters")
                .filter(it -> it.text("filter").equals(inTable))
                .findFirst()
                .orElseThrow();
        assertEquals(row.number("stops"), Filter.named(name).orElseThrow().stops(), 1e-6);
    }

    @Test
    void everyNamedFilterIsTestedAboveAndAnUnknownOneIsNone() {
        assertEquals(12, Filter.names().size());
        assertEquals(2, Filter.named("orange").orElseThrow().stops(), 1e-9); // common practice; the table has 1.6
        assertEquals(4, Filter.named("ir").orElseThrow().stops(), 1e-9); // common practice, no source
        assertEquals("r25", Filter.named("r25").orElseThrow().name());
        assertEquals(Optional.empty(), Filter.named("violet"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "yellow,yellow takes 1 stop (2x)",
        "orange,orange takes 2 stops (4x)",
        "green,green takes 2.6 stops (6x)",
        "skylight,skylight takes 0 stops (1x)"
    })
    void theLossIsSaidAsStopsAndAsAFactor(String name, String words) {
        assertEquals(words, Filter.named(name).orElseThrow().words());
    }

    @Test
    void aFilterThatAddsLightIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Filter.factor("lamp", 0.5));
        assertThrows(IllegalArgumentException.class, () -> new Filter("lens cap", 31));
    }
}
