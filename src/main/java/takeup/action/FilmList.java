package takeup.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.day.FilmLot;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.roll.Film;
import takeup.roll.Roll;

/**
 * What can go into the camera in hand, and nothing else: a roll that is half shot, then what is likely, then the rest.
 */
final class FilmList {
    /**
     * A film.
     *
     * @param typed what stands behind {@code load}; "" for the same as before
     * @param name what it is
     * @param detail its rating, and how much of it there is
     * @param stock what can be rated otherwise; empty where it cannot
     */
    record Row(String typed, String name, String detail, Optional<Stock> stock) {}

    private final ShootState s;
    private final Set<FilmSize> sizes;

    private FilmList(ShootState s) {
        this.s = s;
        this.sizes = s.cameraInHand().map(Camera::frames).orElseThrow().keySet();
    }

    /** The films for the camera in hand; none where there is no camera. */
    static List<Row> of(ShootState s) {
        return s.cameraInHand().isEmpty() ? List.of() : new FilmList(s).rows();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        s.rolls().values().stream()
                .filter(it -> it.state() == Roll.State.REWOUND
                        && sizes.contains(it.film().size()))
                .forEach(it -> rows.add(begun(it)));
        Optional<Film> before = s.placeInHand().map(it -> s.day().films().get(it));
        before.ifPresent(it -> rows.add(new Row(
                "", it.stock().name() + " again", "EI " + it.index() + inBag(it.stock()), before.map(Film::stock))));
        for (String key : keys()) {
            Optional<Stock> stock = s.kit().stock(key);
            if (stock.isEmpty()) {
                rows.add(new Row(key, "its file has a mistake: takeup check", "", stock));
            } else if (stock.get().filmSizes().stream().anyMatch(sizes::contains)) {
                String detail = "EI " + stock.get().usualIndex() + inBag(stock.get());
                rows.add(new Row(key, stock.get().name(), detail, stock));
            }
        }
        return rows;
    }

    private static Row begun(Roll roll) {
        return new Row(
                roll.id().typed(),
                roll.id() + " goes on, " + roll.film().stock().name(),
                "EI " + roll.film().index() + ", frame " + roll.next() + ", " + roll.framesLeft() + " left",
                Optional.empty());
    }

    /** All stocks: those in the bag, those of the newest rolls, then the others by their keys. */
    private Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>();
        s.day().bag().filled().stream()
                .filter(it -> sizes.contains(it.getKey().size()))
                .forEach(it -> keys.add(it.getKey().stock()));
        s.rolls().values().stream()
                .sorted(Comparator.comparing(Roll::loadedAt).reversed())
                .forEach(it -> keys.add(it.film().stock().key()));
        List<String> known = s.kit().keys(Kit.Sort.STOCKS);
        keys.retainAll(known);
        keys.addAll(known);
        return keys;
    }

    private String inBag(Stock stock) {
        int many = 0;
        for (var lot : s.day().bag().filled()) {
            FilmLot film = lot.getKey();
            many += film.stock().equals(stock.key()) && sizes.contains(film.size()) ? lot.getValue() : 0;
        }
        return many > 0 ? ", " + many + " in the bag" : "";
    }
}
