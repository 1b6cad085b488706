package takeup.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.ExposureInHand;
import takeup.advice.LoadChecks;
import takeup.advice.NextMoment;
import takeup.advice.StandingWarnings;
import takeup.day.CameraPlace;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.LongExposure;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.text.English;

/** All that is true now in words, without a glyph: the way in for a screen reader. */
public final class StatusText {
    private StatusText() {}

    /** The state as a sentence or two. */
    public static String words(ShootState s, OffsetDateTime now) {
        Optional<Camera> camera = s.cameraInHand();
        if (camera.isEmpty()) {
            return s.placeInHand().isPresent()
                    ? "The file of the camera in hand has a mistake: takeup check says which."
                    : "No camera in hand yet: type cam and one of "
                            + String.join(", ", s.kit().keys(Kit.Sort.CAMERAS)) + ".";
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(cameraAndRoll(s, camera.get()));
        String setting = SetupText.of(s.inHand());
        sentences.add(setting.isEmpty() ? "Nothing set." : "Set: " + setting + ".");
        Optional<FlashLight> flash =
                s.day().flash().filter(it -> s.inHand().setting().flash());
        s.day()
                .light()
                .ifPresentOrElse(
                        it -> sentences.add(LightText.of(it, now) + "."),
                        () -> sentences.addAll(flash.isPresent() ? List.of() : List.of("No light reading today.")));
        flash.ifPresent(it -> sentences.add(
                "Flash read " + it.aperture() + " at EI " + it.index() + ", " + LightText.age(it.at(), now) + "."));
        String light = ExposureInHand.light(s).words();
        String missing = ExposureInHand.missing(s);
        if (!light.isEmpty()) {
            sentences.add("For this light " + light + ".");
        } else if (!missing.isEmpty()) {
            sentences.add(English.capitalised(missing) + ".");
        }
        reciprocity(s).ifPresent(it -> sentences.add("Reciprocity: " + it + "."));
        s.timerInHand().ifPresent(it -> sentences.add("The bulb timer shows " + seconds(it.elapsed(now)) + "."));
        s.day().meter().ifPresent(it -> sentences.add("Meter in hand: " + it + "."));
        List<String> others = others(s);
        if (!others.isEmpty()) {
            sentences.add("Also in use: " + String.join("; ", others) + ".");
        }
        s.day().paper().ifPresent(it -> sentences.add("The paper of " + it.roll() + " is being read; done ends it."));
        LoadChecks.of(s).ifPresent(it -> sentences.add("Load routine, " + LoadCheckText.question(it) + " yes or no."));
        RatingText.nextCard(s).ifPresent(it -> sentences.add("Rating test, " + it + ": rating logs it."));
        NextMoment.of(s, now).ifPresent(it -> sentences.add("Plan: " + MomentText.line(it) + "."));
        List<Warning.Code> standing = StandingWarnings.of(s, now);
        if (!standing.isEmpty()) {
            sentences.add("Warnings that stand: "
                    + String.join(", ", standing.stream().map(Object::toString).toList()) + ".");
        }
        return String.join(" ", sentences);
    }

    private static String cameraAndRoll(ShootState s, Camera camera) {
        return camera.name()
                + s.placeInHand()
                        .flatMap(CameraPlace::back)
                        .map(it -> ", back " + it)
                        .orElse("") + ": "
                + s.rollInHand()
                        .map(it -> it.id() + ", " + it.film().stock().name() + " at EI "
                                + it.film().index() + ", " + it.film().developmentWords() + ". Next frame " + it.next()
                                + ", " + RollText.left(it) + ".")
                        .orElseGet(() -> s.noFilm(s.placeInHand()) + ".");
    }

    private static List<String> others(ShootState s) {
        return s.placesInUse().stream()
                .filter(it -> !s.placeInHand().equals(Optional.of(it)))
                .map(place -> place + ", "
                        + s.rollIn(place)
                                .map(it -> it.id() + ", " + it.film().stock().name() + " at EI "
                                        + it.film().index() + ", " + RollText.left(it))
                                .orElseGet(() -> s.noFilm(Optional.of(place))))
                .toList();
    }

    /**
     * What reciprocity makes of the aperture in hand, where it matters: {@code metered 1s, needs 2.7s, or 1s and open 1
     * stop}; past the table it says so.
     */
    public static Optional<String> reciprocity(ShootState s) {
        Optional<LongExposure> exposure = ExposureInHand.reciprocity(s);
        return exposure.isPresent() ? Optional.of(words(exposure.get())) : Optional.empty();
    }

    private static String words(LongExposure exposure) {
        String metered = "metered " + ExposureTime.words(exposure.metered());
        if (exposure.isUnknown()) {
            return metered + ", FAR PAST THE TABLE: bracket";
        }
        if (exposure.seconds().isEmpty()) {
            return metered + ": no time is long enough, open the lens";
        }
        return metered + ", needs " + exposure.needs()
                + (exposure.orOpen().isEmpty()
                        ? ""
                        : ", or " + ExposureTime.words(exposure.metered()) + " and " + exposure.orOpen())
                + (exposure.isGuess() ? ", PAST THE TABLE" : "")
                + (exposure.isGeneric() ? " (generic)" : "");
    }

    /** Whole seconds as people say them: {@code 0s}, {@code 27s}, {@code 4m10s}. */
    public static String seconds(double seconds) {
        double whole = Math.floor(seconds + 1e-9);
        return whole < 1 ? "0s" : ExposureTime.literal(whole).toString();
    }
}
