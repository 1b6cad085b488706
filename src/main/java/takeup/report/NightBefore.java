package takeup.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.advice.FilmBudget;
import takeup.day.CameraPlace;
import takeup.day.Day;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Meter;
import takeup.roll.Roll;

/**
 * What is gone through the night before: film in the bag, what is in the cameras, whether it is enough, and what to
 * check.
 *
 * @param today the date, against which film expires
 * @param day its shoot, plan and bag
 * @param cameras the cameras and backs in use, each with its roll
 * @param rewound rolls that were rewound, to be loaded again
 * @param budget whether the film is enough for the plan
 * @param powered the names of all that needs a battery
 */
public record NightBefore(
        LocalDate today, Day day, List<InCamera> cameras, List<Roll> rewound, FilmBudget budget, List<String> powered) {
    /** A camera or back in use, and the roll in it. */
    public record InCamera(CameraPlace place, Optional<Roll> roll) {}

    public NightBefore {
        cameras = List.copyOf(cameras);
        rewound = List.copyOf(rewound);
        powered = List.copyOf(powered);
    }

    /** What there is now. */
    public static NightBefore of(ShootState s, OffsetDateTime now) {
        return new NightBefore(
                now.toLocalDate(),
                s.day(),
                s.placesInUse().stream()
                        .map(it -> new InCamera(it, s.rollIn(it)))
                        .toList(),
                s.rolls().values().stream()
                        .filter(it -> it.state() == Roll.State.REWOUND)
                        .toList(),
                FilmBudget.of(s, now),
                powered(s));
    }

    /** The cameras in use and those that the plan names, and the meter in hand. */
    private static List<String> powered(ShootState s) {
        Set<String> keys = new LinkedHashSet<>();
        s.placesInUse().forEach(it -> keys.add(it.camera()));
        s.day().plan().moments().forEach(it -> it.camera().ifPresent(keys::add));
        Set<String> names = new LinkedHashSet<>();
        keys.forEach(it -> s.camera(it).map(Camera::name).ifPresent(names::add));
        s.day().meter().flatMap(s.kit()::meter).map(Meter::name).ifPresent(names::add);
        return List.copyOf(names);
    }

    /** The rolls that are in a camera, in the order of their numbers. */
    List<Roll> loaded() {
        return cameras.stream()
                .flatMap(it -> it.roll().stream())
                .sorted(Comparator.comparing(Roll::id))
                .toList();
    }
}
