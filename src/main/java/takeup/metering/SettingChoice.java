package takeup.metering;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import takeup.advice.AdviceRequest;
import takeup.advice.Alternatives;
import takeup.command.CommandContext;
import takeup.day.CameraSetup;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Hold;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.prompt.FrameArguments;
import takeup.report.AdviceText;
import takeup.roll.SettingPatch;

/**
 * What a light reading makes of the setting in hand: it stays, or another one is set.
 *
 * @param change what is set in its place; empty where it stays
 * @param text the choice in words, with a blank in front
 * @param warnings what there is to say of it
 */
record SettingChoice(Optional<SettingPatch> change, String text, List<Warning> warnings) {
    private static final String STAYS = " The setting in hand stays: ";

    static SettingChoice of(Light light, AdviceRequest request, Suggestions suggestions, CommandContext context) {
        CameraSetup inHand = context.state().inHand(context.camera());
        OptionalDouble now = error(light, request);
        Optional<Suggestion> best = withinAStop(suggestions, request.hold());
        boolean isRight = now.isPresent()
                && isRight(now.getAsDouble(), request)
                && isAsGood(now.getAsDouble(), suggestions)
                && keepsHold(inHand)
                && isInSync(inHand, context.camera());
        boolean isBest = now.isPresent() && best.isPresent() && isIn(inHand, best.get());
        if (isRight || isBest) {
            return new SettingChoice(
                    Optional.empty(),
                    STAYS + pair(inHand.setting().aperture(), inHand.setting().time()) + ", "
                            + Stops.error(now.getAsDouble()) + ".",
                    isRight ? List.of() : best.map(Suggestion::warnings).orElse(List.of()));
        }
        return best.map(it -> set(it, inHand)).orElseGet(() -> nothingFits(light, request, suggestions, now, context));
    }

    private static SettingChoice set(Suggestion row, CameraSetup inHand) {
        SettingPatch change = SettingPatch.aperture(row.aperture())
                .and(SettingPatch.time(row.time().orElseThrow()));
        return new SettingChoice(
                Optional.of(change),
                " Set: " + pair(row) + ", " + Stops.error(row.errorStops().getAsDouble()) + "." + notHeld(inHand, row),
                row.warnings());
    }

    private static SettingChoice nothingFits(
            Light light, AdviceRequest request, Suggestions suggestions, OptionalDouble now, CommandContext context) {
        String error =
                now.stream().mapToObj(it -> ", " + Stops.error(it)).findFirst().orElse("");
        String fits = AdviceText.words(
                        Alternatives.of(request, light, context.state().kit()))
                .stream()
                .findFirst()
                .map(it -> " What would fit: " + it + "; why says more.")
                .orElse("");
        return new SettingChoice(
                Optional.empty(),
                " No setting comes within a stop; the one in hand stays" + error + "." + fits,
                suggestions.bestOne().map(Suggestion::warnings).orElse(List.of()));
    }

    /**
     * The best suggestion; where that one is more than a stop off and keeps nothing that is held, the one that comes
     * nearest to the light.
     */
    static Optional<Suggestion> withinAStop(Suggestions suggestions, Optional<Hold> hold) {
        boolean isKept = suggestions.bestOne().isPresent()
                && hold.isPresent()
                && hold.get().isKeptBy(suggestions.bestOne().get());
        Stream<Suggestion> nearest = (isKept ? Stream.<Suggestion>empty() : suggestions.suggestions().stream())
                .filter(it -> it.errorStops().isPresent())
                .sorted(Comparator.comparingDouble(
                        it -> Math.abs(it.errorStops().getAsDouble())));
        return Stream.concat(suggestions.bestOne().stream(), nearest)
                .filter(it -> it.errorStops().isPresent()
                        && !Stops.above(Math.abs(it.errorStops().getAsDouble()), 1))
                .findFirst();
    }

    static String pair(Suggestion row) {
        return pair(Optional.of(row.aperture()), row.time());
    }

    private static String pair(Optional<Aperture> aperture, Optional<ExposureTime> time) {
        return FrameArguments.words(aperture, time, SettingPatch.NOTHING);
    }

    private static OptionalDouble error(Light light, AdviceRequest request) {
        Optional<Aperture> aperture = request.setting().aperture();
        Optional<ExposureTime> time = request.setting().time();
        return aperture.isEmpty() || time.isEmpty()
                ? OptionalDouble.empty()
                : request.light(light)
                        .known()
                        .through(request.path(), aperture, time)
                        .totalStops();
    }

    /** Within a third of a stop; on negative film up to two thirds over. */
    private static boolean isRight(double error, AdviceRequest request) {
        return !Stops.above(-error, 1 / 3.0) && !Stops.above(error, request.toleratedOverStops());
    }

    /** Whether no pair that could be set would be better by more than a sixth of a stop. */
    private static boolean isAsGood(double error, Suggestions suggestions) {
        return !Stops.above(Math.abs(error) - suggestions.leastError().orElse(0), 1 / 6.0);
    }

    private static boolean isInSync(CameraSetup inHand, Camera body) {
        Camera camera = body.withLens(inHand.setting().lens());
        return !inHand.setting().flash()
                || camera.syncTime().isEmpty()
                || inHand.setting()
                        .time()
                        .filter(it -> Stops.above(camera.syncTime().get().stops(), it.stops()))
                        .isEmpty();
    }

    private static boolean isIn(CameraSetup inHand, Suggestion row) {
        return inHand.setting().aperture().equals(Optional.of(row.aperture()))
                && inHand.setting().time().equals(row.time());
    }

    /** A held aperture that gave way to a row that nothing speaks against is not given up in silence. */
    private static String notHeld(CameraSetup inHand, Suggestion row) {
        return inHand.hold()
                .flatMap(Hold::aperture)
                .filter(it -> Math.abs(it.stops() - row.aperture().stops()) >= 1e-6)
                .map(it -> " Not at " + it + ", which is held: why says why.")
                .orElse("");
    }

    private static boolean keepsHold(CameraSetup inHand) {
        if (inHand.hold().isEmpty()) {
            return true;
        }
        Hold hold = inHand.hold().get();
        return hold.aperture().isPresent()
                ? inHand.setting().aperture().equals(hold.aperture())
                : inHand.setting().time().equals(hold.time());
    }
}
