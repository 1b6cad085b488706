package takeup.roll;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.exposure.FilmSpeed;
import takeup.kit.FilmSize;
import takeup.kit.Stock;
import takeup.kit.Warning;

/**
 * The film of a roll and what is wanted of it.
 *
 * @param stock what was loaded
 * @param size 135, 120 or 220
 * @param index the exposure index; one for the whole roll
 * @param development what the lab is asked to do
 * @param framesNominal how many frames the counter promises: a hint, never a limit
 * @param label what stands on it beside its number
 */
public record Film(
        Stock stock, FilmSize size, FilmSpeed index, Development development, int framesNominal, RollLabel label) {
    public Film {
        if (framesNominal < 1 || framesNominal > 250) {
            throw new IllegalArgumentException("a roll holds 1 to 250 frames");
        }
    }

    /** A film with nothing on it but its number. */
    public Film(Stock stock, FilmSize size, FilmSpeed index, Development development, int framesNominal) {
        this(stock, size, index, development, framesNominal, RollLabel.NONE);
    }

    /** The same with something else on it. */
    public Film labelled(RollLabel other) {
        return new Film(stock, size, index, development, framesNominal, other);
    }

    /** The film after a correction. */
    public Film with(RollChange change) {
        return new Film(
                change.stock().orElse(stock),
                change.filmSize().orElse(size),
                change.index().orElse(index),
                new Development(
                        change.process().orElse(development.process()),
                        change.pushStops().orElse(development.pushStops())),
                change.framesNominal().orElse(framesNominal),
                label.with(change.label()));
    }

    /** The warning that the rating and the push do not fit each other, or the push the film. */
    public Optional<Warning> pushMismatch() {
        return DevelopmentWarnings.pushMismatch(stock, index, development.pushStops());
    }

    /** What is to be said of rating and development at the line that causes it. */
    public List<Warning> warnings() {
        return Stream.of(pushMismatch(), DevelopmentWarnings.ratedTooLow(stock, index, development.pushStops()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** {@code C-41, NORMAL (rated 200, box 400)}. */
    public String developmentWords() {
        return development.words(index, stock.boxSpeed());
    }
}
