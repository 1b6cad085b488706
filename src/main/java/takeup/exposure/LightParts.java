package takeup.exposure;

import java.util.OptionalDouble;

/**
 * The light that the film gets against what it needs, in stops, and the parts that it is made of; + is more.
 *
 * @param ambientStops the light that is there anyway, alone; empty where it is not known
 * @param flashStops the flash alone; empty where it is off, or not known
 * @param totalStops both together; empty where a part is on and not known
 */
public record LightParts(OptionalDouble ambientStops, OptionalDouble flashStops, OptionalDouble totalStops) {
    /** Nothing known. */
    public static final LightParts UNKNOWN =
            new LightParts(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** Two amounts of light together: where one is empty, there is only the other. */
    static OptionalDouble together(OptionalDouble a, OptionalDouble b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        return OptionalDouble.of(Stops.sum(a.getAsDouble(), b.getAsDouble()));
    }

    /** Further light on the same frame; its total is known only where both are. */
    public LightParts and(LightParts more) {
        return new LightParts(
                together(ambientStops, more.ambientStops),
                together(flashStops, more.flashStops),
                totalStops.isEmpty() || more.totalStops.isEmpty()
                        ? OptionalDouble.empty()
                        : together(totalStops, more.totalStops));
    }

    /** All of it so many stops more. */
    public LightParts plus(double stops) {
        return new LightParts(plus(ambientStops, stops), plus(flashStops, stops), plus(totalStops, stops));
    }

    private static OptionalDouble plus(OptionalDouble value, double stops) {
        return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() + stops);
    }

    /** Whether there are two parts, and both are known. */
    public boolean isMixed() {
        return ambientStops.isPresent() && flashStops.isPresent();
    }

    /** The error in words, the parts behind it where there are two; "" where it is not known. */
    public String words() {
        if (totalStops.isEmpty()) {
            return "";
        }
        String total = Stops.error(totalStops.getAsDouble());
        return !isMixed() ? total : total + " (" + parts() + ")";
    }

    /** The parts in words, where there are two: {@code ambient 3.0 over, flash 1.5 under}; else "". */
    public String parts() {
        return isMixed()
                ? "ambient " + Stops.error(ambientStops.getAsDouble()) + ", flash "
                        + Stops.error(flashStops.getAsDouble())
                : "";
    }
}
