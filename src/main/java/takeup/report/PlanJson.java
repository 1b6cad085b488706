package takeup.report;

import java.util.Optional;
import takeup.day.KeyMoment;
import takeup.json.Json;
import takeup.text.ClockText;

/** The plan as other programs read it. */
public final class PlanJson {
    private PlanJson() {}

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
