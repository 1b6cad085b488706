package takeup.kit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;

/**
 * A film as it is bought: "Colour negative 400", C-41, box speed 400, usually rated 200.
 *
 * @param key what is typed after {@code load}
 * @param name as people call it
 * @param kind colour or black-and-white, negative or reversal
 * @param process the development it is made for, such as C-41
 * @param boxSpeed the speed printed on the box
 * @param usualIndex the exposure index that this photographer rates it at
 * @param filmSizes the sizes it is sold in
 * @param response how it answers to too little, too much and faint light
 */
public record Stock(
        String key,
        String name,
        Kind kind,
        String process,
        FilmSpeed boxSpeed,
        FilmSpeed usualIndex,
        List<FilmSize> filmSizes,
        Response response) {
    public Stock {
        filmSizes = List.copyOf(filmSizes);
    }

    /**
     * How a film answers to light that it was not made for.
     *
     * @param underStops how many stops of underexposure it tolerates, not below 0
     * @param overStops how many stops of overexposure it tolerates, not below 0
     * @param reciprocity how it behaves in long exposures
     * @param mostPushStops how far it is pushed at most; empty where its profile does not say
     * @param filter the filter that it is exposed through as a rule, as infrared film is; the usual index counts it in
     */
    public record Response(
            double underStops,
            double overStops,
            Reciprocity reciprocity,
            OptionalDouble mostPushStops,
            Optional<Filter> filter) {
        public Response(double underStops, double overStops, Reciprocity reciprocity) {
            this(underStops, overStops, reciprocity, OptionalDouble.empty(), Optional.empty());
        }
    }

    /**
     * How many stops more light than at box speed a film gets that is rated at an index. An index that is nearer to the
     * speed behind the film's own filter than to the box counts that filter in.
     */
    public double stopsOverBox(FilmSpeed index) {
        double over = boxSpeed.stopsOver(index);
        return countsFilter(index) ? over - response.filter.orElseThrow().stops() : over;
    }

    /** Whether an index counts the film's own filter in. */
    public boolean countsFilter(FilmSpeed index) {
        return response.filter.isPresent()
                && Stops.above(boxSpeed.stopsOver(index), response.filter.get().stops() / 2);
    }

    public OptionalDouble mostPushStops() {
        return response.mostPushStops;
    }

    public double underStops() {
        return response.underStops;
    }

    public double overStops() {
        return response.overStops;
    }

    public Reciprocity reciprocity() {
        return response.reciprocity;
    }

    /** What sort of picture is on the film. */
    public enum Kind {
        COLOUR_NEGATIVE("colour-negative"),
        BW_NEGATIVE("bw-negative"),
        COLOUR_REVERSAL("colour-reversal"),
        BW_REVERSAL("bw-reversal");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind of that name. */
        public static Optional<Kind> named(String word) {
            for (Kind kind : values()) {
                if (kind.word.equals(word)) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }

        /** Whether it is a negative, on which more light is the safer side. */
        public boolean isNegative() {
            return this == COLOUR_NEGATIVE || this == BW_NEGATIVE;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
