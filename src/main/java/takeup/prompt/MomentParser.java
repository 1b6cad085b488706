package takeup.prompt;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import takeup.day.CameraPlace;
import takeup.day.KeyMoment;
import takeup.text.ClockText;

/** Reads a key moment: {@code 16:30 Prize-giving wants 12 must cam 645 back 2 light ev12 on 2026-09-12}. */
public final class MomentParser {
    private static final int MOST = 999;

    private final List<String> words;
    private final Function<List<String>, CameraPlace> places;
    private int at;

    private MomentParser(List<String> words, Function<List<String>, CameraPlace> places) {
        this.words = words;
        this.places = places;
    }

    /**
     * The moment that the words mean.
     *
     * @param words letter for letter, the time first
     * @param number the number that it gets
     * @param today the day that it is on where no date is said
     * @param now today's date, for {@code on tomorrow}
     * @param places the place that a camera's key and maybe a back name
     */
    public static KeyMoment read(
            List<String> words,
            int number,
            LocalDate today,
            LocalDate now,
            Function<List<String>, CameraPlace> places) {
        return new MomentParser(words, places).read(number, today, now);
    }

    private KeyMoment read(int number, LocalDate today, LocalDate now) {
        LocalTime time = DateTimeParser.time(words.get(0))
                .orElseThrow(() ->
                        new CommandRejected(words.get(0) + " is no time of day: plan 16:30 Prize-giving wants 12"));
        List<String> name = new ArrayList<>();
        boolean named = false;
        int wants = 0;
        boolean must = false;
        Optional<CameraPlace> place = Optional.empty();
        boolean back = false;
        OptionalDouble light = OptionalDouble.empty();
        LocalDate date = today;
        for (at = 1; at < words.size(); at++) {
            String word = DateTimeParser.small(words.get(at));
            if (name.isEmpty()) {
                name.add(words.get(at));
                continue;
            }
            switch (word) {
                case "wants" -> wants = wants();
                case "must" -> must = true;
                case "cam" -> {
                    List<String> camera = camera();
                    back = camera.size() > 1;
                    place = Optional.of(places.apply(camera));
                }
                case "light" -> {
                    if (!named && !isLight(DateTimeParser.small(next()))) {
                        name.add(words.get(at));
                        continue;
                    }
                    light = OptionalDouble.of(light());
                }
                case "on" -> {
                    Optional<LocalDate> said = DateTimeParser.date(next(), now);
                    if (said.isEmpty() && !next().isEmpty() && Tokens.isDigit(next().charAt(0))) {
                        throw new CommandRejected(next() + " is no date: on 2026-09-12, on today, on tomorrow");
                    }
                    if (said.isEmpty() && named) {
                        throw tooMany();
                    }
                    if (said.isEmpty()) {
                        name.add(words.get(at));
                        continue;
                    }
                    date = said.get();
                    at++;
                }
                default -> {
                    if (named) {
                        throw tooMany();
                    }
                    name.add(words.get(at));
                    continue;
                }
            }
            named = true;
        }
        if (name.isEmpty()) {
            throw new CommandRejected(
                    "what happens at " + ClockText.clock(time) + "? plan 16:30 Prize-giving wants 12");
        }
        return new KeyMoment(
                number,
                date.atTime(time),
                String.join(" ", name),
                wants,
                must,
                place.map(CameraPlace::camera),
                back ? place.flatMap(CameraPlace::back) : Optional.empty(),
                light);
    }

    private CommandRejected tooMany() {
        return new CommandRejected(words.get(at)
                + " is not understood here: a moment is its time, its name, then wants 12, must, cam "
                + "645 back 2, light ev12, on DATE");
    }

    private String next() {
        return at + 1 < words.size() ? words.get(at + 1) : "";
    }

    private int wants() {
        String count = next();
        at++;
        return frames(count);
    }

    /** A count of frames. */
    public static int frames(String count) {
        return Tokens.number(count)
                .filter(it -> it == Math.rint(it) && it >= 0 && it <= MOST)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected(
                        (count.isEmpty() ? "nothing" : count) + " is no count of frames: wants 12, up to " + MOST));
    }

    /** The camera's key, and the back, with or without the word {@code back} in front of it: {@code cam 645 2}. */
    private List<String> camera() {
        if (next().isEmpty()) {
            throw new CommandRejected("which camera? cam 645, cam 645 back 2");
        }
        List<String> camera = new ArrayList<>(List.of(next()));
        at++;
        if (next().equalsIgnoreCase("back")) {
            at++;
            if (next().isEmpty()) {
                throw new CommandRejected("which back? cam 645 back 2");
            }
            camera.add(next());
            at++;
        } else if (next().length() <= 2 && !next().isEmpty() && !next().equalsIgnoreCase("on")) {
            camera.add(next());
            at++;
        }
        return camera;
    }

    /** Whether a word could be light: {@code Last light} is a name. */
    private static boolean isLight(String word) {
        return Sky.ofMoment(word).isPresent()
                || word.equals("ev")
                || !word.isEmpty() && (Tokens.isDigit(word.charAt(0)) || word.charAt(0) == '-')
                || word.startsWith("ev")
                        && word.length() > 2
                        && (Tokens.isDigit(word.charAt(2)) || word.charAt(2) == '-');
    }

    private double light() {
        String word = DateTimeParser.small(next());
        at++;
        if (word.equals("ev")) {
            word = "ev" + next();
            at++;
        }
        return light(word);
    }

    /** Light as EV at ISO 100, or as a sky: {@code ev12}, {@code 12}, {@code shade}. */
    public static double light(String typed) {
        String word = typed.replace(',', '.');
        Optional<Sky> sky = Sky.ofMoment(word);
        if (sky.isPresent()) {
            return sky.get().ev100();
        }
        String number = word.startsWith("ev") ? word.substring(2) : word;
        boolean minus = number.startsWith("-");
        return Tokens.number(minus ? number.substring(1) : number)
                .map(it -> minus ? -it : it)
                .filter(it -> it >= -10 && it <= 20)
                .orElseThrow(() -> new CommandRejected((word.isEmpty() ? "nothing" : typed)
                        + " is no light: light ev12 (EV at ISO 100, -10 to 20), or a sky, such as light shade"));
    }
}
