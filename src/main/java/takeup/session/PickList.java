package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.CameraPlace;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.roll.Film;

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
    public static PickList of(Session session) {
        ShootState s = session.shown();
        if (s.cameraInHand().isEmpty()) {
            return s.placeInHand().isPresent() ? NOTHING : cameras(s.kit());
        }
        if (s.rollInHand().isEmpty()) {
            return films(s);
        }
        return s.day().light().isEmpty()
                        && !s.cameraInHand().get().isAutomatic()
                        && Guide.of(session).isPresent()
                ? skies()
                : NOTHING;
    }

    /** The row that is highlighted. */
    static Optional<Row> highlighted(Session session) {
        int chosen = session.view().chosen();
        List<Row> rows = chosen >= 0 && session.view().page() == Session.Page.SHOOT
                ? of(session).rows()
                : List.of();
        return chosen >= 0 && chosen < rows.size() ? Optional.of(rows.get(chosen)) : Optional.empty();
    }

    private static PickList cameras(Kit kit) {
        List<Row> rows = new ArrayList<>();
        for (String key : kit.keys(Kit.Sort.CAMERAS)) {
            rows.add(kit.camera(key)
                    .map(it -> new Row("cam " + key, it.name(), it.frameSize().toString()))
                    .orElseGet(() -> unreadable("cam " + key)));
        }
        return new PickList(rows);
    }

    /** The film of the roll before, if there was one here, then every stock that comes in the camera's film size. */
    private static PickList films(ShootState s) {
        List<Row> rows = new ArrayList<>();
        Optional<Film> before =
                s.placeInHand().map((CameraPlace it) -> s.day().films().get(it));
        before.ifPresent(it -> rows.add(new Row("load", it.stock().name() + " again", "EI " + it.index())));
        List<FilmSize> sizes = s.cameraInHand()
                .map(Camera::frames)
                .map(it -> List.copyOf(it.keySet()))
                .orElse(List.of());
        for (String key : s.kit().keys(Kit.Sort.STOCKS)) {
            Optional<Stock> stock = s.kit().stock(key);
            if (stock.isEmpty()) {
                rows.add(unreadable("load " + key));
            } else if (stock.get().filmSizes().stream().anyMatch(sizes::contains)) {
                rows.add(new Row(
                        "load " + key, stock.get().name(), "EI " + stock.get().usualIndex()));
            }
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
