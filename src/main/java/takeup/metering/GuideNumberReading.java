package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.exposure.Aperture;
import takeup.exposure.FlashLight;
import takeup.exposure.LightPath;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.prompt.DialNumbers;
import takeup.report.AdviceJson;
import takeup.roll.ExposureResult;
import takeup.roll.Film;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * What a guide number comes to: of distance, power and aperture two are known, and the third is the answer. The
 * aperture from distance and power; the distance from an aperture; the power from a distance and an aperture, or from
 * how far the flash shall lie under the pair in hand, as fill.
 */
final class GuideNumberReading {
    private final GuideNumberArguments typed;
    private final String line;
    private final CommandContext context;
    private final Film film;
    private final CameraSetup setup;
    private final boolean isSynced;
    private final LightPath path;

    private GuideNumberReading(GuideNumberArguments typed, String line, CommandContext context) {
        this.typed = typed;
        this.line = line;
        this.context = context;
        this.film = context.roll().film();
        CameraSetup inHand = context.state().inHand(context.camera()).with(SettingPatch.flash(true));
        boolean isFill = typed.fillStops().isPresent() && typed.aperture().isEmpty();
        // A fill goes with a pair that is right without it, so that the lens closes by what the time gets longer.
        this.setup = isFill ? FlashSync.inSync(inHand, context.camera()) : inHand;
        this.isSynced = !setup.equals(inHand);
        this.path = ExposureResult.path(film, setup.setting());
    }

    static Outcome of(GuideNumberArguments typed, String line, CommandContext context) {
        GuideNumberReading reading = new GuideNumberReading(typed, line, context);
        if (typed.fillStops().isPresent()) {
            return reading.power(typed.fillStops().getAsDouble());
        }
        if (typed.aperture().isEmpty()) {
            return reading.aperture();
        }
        return typed.distance().isPresent() ? reading.power(0) : reading.distance();
    }

    private Outcome aperture() {
        double metres = metres();
        FlashLight flash = flash(typed.guide().fNumber(film.index(), typed.power(), metres));
        return FlashReading.run(
                new FlashReading.Found(
                        flash,
                        at(metres),
                        Optional.empty(),
                        Json.object(),
                        (reply, chosen) -> reply.says(
                                "Flash at EI " + film.index() + ": " + flash.aperture() + " at "
                                        + typed.distanceWords(metres),
                                chosen.map(it -> ": set " + it).orElse(""))),
                List.of(),
                context);
    }

    private Outcome distance() {
        Aperture aperture = wantedAperture();
        // What filters, draw and bias cost, the flash must give besides.
        double exact = Stops.factor((aperture.stops() - path.flashError(flash(1), Aperture.literal(1))) / 2);
        double metres = typed.guide().distanceM(film.index(), typed.power(), exact);
        return FlashReading.run(
                new FlashReading.Found(
                        flash(exact),
                        setup,
                        Optional.of(aperture),
                        Json.object().and("flashDistanceM", AdviceJson.exact(metres)),
                        (reply, chosen) -> reply.says(
                                "Flash at EI " + film.index() + ": " + aperture + " is right at "
                                        + typed.distanceWords(metres),
                                ".")),
                List.of(),
                context);
    }

    /** The power that puts the flash so many stops over or under the aperture. */
    private Outcome power(double stops) {
        double metres = metres();
        Aperture aperture = wantedAperture();
        double full = typed.guide().fNumber(film.index(), 1, metres);
        double power = Stops.factor(stops - path.flashError(flash(full), aperture));
        String wanted = Stops.isRight(stops) ? "right at " + aperture : Stops.error(stops) + " at " + aperture;
        if (power > Stops.factor(Stops.TOLERANCE)) {
            throw new CommandRejected("at " + typed.distanceWords(metres) + " full power is "
                    + Stops.error(stops - Stops.of(power)) + " at " + aperture + "; for " + wanted
                    + " the flash must be "
                    + typed.distanceWords(metres / Math.sqrt(power)) + " away, or the lens opened");
        }
        double part = Math.min(1, power);
        return FlashReading.run(
                new FlashReading.Found(
                        flash(full * Math.sqrt(part)),
                        at(metres),
                        Optional.of(aperture),
                        Json.object().and("flashPower", AdviceJson.exact(part)),
                        (reply, chosen) -> reply.says(
                                "Flash at EI " + film.index() + ", " + typed.distanceWords(metres) + ": power "
                                        + words(part) + " is " + wanted,
                                isSynced ? ". Set: " + aperture + " " + time() + ", flash sync." : ".")),
                List.of(),
                context);
    }

    /** A part of full power as its dial has it: {@code 1/8}, {@code 1/9 (0.2 stops below 1/8)}. */
    private static String words(double power) {
        double stops = -Stops.of(power);
        double whole = Math.floor(stops + 0.05);
        String mark = whole == 0 ? "full" : "1/" + Plain.number(Stops.factor(whole));
        return stops - whole < 0.05
                ? mark
                : "1/" + Plain.digits(1 / power, 2) + " (" + Stops.words(stops - whole) + " below " + mark + ")";
    }

    private Aperture wantedAperture() {
        Camera camera = context.camera();
        return typed.aperture()
                .flatMap(it -> DialNumbers.of(camera, setup.setting().lens())
                        .pair(List.of(it))
                        .aperture())
                .or(() -> setup.setting().aperture())
                .orElseThrow(() -> new CommandRejected("the power follows from an aperture: set one first, or type it: "
                        + "flash " + typed.heads().get(0) + " 3m f8"));
    }

    private String time() {
        return setup.setting().time().map(Object::toString).orElse("");
    }

    private double metres() {
        return typed.metres(setup.setting().distanceM());
    }

    private CameraSetup at(double metres) {
        return typed.distance().isPresent() ? setup.with(SettingPatch.distance(metres)) : setup;
    }

    private FlashLight flash(double fNumber) {
        return new FlashLight(
                new Aperture(Plain.rounded(fNumber, 3), 0, 2 * Stops.of(fNumber)),
                film.index(),
                Optional.empty(),
                line,
                context.now());
    }
}
