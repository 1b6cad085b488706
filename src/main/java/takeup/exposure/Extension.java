package takeup.exposure;

import java.util.OptionalDouble;
import takeup.text.Plain;

/**
 * How far the lens is drawn out for a close-up: {@code ext 110mm} (lens to film), {@code tube 30mm} (added to the lens)
 * or {@code mag 0.5} (size on film against size in life).
 *
 * <p>Factor = (draw / focal length)^2 = (1 + magnification)^2 (armycommunications.tpub.com, SS0512). A tube's loss is
 * reckoned with the lens at infinity.
 *
 * @param kind which of the three, or none
 * @param value mm, or the magnification; 0 for none
 */
public record Extension(Kind kind, double value) {
    /** How an extension is given. */
    public enum Kind {
        NONE("off"),
        DRAW("ext"),
        TUBE("tube"),
        MAGNIFICATION("mag");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that is typed for it. */
        public String word() {
            return word;
        }
    }

    /** No extension. */
    public static final Extension NONE = new Extension(Kind.NONE, 0);

    public Extension {
        double most = kind == Kind.MAGNIFICATION ? 50 : 5000;
        if (!(kind == Kind.NONE ? value == 0 : value > 0 && value <= most)) {
            throw new IllegalArgumentException("an extension is above 0 and up to 5000 mm, a magnification up to 50");
        }
    }

    /** The loss in stops; empty where it needs a focal length that is not known. */
    public OptionalDouble stops(OptionalDouble focalMm) {
        switch (kind) {
            case NONE:
                return OptionalDouble.of(0);
            case MAGNIFICATION:
                return OptionalDouble.of(Stops.ofMagnification(value));
            default:
                if (focalMm.isEmpty()) {
                    return OptionalDouble.empty();
                }
                double draw = kind == Kind.DRAW ? value : focalMm.getAsDouble() + value;
                return OptionalDouble.of(Math.max(0, 2 * Stops.of(draw / focalMm.getAsDouble())));
        }
    }

    @Override
    public String toString() {
        if (kind == Kind.NONE) {
            return "ext off";
        }
        return kind.word + " " + Plain.number(value) + (kind == Kind.MAGNIFICATION ? "" : "mm");
    }
}
