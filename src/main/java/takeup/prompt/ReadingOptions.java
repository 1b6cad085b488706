package takeup.prompt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Light;
import takeup.text.Nearest;

/**
 * The words of a reading, sorted before its numbers are read: {@code low 5.6 125 and 11 125 @200} is two parts of which
 * the lowest counts, at a speed.
 */
final class ReadingOptions {
    /** Which of several readings counts; their mean where none is named. */
    enum Which {
        LOW,
        HIGH
    }

    private static final List<String> WORDS =
            List.of("ev", "low", "high", "spot", "reflected", "incident", "flash", "camera", "sky", "and");

    private final List<List<Token>> parts = new ArrayList<>(List.of(new ArrayList<>()));
    private Optional<FilmSpeed> speed = Optional.empty();
    private Optional<Light.Method> method = Optional.empty();
    private Optional<Which> which = Optional.empty();
    private Optional<Sky> sky = Optional.empty();
    private final Map<Integer, Integer> zones = new TreeMap<>();
    private double fromTheSide;
    private boolean isEv;
    private boolean isFlash;

    private ReadingOptions() {}

    static ReadingOptions of(List<String> words) {
        ReadingOptions options = new ReadingOptions();
        for (int at = 0; at < words.size(); at++) {
            if (words.get(at).equals("sky")) {
                at++;
                options.sky(at < words.size() ? words.get(at) : "");
                if (at + 1 < words.size()) {
                    Optional<Double> loss = options.sky.orElseThrow().lossFrom(words.get(at + 1));
                    options.fromTheSide = loss.orElse(0.0);
                    at += loss.isPresent() ? 1 : 0;
                }
            } else {
                options.word(words.get(at));
            }
        }
        options.check();
        return options;
    }

    /** The numbers of each reading, as {@code and} divides them; one or more. */
    List<List<Token>> parts() {
        return parts;
    }

    /** The speed that the meter is said to be set to. */
    Optional<FilmSpeed> speed() {
        return speed;
    }

    Optional<Light.Method> method() {
        return method;
    }

    Optional<Which> which() {
        return which;
    }

    /** Of several readings the one that counts, or their mean; the first where each has its zone. */
    double counted(List<Double> values) {
        if (which.isPresent()) {
            return which.get() == Which.LOW ? Collections.min(values) : Collections.max(values);
        }
        return zoneOfEach().isEmpty() ? mean(values) : values.get(0);
    }

    /** As a loop adds them, so that readings of old journals stay as they were to the last bit. */
    private static double mean(List<Double> values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.size();
    }

    Optional<Sky> sky() {
        return sky;
    }

    /** What light from the side or from behind takes of a sunny sky, in EV. */
    double fromTheSide() {
        return fromTheSide;
    }

    boolean hasZone() {
        return !zones.isEmpty();
    }

    /** The zone of each reading, in their order; empty unless there are several and each has one. */
    List<Integer> zoneOfEach() {
        return zones.size() > 1 ? List.copyOf(zones.values()) : List.of();
    }

    /** The zone for so many readings of a kind: a place for one reading of light that comes back from something. */
    OptionalInt zone(Light.Method how, int readings) {
        if (zones.isEmpty()) {
            return OptionalInt.empty();
        }
        OptionalInt zone = OptionalInt.of(zones.values().iterator().next());
        String word = "z" + zone.getAsInt();
        if (how != Light.Method.SPOT && how != Light.Method.REFLECTED && how != Light.Method.CAMERA) {
            throw new CommandRejected("a zone needs a reading off the subject: m spot 9.3 " + word
                    + ", or m reflected or m camera with its numbers and " + word);
        }
        if (!zoneOfEach().isEmpty()) {
            if (which.isPresent()) {
                throw new CommandRejected("a zone for each reading, or low or high, one of the two");
            }
            if (readings != zones.size() || parts.size() != zones.size()) {
                throw new CommandRejected("each reading and its zone: m spot 9 z3 and 12 z7");
            }
            return zone;
        }
        if (readings > 1 && which.isEmpty()) {
            throw new CommandRejected("several readings and one zone: which of them goes on " + word
                    + "? m low or m high with them and " + word + ", or one alone");
        }
        return zone;
    }

    /** Whether bare numbers are said to be exposure values. */
    boolean isEv() {
        return isEv;
    }

    boolean isFlash() {
        return isFlash;
    }

    private void word(String word) {
        switch (word) {
            case "ev" -> isEv = true;
            case "flash" -> isFlash = true;
            case "low" -> which(Which.LOW);
            case "high" -> which(Which.HIGH);
            case "spot" -> method(Light.Method.SPOT);
            case "reflected" -> method(Light.Method.REFLECTED);
            case "incident" -> method(Light.Method.INCIDENT);
            case "camera" -> method(Light.Method.CAMERA);
            case "and" -> and();
            default -> other(word);
        }
    }

    private void which(Which other) {
        if (which.isPresent()) {
            throw new CommandRejected("low or high, one of the two");
        }
        which = Optional.of(other);
    }

    private void method(Light.Method other) {
        method = Optional.of(oneOf(method, other));
    }

    /** One way of reading at a time. */
    static Light.Method oneOf(Optional<Light.Method> method, Light.Method other) {
        if (method.isPresent() && method.get() != other) {
            throw new CommandRejected(
                    "one way of reading at a time: " + method.get().word() + " or " + other.word());
        }
        return other;
    }

    private void sky(String word) {
        method(Light.Method.SKY);
        sky = Sky.named(word);
        if (sky.isEmpty()) {
            throw new CommandRejected((word.isEmpty() ? "which sky" : word + " is no sky known here")
                    + Nearest.to(word, Sky.words())
                            .map(it -> "; did you mean m sky " + it + "?")
                            .orElseGet(() -> ": one of " + String.join(", ", Sky.words())));
        }
    }

    private List<Token> last() {
        return parts.get(parts.size() - 1);
    }

    private void and() {
        if (last().isEmpty() && sky.isEmpty()) {
            throw new CommandRejected("a reading is missing before and");
        }
        parts.add(new ArrayList<>());
    }

    private void other(String word) {
        Token token = Tokens.token(word);
        if (token.is(Token.Kind.INDEX)) {
            FilmSpeed other = LoadArguments.speed(token);
            if (speed.isPresent() && !speed.get().equals(other)) {
                throw new CommandRejected("two speeds for one reading: @" + speed.get() + " and " + word);
            }
            speed = Optional.of(other);
        } else if (isZone(word)) {
            zone(word);
        } else if (token.is(Token.Kind.WORD)) {
            throw new CommandRejected(word + " is no reading"
                    + (Sky.named(word).isPresent()
                            ? "; did you mean m sky " + word + "?"
                            : Nearest.question(word, WORDS))
                    + "; such as m 5.6 125, m ev11.3, m 2500lx, m sky shade");
        } else {
            last().add(token);
        }
    }

    private static boolean isZone(String word) {
        return word.length() > 1 && word.charAt(0) == 'z' && Tokens.isDigit(word.charAt(1));
    }

    private void zone(String word) {
        if (zones.containsKey(parts.size())) {
            throw new CommandRejected("two zones in one reading; and stands between two: m spot 9 z3 and 12 z7");
        }
        int zone = Tokens.number(word.substring(1))
                .filter(it -> it == Math.rint(it) && it <= 10)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected(word + " is no zone: z0 to z10, z5 is the middle"));
        zones.put(parts.size(), zone);
    }

    private void check() {
        if (parts.size() > 1 && last().isEmpty()) {
            throw new CommandRejected("a reading is missing after and");
        }
        if (isFlash && (method.isPresent() || which.isPresent() || hasZone() || isEv)) {
            throw new CommandRejected("a flash meter gives one aperture, and nothing else: m flash 8");
        }
        if (sky.isPresent() && (parts.size() > 1 || !last().isEmpty())) {
            throw new CommandRejected("m sky takes the word for the sky alone");
        }
    }
}
