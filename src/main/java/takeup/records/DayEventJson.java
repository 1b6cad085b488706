package takeup.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import takeup.day.CameraEvent;
import takeup.day.DayEvent;
import takeup.day.PaperEvent;
import takeup.day.PlanEvent;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Warning;
import takeup.roll.Scene;

/** The events of a day to JSON and back. A kind that is not known is kept as it stands. */
public final class DayEventJson implements DayEvent.Cases<Json.Obj> {
    /** The event as it is written down; a kind that is not known letter for letter. */
    public static String text(DayEvent event) {
        Json.Obj json = event.match(new DayEventJson());
        return event instanceof DayEvent.Unknown unknown ? unknown.text() : JsonText.line(json);
    }

    private static Json.Obj event(String kind) {
        return Json.object().and("event", kind);
    }

    @Override
    public Json.Obj cameraSelected(CameraEvent.CameraSelected took) {
        return event("camera").and("place", DayJson.of(took.place()));
    }

    @Override
    public Json.Obj cameraSetupChanged(CameraEvent.CameraSetupChanged changed) {
        return event("inHand").and("camera", changed.camera()).and("inHand", DayJson.of(changed.inHand()));
    }

    @Override
    public Json.Obj meterSelected(CameraEvent.MeterSelected metered) {
        Json.Obj json = event("meter").and("meter", metered.meter());
        metered.preset().ifPresent(it -> json.and("preset", ExposureJson.of(it)));
        return json;
    }

    @Override
    public Json.Obj lightMetered(CameraEvent.LightMetered lit) {
        return event("light")
                .and("light", ExposureJson.of(lit.light()))
                .and("meter", lit.meter())
                .and("said", lit.warned());
    }

    @Override
    public Json.Obj flashMetered(CameraEvent.FlashMetered lit) {
        return event("flashLight").and("flash", FlashLightJson.of(lit.flash()));
    }

    @Override
    public Json.Obj warningSilenced(DayEvent.WarningSilenced quieted) {
        return event("quiet").and("code", quieted.code());
    }

    @Override
    public Json.Obj rollClosed(DayEvent.RollClosed touched) {
        Json.Obj json = event("roll").and("roll", touched.roll()).and("place", DayJson.of(touched.place()));
        touched.film().ifPresent(it -> json.and("film", FilmJson.of(it)));
        return json;
    }

    @Override
    public Json.Obj carried(DayEvent.Carried carried) {
        return event("carried").and("day", DayJson.of(carried.day()));
    }

    @Override
    public Json.Obj flashCautioned(CameraEvent.FlashCautioned cautioned) {
        return event("flashCaution").and("camera", cautioned.camera());
    }

    @Override
    public Json.Obj timerStarted(CameraEvent.TimerStarted started) {
        return event("timer").and("camera", started.camera()).and("timer", DayJson.of(started.timer()));
    }

    @Override
    public Json.Obj timerStopped(CameraEvent.TimerStopped stopped) {
        return event("timerStopped").and("camera", stopped.camera());
    }

    @Override
    public Json.Obj guideDismissed(DayEvent.GuideDismissed left) {
        return event("guideLeft");
    }

    @Override
    public Json.Obj clockShifted(DayEvent.ClockShifted shifted) {
        return event("clock").and("shift", ExposureJson.of(shifted.shift()));
    }

    @Override
    public Json.Obj shootOpened(PlanEvent.ShootOpened opened) {
        return event("shoot").and("shoot", ShootPlanJson.of(opened.info()));
    }

    @Override
    public Json.Obj sceneSet(PlanEvent.SceneSet set) {
        Json.Obj json = event("scene");
        SceneJson.put(json, Scene.NONE.with(set.people()).with(set.place()));
        return json;
    }

    @Override
    public Json.Obj momentPlanned(PlanEvent.MomentPlanned planned) {
        return event("planned").and("moment", ShootPlanJson.of(planned.moment()));
    }

    @Override
    public Json.Obj momentDropped(PlanEvent.MomentDropped unplanned) {
        return event("unplanned").and("moment", unplanned.moment());
    }

    @Override
    public Json.Obj bagChanged(PlanEvent.BagChanged bagged) {
        Json.Obj json = event("bagged").and("rolls", bagged.rolls()).and("lot", ShootPlanJson.of(bagged.lot()));
        bagged.into().ifPresent(it -> json.and("into", it));
        return json;
    }

    @Override
    public Json.Obj fridgeChanged(PlanEvent.FridgeChanged changed) {
        return event("fridge").and("rolls", changed.rolls()).and("lot", ShootPlanJson.of(changed.lot()));
    }

    @Override
    public Json.Obj rollNamed(DayEvent.RollNamed named) {
        return event("named").and("roll", named.roll()).and("name", named.name());
    }

    @Override
    public Json.Obj routineSet(DayEvent.RoutineSet set) {
        return event("routine").and("on", set.on());
    }

    @Override
    public Json.Obj paperStarted(PaperEvent.PaperStarted begun) {
        return event("paper").and("roll", begun.roll());
    }

    @Override
    public Json.Obj paperLineRejected(PaperEvent.PaperLineRejected aside) {
        return event("paperAside").and("line", aside.line());
    }

    @Override
    public Json.Obj paperFinished(PaperEvent.PaperFinished done) {
        return event("paperDone");
    }

    @Override
    public Json.Obj undone(DayEvent.Undone back) {
        return event("undo").and("of", back.step());
    }

    @Override
    public Json.Obj redone(DayEvent.Redone again) {
        return event("redo").and("of", again.step());
    }

    @Override
    public Json.Obj unknown(DayEvent.Unknown unknown) {
        try {
            return (Json.Obj) JsonText.read(unknown.text());
        } catch (JsonText.NotJson e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    public static DayEvent event(Fields fields, Supplier<String> text) {
        String kind = fields.text("event");
        return switch (kind) {
            case "camera" -> new CameraEvent.CameraSelected(DayJson.place(fields.inner("place")));
            case "inHand" ->
                new CameraEvent.CameraSetupChanged(fields.text("camera"), DayJson.inHand(fields.inner("inHand")));
            case "meter" ->
                new CameraEvent.MeterSelected(fields.text("meter"), ExposureJson.maybeTime(fields, "preset"));
            case "light" ->
                new CameraEvent.LightMetered(
                        ExposureJson.light(fields.inner("light")), fields.text("meter"), codes(fields.list("said")));
            case "flashLight" -> new CameraEvent.FlashMetered(FlashLightJson.read(fields.inner("flash")));
            case "quiet" -> quiet(fields, text);
            case "roll" ->
                new DayEvent.RollClosed(
                        RollEventJson.id(fields.text("roll")),
                        DayJson.place(fields.inner("place")),
                        fields.has("film") ? Optional.of(FilmJson.film(fields.inner("film"))) : Optional.empty());
            case "carried" -> new DayEvent.Carried(DayJson.day(fields.inner("day")));
            case "flashCaution" -> new CameraEvent.FlashCautioned(fields.text("camera"));
            case "timer" -> new CameraEvent.TimerStarted(fields.text("camera"), DayJson.timer(fields.inner("timer")));
            case "timerStopped" -> new CameraEvent.TimerStopped(fields.text("camera"));
            case "guideLeft" -> new DayEvent.GuideDismissed();
            case "clock" -> new DayEvent.ClockShifted(ExposureJson.clock(fields.inner("shift")));
            case "shoot" -> new PlanEvent.ShootOpened(ShootPlanJson.shoot(fields.inner("shoot")));
            case "scene" -> sceneSet(SceneJson.scene(fields));
            case "planned" -> new PlanEvent.MomentPlanned(ShootPlanJson.moment(fields.inner("moment")));
            case "unplanned" -> new PlanEvent.MomentDropped(fields.count("moment"));
            case "bagged" ->
                new PlanEvent.BagChanged(
                        ShootPlanJson.lot(fields.inner("lot")),
                        fields.count("rolls"),
                        RollEventJson.maybeId(fields, "into"));
            case "fridge" -> new PlanEvent.FridgeChanged(ShootPlanJson.lot(fields.inner("lot")), fields.count("rolls"));
            case "named" -> new DayEvent.RollNamed(RollEventJson.id(fields.text("roll")), fields.text("name"));
            case "routine" -> new DayEvent.RoutineSet(fields.flag("on"));
            case "paper" -> new PaperEvent.PaperStarted(RollEventJson.id(fields.text("roll")));
            case "paperAside" -> new PaperEvent.PaperLineRejected(fields.text("line"));
            case "paperDone" -> new PaperEvent.PaperFinished();
            case "undo" -> new DayEvent.Undone(fields.whole("of"));
            case "redo" -> new DayEvent.Redone(fields.whole("of"));
            default -> new DayEvent.Unknown(kind, text.get());
        };
    }

    private static DayEvent quiet(Fields fields, Supplier<String> text) {
        Optional<Warning.Code> code = Warning.Code.named(fields.text("code"));
        return code.isPresent() ? new DayEvent.WarningSilenced(code.get()) : new DayEvent.Unknown("quiet", text.get());
    }

    private static List<Warning.Code> codes(List<Json> items) {
        List<Warning.Code> codes = new ArrayList<>();
        for (Json item : items) {
            if (item instanceof Json.Text text) {
                Optional<Warning.Code> code = Warning.Code.named(text.value());
                if (code.isPresent()) {
                    codes.add(code.get());
                }
            }
        }
        return codes;
    }

    private static DayEvent sceneSet(Scene scene) {
        return new PlanEvent.SceneSet(scene.people(), scene.place());
    }
}
