package takeup.roll;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import takeup.exposure.FilmSpeed;
import takeup.kit.FilmSize;
import takeup.kit.Stock;

/** A correction of what is known about a roll; what it does not mention is empty and stays. */
public record RollChange(
        Optional<Stock> stock,
        Optional<FilmSize> filmSize,
        Optional<FilmSpeed> index,
        OptionalDouble pushStops,
        Optional<String> process,
        OptionalInt framesNominal,
        RollLabel label) {
    /** A correction of the film, and not of what stands on it. */
    public RollChange(
            Optional<Stock> stock,
            Optional<FilmSize> filmSize,
            Optional<FilmSpeed> index,
            OptionalDouble pushStops,
            Optional<String> process,
            OptionalInt framesNominal) {
        this(stock, filmSize, index, pushStops, process, framesNominal, RollLabel.NONE);
    }

    /** The same, and what stands on the roll. */
    public RollChange labelled(RollLabel other) {
        return new RollChange(stock, filmSize, index, pushStops, process, framesNominal, other);
    }

    /** No change. */
    public static final RollChange NOTHING = new RollChange(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalInt.empty());

    /** Development only. */
    public static RollChange push(double stops) {
        return new RollChange(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(stops),
                Optional.empty(),
                OptionalInt.empty());
    }
}
