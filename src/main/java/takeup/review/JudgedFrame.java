package takeup.review;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Light;
import takeup.kit.Stock;
import takeup.roll.DevelopedIn;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.scans.Slot;
import takeup.text.Plain;
import takeup.text.TabFields;

/**
 * A judged frame, as far as a lesson needs it; frames that agree in all of this are counted together.
 *
 * @param rating the stock and what it was rated at
 * @param gear the camera and its lens
 * @param method how light was read
 * @param light what kind of light it was
 * @param developer what the roll was developed in; empty where that was not said
 * @param overTenths tenths of a stop above box speed by the log, push added
 * @param latitude what the stock tolerates, by its file
 * @param verdict what the photographer saw
 */
public record JudgedFrame(
        Rating rating,
        Gear gear,
        String method,
        String light,
        String developer,
        int overTenths,
        Latitude latitude,
        Density verdict) {
    /** The speed that a stock was rated at: bw400 at 200. */
    public record Rating(String stock, double index) {
        String name() {
            return stock + " rated " + Plain.number(index);
        }

        // Written by hand, as all of these here: the generated equals takes longer at its first use than to list rolls.
        @Override
        public boolean equals(Object other) {
            return other instanceof Rating it && Double.compare(index, it.index) == 0 && stock.equals(it.stock);
        }

        @Override
        public int hashCode() {
            return 31 * stock.hashCode() + Double.hashCode(index);
        }
    }

    /** The camera's key, and camera and lens. */
    record Gear(String body, String lens) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Gear it && body.equals(it.body) && lens.equals(it.lens);
        }

        @Override
        public int hashCode() {
            return 31 * body.hashCode() + lens.hashCode();
        }
    }

    /** How many stops under and over a stock tolerates. */
    record Latitude(double under, double over) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Latitude it
                    && Double.compare(under, it.under) == 0
                    && Double.compare(over, it.over) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * Double.hashCode(under) + Double.hashCode(over);
        }
    }

    /** What may be the cause of an error, each with the name that a frame gives it. */
    public enum Factor {
        RATING,
        BODY,
        LENS,
        METHOD,
        LIGHT,
        DEVELOPER;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A judged frame of a roll; empty where the log cannot say how much light it got. */
    static Optional<JudgedFrame> of(Roll roll, Frame frame, Density verdict) {
        OptionalDouble over = Slot.overBoxStops(roll, frame);
        if (over.isEmpty() || !Double.isFinite(over.getAsDouble())) {
            return Optional.empty();
        }
        Stock stock = roll.film().stock();
        String body = roll.camera().key();
        Optional<Light> read = frame.exposure().light();
        boolean flash = frame.exposure().setting().flash();
        return Optional.of(new JudgedFrame(
                new Rating(stock.key(), roll.film().index().arithmetic()),
                new Gear(
                        body,
                        frame.exposure()
                                .setting()
                                .lens()
                                .map(it -> body + " " + it.key())
                                .orElse(body)),
                flash ? "flash" : read.map(it -> it.method().word()).orElse("none"),
                flash ? "flash" : read.map(JudgedFrame::kindOf).orElse("not known"),
                roll.developed().map(DevelopedIn::recipe).orElse(""),
                (int) Math.round(10 * Math.max(-12, Math.min(12, over.getAsDouble()))),
                new Latitude(stock.underStops(), stock.overStops()),
                verdict));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JudgedFrame it
                && overTenths == it.overTenths
                && verdict == it.verdict
                && rating.equals(it.rating)
                && gear.equals(it.gear)
                && method.equals(it.method)
                && light.equals(it.light)
                && developer.equals(it.developer)
                && latitude.equals(it.latitude);
    }

    @Override
    public int hashCode() {
        int hash = 31 * rating.hashCode() + gear.hashCode();
        hash = 31 * hash + method.hashCode();
        hash = 31 * hash + light.hashCode();
        hash = 31 * hash + developer.hashCode();
        hash = 31 * hash + overTenths;
        hash = 31 * hash + latitude.hashCode();
        return 31 * hash + verdict.ordinal();
    }

    /** All of it in one line. */
    String line() {
        return TabFields.line(
                rating.stock,
                rating.index,
                gear.body,
                gear.lens,
                method,
                light,
                developer,
                overTenths,
                latitude.under,
                latitude.over,
                verdict.name());
    }

    /** What a line says; an IllegalArgumentException where it is none. */
    static JudgedFrame of(String line) {
        String[] values = TabFields.values(line, 11);
        return new JudgedFrame(
                new Rating(values[0], Double.parseDouble(values[1])),
                new Gear(values[2], values[3]),
                values[4],
                values[5],
                values[6],
                Integer.parseInt(values[7]),
                new Latitude(Double.parseDouble(values[8]), Double.parseDouble(values[9])),
                Density.valueOf(values[10]));
    }

    /**
     * Kinds of light by their EV at ISO 100: ANSI exposure guide as tabulated (liquisearch.com, "Exposure value"):
     * cloudy bright 13, open shade 12, after sunset 9 to 11, interiors 5 to 8.
     */
    private static String kindOf(Light light) {
        double ev = light.ev100().stops();
        if (ev >= 12.75) {
            return "sun";
        }
        return ev >= 8.75 ? "shade" : "indoors";
    }

    /** Stops above box speed by the log, push added. */
    double overStops() {
        return overTenths / 10.0;
    }

    /** The name that this frame gives a factor; empty where it has none. */
    public String name(Factor factor) {
        return switch (factor) {
            case RATING -> rating.name();
            case BODY -> gear.body;
            case LENS -> gear.lens;
            case METHOD -> method;
            case LIGHT -> light;
            case DEVELOPER -> developer;
        };
    }
}
