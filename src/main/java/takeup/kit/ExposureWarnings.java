package takeup.kit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.Light;
import takeup.exposure.LongExposure;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;
import takeup.text.Plain;

/** The warnings that follow from a setting, a camera and a film, each with its limit in the text. */
public final class ExposureWarnings {
    /** From here on, EV at ISO 100, light is called very bright: full sun on sand or snow is 16 (ANSI PH2.7 table). */
    private static final double VERY_BRIGHT = 16;

    /** Full or slightly hazy sun, EV at ISO 100 (ANSI PH2.7 table). */
    private static final double FULL_SUN = 15;

    private ExposureWarnings() {}

    /** A time that is so little longer than the rule for the hand is no other time: 1/125 for 135 mm. */
    private static final double NEAR_ENOUGH = 1 / 6.0;

    /** How many frames left of a roll of so many are few: a quarter, rounded down, but at most 5. */
    public static int fewLeft(int framesNominal) {
        return Math.min(5, framesNominal / 4);
    }

    /** Sync and hand-held limit of a time. */
    public static void ofTime(
            ExposureTime time,
            Camera camera,
            OptionalDouble focalMm,
            boolean flash,
            boolean tripod,
            List<Warning> into) {
        if (flash) {
            Warning.add(sync(time, camera), into);
        }
        if (!tripod) {
            Warning.add(handHeld(time, camera, focalMm), into);
        }
    }

    /** Whether a time is too long for the hand by the rule for the focal length; past a second nobody need be told. */
    public static Optional<Warning> handHeld(ExposureTime time, Camera camera, OptionalDouble focalMm) {
        if (focalMm.isEmpty()) {
            return Optional.empty();
        }
        double limit = camera.handHeldLimit(focalMm.getAsDouble());
        if (!Stops.above(time.stops(), Stops.of(limit) + NEAR_ENOUGH) || Stops.above(time.stops(), 0)) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                Warning.Code.HAND_HELD,
                time + " is long for the hand: the rule for "
                        + Plain.number(focalMm.getAsDouble()) + " mm on " + camera.frameSize() + " is "
                        + ExposureTime.words(limit)
                        + "; a tripod lifts it (tripod on)"));
    }

    /** Whether a time is faster than the flash sync. */
    public static Optional<Warning> sync(ExposureTime time, Camera camera) {
        Optional<ExposureTime> sync = camera.syncTime();
        return sync.isEmpty() || !Stops.above(sync.get().stops(), time.stops())
                ? Optional.empty()
                : Optional.of(new Warning(
                        Warning.Code.SYNC_SPEED,
                        time + " is faster than this camera's flash sync, " + sync.get()
                                + ": part of the frame stays dark"));
    }

    /**
     * Whether a time lies more than half a stop beyond what the camera can do: past the fastest mark (with flash, past
     * the sync), or past the longest where it has no bulb, or below the second from which a watch can time that.
     */
    public static Optional<Warning> beyondDial(double seconds, Camera camera, boolean flash) {
        if (camera.shutter().isEmpty()) {
            return Optional.empty();
        }
        Shutter shutter = camera.shutter(flash).orElseThrow();
        double stops = Stops.of(seconds);
        if (Stops.above(shutter.fastest().stops() - stops, 0.5)) {
            boolean isSync = !shutter.fastest().equals(camera.shutter().get().fastest());
            return Optional.of(new Warning(
                    Warning.Code.OUT_OF_RANGE,
                    ExposureTime.words(seconds) + " is faster than this camera's "
                            + (isSync ? "flash sync, " : "") + shutter.fastest()
                            + ": close the lens or put on a grey filter"));
        }
        boolean isOnBulb = shutter.bulb() && seconds > ExposureTime.SHORTEST_BULB;
        if (!isOnBulb && Stops.above(stops - shutter.longest().stops(), 0.5)) {
            return Optional.of(new Warning(
                    Warning.Code.OUT_OF_RANGE,
                    ExposureTime.words(seconds) + " is longer than the dial's " + shutter.longest()
                            + ": open the lens or bring more light"));
        }
        return Optional.empty();
    }

    /** Whether a set aperture or time is not on this camera at all. */
    public static Optional<Warning> beyondRings(
            Optional<Aperture> aperture, Optional<ExposureTime> time, Camera camera, Optional<Lens> lens) {
        if (aperture.isPresent() && lens.isPresent()) {
            Ring ring = lens.get().ring();
            double stops = aperture.get().stops();
            if (Stops.above(ring.widest().stops(), stops)
                    || Stops.above(stops, ring.narrowest().stops())) {
                return Optional.of(new Warning(
                        Warning.Code.OUT_OF_RANGE,
                        aperture.get() + " is not on this lens: it goes from " + ring.widest() + " to "
                                + ring.narrowest()));
            }
        }
        if (time.isPresent() && camera.shutter().isPresent()) {
            Shutter shutter = camera.shutter().get();
            double stops = time.get().stops();
            if (Stops.above(shutter.fastest().stops(), stops)
                    || !shutter.bulb() && Stops.above(stops, shutter.longest().stops())) {
                return Optional.of(new Warning(
                        Warning.Code.OUT_OF_RANGE,
                        time.get() + " is not on this camera: its dial goes from " + shutter.longest() + " to "
                                + shutter.fastest()));
            }
        }
        return Optional.empty();
    }

    /** What a long exposure loses, and how good that figure is. */
    public static void reciprocity(double metered, Reciprocity reciprocity, List<Warning> into) {
        LongExposure exposure = new LongExposure(metered, reciprocity);
        if (exposure.isUnknown()) {
            into.add(new Warning(
                    Warning.Code.RECIPROCITY_BEYOND,
                    meteredWords(metered)
                            + " lies past ten times the last published point for this film: no figure is worth "
                            + "anything; open the lens, or bracket in steps of two stops"));
            return;
        }
        if (exposure.seconds().isEmpty()) {
            into.add(new Warning(
                    Warning.Code.RECIPROCITY_BEYOND,
                    meteredWords(metered) + ": by this film's numbers no time is long enough; open the lens"));
            return;
        }
        if (Stops.above(Stops.of(exposure.seconds().getAsDouble() / metered), 0)) {
            into.add(new Warning(
                    Warning.Code.RECIPROCITY,
                    meteredWords(metered) + ", this film needs " + exposure.needs()
                            + (exposure.orOpen().isEmpty()
                                    ? ""
                                    : ", or " + ExposureTime.words(metered) + " and " + exposure.orOpen())
                            + (exposure.isGeneric() ? "; " + LongExposure.GENERIC : "")));
        }
        if (exposure.isGuess()) {
            into.add(new Warning(
                    Warning.Code.RECIPROCITY_BEYOND,
                    meteredWords(metered) + " lies past the last published point for this film: a guess"));
        }
    }

    private static String meteredWords(double seconds) {
        return "metered " + ExposureTime.words(seconds);
    }

    /**
     * Thin or dense, on slide film dark or light: stops above box speed, push counted in, against the stock's latitude.
     */
    public static Optional<Warning> latitude(double overBoxAndPush, Stock stock) {
        if (Stops.above(-stock.underStops(), overBoxAndPush)) {
            return Optional.of(new Warning(
                    stock.kind().isNegative() ? Warning.Code.THIN : Warning.Code.DARK,
                    Stops.words(overBoxAndPush) + " under box speed, push counted in; this film tolerates "
                            + Stops.words(stock.underStops()) + ": give it more light"));
        }
        if (Stops.above(overBoxAndPush, stock.overStops())) {
            return Optional.of(new Warning(
                    stock.kind().isNegative() ? Warning.Code.DENSE : Warning.Code.LIGHT,
                    Stops.words(overBoxAndPush) + " over box speed, push counted in; this film tolerates "
                            + Stops.words(stock.overStops())));
        }
        return Optional.empty();
    }

    /** Readings further apart than the stock's latitude, both ways added. */
    public static Optional<Warning> span(OptionalDouble spanStops, Optional<Stock> stock) {
        if (spanStops.isEmpty() || stock.isEmpty()) {
            return Optional.empty();
        }
        double over = stock.get().kind() == Stock.Kind.COLOUR_NEGATIVE
                ? highlightStops(stock.get())
                : stock.get().overStops();
        double latitude = stock.get().underStops() + over;
        if (!Stops.above(spanStops.getAsDouble(), latitude)) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                Warning.Code.SPAN,
                "the readings lie " + Stops.words(spanStops.getAsDouble()) + " apart, this film tolerates "
                        + Stops.words(latitude)
                        + (stock.get().kind().isNegative()
                                ? ": m low sets for the shadows"
                                : ": m high sets for the highlights")));
    }

    /**
     * How far above box speed the highlights of a scene may lie on negative film, more than a whole frame: 4 stops, to
     * 5 (johnnypatience.com, metering for film: -1 to +4; qastack.com.br, photo 108458: 0 to +4 fine, +5 usable; both
     * of colour film). Black-and-white: zone 8, three stops above the middle, is the last with texture (zone system;
     * common practice).
     */
    public static double highlightStops(Stock stock) {
        return switch (stock.kind()) {
            case COLOUR_NEGATIVE -> Math.max(4, stock.overStops());
            case BW_NEGATIVE -> Math.max(3, stock.overStops());
            case COLOUR_REVERSAL, BW_REVERSAL -> stock.overStops();
        };
    }

    /** What a digital camera's own meter makes of a subject, and what to do instead on this film. */
    public static Optional<Warning> cameraMeter(Light light, Optional<Stock> stock) {
        boolean isNegative = stock.isEmpty() || stock.get().kind().isNegative();
        return light.method() == Light.Method.CAMERA
                ? Optional.of(new Warning(
                        Warning.Code.CAMERA_METER,
                        "a digital camera's meter guards the highlights and makes all mid-grey; "
                                + (isNegative
                                        ? "for negative film meter the shadow side, or hold an incident meter at the "
                                                + "subject"
                                        : "for slide film meter the highlights that must keep detail")))
                : Optional.empty();
    }

    /**
     * What reflected light from the whole subject does not say: it makes everything mid-grey (lightmetering.co.uk,
     * weddings; hertze.com, metering light for colour negative film). More than full sun at EV 15 comes back from snow,
     * sand or white alone (ANSI PH2.7 table), which is one to two stops lighter than mid-grey (common practice). A
     * reading that was placed on a zone says how light its subject is.
     */
    public static Optional<Warning> midGrey(Light light, Optional<Stock> stock) {
        boolean isReflected = light.method() == Light.Method.REFLECTED || light.method() == Light.Method.CAMERA;
        if (!isReflected || light.zone().isPresent()) {
            return Optional.empty();
        }
        if (Stops.above(light.ev100().stops(), FULL_SUN)) {
            return Optional.of(new Warning(
                    Warning.Code.MID_GREY,
                    "above EV 15 the subject is snow, sand or white, and a reflected reading makes it grey: bias +1 to "
                            + "+2, or read a mid-grey in the same light"));
        }
        return light.method() == Light.Method.REFLECTED
                        && stock.filter(it -> !it.kind().isNegative()).isPresent()
                ? Optional.of(new Warning(
                        Warning.Code.MID_GREY,
                        "a reflected reading makes all mid-grey; for slide film meter the highlights that must keep "
                                + "detail (z7 places them)"))
                : Optional.empty();
    }

    /** The caution about looking into the sun. */
    public static Optional<Warning> sun(ExposureValue ev100) {
        if (ev100.stops() < VERY_BRIGHT - Stops.TOLERANCE) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                Warning.Code.SUN,
                "very bright: never look at the sun through a finder or a spot meter; keep to the "
                        + "makers' instructions"));
    }
}
