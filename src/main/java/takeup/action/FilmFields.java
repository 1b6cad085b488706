package takeup.action;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import takeup.day.CameraPlace;
import takeup.day.FilmLot;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Kit;
import takeup.kit.Meter;
import takeup.kit.Stock;

/** What is asked for a camera, a film, the bag and the rolls. */
final class FilmFields {
    private FilmFields() {}

    /** The cameras and backs in use first, then all others. */
    static List<Field> camera(ShootState s) {
        List<Choice> all = new ArrayList<>();
        List<CameraPlace> inUse = s.placesInUse();
        for (CameraPlace it : inUse) {
            if (!Optional.of(it).equals(s.placeInHand())) {
                all.add(Choice.of(it.typed(), contents(s, it)));
            }
        }
        for (String key : s.kit().keys(Kit.Sort.CAMERAS)) {
            if (inUse.stream().noneMatch(it -> it.camera().equals(key))) {
                all.add(Choice.of(key, s.camera(key).map(Camera::name).orElse("")));
            } else {
                s.camera(key).map(Camera::backNames).orElse(List.of()).stream()
                        .map(it -> new CameraPlace(key, Optional.of(it)))
                        .filter(it -> !inUse.contains(it))
                        .forEach(it -> all.add(
                                Choice.of(it.typed(), "back " + it.back().orElse("") + ", no film")));
            }
        }
        return List.of(Field.list("Camera or back", all));
    }

    private static String contents(ShootState s, CameraPlace place) {
        return s.rollIn(place)
                .map(it -> it.film().stock().name() + ", " + it.framesLeft() + " left")
                .orElse("no film");
    }

    /** What can go in, each at its rating or another. */
    static List<Field> load(ShootState s) {
        List<Choice> all = FilmList.of(s).stream().map(FilmFields::film).toList();
        return List.of(Field.list("Which film goes in?", all));
    }

    private static Choice film(FilmList.Row row) {
        String words = row.detail().isEmpty() ? row.name() : row.name() + ", " + row.detail();
        List<Field> then = row.stock().filter(it -> !row.typed().isEmpty()).stream()
                .map(FilmFields::rating)
                .toList();
        return new Choice(row.typed(), words, then);
    }

    private static Field rating(Stock stock) {
        double box = stock.boxSpeed().arithmetic();
        TreeSet<Integer> speeds = new TreeSet<>();
        for (double factor : new double[] {0.25, 0.5, 0.8, 1, 1.25, 2, 4, 8}) {
            speeds.add((int) Math.rint(box * factor));
        }
        return Field.digits("Rated at", "@", speeds.stream().map(it -> "@" + it).toList(), 0)
                .orNothing("EI " + stock.usualIndex() + ", as usual");
    }

    /** A lot of film, as it is typed: how many, which stock, which size. */
    static List<Field> lot(ShootState s) {
        List<Choice> all = new ArrayList<>();
        for (String key : s.kit().keys(Kit.Sort.STOCKS)) {
            s.kit()
                    .stock(key)
                    .ifPresent(stock ->
                            stock.filmSizes().forEach(size -> all.add(Choice.of(key + " " + size, stock.name()))));
        }
        return List.of(count("How many rolls?", 20), Field.list("Which film?", all));
    }

    /** What is in the bag, to be taken out. */
    static List<Field> inBag(ShootState s) {
        List<Choice> all = s.day().bag().filled().stream()
                .map(it -> Choice.of(lot(it.getKey()), it.getValue() + " in the bag"))
                .toList();
        return List.of(count("How many rolls?", 20), Field.list("Which film?", all));
    }

    /** What is in the fridge, to be packed. */
    static List<Field> inFridge(ShootState s) {
        List<Choice> all = s.day().fridge().filled().stream()
                .map(it -> Choice.of(lot(it.getKey()), it.getValue() + " in the fridge"))
                .toList();
        return List.of(count("How many rolls?", 20), Field.list("Which film?", all));
    }

    private static String lot(FilmLot lot) {
        return lot.stock() + " " + lot.size();
    }

    static List<Field> meter(ShootState s) {
        return List.of(Field.list(
                "Which meter?",
                s.kit().keys(Kit.Sort.METERS).stream()
                        .map(it ->
                                Choice.of(it, s.kit().meter(it).map(Meter::name).orElse("")))
                        .toList()));
    }

    static List<Field> routine(ShootState s) {
        return List.of(Field.list(
                "After each loading",
                List.of(Choice.of("on", "film, meter and transport are asked"), Choice.of("off", "nothing is asked"))));
    }

    /** The other cameras and backs with a roll in them. */
    static List<Choice> otherRolls(ShootState s) {
        return s.placesInUse().stream()
                .filter(it -> !Optional.of(it).equals(s.placeInHand()))
                .filter(it -> s.rollIn(it).isPresent())
                .map(it -> Choice.of(it.typed(), contents(s, it)))
                .toList();
    }

    static Field count(String title, int most) {
        return Field.digits(
                title,
                "",
                IntStream.rangeClosed(1, most).mapToObj(Integer::toString).toList(),
                0);
    }

    static List<Field> condition(ShootState s) {
        return List.of(Field.list(
                "What must the lab know?",
                List.of("torn", "opened", "stuck", "partial").stream()
                        .map(Choice::value)
                        .toList()));
    }

    /** Half hours as they are typed, and among them the time at which it starts. */
    static Field clock(String title, LocalTime start) {
        List<String> times = new ArrayList<>();
        int first = start.getHour() * 60 + start.getMinute();
        int row = 0;
        for (int minutes = 0; minutes < 24 * 60; minutes += 30) {
            times.add(String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60));
            if (minutes <= first && first < minutes + 30) {
                row = times.size() - (minutes == first ? 1 : 0);
                if (minutes < first) {
                    times.add(String.format(Locale.ROOT, "%d:%02d", first / 60, first % 60));
                }
            }
        }
        return Field.digits(title, "", times, row);
    }

    /** The next full half hour of the day. */
    static LocalTime nextHalfHour(LocalTime now) {
        int minutes = (now.getHour() * 60 + now.getMinute()) / 30 * 30 + 30;
        return LocalTime.MIN.plusMinutes(Math.min(minutes, 24 * 60 - 30));
    }
}
