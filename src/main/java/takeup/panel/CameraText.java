package takeup.panel;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.lettering.TextFit;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.session.Session;

/** Cameras and backs in words: the one in hand, and in a short line each of the others. */
public final class CameraText {
    private CameraText() {}

    /** The camera in hand with back and lens; under its key where its name is too long for so many columns. */
    static String inHand(ShootState state, int columns) {
        if (state.cameraInHand().isEmpty()) {
            return TextFit.first(columns, "no camera in hand");
        }
        Camera camera = state.cameraInHand().get();
        String further = backAndLens(camera, state);
        return TextFit.first(columns, camera.name() + further, camera.key() + further);
    }

    private static String backAndLens(Camera camera, ShootState state) {
        Optional<CameraPlace> place = state.placeInHand();
        Optional<String> back = place.isPresent() ? place.get().back() : Optional.empty();
        Optional<Lens> lens = state.inHand(camera).setting().lens();
        return (back.isPresent() ? ", back " + back.get() : "")
                + (lens.isPresent() ? " · " + lens.get().name() : "");
    }

    /** The places in use that are not in hand. */
    public static List<CameraPlace> others(Session session) {
        Optional<CameraPlace> inHand = session.shown().placeInHand();
        List<CameraPlace> others = new ArrayList<>();
        for (CameraPlace place : session.shown().placesInUse()) {
            if (inHand.isEmpty() || !inHand.get().equals(place)) {
                others.add(place);
            }
        }
        return others;
    }

    /** A place and its film: {@code 35 · bw400 EI 400 · 5 left · in since 2026-09-12, yesterday}. */
    public static String full(CameraPlace place, Session session) {
        Optional<Roll> roll = session.shown().rollIn(place);
        if (roll.isEmpty()) {
            return line(place, roll, "", session);
        }
        Optional<String> age = age(roll.get(), session);
        String stock =
                roll.get().film().stock().key() + " EI " + roll.get().film().index() + " · ";
        return line(place, roll, stock, session) + (age.isPresent() ? " · " + age.get() : "");
    }

    /** The same without the index and the age of the roll. */
    public static String brief(CameraPlace place, Session session) {
        Optional<Roll> roll = session.shown().rollIn(place);
        return line(place, roll, roll.isPresent() ? roll.get().film().stock().key() + " · " : "", session);
    }

    /** The place and what is left there alone. */
    public static String briefest(CameraPlace place, Session session) {
        return line(place, session.shown().rollIn(place), "", session);
    }

    private static String line(CameraPlace place, Optional<Roll> roll, String film, Session session) {
        return place + " · "
                + (roll.isPresent()
                        ? film + RollText.left(roll.get())
                        : session.shown().noFilm(Optional.of(place)));
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
