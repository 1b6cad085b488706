package takeup.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Light;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.scans.Slot;
import takeup.text.Plain;

/**
 * A judged frame, as far as a lesson needs it; frames that agree in all of this are counted together.
 *
 * @param stock the stock's key
 * @param index what it was rated at
 * @param body the camera's key
 * @param lens camera and lens
 * @param method how light was read
 * @param light what kind of light it was
 * @param overTenths tenths of a stop above box speed by the log, push added
 * @param under how many stops under the stock bears, by its file
 * @param over how many stops over
 * @param verdict what the photographer saw
 */
public record JudgedFrame(
        String stock,
        double index,
        String body,
        String lens,
        String method,
        String light,
        int overTenths,
        double under,
        double over,
        Density verdict) {
    /** What may be the cause of an error, each with the name that a frame gives it. */
    public enum Factor {
        RATING,
        BODY,
        LENS,
        METHOD,
        LIGHT;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The case of a frame; empty where the log cannot say how much light it got. */
    static Optional<JudgedFrame> of(Roll roll, Frame frame, Density verdict) {
        OptionalDouble over = Slot.overBoxStops(roll, frame);
        if (over.isEmpty() || !Double.isFinite(over.getAsDouble())) {
            return Optional.empty();
        }
        Optional<Light> read = frame.exposure().light();
        boolean flash = frame.exposure().setting().flash();
        String lens = frame.exposure()
                .setting()
                .lens()
                .map(it -> roll.camera().key() + " " + it.key())
                .orElse(roll.camera().key());
        return Optional.of(new JudgedFrame(
                roll.film().stock().key(),
                roll.film().index().arithmetic(),
                roll.camera().key(),
                lens,
                flash ? "flash" : read.map(it -> it.method().word()).orElse("none"),
                flash ? "flash" : read.map(JudgedFrame::light).orElse("not known"),
                (int) Math.round(10 * Math.max(-12, Math.min(12, over.getAsDouble()))),
                roll.film().stock().underStops(),
                roll.film().stock().overStops(),
                verdict));
    }

    /**
     * Kinds of light by their EV at ISO 100: ANSI exposure guide as tabulated (liquisearch.com, "Exposure value"):
     * cloudy bright 13, open shade 12, after sunset 9 to 11, interiors 5 to 8.
     */
    private static String light(Light light) {
        double ev = light.ev100().stops();
        return ev >= 12.75 ? "sun" : ev >= 8.75 ? "shade" : "indoors";
    }

    /** The name that this frame gives a factor. */
    public String name(Factor factor) {
        return switch (factor) {
            case RATING -> stock + " rated " + Plain.number(index);
            case BODY -> body;
            case LENS -> lens;
            case METHOD -> method;
            case LIGHT -> light;
        };
    }

    /** All names of a frame. */
    List<String> names() {
        return List.of(
                name(Factor.RATING), name(Factor.BODY), name(Factor.LENS), name(Factor.METHOD), name(Factor.LIGHT));
    }
}
