package takeup.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.advice.NextMoment;
import takeup.day.KeyMoment;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.roll.Coordinates;
import takeup.text.ClockText;

/** The plan as other programs read it. */
public final class PlanJson {
    private PlanJson() {}

    /** The moments, the next one with what is advised, the sun's times. */
    public static Json.Obj of(ShootState s, OffsetDateTime now) {
        List<Json> moments = new ArrayList<>();
        for (KeyMoment moment : s.day().plan().moments()) {
            moments.add(moment(moment).and("minutes", moment.minutesFrom(now.toLocalDateTime())));
        }
        Optional<NextMoment> next = NextMoment.of(s, now);
        List<Json> sun = new ArrayList<>();
        PlanTable.sun(s, now)
                .forEach(it -> sun.add(Json.object()
                        .and("what", it.event())
                        .and(
                                "at",
                                it.time().toLocalDate() + "T"
                                        + ClockText.clock(it.time())
                                        + it.time().getOffset())));
        return Json.object()
                .and(
                        "shoot",
                        s.day()
                                .shoot()
                                .map(it -> Json.object()
                                        .and("name", it.name())
                                        .and("date", it.date())
                                        .and("latitude", it.place().shared().map(Coordinates::latitude))
                                        .and("longitude", it.place().shared().map(Coordinates::longitude))))
                .and("moments", moments)
                .and(
                        "next",
                        next.map(it -> Json.object()
                                .and("number", it.moment().number())
                                .and("minutes", it.minutes())
                                .and("framesLeft", it.left() < 0 ? Optional.empty() : Optional.of(it.left()))
                                .and(
                                        "advice",
                                        it.advice()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-'))
                                .and("text", MomentText.line(it))))
                .and(
                        "pace",
                        NextMoment.pace(s, now).isPresent()
                                ? Optional.of(
                                        Json.digits(NextMoment.pace(s, now).getAsDouble(), 3))
                                : Optional.empty())
                .and("sun", sun);
    }

    /** A moment of the plan. */
    public static Json.Obj moment(KeyMoment moment) {
        return Json.object()
                .and("number", moment.number())
                .and("at", moment.at().toLocalDate() + "T" + ClockText.clock(moment.at()))
                .and("name", moment.name())
                .and("wants", moment.wants() == 0 ? Optional.empty() : Optional.of(moment.wants()))
                .and("must", moment.must())
                .and("camera", moment.camera())
                .and("back", moment.back())
                .and("ev100", AdviceJson.exact(moment.ev100()));
    }
}
