package takeup.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Kit;

/**
 * What can be picked from a list where there is nothing to suggest yet: a camera, a film for it, and in the first
 * minute the sky. Each row is a line of the prompt, such as {@code cam 645}, so that picking teaches typing.
 *
 * @param rows the lines, the usual one first
 */
public record PickList(List<Row> rows) {
    private static final PickList NOTHING = new PickList(List.of());

    /**
     * A line of the prompt, and what it means.
     *
     * @param line what would be typed
     * @param name what is taken
     * @param detail what else is good to know of it; "" if nothing is
     */
    public record Row(String line, String name, String detail) {
        /** What the line means. */
        public String text() {
            return detail.isEmpty() ? name : name + ", " + detail;
        }
    }

    public PickList {
        rows = List.copyOf(rows);
    }

    /** What is offered now; often nothing. */
    public static PickList of(ShootState s) {
        if (s.cameraInHand().isEmpty()) {
            return s.placeInHand().isPresent() ? NOTHING : cameras(s.kit());
        }
        return s.rollInHand().isEmpty() ? films(s) : NOTHING;
    }

    /** The same in the first minute, when the sky may stand for a meter. */
    public static PickList guided(ShootState s) {
        boolean isDark = s.rollInHand().isPresent()
                && s.day().light().isEmpty()
                && s.cameraInHand().isPresent()
                && !s.cameraInHand().get().isAutomatic();
        return isDark ? skies() : of(s);
    }

    /** The row of that number; empty where there is none. */
    public Optional<Row> row(int number) {
        return number >= 0 && number < rows.size() ? Optional.of(rows.get(number)) : Optional.empty();
    }

    private static PickList cameras(Kit kit) {
        List<Row> rows = new ArrayList<>();
        for (String key : kit.keys(Kit.Sort.CAMERAS)) {
            Optional<Camera> camera = kit.camera(key);
            rows.add(
                    camera.isPresent()
                            ? new Row(
                                    "cam " + key,
                                    camera.get().name(),
                                    camera.get().frameSize().toString())
                            : unreadable("cam " + key));
        }
        return new PickList(rows);
    }

    private static PickList films(ShootState s) {
        List<Row> rows = new ArrayList<>();
        for (FilmList.Row film : FilmList.of(s)) {
            rows.add(new Row(("load " + film.typed()).strip(), film.name(), film.detail()));
        }
        return new PickList(rows);
    }

    private static Row unreadable(String line) {
        return new Row(line, "its file has a mistake: takeup check", "");
    }

    private static PickList skies() {
        return new PickList(List.of(
                new Row("m sky sun", "full sun", "hard shadows"),
                new Row("m sky hazy", "sun through haze", "soft shadows"),
                new Row("m sky cloudy", "bright", "without shadows"),
                new Row("m sky overcast", "heavy overcast", ""),
                new Row("m sky shade", "open shade on a clear day", ""),
                new Row("m sky snow", "full sun on snow or sand", "")));
    }
}
