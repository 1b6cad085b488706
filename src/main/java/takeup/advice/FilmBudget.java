package takeup.advice;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.day.CameraPlace;
import takeup.day.Day;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.roll.Roll;

/**
 * Whether there is film enough for the plan: it wants 84 frames, 23 are left in the cameras, 10 rolls in the bag are
 * 160 more.
 *
 * @param framesWanted frames that the moments to come want
 * @param framesInCameras frames left on the rolls that are in
 * @param rollsInBag rolls in the bag that a camera in use takes
 * @param framesInBag frames that they give, by the camera that gets the fewest out of them
 * @param rollsForNoCamera rolls in the bag that fit no camera in use, so that nobody can say how many frames they give
 * @param isBagKept whether a bag is kept; without one nobody knows
 */
public record FilmBudget(
        int framesWanted,
        int framesInCameras,
        int rollsInBag,
        int framesInBag,
        int rollsForNoCamera,
        boolean isBagKept) {
    /** What is there for the shoot that is open, or for today. */
    public static FilmBudget of(ShootState s, OffsetDateTime now) {
        Day day = s.day();
        LocalDate date = now.toLocalDate();
        if (day.shoot().isPresent() && day.shoot().get().date().isAfter(date)) {
            date = day.shoot().get().date();
        }
        int wanted = 0;
        // One may be there twice: to compare cameras, the generated hash code takes 20 ms to be made ready.
        List<Camera> cameras = new ArrayList<>();
        for (KeyMoment moment : day.plan().ahead(now.toLocalDateTime(), date)) {
            wanted += moment.wants();
            if (moment.camera().isPresent()) {
                add(s.camera(moment.camera().get()), cameras);
            }
        }
        for (CameraPlace place : s.placesInUse()) {
            add(s.camera(place.camera()), cameras);
        }
        int left = 0;
        for (Roll roll : s.openRolls()) {
            left += Math.max(0, roll.framesLeft());
        }
        int rolls = 0;
        int frames = 0;
        int others = 0;
        for (Map.Entry<FilmLot, Integer> lot : day.bag().filled()) {
            OptionalInt each = framesOn(lot.getKey().size(), cameras);
            rolls += each.isPresent() ? lot.getValue() : 0;
            others += each.isPresent() ? 0 : lot.getValue();
            frames += each.orElse(0) * lot.getValue();
        }
        return new FilmBudget(wanted, left, rolls, frames, others, day.bag().kept());
    }

    private static void add(Optional<Camera> camera, List<Camera> into) {
        if (camera.isPresent()) {
            into.add(camera.get());
        }
    }

    private static OptionalInt framesOn(FilmSize size, List<Camera> cameras) {
        OptionalInt fewest = OptionalInt.empty();
        for (Camera camera : cameras) {
            Integer frames = camera.frames().get(size);
            if (frames != null && (fewest.isEmpty() || frames < fewest.getAsInt())) {
                fewest = OptionalInt.of(frames);
            }
        }
        return fewest;
    }

    /** How many more frames there are than wanted; negative where some are missing. */
    public int framesOver() {
        return framesInCameras + framesInBag - framesWanted;
    }

    /**
     * Whether the plan wants more than there is; only where a bag is kept, and not while its film waits for a camera to
     * be named.
     */
    public boolean isShort() {
        return isBagKept && framesOver() < 0 && !isWaitingForCamera();
    }

    /** Whether the film in the bag fits no camera in use, and none of those in use has any left. */
    public boolean isWaitingForCamera() {
        return rollsInBag == 0 && rollsForNoCamera > 0 && framesInCameras == 0;
    }
}
