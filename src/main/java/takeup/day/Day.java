package takeup.day;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.kit.Warning;
import takeup.roll.Film;

/**
 * What is in hand on a day beside the rolls.
 *
 * @param active the camera and back in hand
 * @param inHand what belongs to each camera, by its key
 * @param lastBack the back that was last active on each camera with backs
 * @param used the places that were active today, in that order
 * @param meter the meter in hand
 * @param preset the time that the meter is preset to
 * @param light the last light reading of the day
 * @param flash the last flash reading of the day
 * @param quiet warnings silenced for the day
 * @param films what was last loaded in each place
 * @param flashed the cameras that the caution about old flash units was given for: once ever on each
 * @param timers the bulb exposures that run now, by the camera's key
 * @param job the shoot that is open, its plan, the film in the bag
 * @param routine whether the load routine asks after the first roll of the day in each place
 * @param paper the paper form that is being read back
 */
public record Day(
        Optional<CameraPlace> active,
        Map<String, CameraSetup> inHand,
        Map<String, String> lastBack,
        Set<CameraPlace> used,
        Optional<String> meter,
        Optional<ExposureTime> preset,
        Optional<Light> light,
        Optional<FlashLight> flash,
        Set<Warning.Code> quiet,
        Map<CameraPlace, Film> films,
        Set<String> flashed,
        Map<String, BulbTimer> timers,
        ShootPlan job,
        boolean routine,
        Optional<PaperInput> paper) {
    /** The first day of all. */
    public static final Day FIRST = new Day(
            Optional.empty(),
            Map.of(),
            Map.of(),
            Set.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            Map.of(),
            Set.of(),
            Map.of(),
            ShootPlan.NONE,
            true,
            Optional.empty());

    /** What belongs to a camera. */
    public CameraSetup inHand(String camera) {
        return inHand.getOrDefault(camera, CameraSetup.NOTHING);
    }

    /**
     * What the next day begins with: nothing silenced, no place used yet but the active one, and no light, unless the
     * night goes on and the reading is hardly older than the work.
     */
    public Day carried(OffsetDateTime now) {
        Set<CameraPlace> still = active.map(Set::of).orElse(Set.of());
        return new Day(
                active,
                inHand,
                lastBack,
                still,
                meter,
                preset,
                light.filter(it -> isOfThisNight(it.at(), now)),
                flash.filter(it -> isOfThisNight(it.at(), now)),
                Set.of(),
                films,
                flashed,
                timers,
                job.carried(now),
                routine,
                Optional.empty());
    }

    private static boolean isOfThisNight(OffsetDateTime taken, OffsetDateTime now) {
        return Duration.between(taken, now).abs().compareTo(Duration.ofHours(3)) < 0;
    }

    Day took(CameraPlace place) {
        Set<CameraPlace> all = new LinkedHashSet<>(used);
        all.add(place);
        Map<String, String> backs = new LinkedHashMap<>(lastBack);
        place.back().ifPresent(it -> backs.put(place.camera(), it));
        return new Day(
                Optional.of(place),
                inHand,
                backs,
                all,
                meter,
                preset,
                light,
                flash,
                quiet,
                films,
                flashed,
                timers,
                job,
                routine,
                paper);
    }

    /** With another state of a camera. */
    public Day with(String camera, CameraSetup other) {
        Map<String, CameraSetup> all = new LinkedHashMap<>(inHand);
        all.put(camera, other);
        return new Day(
                active, all, lastBack, used, meter, preset, light, flash, quiet, films, flashed, timers, job, routine,
                paper);
    }

    Day metered(String key, Optional<ExposureTime> time) {
        return new Day(
                active,
                inHand,
                lastBack,
                used,
                Optional.of(key).filter(it -> !it.isEmpty()),
                time,
                light,
                flash,
                quiet,
                films,
                flashed,
                timers,
                job,
                routine,
                paper);
    }

    Day lit(Light reading) {
        return new Day(
                active,
                inHand,
                lastBack,
                used,
                meter,
                preset,
                Optional.of(reading),
                flash,
                quiet,
                films,
                flashed,
                timers,
                job,
                routine,
                paper);
    }

    Day flashLit(FlashLight reading) {
        return new Day(
                active,
                inHand,
                lastBack,
                used,
                meter,
                preset,
                light,
                Optional.of(reading),
                quiet,
                films,
                flashed,
                timers,
                job,
                routine,
                paper);
    }

    Day quieted(Warning.Code code) {
        Set<Warning.Code> all = new LinkedHashSet<>(quiet);
        all.add(code);
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, all, films, flashed, timers, job, routine,
                paper);
    }

    /** With a film as the last one that was loaded in a place. */
    public Day loaded(CameraPlace place, Film film) {
        Map<CameraPlace, Film> all = new LinkedHashMap<>(films);
        all.put(place, film);
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, all, flashed, timers, job, routine,
                paper);
    }

    /** With the caution about old flash units given for a camera. */
    Day cautioned(String camera) {
        Set<String> all = new LinkedHashSet<>(flashed);
        all.add(camera);
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, films, all, timers, job, routine,
                paper);
    }

    /** With a camera's timer, or without one. */
    Day timed(String camera, Optional<BulbTimer> timer) {
        Map<String, BulbTimer> all = new LinkedHashMap<>(timers);
        timer.ifPresentOrElse(it -> all.put(camera, it), () -> all.remove(camera));
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, films, flashed, all, job, routine,
                paper);
    }

    /**
     * A finished roll leaves its film behind as the last one in its place; it is no longer one of those in a camera.
     */
    Day rollClosed(DayEvent.RollClosed touched) {
        return touched.film()
                .map(it -> loaded(touched.place(), it).with(job.with(job.bag().finished(touched.roll()))))
                .orElse(this);
    }

    /** With another shoot, plan or bag. */
    Day with(ShootPlan other) {
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, films, flashed, timers, other,
                routine, paper);
    }

    Day asking(boolean on) {
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, films, flashed, timers, job, on,
                paper);
    }

    Day reading(Optional<PaperInput> other) {
        return new Day(
                active, inHand, lastBack, used, meter, preset, light, flash, quiet, films, flashed, timers, job,
                routine, other);
    }
}
