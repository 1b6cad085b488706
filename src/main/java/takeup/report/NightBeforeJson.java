package takeup.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.advice.FilmBudget;
import takeup.day.CameraPlace;
import takeup.day.FilmLot;
import takeup.day.ShootInfo;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.roll.Roll;

/** The night-before list as other programs read it. */
public final class NightBeforeJson {
    private NightBeforeJson() {}

    /** The whole list, with the plan. */
    public static Json.Obj of(ShootState s, OffsetDateTime now, NightBeforeText.ClientName client) {
        NightBefore night = NightBefore.of(s, now);
        Json.Obj json = PlanJson.of(s, now);
        if (client == NightBeforeText.ClientName.SHOWN) {
            json.and("client", night.day().shoot().flatMap(ShootInfo::client));
        }
        if (night.day().fridge().kept()) {
            json.and("fridge", lots(night.day().fridge().filled(), night.today()));
        }
        return json.and("bag", bag(night))
                .and(
                        "check",
                        NightBeforeText.checks(night).stream()
                                .map(CheckList.Item::text)
                                .toList());
    }

    /** The fridge. */
    public static Json.Obj fridge(NightBefore night) {
        return Json.object()
                .and("kept", night.day().fridge().kept())
                .and("film", lots(night.day().fridge().filled(), night.today()));
    }

    /** Lots, and how many rolls there are of each. */
    public static List<Json> lots(Map<FilmLot, Integer> rolls, LocalDate today) {
        return lots(List.copyOf(rolls.entrySet()), today);
    }

    private static List<Json> lots(List<Map.Entry<FilmLot, Integer>> filled, LocalDate today) {
        List<Json> lots = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : filled) {
            Json.Obj json = Json.object()
                    .and("stock", lot.getKey().stock())
                    .and("filmSize", lot.getKey().size())
                    .and("expires", lot.getKey().expires().map(Object::toString))
                    .and("expired", lot.getKey().isExpired(today))
                    .and("price", lot.getKey().price().map(it -> it.doubleValue()))
                    .and("rolls", lot.getValue());
            lot.getKey().batch().ifPresent(it -> json.and("batch", it));
            lots.add(json);
        }
        return lots;
    }

    /** The bag, the cameras and the sum. */
    public static Json.Obj bag(NightBefore night) {
        List<Json> cameras = new ArrayList<>();
        for (NightBefore.InCamera one : night.cameras()) {
            CameraPlace place = one.place();
            Optional<Roll> roll = one.roll();
            cameras.add(Json.object()
                    .and("camera", place.camera())
                    .and("back", place.back())
                    .and("roll", roll.map(Roll::id))
                    .and("stock", roll.map(it -> it.film().stock().key()))
                    .and("exposureIndex", roll.map(it -> it.film().index().arithmetic()))
                    .and("frame", roll.map(Roll::next))
                    .and("framesLeft", roll.map(Roll::framesLeft))
                    .and("loadedOn", roll.map(it -> it.loadedAt().toLocalDate().toString())));
        }
        FilmBudget enough = night.budget();
        return Json.object()
                .and("kept", enough.isBagKept())
                .and("film", lots(night.day().bag().filled(), night.today()))
                .and("cameras", cameras)
                .and(
                        "enough",
                        Json.object()
                                .and("framesWanted", enough.framesWanted())
                                .and("framesInCameras", enough.framesInCameras())
                                .and("rollsInBag", enough.rollsInBag())
                                .and("framesInBag", enough.framesInBag())
                                .and("rollsForNoCamera", enough.rollsForNoCamera())
                                .and("framesOver", enough.framesOver()));
    }
}
