package takeup.metering;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
                    isRight ? List.of() : best.get().warnings());
        }
        return best.isPresent() ? set(best.get(), inHand) : nothingFits(light, request, suggestions, now, context);
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
        Optional<Suggestion> best = suggestions.bestOne();
        if (best.isPresent() && !Stops.above(off(best.get()), 1)) {
            return best;
        }
        boolean isKept = best.isPresent() && hold.isPresent() && hold.get().isKeptBy(best.get());
        Optional<Suggestion> nearest = Optional.empty();
        for (Suggestion row : isKept ? List.<Suggestion>of() : suggestions.suggestions()) {
            if (!Stops.above(off(row), 1) && (nearest.isEmpty() || off(row) < off(nearest.get()))) {
                nearest = Optional.of(row);
            }
        }
        return nearest;
    }

    /** How many stops a row is off; where nobody can tell, more than any. */
    private static double off(Suggestion row) {
        return Math.abs(row.errorStops().orElse(Double.POSITIVE_INFINITY));
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
        Optional<ExposureTime> sync = body.withLens(inHand.setting().lens()).syncTime();
        Optional<ExposureTime> time = inHand.setting().time();
        return !inHand.setting().flash()
                || sync.isEmpty()
                || time.isEmpty()
                || !Stops.above(sync.get().stops(), time.get().stops());
    }

    private static boolean isIn(CameraSetup inHand, Suggestion row) {
        return inHand.setting().aperture().equals(Optional.of(row.aperture()))
                && inHand.setting().time().equals(row.time());
    }

    /** A held aperture that gave way to a row that nothing speaks against is not given up in silence. */
    private static String notHeld(CameraSetup inHand, Suggestion row) {
        Optional<Aperture> held =
                inHand.hold().isPresent() ? inHand.hold().get().aperture() : Optional.empty();
        return held.isPresent() && Math.abs(held.get().stops() - row.aperture().stops()) >= 1e-6
                ? " Not at " + held.get() + ", which is held: why says why."
                : "";
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
