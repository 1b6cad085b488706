package takeup.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.kit.FilmSize;
import takeup.roll.RollId;

/** Film in the bag: what goes in, what is taken first, what has grown old. */
class BagTest {
    private static final FilmLot FRESH = lot("2028-01");
    private static final FilmLot OLD = lot("2026-03");
    private static final FilmLot UNDATED = new FilmLot("cn400", FilmSize.F120, Optional.empty(), Optional.empty());
    private static final RollId R1 = new RollId("R", 1);

    private static FilmLot lot(String expires) {
        return new FilmLot(
                "cn400", FilmSize.F120, Optional.of(YearMonth.parse(expires)), Optional.of(new BigDecimal("6.20")));
    }

    @Test
    void whatExpiresFirstIsTakenFirstAndWhatBearsNoDateLast() {
        Bag bag = Bag.NONE.plus(UNDATED, 1).plus(FRESH, 1).plus(OLD, 1);
        assertEquals(Optional.of(OLD), bag.next("cn400", FilmSize.F120));
        bag = bag.into(R1, OLD);
        assertEquals(Optional.of(FRESH), bag.next("cn400", FilmSize.F120));
        bag = bag.plus(FRESH, -1);
        assertEquals(Optional.of(UNDATED), bag.next("cn400", FilmSize.F120));
        assertEquals(Optional.empty(), bag.next("cn400", FilmSize.F135));
        assertEquals(Optional.empty(), bag.next("bw400", FilmSize.F120));
    }

    @Test
    void rollsOfAStockAreCountedOverItsLots() {
        Bag bag = Bag.NONE.plus(OLD, 3).plus(FRESH, 10).plus(FRESH, 2).plus(OLD, -5);
        assertEquals(12, bag.rolls("cn400", FilmSize.F120));
        assertEquals(0, bag.rolls("cn400", FilmSize.F135));
        assertEquals(
                List.of(FRESH), bag.filled().stream().map(Map.Entry::getKey).toList());
        assertFalse(bag.carried().lots().containsKey(OLD), "a lot that is used up is forgotten overnight");
    }

    @Test
    void aRollInACameraKeepsItsLotUntilItIsFinished() {
        Bag bag = Bag.NONE.plus(OLD, 1).into(R1, OLD);
        assertEquals(OLD, bag.carried().loaded().get(R1));
        assertEquals(Map.of(), bag.finished(R1).loaded());
    }

    /**
     * Printed 2016-03: in September 2026 that is 10 years and 6 months, 1.05 stops by one stop a decade. The printed
     * month itself is still good.
     */
    @ParameterizedTest(name = "printed {0}, on {1}: {2}")
    @CsvSource({"2016-03, 2026-09-12, 1.05", "2026-08, 2026-09-12, 0.00833", "2021-09, 2026-09-30, 0.5"})
    void oneStopADecadeIsTheRuleOfThumb(String printed, LocalDate on, double stops) {
        assertEquals(stops, lot(printed).agedStops(on).orElseThrow(), 0.00005);
    }

    @ParameterizedTest
    @CsvSource({"2026-09, 2026-09-30", "2026-10, 2026-09-12", "2030-01, 2026-09-12"})
    void filmIsGoodToTheEndOfThePrintedMonth(String printed, LocalDate on) {
        assertEquals(OptionalDouble.empty(), lot(printed).agedStops(on));
        assertEquals(OptionalDouble.empty(), UNDATED.agedStops(on));
    }
}
