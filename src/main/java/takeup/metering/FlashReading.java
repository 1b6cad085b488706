package takeup.metering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import takeup.advice.ExposureInHand;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.LightParts;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Lens;
import takeup.kit.Warning;
import takeup.prompt.Reading;
import takeup.report.AdviceJson;
import takeup.report.StatusJson;
import takeup.report.WarningText;
import takeup.roll.ClockShift;
import takeup.roll.ExposureResult;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/** The light of a flash, as its guide number or a flash meter gives it: what it is recorded as, and what it sets. */
final class FlashReading {
    private FlashReading() {}

    /** What a flash meter showed. */
    static Outcome measured(Reading reading, String typed, List<JournalEntry> before, CommandContext context) {
        Camera camera = context.camera();
        context.roll();
        FlashLight flash = new FlashLight(
                reading.flash().orElseThrow(),
                reading.flashIndex().orElseThrow(),
                Optional.of(measured(reading, context)),
                typed,
                context.now());
        return run(
                new Found(
                        flash,
                        context.state().inHand(camera).with(SettingPatch.flash(true)),
                        Optional.empty(),
                        Json.object(),
                        (reply, chosen) -> reply.says(
                                title(flash),
                                details(flash) + "."
                                        + chosen.map(it -> " Set: " + it).orElse(""))),
                before,
                context);
    }

    /**
     * What the reading holds besides; a light that was brighter than all it saw is not that of the room it stood in.
     */
    private static FlashLight.Measured measured(Reading reading, CommandContext context) {
        Optional<ExposureTime> time = timeOf(reading, context);
        double seen = reading.flash().orElseThrow().stops()
                - time.map(ExposureTime::stops).orElse(Double.POSITIVE_INFINITY)
                - reading.flashIndex().orElseThrow().stopsFrom100();
        return new FlashLight.Measured(
                time,
                reading.fill(),
                context.state().day().light().map(Light::ev100).filter(it -> it.stops() < seen));
    }

    /** The time that a flash meter read with: the one that it is preset to, else the one in hand. */
    private static Optional<ExposureTime> timeOf(Reading reading, CommandContext context) {
        return reading.preset()
                .or(() -> context.state().day().preset())
                .or(() -> context.setting().time());
    }

    /**
     * What a line about flash comes to.
     *
     * @param flash the light of the flash
     * @param setup the camera, flash on
     * @param aperture the aperture that stays or was typed; empty where the flash decides it
     * @param fields what other programs read besides
     * @param says the answer, with the aperture that was chosen
     */
    record Found(
            FlashLight flash,
            CameraSetup setup,
            Optional<Aperture> aperture,
            Json.Obj fields,
            BiConsumer<Reply, Optional<String>> says) {}

    static Outcome run(Found found, List<JournalEntry> more, CommandContext context) {
        FlashLight flash = found.flash;
        CameraSetup before = found.setup;
        Camera camera = context.camera();
        List<JournalEntry> entries = new ArrayList<>(more);
        List<Warning> warnings = new ArrayList<>();
        Optional<ClockShift> shift = context.clockShifts().sinceFrameOrReading();
        shift.ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it))));
        entries.add(new JournalEntry.OnDay(new CameraEvent.FlashMetered(flash)));
        Optional<Aperture> aperture =
                found.aperture.or(() -> before.setting().lens().map(it -> nearest(flash, before, it, context)));
        CameraSetup chosenAt =
                aperture.map(it -> before.with(SettingPatch.aperture(it))).orElse(before);
        FlashSync sync = FlashSync.beside(chosenAt, camera);
        CameraSetup after = sync.setup().orElse(chosenAt);
        sync.warning().ifPresent(warnings::add);
        if (aperture.isPresent() || !after.equals(context.state().inHand(camera))) {
            entries.add(new JournalEntry.OnDay(new CameraEvent.CameraSetupChanged(camera.key(), after)));
        }
        if (FlashCommand.isFirstToday(context)) {
            entries.add(FlashCommand.cautioned(camera));
            warnings.add(FlashCommand.CAUTION);
        }
        shift.map(WarningText::clockBeforeReading).ifPresent(warnings::add);
        Reply reply = context.reply(entries);
        Optional<String> chosen =
                aperture.map(it -> it + ", " + Stops.error(wanted(flash, before, context) - it.stops()) + ".");
        found.says.accept(reply, chosen);
        LightParts light = ExposureInHand.light(reply.after());
        Json.Obj fields = StatusJson.of(reply.after());
        found.fields.fields().forEach(fields::and);
        return reply.event("light")
                .saysMore(sync.timeWords() + ambient(reply.after()))
                .fields(fields.and("flashLight", flash.aperture())
                        .and("ambientStops", AdviceJson.exact(light.ambientStops()))
                        .and("flashStops", AdviceJson.exact(light.flashStops()))
                        .and("errorStops", AdviceJson.exact(light.totalStops())))
                .warnings(warnings)
                .accepted();
    }

    /** The aperture that the flash asks for, in stops from f/1. */
    private static double wanted(FlashLight flash, CameraSetup setup, CommandContext context) {
        return ExposureResult.path(context.roll().film(), setup.setting()).flashError(flash, Aperture.literal(1));
    }

    private static Aperture nearest(FlashLight flash, CameraSetup setup, Lens lens, CommandContext context) {
        return setup.hold().flatMap(Hold::aperture).orElseGet(() -> lens.ring().nearest(wanted(flash, setup, context)));
    }

    /**
     * How far the light that is there anyway lies under or over the setting in hand, and what it comes to with the
     * flash, with a blank in front; "" while one of the two readings is missing.
     */
    static String ambient(ShootState state) {
        LightParts light = ExposureInHand.light(state);
        return light.isMixed()
                ? " Ambient light alone: " + Stops.error(light.ambientStops().getAsDouble()) + ". Together: "
                        + Stops.error(light.totalStops().getAsDouble()) + "."
                : "";
    }

    static String words(FlashLight flash) {
        return title(flash) + details(flash);
    }

    private static String title(FlashLight flash) {
        return "Flash: "
                + flash.fill()
                        .map(it -> "key " + flash.aperture() + ", fill " + it)
                        .orElseGet(() -> flash.aperture().toString())
                + " at " + flash.index();
    }

    /** The lit side gets key and fill, the shadow side the fill alone: f/8 and f/5.6 are 2:1 and on the face 3:1. */
    private static String details(FlashLight flash) {
        if (flash.fill().isEmpty()) {
            return "";
        }
        double key = Stops.factor(flash.aperture().stops() - flash.fill().get().stops());
        return ", ratio " + ratio(key) + " (lit side to shadow side " + ratio(key + 1) + "), together f/"
                + Plain.digits(Stops.factor(flash.stops() / 2), 2);
    }

    private static String ratio(double factor) {
        return factor >= 1 ? Plain.digits(factor, 2) + ":1" : "1:" + Plain.digits(1 / factor, 2);
    }
}
