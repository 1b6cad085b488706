package takeup.metering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceExplanation;
import takeup.advice.AdviceRequest;
import takeup.advice.Alternatives;
import takeup.advice.EntryWarnings;
import takeup.advice.ExposureInHand;
import takeup.command.Arguments;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.CameraSetup;
import takeup.day.Coordinates;
import takeup.day.DayEvent;
import takeup.day.Sun;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.ExposureValue;
import takeup.exposure.FilmSpeed;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Kit;
import takeup.kit.Meter;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.prompt.FrameArguments;
import takeup.prompt.MeterMarks;
import takeup.prompt.Reading;
import takeup.prompt.ReadingParser;
import takeup.report.AdviceJson;
import takeup.report.AdviceText;
import takeup.report.LightText;
import takeup.report.SetupText;
import takeup.report.StatusJson;
import takeup.report.WarningText;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/** Lines that take light readings, and the choice of the meter. */
final class LightReading {
    static Outcome meter(CommandContext context, List<String> words) {
        if (words.isEmpty() || words.size() > 2) {
            throw new CommandRejected("which meter? one of "
                    + String.join(", ", context.state().kit().keys(Kit.Sort.METERS))
                    + ", and the time it is preset to: meter preset 1/125");
        }
        String key = words.get(0).toLowerCase(Locale.ROOT);
        Meter meter = context.state()
                .kit()
                .meter(key)
                .orElseThrow(() -> new CommandRejected(context.state().kit().whyNot(Kit.Sort.METERS, key)));
        Optional<ExposureTime> preset =
                words.size() > 1 ? Optional.of(MeterMarks.of(meter).preset(words.get(1), key)) : Optional.empty();
        List<JournalEntry> entries = List.of(new JournalEntry.OnDay(new DayEvent.MeterSelected(key, preset)));
        ShootState after = context.after(entries);
        String text =
                "Meter: " + meter.name() + preset.map(it -> ", preset to " + it).orElse("") + ".";
        return context.does(entries, after, context.stateAnswer(after, text, List.of()), List.of());
    }

    static Outcome reading(CommandContext context, Arguments arguments) {
        List<String> words = arguments.rest();
        if (words.isEmpty()) {
            return again(context);
        }
        Meter meter = context.state().meterInHand();
        Reading reading = ReadingParser.read(
                arguments.line(),
                words,
                meter,
                context.state().day().preset(),
                context.state().rollInHand().map(it -> it.film().index()),
                context.now());
        List<JournalEntry> entries = new ArrayList<>();
        reading.preset()
                .ifPresent(it ->
                        entries.add(new JournalEntry.OnDay(new DayEvent.MeterSelected(meter.key(), Optional.of(it)))));
        reading = dated(context, reading);
        return reading.flash().isPresent()
                ? FlashCommand.measured(context, arguments.line(), reading, entries)
                : light(context, reading, meter, entries);
    }

    /** A reading near sunset is called old sooner, where the place of the shoot is known. */
    private static Reading dated(CommandContext context, Reading reading) {
        Optional<Coordinates> position = context.state().day().job().position();
        return position.isEmpty()
                ? reading
                : new Reading(
                        reading.light().map(it -> it.fresh(Sun.freshMinutes(position.get(), it.at()))),
                        reading.flash(),
                        reading.flashIndex(),
                        reading.lowestEv(),
                        reading.preset());
    }

    private static Outcome again(CommandContext context) {
        Optional<FlashLight> flash = context.state().day().flash();
        if (flash.isPresent() && (context.state().day().light().isEmpty() || isFlashNewer(context))) {
            Json.Obj fields =
                    StatusJson.of(context.state()).and("flashLight", flash.get().aperture());
            return context.does(
                    List.of(),
                    context.before(),
                    new Outcome.Answer(
                            "light",
                            FlashCommand.words(flash.get()) + ", "
                                    + LightText.age(flash.get().at(), context.now()) + ".",
                            fields,
                            List.of()),
                    List.of());
        }
        Light light = context.state()
                .day()
                .light()
                .orElseThrow(() -> new CommandRejected("no light reading today: m 5.6 125, m ev11.3, m sky shade"));
        Optional<AdviceRequest> asking = AdviceRequest.inHand(context.state());
        Suggestions advice = asking.map(it -> it.advice(light)).orElse(new Suggestions(List.of(), -1));
        String text = LightText.of(light, context.now()) + "." + best(advice);
        return context.does(
                List.of(),
                context.before(),
                new Outcome.Answer(
                        "light", text, fields(context, context.state(), light, asking, advice, List.of()), List.of()),
                List.of());
    }

    /** Which of the two was taken last: the order of the lines says so, whatever the clock did. */
    private static boolean isFlashNewer(CommandContext context) {
        Optional<FlashLight> flash = context.state().day().flash();
        Optional<Light> light = context.state().day().light();
        return context.state()
                .history()
                .entriesNewestFirst()
                .filter(it -> it.as(DayEvent.FlashMetered.class)
                                .map(DayEvent.FlashMetered::flash)
                                .equals(flash)
                        || it.as(DayEvent.LightMetered.class)
                                .map(DayEvent.LightMetered::light)
                                .equals(light))
                .findFirst()
                .filter(it -> it.is(DayEvent.FlashMetered.class))
                .isPresent();
    }

    private static String best(Suggestions advice) {
        return advice.bestOne()
                .flatMap(row -> row.time().map(time -> " Best: " + row.aperture() + " " + time + "."))
                .orElse("");
    }

    private static Outcome light(CommandContext context, Reading reading, Meter meter, List<JournalEntry> entries) {
        Light light = reading.light().orElseThrow();
        Optional<AdviceRequest> asking = AdviceRequest.inHand(context.state());
        Suggestions advice = asking.map(it -> it.advice(light)).orElse(new Suggestions(List.of(), -1));
        List<Warning> warnings = warnings(context, light, meter, asking);
        context.clockShifts().sinceFrameOrReading().ifPresent(it -> {
            entries.add(new JournalEntry.OnDay(new DayEvent.ClockShifted(it)));
            warnings.add(WarningText.clockBeforeReading(it));
        });
        entries.add(new JournalEntry.OnDay(new DayEvent.LightMetered(
                light, meter.key(), warnings.stream().map(Warning::code).toList())));
        String chosen = "";
        if (asking.isPresent() && !context.camera().isAutomatic()) {
            Camera camera = context.camera();
            CameraSetup inHand = context.state().inHand(camera);
            OptionalDouble now = error(context, light, asking.get());
            Optional<Suggestion> best = withinAStop(advice);
            boolean right = now.isPresent() && isRight(now.getAsDouble(), asking.get()) && keepsHold(inHand);
            boolean nothingBetter = now.isPresent() && best.isPresent() && isIn(inHand, best.get());
            if (FlashCommand.leads(context.state())) {
                chosen = besideFlash(context, light, asking.get(), entries, warnings);
            } else if (right || nothingBetter) {
                chosen = " The setting in hand stays: "
                        + pair(inHand.setting().aperture(), inHand.setting().time()) + ", "
                        + Stops.error(now.getAsDouble()) + ".";
                best.filter(it -> !right).ifPresent(it -> warnings.addAll(it.warnings()));
            } else if (best.isPresent()) {
                Suggestion row = best.get();
                entries.add(new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(
                        camera.key(),
                        inHand.with(SettingPatch.aperture(row.aperture())
                                .and(SettingPatch.time(row.time().orElseThrow()))))));
                chosen = " Set: " + pair(Optional.of(row.aperture()), row.time()) + ", "
                        + Stops.error(row.errorStops().getAsDouble()) + "." + notHeld(inHand, row);
                warnings.addAll(row.warnings());
            } else {
                chosen = " No setting comes within a stop; the one in hand stays"
                        + now.stream()
                                .mapToObj(it -> ", " + Stops.error(it))
                                .findFirst()
                                .orElse("") + "."
                        + AdviceText.words(Alternatives.of(
                                        asking.get(), light, context.state().kit()))
                                .stream()
                                .findFirst()
                                .map(it -> " What would fit: " + it + "; why says more.")
                                .orElse("");
                advice.bestOne().ifPresent(it -> warnings.addAll(it.warnings()));
            }
        } else if (asking.isEmpty()) {
            chosen = context.state().placeInHand().isEmpty()
                    ? " No camera in hand."
                    : " No film in " + context.state().placeInHand().get() + ".";
        }
        ShootState after = context.after(entries);
        String text = LightText.of(light, context.now()) + "." + chosen + sharp(after, advice)
                + zones(reading, light, asking)
                + (after.inHand().setting().flash() ? FlashCommand.ambientWords(after) : "");
        return context.does(
                entries,
                after,
                new Outcome.Answer(
                        "light",
                        text,
                        fields(context, after, light, asking, advice, context.unsilenced(warnings)),
                        context.unsilenced(warnings)),
                List.of());
    }

    /**
     * While a flash reading leads, its aperture stays, and the time only as far as the flash and the light that is
     * there need it.
     */
    private static String besideFlash(
            CommandContext context,
            Light light,
            AdviceRequest asking,
            List<JournalEntry> entries,
            List<Warning> warnings) {
        Camera camera = context.camera();
        CameraSetup inHand = context.state().inHand(camera);
        Optional<ExposureTime> time = FlashCommand.besideFlash(camera, asking, light);
        boolean stays = time.equals(inHand.setting().time());
        if (!stays) {
            entries.add(new JournalEntry.OnDay(
                    new DayEvent.CameraSetupChanged(camera.key(), inHand.with(SettingPatch.time(time.orElseThrow())))));
        }
        time.ifPresent(it -> ExposureWarnings.ofTime(
                it, camera, asking.setting().focalMm(), true, asking.setting().tripod(), warnings));
        double flash = asking.path()
                .flashError(
                        context.state().day().flash().orElseThrow(),
                        asking.setting().aperture().orElseThrow());
        return (stays ? " The setting in hand stays: " : " Set: ")
                + pair(asking.setting().aperture(), time) + ", flash " + Stops.error(flash) + ".";
    }

    /** What is sharp at the aperture in hand, where a distance is known. */
    private static String sharp(ShootState after, Suggestions advice) {
        return after.inHand()
                .setting()
                .aperture()
                .flatMap(at -> advice.suggestions().stream()
                        .filter(it -> it.aperture().isSameMark(at))
                        .findFirst())
                .flatMap(Suggestion::depth)
                .map(it -> " Sharp from " + SetupText.depth(it) + ".")
                .orElse("");
    }

    /** The best suggestion; where that one is more than a stop off, the one that comes nearest to the light. */
    private static Optional<Suggestion> withinAStop(Suggestions advice) {
        List<Suggestion> rows = new ArrayList<>(advice.bestOne().stream().toList());
        advice.suggestions().stream()
                .filter(it -> it.errorStops().isPresent())
                .sorted(Comparator.comparingDouble(
                        it -> Math.abs(it.errorStops().getAsDouble())))
                .forEach(rows::add);
        return rows.stream()
                .filter(it -> it.errorStops().isPresent()
                        && !Stops.above(Math.abs(it.errorStops().getAsDouble()), 1))
                .findFirst();
    }

    private static Json.Obj fields(
            CommandContext context,
            ShootState after,
            Light light,
            Optional<AdviceRequest> asking,
            Suggestions advice,
            List<Warning> warnings) {
        AdviceRequest about = asking.orElseGet(() -> new AdviceRequest(
                context.state().cameraInHand(),
                context.state().inHand().setting(),
                context.state().inHand().hold(),
                Optional.empty(),
                FilmSpeed.ISO_100,
                0,
                context.state().meterInHand()));
        List<Warning> ofReading = warnings.stream()
                .filter(it -> it.code() == Warning.Code.SPAN
                        || it.code() == Warning.Code.CAMERA_METER
                        || it.code() == Warning.Code.SUN
                        || it.code() == Warning.Code.CLOCK
                        || it.code() == Warning.Code.METER_SPEED)
                .toList();
        return Json.object()
                .and("advice", AdviceJson.of(about, light, advice, ofReading))
                .and("aperture", after.inHand().setting().aperture().map(Object::toString))
                .and("time", after.inHand().setting().time().map(Object::toString))
                .and("errorStops", AdviceJson.exact(ExposureInHand.error(after)));
    }

    private static String pair(Optional<Aperture> aperture, Optional<ExposureTime> time) {
        return FrameArguments.words(aperture, time, SettingPatch.NOTHING);
    }

    private static OptionalDouble error(CommandContext context, Light light, AdviceRequest asking) {
        var setting = asking.setting();
        return setting.aperture().isEmpty() || setting.time().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(asking.path()
                        .error(
                                light.ev100(),
                                setting.aperture().get(),
                                setting.time().get()));
    }

    /** Within a third of a stop; on negative film up to two thirds over. */
    private static boolean isRight(double error, AdviceRequest asking) {
        return !Stops.above(-error, 1 / 3.0) && !Stops.above(error, asking.toleratedOverStops());
    }

    private static boolean isIn(CameraSetup inHand, Suggestion row) {
        return inHand.setting().aperture().equals(Optional.of(row.aperture()))
                && inHand.setting().time().equals(row.time());
    }

    /** A held aperture that gave way to a row that nothing speaks against is not given up in silence. */
    private static String notHeld(CameraSetup inHand, Suggestion row) {
        Optional<Aperture> held = inHand.hold().flatMap(it -> it.aperture());
        return held.isEmpty() || Math.abs(held.get().stops() - row.aperture().stops()) < 1e-6
                ? ""
                : " Not at " + held.get() + ", which is held: why says why.";
    }

    private static boolean keepsHold(CameraSetup inHand) {
        return inHand.hold().isEmpty()
                || inHand.hold()
                        .get()
                        .aperture()
                        .map(it -> inHand.setting().aperture().equals(Optional.of(it)))
                        .orElseGet(() -> inHand.setting()
                                .time()
                                .equals(inHand.hold().get().time()));
    }

    /** What must be said about a reading, and was not said before. */
    private static List<Warning> warnings(
            CommandContext context, Light light, Meter meter, Optional<AdviceRequest> asking) {
        List<Warning> all = new ArrayList<>();
        Optional<Roll> roll = context.state().rollInHand();
        roll.flatMap(it -> EntryWarnings.meterSpeed(light, it))
                .filter(it -> !EntryWarnings.wasWarned(light, context.state(), context.now()))
                .ifPresent(it -> all.add(WarningText.meterSpeed(it)));
        ExposureWarnings.span(light.spanStops(), roll.map(it -> it.film().stock()))
                .ifPresent(all::add);
        AdviceRequest about = asking.orElse(null);
        if (light.method() == Light.Method.CAMERA && !saidToday(context, Warning.Code.CAMERA_METER)) {
            (about == null
                            ? new AdviceRequest(
                                    Optional.empty(),
                                    Setting.NONE,
                                    Optional.empty(),
                                    Optional.empty(),
                                    FilmSpeed.ISO_100,
                                    0,
                                    meter)
                            : about)
                    .warnings(light).stream()
                            .filter(it -> it.code() == Warning.Code.CAMERA_METER)
                            .forEach(all::add);
        }
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

    /** Whether a warning was given with a reading today. */
    private static boolean saidToday(CommandContext context, Warning.Code code) {
        return context.state()
                .history()
                .on(context.now().toLocalDate())
                .events(DayEvent.LightMetered.class)
                .anyMatch(it -> it.said().contains(code));
    }

    /** Why the best suggestion is the best; where none serves, what would. */
    static Outcome why(CommandContext context, List<String> words) {
        Arguments.alone("why", words);
        Camera camera = context.camera();
        context.roll();
        if (camera.isAutomatic()) {
            throw new CommandRejected(camera.name() + " sets itself: there is nothing to choose");
        }
        Light light = context.state()
                .day()
                .light()
                .orElseThrow(() -> new CommandRejected("no light reading today, so nothing was chosen: m 5.6 125"));
        AdviceRequest asking = AdviceRequest.inHand(context.state()).orElseThrow();
        Suggestions advice = asking.advice(light);
        if (advice.suggestions().isEmpty()) {
            throw new CommandRejected(camera.name() + " has no lens in hand to choose an aperture of");
        }
        String text = AdviceText.words(AdviceExplanation.of(asking, advice));
        if (Alternatives.areNeeded(asking, advice)) {
            List<String> remedies = AdviceText.words(
                    Alternatives.of(asking, light, context.state().kit()));
            text += remedies.isEmpty()
                    ? " Nothing here fits better."
                    : " What would fit: " + String.join("; ", remedies) + ".";
        }
        return context.does(
                List.of(),
                context.before(),
                new Outcome.Answer(
                        "light",
                        text,
                        fields(context, context.state(), light, Optional.of(asking), advice, List.of()),
                        List.of()),
                List.of());
    }

    /** Several readings as zones: how far apart, what the shadows ask for, and what the highlights get then. */
    private static String zones(Reading reading, Light light, Optional<AdviceRequest> asking) {
        if (reading.lowestEv().isEmpty()
                || asking.isEmpty()
                || asking.get().stock().isEmpty()
                || light.zone().isPresent() && light.zone().getAsInt() != 5) {
            return "";
        }
        double span = light.spanStops().orElse(0);
        Light shadows = new Light(
                new ExposureValue(reading.lowestEv().getAsDouble()),
                light.method(),
                light.typed(),
                OptionalDouble.empty(),
                light.zone(),
                light.index(),
                light.at());
        Optional<Suggestion> row = withinAStop(asking.get().advice(shadows));
        if (row.isEmpty() || row.get().overBoxStops().isEmpty()) {
            return "";
        }
        Stock stock = asking.get().stock().get();
        double highlights =
                row.get().overBoxStops().getAsDouble() + span + asking.get().pushStops();
        double past = highlights - stock.overStops();
        return " Shadows at " + shadows.ev100() + " ask for "
                + pair(Optional.of(row.get().aperture()), row.get().time()) + "; the highlights, " + Stops.words(span)
                + " up, then get " + Stops.words(highlights) + (highlights < 0 ? " under" : " over")
                + " box speed, and this film bears " + Stops.words(stock.overStops())
                + (Stops.above(past, 0) ? ": " + Stops.words(past) + " too much" : "") + ".";
    }
}
