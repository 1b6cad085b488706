package takeup.panel;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.lettering.TextFit;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;

/** Cameras and backs in words: the one in hand, and in a short line each of the others. */
public final class CameraText {
    private CameraText() {}

    /** The camera in hand with back and lens; under its key where its name is too long for so many columns. */
    static String inHand(ShootState state, int columns) {
        return state.cameraInHand()
                .map(it -> TextFit.first(
                        columns, withBackAndLens(it.name(), it, state), withBackAndLens(it.key(), it, state)))
                .orElseGet(() -> TextFit.first(columns, "no camera in hand"));
    }

    private static String withBackAndLens(String name, Camera camera, ShootState state) {
        return name
                + state.placeInHand()
                        .flatMap(CameraPlace::back)
                        .map(it -> ", back " + it)
                        .orElse("")
                + state.inHand(camera)
                        .setting()
                        .lens()
                        .map(it -> " · " + it.name())
                        .orElse("");
    }

    /** The places in use that are not in hand. */
    public static List<CameraPlace> others(Session session) {
        Optional<CameraPlace> inHand = session.shown().placeInHand();
        return session.shown().placesInUse().stream()
                .filter(it -> !inHand.equals(Optional.of(it)))
                .toList();
    }

    /** A place and its film: {@code 35 · bw400 EI 400 · 5 left · in since 2026-09-12, yesterday}. */
    public static String full(CameraPlace place, Session session) {
        return line(
                place,
                session,
                roll -> roll.film().stock().key() + " EI "
                        + roll.film().index() + " · " + RollText.left(roll)
                        + age(roll, session).map(it -> " · " + it).orElse(""));
    }

    /** The same without the index and the age of the roll. */
    public static String brief(CameraPlace place, Session session) {
        return line(place, session, roll -> roll.film().stock().key() + " · " + RollText.left(roll));
    }

    /** The place and what is left there alone. */
    public static String briefest(CameraPlace place, Session session) {
        return line(place, session, RollText::left);
    }

    private static String line(CameraPlace place, Session session, Function<Roll, String> film) {
        return place + " · "
                + session.shown()
                        .rollIn(place)
                        .map(film)
                        .orElseGet(() -> session.shown().noFilm(Optional.of(place)));
    }

    /** Since when a roll is in, from the second day on. */
    static Optional<String> age(Roll roll, Session session) {
        LocalDate loaded = roll.loadedAt().toLocalDate();
        long days = ChronoUnit.DAYS.between(loaded, session.now().toLocalDate());
        return days < 1
                ? Optional.empty()
                : Optional.of("in since " + loaded + (days == 1 ? ", yesterday" : ", " + days + " days"));
    }
}
