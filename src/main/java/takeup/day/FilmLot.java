package takeup.day;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.kit.FilmSize;

/**
 * Rolls in the bag that are alike: cn400 on 120, expires 2027-03, 6.20 a roll.
 *
 * @param stock the stock's key
 * @param size 135, 120 or 220
 * @param expires the month printed on the box
 * @param price what a roll costs, in the photographer's own currency; empty where it is not known
 * @param batch the number of the emulsion, from the box
 */
public record FilmLot(
        String stock, FilmSize size, Optional<YearMonth> expires, Optional<BigDecimal> price, Optional<String> batch) {
    /**
     * Stops of speed that a negative film loses in ten years past its date: a rule of thumb, common practice without a
     * source.
     */
    private static final double STOPS_A_DECADE = 1;

    public FilmLot {
        if (price.isPresent() && price.get().signum() < 0) {
            throw new IllegalArgumentException("a price is not below 0");
        }
    }

    /** Rolls whose batch is not known. */
    public FilmLot(String stock, FilmSize size, Optional<YearMonth> expires, Optional<BigDecimal> price) {
        this(stock, size, expires, price, Optional.empty());
    }

    // Written by hand: a bag compares its lots at the start, where the generated ones take 20 ms to be made ready.
    @Override
    public boolean equals(Object other) {
        return other == this
                || other instanceof FilmLot lot
                        && is(lot.stock, lot.size)
                        && expires.equals(lot.expires)
                        && price.equals(lot.price)
                        && batch.equals(lot.batch);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * stock.hashCode() + expires.hashCode()) + price.hashCode()) + batch.hashCode();
    }

    /** Whether it is film of that stock and size. */
    public boolean is(String otherStock, FilmSize otherSize) {
        return stock.equals(otherStock) && size == otherSize;
    }

    /** Whether it is past its date on a day: from the month after the printed one on. */
    public boolean isExpired(LocalDate on) {
        return expires.isPresent() && YearMonth.from(on).isAfter(expires.get());
    }

    /** Years past the printed month; 0 where it is good, or its date is not known. */
    public double yearsPast(LocalDate on) {
        return isExpired(on) ? expires.get().until(YearMonth.from(on), ChronoUnit.MONTHS) / 12.0 : 0;
    }

    /** The light that the rule of thumb adds for age, in stops: one a decade; empty while it is good. */
    public OptionalDouble agedStops(LocalDate on) {
        return isExpired(on) ? OptionalDouble.of(yearsPast(on) / 10 * STOPS_A_DECADE) : OptionalDouble.empty();
    }

    @Override
    public String toString() {
        return stock + " " + size + batch.map(it -> ", batch " + it).orElse("")
                + expires.map(it -> ", expires " + it).orElse("")
                + price.map(it -> ", " + it.toPlainString() + " a roll").orElse("");
    }
}
