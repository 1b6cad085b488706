package takeup.framing;

import takeup.command.AnswerFields;
import takeup.json.Json;
import takeup.report.AdviceJson;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.Setting;

/** What other programs read of new frames. */
record FrameFields(Roll roll, Frame last, NewFrames frames) implements AnswerFields {
    @Override
    public Json.Obj json() {
        ExposureResult result = ExposureResult.of(roll, last);
        Setting setting = frames.setting();
        Json.Obj json = Json.object()
                .and("roll", roll.id())
                .and("frame", last.number())
                .and("count", frames.count())
                .and("framesLeft", roll.framesLeft())
                .and("kind", frames.kind())
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and("errorStops", AdviceJson.exact(result.errorStops()))
                .and("overBoxStops", AdviceJson.exact(result.overBoxStops()));
        if (!last.scene().people().isEmpty()) {
            json.and("people", last.scene().people());
        }
        json.andIfKnown("place", last.scene().place().name());
        return setting.flash() ? json.and("lightParts", AdviceJson.of(result.light())) : json;
    }
}
