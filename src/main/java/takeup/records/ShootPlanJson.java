package takeup.records;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.day.Bag;
import takeup.day.Day;
import takeup.day.FilmLot;
import takeup.day.Fridge;
import takeup.day.KeyMoment;
import takeup.day.Plan;
import takeup.day.ShootInfo;
import takeup.json.Json;
import takeup.kit.FilmSize;
import takeup.roll.RollId;

/** The shoot, its plan and the bag to JSON and back. */
public final class ShootPlanJson {
    private ShootPlanJson() {}

    static Json.Obj of(ShootInfo shoot) {
        Json.Obj json =
                Json.object().and("name", shoot.name()).and("date", shoot.date().toString());
        shoot.place().name().ifPresent(it -> json.and("place", it));
        SceneJson.put(json, shoot.place());
        shoot.client().ifPresent(it -> json.and("client", it));
        return json;
    }

    static ShootInfo shoot(Fields fields) {
        return new ShootInfo(
                fields.text("name"),
                date(FastIsoParser.date(fields.text("date")), fields.text("date")),
                SceneJson.place(fields, fields.maybeText("place")),
                fields.maybeText("client"));
    }

    static Json.Obj of(KeyMoment moment) {
        Json.Obj json = Json.object()
                .and("number", moment.number())
                .and("at", moment.at().toString())
                .and("name", moment.name())
                .and("wants", moment.wants())
                .and("must", moment.must());
        moment.camera().ifPresent(it -> json.and("camera", it));
        moment.back().ifPresent(it -> json.and("back", it));
        moment.ev100().ifPresent(it -> json.and("ev100", it));
        return json;
    }

    static KeyMoment moment(Fields fields) {
        return new KeyMoment(
                fields.count("number"),
                date(FastIsoParser.dateTime(fields.text("at")), fields.text("at")),
                fields.text("name"),
                fields.count("wants"),
                fields.flag("must"),
                fields.maybeText("camera"),
                fields.maybeText("back"),
                fields.maybeNumber("ev100", -30, 30));
    }

    static Json.Obj of(FilmLot lot) {
        Json.Obj json = Json.object().and("stock", lot.stock()).and("filmSize", lot.size());
        lot.expires().ifPresent(it -> json.and("expires", it.toString()));
        lot.price().ifPresent(it -> json.and("price", it.toString()));
        lot.batch().ifPresent(it -> json.and("batch", it));
        return json;
    }

    public static FilmLot lot(Fields fields) {
        String size = fields.text("filmSize");
        return new FilmLot(
                fields.text("stock"),
                Fields.known(FilmSize.named(size), size + " is no film size"),
                fields.has("expires")
                        ? Optional.of(date(FastIsoParser.month(fields.text("expires")), fields.text("expires")))
                        : Optional.empty(),
                fields.has("price") ? Optional.of(price(fields.text("price"))) : Optional.empty(),
                fields.maybeText("batch"));
    }

    private static BigDecimal price(String text) {
        try {
            BigDecimal price = text.length() > 20 ? null : new BigDecimal(text);
            if (price != null && Math.abs(price.scale()) <= 20) {
                return price;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new Fields.Unreadable("price is no sum of money");
    }

    private static <T> T date(Optional<T> read, String text) {
        return Fields.known(read, text + " is no date");
    }

    /** The open shoot, its plan and the film for it; nothing in it where there is none of them. */
    static Json.Obj of(Day day) {
        Json.Obj json = Json.object();
        day.shoot().ifPresent(it -> json.and("shoot", of(it)));
        if (!day.plan().equals(Plan.NONE)) {
            json.and(
                            "plan",
                            day.plan().moments().stream().map(ShootPlanJson::of).toList())
                    .and("last", day.plan().last());
        }
        Bag bag = day.bag();
        if (bag.kept()) {
            List<Json> lots = new ArrayList<>();
            bag.lots().forEach((lot, rolls) -> lots.add(of(lot).and("rolls", rolls)));
            Json.Obj loaded = Json.object();
            bag.loaded().forEach((roll, lot) -> loaded.and(roll.toString(), of(lot)));
            json.and("bag", lots).and("loaded", loaded);
        }
        Fridge fridge = day.fridge();
        if (fridge.kept()) {
            List<Json> lots = new ArrayList<>();
            fridge.lots().forEach((lot, rolls) -> lots.add(of(lot).and("rolls", rolls)));
            json.and("fridge", lots);
        }
        return json;
    }

    static Optional<ShootInfo> openShoot(Fields fields) {
        return fields.has("shoot") ? Optional.of(shoot(fields.inner("shoot"))) : Optional.empty();
    }

    static Plan plan(Fields fields) {
        if (fields.maybeCount("last").isEmpty()) {
            return Plan.NONE;
        }
        List<KeyMoment> moments = new ArrayList<>();
        for (Json item : fields.list("plan")) {
            moments.add(moment(Fields.of(item)));
        }
        return new Plan(moments, fields.count("last"));
    }

    static Fridge fridge(Fields fields) {
        return fields.has("fridge") ? new Fridge(lots(fields.list("fridge")), true) : Fridge.NONE;
    }

    private static Map<FilmLot, Integer> lots(List<Json> items) {
        Map<FilmLot, Integer> lots = new LinkedHashMap<>();
        for (Json item : items) {
            Fields fields = Fields.of(item);
            lots.put(lot(fields), fields.count("rolls"));
        }
        return lots;
    }

    static Bag bag(Fields fields) {
        if (fields.maybeList("bag").isEmpty()) {
            return Bag.NONE;
        }
        Map<FilmLot, Integer> lots = lots(fields.list("bag"));
        Map<RollId, FilmLot> loaded = new LinkedHashMap<>();
        Fields rolls = fields.inner("loaded");
        for (String roll : rolls.names()) {
            loaded.put(RollEventJson.id(roll), lot(rolls.inner(roll)));
        }
        return new Bag(lots, loaded, true);
    }
}
