package takeup.report;

import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.advice.ExposureInHand;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.history.ShootState;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.roll.Setting;

/** What the setting in hand is for another film, once that is in hand: another camera, another back, a film put in. */
public final class FilmChangeText {
    private FilmChangeText() {}

    /**
     * {@code For this light f/8 1/250 in hand is 3.0 over; f/16 1/500 is right.}, with a blank in front; "" while light
     * or setting are not known, or the setting is right.
     */
    public static String of(ShootState after) {
        OptionalDouble error = ExposureInHand.error(after);
        if (error.isEmpty() || !Stops.above(Math.abs(error.getAsDouble()), 1 / 3.0)) {
            return "";
        }
        Setting inHand = after.inHand().setting();
        String pair = inHand.aperture().map(it -> it + " ").orElse("")
                + inHand.time().map(it -> it + " ").orElse("");
        return " For this light " + pair + "in hand is " + Stops.error(error.getAsDouble())
                + better(after, Math.abs(error.getAsDouble())) + ".";
    }

    private static String better(ShootState after, double error) {
        Optional<Light> light = after.day().light();
        Optional<Suggestion> best = light.flatMap(it ->
                AdviceRequest.inHand(after).map(request -> request.advice(it)).flatMap(Suggestions::bestOne));
        return best.filter(it -> it.errorStops().isPresent()
                        && Math.abs(it.errorStops().getAsDouble()) < error - Stops.TOLERANCE)
                .map(it -> "; " + AdviceText.pair(it) + " is "
                        + Stops.error(it.errorStops().getAsDouble()))
                .orElse("");
    }
}
