package takeup.metering;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.advice.AdviceRequest;
import takeup.advice.ExposureInHand;
import takeup.command.AnswerFields;
import takeup.command.CommandContext;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.Reading;
import takeup.report.AdviceJson;

/**
 * What other programs read of a light reading, and of the setting that follows from it.
 *
 * @param after the state once it is written down
 * @param warnings all that is said of it and of the setting
 * @param context what the line was read in
 * @param reading what was typed; empty where the light of the day is asked for again
 */
record ReadingFields(
        ShootState after,
        Light light,
        Suggestions suggestions,
        List<Warning> warnings,
        CommandContext context,
        Optional<Reading> reading)
        implements AnswerFields {
    /** Those about the reading itself; the others are about its rows. */
    private static final Set<Warning.Code> OF_READING = EnumSet.of(
            Warning.Code.SPAN,
            Warning.Code.CAMERA_METER,
            Warning.Code.MID_GREY,
            Warning.Code.SUN,
            Warning.Code.CLOCK,
            Warning.Code.METER_SPEED);

    /** Those of the light of the day. */
    static ReadingFields again(ShootState state, Light light, Suggestions suggestions, CommandContext context) {
        return new ReadingFields(state, light, suggestions, List.of(), context, Optional.empty());
    }

    @Override
    public Json.Obj json() {
        AdviceRequest request = AdviceRequest.inHand(context.state()).orElseGet(() -> withoutFilm(context.state()));
        List<Warning> ofReading = new ArrayList<>();
        for (Warning warning : warnings) {
            if (OF_READING.contains(warning.code())) {
                ofReading.add(warning);
            }
        }
        Json.Obj fields = Json.object()
                .and("advice", AdviceJson.of(request, light, suggestions, ofReading))
                .and("aperture", after.inHand().setting().aperture().map(Object::toString))
                .and("time", after.inHand().setting().time().map(Object::toString))
                .and("errorStops", AdviceJson.exact(ExposureInHand.error(after)));
        List<Json> zones = reading.isPresent() ? Zones.json(reading.get(), request.stock()) : List.of();
        return zones.isEmpty() ? fields : fields.and("zones", zones);
    }

    private static AdviceRequest withoutFilm(ShootState state) {
        return new AdviceRequest(
                state.cameraInHand(),
                state.inHand().setting(),
                state.inHand().hold(),
                Optional.empty(),
                FilmSpeed.ISO_100,
                0,
                state.meterInHand(),
                state.day().flash());
    }
}
