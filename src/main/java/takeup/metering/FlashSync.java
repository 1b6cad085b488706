package takeup.metering;

import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.day.CameraSetup;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Hold;
import takeup.kit.Lens;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.roll.SettingPatch;

/**
 * What flash makes of a time in hand that is faster than the sync: the time comes to sync and the aperture with it; a
 * held time stays, with a warning.
 *
 * @param setup what is set instead; empty where the setting stays
 * @param warning that a held time is too fast
 */
record FlashSync(Optional<CameraSetup> setup, Optional<Warning> warning) {
    /** Where the setting stays. */
    static final FlashSync KEPT = new FlashSync(Optional.empty(), Optional.empty());

    /** For a state in which flash is on. */
    static FlashSync of(ShootState state) {
        CameraSetup inHand = state.inHand();
        FlashSync sync = state.cameraInHand().map(it -> beside(inHand, it)).orElse(KEPT);
        if (sync.setup.isEmpty() || state.day().flash().isPresent()) {
            return sync;
        }
        SettingPatch pair = best(state)
                .orElseGet(
                        () -> closed(inHand, sync.setup.get().setting().time().orElseThrow()));
        return new FlashSync(Optional.of(inHand.with(pair)), Optional.empty());
    }

    /** For a setting beside a flash that decides the aperture. */
    static FlashSync beside(CameraSetup inHand, Camera body) {
        Camera camera = body.withLens(inHand.setting().lens());
        Optional<ExposureTime> held = inHand.hold().flatMap(Hold::time);
        if (held.isPresent()) {
            return new FlashSync(Optional.empty(), held(held.get(), inHand, camera));
        }
        boolean isTooFast = inHand.setting()
                .time()
                .flatMap(it -> ExposureWarnings.sync(it, camera))
                .isPresent();
        return isTooFast
                ? new FlashSync(
                        Optional.of(
                                inHand.with(SettingPatch.time(camera.syncTime().orElseThrow()))),
                        Optional.empty())
                : KEPT;
    }

    /** That a time that is set or held is too fast for the flash that is on, where it is. */
    static List<Warning> tooFast(CameraSetup setup, Camera body) {
        if (!setup.setting().flash()) {
            return List.of();
        }
        Camera camera = body.withLens(setup.setting().lens());
        return setup
                .hold()
                .flatMap(Hold::time)
                .flatMap(it -> held(it, setup, camera))
                .or(() -> setup.setting().time().flatMap(it -> ExposureWarnings.sync(it, camera)))
                .stream()
                .toList();
    }

    /**
     * That a held time is too fast for flash, whether it is set or will be with the next reading; else that the one
     * that is set is.
     */
    private static Optional<Warning> held(ExposureTime held, CameraSetup inHand, Camera camera) {
        Optional<ExposureTime> set = inHand.setting().time();
        return ExposureWarnings.sync(held, camera)
                .map(it -> set.equals(Optional.of(held)) ? it : new Warning(it.code(), "the held " + it.text()))
                .or(() -> set.flatMap(it -> ExposureWarnings.sync(it, camera)));
    }

    /** The same exposure with a time that flash can be used at; a held time stays. */
    static CameraSetup inSync(CameraSetup inHand, Camera camera) {
        return beside(inHand, camera)
                .setup
                .map(it -> inHand.with(closed(inHand, it.setting().time().orElseThrow())))
                .orElse(inHand);
    }

    /** The best pair for the light of the day, which is none faster than sync. */
    private static Optional<SettingPatch> best(ShootState state) {
        Optional<Suggestion> best = state.day()
                .light()
                .flatMap(light ->
                        AdviceRequest.inHand(state).map(it -> it.advice(light)).flatMap(Suggestions::bestOne));
        return best.flatMap(row ->
                row.time().map(it -> SettingPatch.aperture(row.aperture()).and(SettingPatch.time(it))));
    }

    /** The sync time, and the lens closed by as many stops as it is longer, as far as the ring goes. */
    private static SettingPatch closed(CameraSetup inHand, ExposureTime sync) {
        SettingPatch time = SettingPatch.time(sync);
        Optional<Aperture> aperture = inHand.setting().aperture();
        Optional<Lens> lens = inHand.setting().lens();
        if (aperture.isEmpty() || lens.isEmpty() || inHand.hold().isPresent()) {
            return time;
        }
        double longer = sync.stops() - inHand.setting().time().orElseThrow().stops();
        return time.and(
                SettingPatch.aperture(lens.get().ring().nearest(aperture.get().stops() + longer)));
    }

    /** The time that is set, in words with a blank in front; "" where the setting stays. */
    String timeWords() {
        return setup.map(it -> " Time " + it.setting().time().orElseThrow() + ", flash sync.")
                .orElse("");
    }

    /** What is set, in words with a blank in front; "" where the setting stays. */
    String words() {
        return setup.map(it -> " Set: "
                        + it.setting().aperture().map(at -> at + " ").orElse("")
                        + it.setting().time().orElseThrow() + ", flash sync.")
                .orElse("");
    }
}
