package takeup.records;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import takeup.exposure.FilmSpeed;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.roll.Condition;
import takeup.roll.LoadCheck;
import takeup.roll.NoteEvent;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** The events of a roll to JSON and back. A kind that is not known is kept as it stands. */
public final class RollEventJson implements RollEvent.Cases<Json.Obj> {
    /** The event as it is written down; a kind that is not known letter for letter. */
    public static String text(RollEvent event) {
        Json.Obj json = event.match(new RollEventJson());
        return event instanceof RollEvent.Unknown unknown ? unknown.text() : JsonText.line(json);
    }

    private static Json.Obj event(String kind) {
        return Json.object().and("event", kind);
    }

    @Override
    public Json.Obj loaded(RollEvent.Loaded loaded) {
        return event("loaded")
                .and("roll", loaded.id())
                .and("camera", FilmJson.of(loaded.camera()))
                .and("back", loaded.back())
                .and("film", FilmJson.of(loaded.film()));
    }

    @Override
    public Json.Obj added(RollEvent.Added added) {
        Json.Obj json = event("frame")
                .and(
                        "how",
                        switch (added.origin()) {
                            case LOGGED -> "logged";
                            case INSERTED -> "inserted";
                            case MOVED -> "moved";
                        });
        json.andIfKnown("before", added.before());
        return json.and("frame", ExposureJson.of(added.frame()));
    }

    @Override
    public Json.Obj doubleAnnounced(RollEvent.DoubleAnnounced doubled) {
        Json.Obj json = event("double");
        return doubled.more() == 1 ? json : json.and("more", doubled.more());
    }

    @Override
    public Json.Obj exposedAgain(RollEvent.ExposedAgain again) {
        Json.Obj json = event("exposedAgain").and("exposure", ExposureJson.of(again.exposure()));
        again.note().ifPresent(it -> json.and("note", it));
        return json;
    }

    @Override
    public Json.Obj corrected(RollEvent.Corrected corrected) {
        return event("corrected")
                .and("from", corrected.from())
                .and("to", corrected.to())
                .and("change", SettingJson.of(corrected.change()));
    }

    @Override
    public Json.Obj dropped(RollEvent.Dropped dropped) {
        Json.Obj json = event("dropped").and("from", dropped.from()).and("to", dropped.to());
        dropped.movedTo().ifPresent(it -> json.and("movedTo", it));
        return json;
    }

    @Override
    public Json.Obj counterShown(RollEvent.CounterShown shown) {
        return event("counter").and("shown", shown.shown());
    }

    @Override
    public Json.Obj rollCorrected(RollEvent.RollCorrected corrected) {
        RollChange change = corrected.change();
        Json.Obj json = event("rollCorrected");
        change.stock().ifPresent(it -> json.and("stock", FilmJson.of(it)));
        change.filmSize().ifPresent(it -> json.and("filmSize", it));
        change.index().ifPresent(it -> json.and("index", it.arithmetic()));
        change.pushStops().ifPresent(it -> json.and("push", it));
        change.process().ifPresent(it -> json.and("process", it));
        change.framesNominal().ifPresent(it -> json.and("frames", it));
        return FilmJson.put(json, change.label());
    }

    @Override
    public Json.Obj noted(NoteEvent.Noted noted) {
        return event("note").and("words", noted.words());
    }

    @Override
    public Json.Obj conditionNoted(NoteEvent.ConditionNoted conditioned) {
        return event("condition")
                .and("kind", conditioned.condition().kind())
                .and("words", conditioned.condition().words());
    }

    @Override
    public Json.Obj shootAssigned(NoteEvent.ShootAssigned assigned) {
        return SceneJson.put(event("assigned"), assigned.assignment());
    }

    @Override
    public Json.Obj developed(NoteEvent.Developed developed) {
        return LabEventJson.of(developed);
    }

    @Override
    public Json.Obj released(NoteEvent.Released released) {
        Json.Obj json = event("release").and("people", SceneJson.of(released.people()));
        released.words().ifPresent(it -> json.and("words", it));
        return json;
    }

    @Override
    public Json.Obj costNoted(NoteEvent.CostNoted noted) {
        return LabEventJson.of(noted);
    }

    @Override
    public Json.Obj loadChecked(RollEvent.LoadChecked checked) {
        return event("checked").and("what", checked.what()).and("answer", checked.answer());
    }

    @Override
    public Json.Obj rewound(RollEvent.Rewound rewound) {
        return event("rewound");
    }

    @Override
    public Json.Obj reloaded(RollEvent.Reloaded again) {
        return event("reloaded")
                .and("camera", FilmJson.of(again.camera()))
                .and("back", again.back())
                .and("spare", again.spare());
    }

    @Override
    public Json.Obj backMoved(RollEvent.BackMoved moved) {
        return event("backMoved").and("camera", FilmJson.of(moved.camera())).and("back", moved.back());
    }

    @Override
    public Json.Obj unloaded(RollEvent.Unloaded unloaded) {
        return event("unloaded");
    }

    @Override
    public Json.Obj undone(RollEvent.Undone back) {
        return event("undo").and("of", back.step());
    }

    @Override
    public Json.Obj redone(RollEvent.Redone again) {
        return event("redo").and("of", again.step());
    }

    @Override
    public Json.Obj unknown(RollEvent.Unknown unknown) {
        try {
            return (Json.Obj) JsonText.read(unknown.text());
        } catch (JsonText.NotJson e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    static Optional<RollId> maybeId(Fields fields, String name) {
        return fields.has(name) ? Optional.of(id(fields.text(name))) : Optional.empty();
    }

    static RollId id(String text) {
        return Fields.known(RollId.parse(text), text + " is no roll number");
    }

    public static RollEvent event(Fields fields, Supplier<String> text) {
        String kind = fields.text("event");
        return switch (kind) {
            case "loaded" ->
                new RollEvent.Loaded(
                        id(fields.text("roll")),
                        FilmJson.camera(fields.inner("camera")),
                        fields.maybeText("back"),
                        FilmJson.film(fields.inner("film")));
            case "frame" ->
                new RollEvent.Added(
                        ExposureJson.frame(fields.inner("frame")),
                        how(fields.text("how")),
                        fields.maybeCount("before"));
            case "double" ->
                new RollEvent.DoubleAnnounced(fields.maybeCount("more").orElse(1));
            case "exposedAgain" ->
                new RollEvent.ExposedAgain(ExposureJson.exposure(fields.inner("exposure")), fields.maybeText("note"));
            case "corrected" ->
                new RollEvent.Corrected(
                        fields.count("from"), fields.count("to"), SettingJson.change(fields.inner("change")));
            case "dropped" ->
                new RollEvent.Dropped(fields.count("from"), fields.count("to"), maybeId(fields, "movedTo"));
            case "counter" -> new RollEvent.CounterShown(fields.count("shown"));
            case "rollCorrected" ->
                new RollEvent.RollCorrected(new RollChange(
                        fields.inside("stock").map(FilmJson::stock),
                        fields.maybeText("filmSize").map(FilmJson::size),
                        fields.object().field("index").isPresent()
                                ? Optional.of(
                                        new FilmSpeed(fields.number("index", ExposureJson.LEAST, ExposureJson.MOST)))
                                : Optional.empty(),
                        fields.maybeNumber("push", -ExposureJson.STOPS, ExposureJson.STOPS),
                        fields.maybeText("process"),
                        fields.maybeCount("frames"),
                        FilmJson.label(fields)));
            case "note" -> new NoteEvent.Noted(fields.text("words"));
            case "condition" ->
                new NoteEvent.ConditionNoted(new Condition(
                        Condition.Kind.named(fields.text("kind")).orElse(Condition.Kind.OTHER),
                        fields.maybeText("words")));
            case "assigned" -> new NoteEvent.ShootAssigned(SceneJson.shoot(fields));
            case "checked" -> checked(fields, text);
            case "developed" -> LabEventJson.developed(fields);
            case "release" ->
                new NoteEvent.Released(
                        fields.maybeList("people").map(SceneJson::people).orElse(List.of()), fields.maybeText("words"));
            case "cost" -> LabEventJson.cost(fields, text);
            case "rewound" -> new RollEvent.Rewound();
            case "reloaded" ->
                new RollEvent.Reloaded(
                        FilmJson.camera(fields.inner("camera")), fields.maybeText("back"), fields.count("spare"));
            case "backMoved" -> new RollEvent.BackMoved(FilmJson.camera(fields.inner("camera")), fields.text("back"));
            case "unloaded" -> new RollEvent.Unloaded();
            case "undo" -> new RollEvent.Undone(fields.whole("of"));
            case "redo" -> new RollEvent.Redone(fields.whole("of"));
            default -> new RollEvent.Unknown(kind, text.get());
        };
    }

    /** A beat or an answer of a later version is kept as it stands. */
    private static RollEvent checked(Fields fields, Supplier<String> text) {
        for (LoadCheck.What what : LoadCheck.What.values()) {
            for (LoadCheck.Answer answer : LoadCheck.Answer.values()) {
                if (what.toString().equals(fields.text("what"))
                        && answer.toString().equals(fields.text("answer"))) {
                    return new RollEvent.LoadChecked(what, answer);
                }
            }
        }
        return new RollEvent.Unknown("checked", text.get());
    }

    private static RollEvent.Origin how(String word) {
        return switch (word) {
            case "logged" -> RollEvent.Origin.LOGGED;
            case "inserted" -> RollEvent.Origin.INSERTED;
            case "moved" -> RollEvent.Origin.MOVED;
            default -> throw new Fields.Unreadable("how " + word + " is not known");
        };
    }
}
