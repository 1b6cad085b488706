package takeup.kit;

import takeup.exposure.Light;
import takeup.exposure.Scale;

/**
 * A light meter as its profile describes it: what it shows, in which steps, for which speed.
 *
 * @param key what is typed after {@code meter}
 * @param name as people call it
 * @param display what it shows
 * @param incidentConstant C, lux; 250 for a flat receptor
 * @param reflectedConstant K, cd/m2; 12.5 most often
 * @param method how it reads unless the line says otherwise
 */
public record Meter(
        String key,
        String name,
        Display display,
        double incidentConstant,
        double reflectedConstant,
        Light.Method method) {
    /** What a meter shows. */
    public enum Shows {
        PAIR,
        APERTURE,
        EV
    }

    /**
     * What a meter shows, and how finely.
     *
     * @param shows what bare numbers after {@code m} are
     * @param tenths whether it shows tenths of a stop past a mark
     * @param step the scale of its marks
     * @param evAtSetSpeed whether its EV is for the speed it is set to (else at ISO 100)
     */
    public record Display(Shows shows, boolean tenths, Scale step, boolean evAtSetSpeed) {}

    public Shows shows() {
        return display.shows;
    }

    public boolean tenths() {
        return display.tenths;
    }

    public Scale step() {
        return display.step;
    }

    public boolean evAtSetSpeed() {
        return display.evAtSetSpeed;
    }

    /** What is assumed while no meter was chosen: third stops, pairs, the constants 250 and 12.5, incident. */
    public static final Meter NONE = new Meter(
            "",
            "no meter chosen",
            new Meter.Display(Shows.PAIR, false, Scale.THIRD, false),
            250,
            12.5,
            Light.Method.INCIDENT);
}
