package takeup.day;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.roll.Film;
import takeup.roll.RollId;

/**
 * The cameras of a day: which is in hand, how each is set, what each was last loaded with.
 *
 * @param active the camera and back in hand
 * @param used the places that were active today, in that order
 * @param lastBack the back that was last active on each camera with backs
 * @param setups how each camera is set, by its key
 * @param films what was last loaded in each place
 * @param cautioned the cameras in hand when the caution about old flash units was given, on any day
 * @param timers the bulb exposures that run now, by the camera's key
 * @param names the rolls that have a name of the photographer's own, by it, the newest {@value #MOST_NAMES}
 */
public record CamerasInUse(
        Optional<CameraPlace> active,
        Set<CameraPlace> used,
        Map<String, String> lastBack,
        Map<String, CameraSetup> setups,
        Map<CameraPlace, Film> films,
        Set<String> cautioned,
        Map<String, BulbTimer> timers,
        Map<String, RollId> names) {
    static final int MOST_NAMES = 500;

    /** Before the first camera is selected. */
    static final CamerasInUse NONE =
            new CamerasInUse(Optional.empty(), Set.of(), Map.of(), Map.of(), Map.of(), Set.of(), Map.of(), Map.of());

    CamerasInUse taking(CameraPlace place) {
        Map<String, String> backs = place.back().isPresent()
                ? and(lastBack, place.camera(), place.back().get())
                : lastBack;
        return new CamerasInUse(Optional.of(place), and(used, place), backs, setups, films, cautioned, timers, names);
    }

    CamerasInUse with(String camera, CameraSetup setup) {
        return new CamerasInUse(active, used, lastBack, and(setups, camera, setup), films, cautioned, timers, names);
    }

    CamerasInUse loaded(CameraPlace place, Film film) {
        return new CamerasInUse(active, used, lastBack, setups, and(films, place, film), cautioned, timers, names);
    }

    /** With what a roll is called; a name that it had before is free again. */
    CamerasInUse named(RollId roll, Optional<String> name) {
        if (name.isEmpty() && !names.containsValue(roll)) {
            return this;
        }
        Map<String, RollId> all = new LinkedHashMap<>(names);
        all.values().remove(roll);
        if (name.isPresent()) {
            all.keySet().removeIf(name.get()::equalsIgnoreCase);
            all.put(name.get(), roll);
        }
        while (all.size() > MOST_NAMES) {
            all.remove(all.keySet().iterator().next());
        }
        return new CamerasInUse(active, used, lastBack, setups, films, cautioned, timers, all);
    }

    CamerasInUse cautioned(String camera) {
        return new CamerasInUse(active, used, lastBack, setups, films, and(cautioned, camera), timers, names);
    }

    CamerasInUse timed(String camera, Optional<BulbTimer> timer) {
        Map<String, BulbTimer> all = new LinkedHashMap<>(timers);
        if (timer.isPresent()) {
            all.put(camera, timer.get());
        } else {
            all.remove(camera);
        }
        return new CamerasInUse(active, used, lastBack, setups, films, cautioned, all, names);
    }

    /** On a new day: no place is used yet but the active one. */
    CamerasInUse carried() {
        Set<CameraPlace> still = active.isPresent() ? Set.of(active.get()) : Set.of();
        return new CamerasInUse(active, still, lastBack, setups, films, cautioned, timers, names);
    }

    private static <T> Set<T> and(Set<T> before, T more) {
        Set<T> all = new LinkedHashSet<>(before);
        all.add(more);
        return all;
    }

    private static <K, V> Map<K, V> and(Map<K, V> before, K key, V value) {
        Map<K, V> all = new LinkedHashMap<>(before);
        all.put(key, value);
        return all;
    }
}
