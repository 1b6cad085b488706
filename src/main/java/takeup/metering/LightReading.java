package takeup.metering;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import takeup.advice.AdviceRequest;
import takeup.advice.EntryWarnings;
import takeup.advice.ExposureInHand;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.DayEvent;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.ExposureWarnings;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.Reading;
import takeup.report.AdviceJson;
import takeup.report.LightText;
import takeup.report.SetupText;
import takeup.report.WarningText;
import takeup.roll.Roll;

/** A light reading that was typed: what it is recorded as, what is set then, and what is said. */
final class LightReading {
    private LightReading() {}

    static Outcome run(Reading reading, List<JournalEntry> before, CommandContext context) {
        Light light = reading.light().orElseThrow();
        Optional<AdviceRequest> request = AdviceRequest.inHand(context.state());
        Suggestions suggestions =
                request.map(it -> it.advice(light, reading.shown())).orElse(Suggestions.NONE);
        List<Warning> warnings = new ArrayList<>(warnings(light, request, context));
        List<JournalEntry> entries = new ArrayList<>(before);
        context.clockShifts().sinceFrameOrReading().ifPresent(it -> {
            entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it)));
            warnings.add(WarningText.clockBeforeReading(it));
        });
        entries.add(new JournalEntry.OnDay(new CameraEvent.LightMetered(
                light,
                context.state().meterInHand().key(),
                warnings.stream().map(Warning::code).toList())));
        Optional<SettingChoice> choice = request.filter(it -> !context.camera().isAutomatic())
                .map(it -> SettingChoice.of(light, it, suggestions, context));
        choice.flatMap(SettingChoice::change)
                .ifPresent(it -> entries.add(new JournalEntry.OnDay(context.changedSetup(it))));
        choice.ifPresent(it -> warnings.addAll(it.warnings()));
        Reply reply = context.reply(entries);
        ShootState after = reply.after();
        return reply.event("light")
                .says(
                        LightText.of(light, context.now()),
                        "." + Zones.remarks(reading, request.flatMap(AdviceRequest::stock))
                                + choice.map(SettingChoice::text).orElseGet(() -> whyNone(request, context))
                                + sharp(after, suggestions)
                                + request.map(it -> Zones.words(reading, light, it))
                                        .orElse("")
                                + (after.inHand().setting().flash() ? FlashReading.ambient(after) : ""))
                .fields(withZones(
                        fields(after, light, suggestions, context.unsilenced(warnings), context),
                        Zones.json(reading, request.flatMap(AdviceRequest::stock))))
                .warnings(warnings)
                .accepted();
    }

    private static Json.Obj withZones(Json.Obj fields, List<Json> zones) {
        return zones.isEmpty() ? fields : fields.and("zones", zones);
    }

    private static String whyNone(Optional<AdviceRequest> request, CommandContext context) {
        if (request.isPresent()) {
            return "";
        }
        return context.state()
                .placeInHand()
                .map(it -> " No film in " + it + ".")
                .orElse(" No camera in hand.");
    }

    /** What is sharp at the aperture in hand, where a distance is known. */
    private static String sharp(ShootState after, Suggestions suggestions) {
        return after.inHand()
                .setting()
                .aperture()
                .flatMap(at -> suggestions.suggestions().stream()
                        .filter(it -> it.aperture().isSameMark(at))
                        .findFirst())
                .flatMap(Suggestion::depth)
                .map(it -> " Sharp from " + SetupText.depth(it) + ".")
                .orElse("");
    }

    /** What other programs read of a reading, and of the setting that follows from it. */
    static Json.Obj fields(
            ShootState after, Light light, Suggestions suggestions, List<Warning> warnings, CommandContext context) {
        ShootState state = context.state();
        AdviceRequest request = AdviceRequest.inHand(state)
                .orElseGet(() -> new AdviceRequest(
                        state.cameraInHand(),
                        state.inHand().setting(),
                        state.inHand().hold(),
                        Optional.empty(),
                        FilmSpeed.ISO_100,
                        0,
                        state.meterInHand(),
                        state.day().flash()));
        Set<Warning.Code> ofReading = EnumSet.of(
                Warning.Code.SPAN,
                Warning.Code.CAMERA_METER,
                Warning.Code.MID_GREY,
                Warning.Code.SUN,
                Warning.Code.CLOCK,
                Warning.Code.METER_SPEED);
        return Json.object()
                .and(
                        "advice",
                        AdviceJson.of(
                                request,
                                light,
                                suggestions,
                                warnings.stream()
                                        .filter(it -> ofReading.contains(it.code()))
                                        .toList()))
                .and("aperture", after.inHand().setting().aperture().map(Object::toString))
                .and("time", after.inHand().setting().time().map(Object::toString))
                .and("errorStops", AdviceJson.exact(ExposureInHand.error(after)));
    }

    /** What must be said about a reading, and was not said before. */
    private static List<Warning> warnings(Light light, Optional<AdviceRequest> request, CommandContext context) {
        List<Warning> all = new ArrayList<>();
        Optional<Roll> roll = context.state().rollInHand();
        roll.flatMap(it -> EntryWarnings.meterSpeed(light, it))
                .filter(it -> !EntryWarnings.wasWarned(light, context.state(), context.now()))
                .ifPresent(it -> all.add(WarningText.meterSpeed(it)));
        ExposureWarnings.span(light.spanStops(), roll.map(it -> it.film().stock()))
                .ifPresent(all::add);
        Optional<Stock> stock = request.flatMap(AdviceRequest::stock);
        Stream.of(ExposureWarnings.cameraMeter(light, stock), ExposureWarnings.midGrey(light, stock))
                .flatMap(Optional::stream)
                .filter(it -> !wasSaidToday(it, stock, context))
                .forEach(all::add);
        boolean wasBright = context.state()
                .day()
                .light()
                .flatMap(it -> ExposureWarnings.sun(it.ev100()))
                .isPresent();
        if (!wasBright) {
            ExposureWarnings.sun(light.ev100()).ifPresent(all::add);
        }
        return all;
    }

    private static boolean wasSaidToday(Warning warning, Optional<Stock> stock, CommandContext context) {
        return context.state()
                .history()
                .on(context.now().toLocalDate())
                .events(CameraEvent.LightMetered.class)
                .anyMatch(it -> it.warned().contains(warning.code())
                        && (warning.code() != Warning.Code.MID_GREY
                                || ExposureWarnings.midGrey(it.light(), stock).equals(Optional.of(warning))));
    }
}
