package takeup.metering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.advice.EntryWarnings;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.DayEvent;
import takeup.exposure.Aperture;
import takeup.exposure.Light;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.ExposureWarnings;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.Reading;
import takeup.report.LightText;
import takeup.report.SetupText;
import takeup.report.WarningText;
import takeup.roll.ClockShift;
import takeup.roll.Roll;

/** A light reading that was typed: what it is recorded as, what is set then, and what is said. */
final class LightReading {
    private LightReading() {}

    static Outcome run(Reading reading, List<JournalEntry> before, CommandContext context) {
        Light light = reading.light().orElseThrow();
        Optional<AdviceRequest> request = AdviceRequest.inHand(context.state());
        Optional<Stock> stock = request.isPresent() ? request.get().stock() : Optional.empty();
        Suggestions suggestions = request.isPresent() ? request.get().advice(light, reading.shown()) : Suggestions.NONE;
        List<Warning> warnings = warnings(light, stock, context);
        List<JournalEntry> entries = new ArrayList<>(before);
        Optional<ClockShift> shift = context.clockShifts().sinceFrameOrReading();
        if (shift.isPresent()) {
            entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(shift.get())));
            warnings.add(WarningText.clockBeforeReading(shift.get()));
        }
        entries.add(new JournalEntry.OnDay(new CameraEvent.LightMetered(
                light, context.state().meterInHand().key(), codes(warnings))));
        String set = whyNone(request, context);
        if (request.isPresent() && !context.camera().isAutomatic()) {
            SettingChoice choice = SettingChoice.of(light, request.get(), suggestions, context);
            if (choice.change().isPresent()) {
                entries.add(new JournalEntry.OnDay(
                        context.changedSetup(choice.change().get())));
            }
            warnings.addAll(choice.warnings());
            set = choice.text();
        }
        Reply reply = context.reply(entries);
        ShootState after = reply.after();
        return reply.event("light")
                .says(
                        LightText.of(light, context.now()),
                        "." + Zones.remarks(reading, stock)
                                + set
                                + sharp(after, suggestions)
                                + (request.isPresent() ? Zones.words(reading, light, request.get()) : "")
                                + (after.inHand().setting().flash() ? FlashReading.ambient(after) : ""))
                .fields(new ReadingFields(
                        after, light, suggestions, context.unsilenced(warnings), context, Optional.of(reading)))
                .warnings(warnings)
                .accepted();
    }

    private static List<Warning.Code> codes(List<Warning> warnings) {
        List<Warning.Code> codes = new ArrayList<>();
        for (Warning warning : warnings) {
            codes.add(warning.code());
        }
        return codes;
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
        Optional<Aperture> at = after.inHand().setting().aperture();
        for (Suggestion row : at.isPresent() ? suggestions.suggestions() : List.<Suggestion>of()) {
            if (row.aperture().isSameMark(at.get())) {
                return row.depth().isPresent()
                        ? " Sharp from " + SetupText.depth(row.depth().get()) + "."
                        : "";
            }
        }
        return "";
    }

    /** What must be said about a reading, and was not said before. */
    private static List<Warning> warnings(Light light, Optional<Stock> stock, CommandContext context) {
        List<Warning> all = new ArrayList<>();
        Optional<Roll> roll = context.state().rollInHand();
        Optional<EntryWarnings.MeterSpeed> other =
                roll.isPresent() ? EntryWarnings.meterSpeed(light, roll.get()) : Optional.empty();
        if (other.isPresent() && !EntryWarnings.wasWarned(light, context.state(), context.now())) {
            all.add(WarningText.meterSpeed(other.get()));
        }
        Warning.add(ExposureWarnings.span(light.spanStops(), stock), all);
        for (Optional<Warning> caution :
                List.of(ExposureWarnings.cameraMeter(light, stock), ExposureWarnings.midGrey(light, stock))) {
            if (caution.isPresent() && !wasSaidToday(caution.get(), stock, context)) {
                all.add(caution.get());
            }
        }
        Optional<Light> before = context.state().day().light();
        boolean wasBright =
                before.isPresent() && ExposureWarnings.sun(before.get().ev100()).isPresent();
        if (!wasBright) {
            Warning.add(ExposureWarnings.sun(light.ev100()), all);
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
