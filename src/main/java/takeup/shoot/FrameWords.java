package takeup.shoot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.exposure.Plain;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.kit.Nearest;
import takeup.roll.Change;
import takeup.roll.Frame;
import takeup.roll.Setting;

/**
 * What a frame line or a correction says.
 *
 * @param change aperture, time, focal length, distance and so on
 * @param count how many frames; empty where none was typed
 * @param doubt a question to ask first
 */
record FrameWords(Change change, OptionalInt count, Optional<String> doubt) {
    private static final List<String> CORRECTIONS = List.of(
            "filter", "lens", "ext", "tube", "mag", "flash", "tripod", "bias", "exposed", "blank", "unlogged", "slate");

    /** A frame line: aperture, time, focal length, distance and a count, in any order. */
    static FrameWords ofFrame(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, false, true);
    }

    /** What {@code fix} takes: a frame line without a count, and the states of a camera. */
    static FrameWords ofCorrection(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, true, false);
    }

    /** What {@code insert} takes: as {@code fix}, and a count. */
    static FrameWords ofInsertion(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, true, true);
    }

    private static FrameWords read(List<String> words, Camera camera, Setting setting, boolean states, boolean counts) {
        Change change = Change.NOTHING;
        List<Token> numbers = new ArrayList<>();
        OptionalInt count = OptionalInt.empty();
        Optional<String> doubt = Optional.empty();
        Optional<Lens> lens = setting.lens();
        String metres = "";
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            if (states && CORRECTIONS.contains(word)) {
                int end = endOf(words, at);
                Change more = state(word, words.subList(at + 1, end), camera, lens, change);
                lens = more.lens().or(() -> setting.lens());
                if (more.lens().isEmpty() && change.lens().isPresent()) {
                    lens = change.lens();
                }
                change = change.and(more);
                at = end - 1;
                continue;
            }
            Token token = Tokens.token(word);
            switch (token.kind()) {
                case APERTURE, TIME, BULB, BARE -> numbers.add(token);
                case COUNT -> {
                    if (!counts) {
                        throw new Refusal(word + ": a correction takes no count; fix 3-5 corrects a row of frames");
                    }
                    if (count.isPresent()) {
                        throw new Refusal("two counts: x" + count.getAsInt() + " and " + word);
                    }
                    count = OptionalInt.of(count(token));
                }
                case MILLIMETRES -> {
                    if (change.zoomMm().isPresent()) {
                        throw new Refusal("two focal lengths: "
                                + Plain.number(change.zoomMm().getAsDouble()) + "mm and " + word);
                    }
                    Optional<String> odd = oddFocal(token, lens);
                    doubt = odd.isPresent() ? odd : doubt;
                    change = change.and(Change.zoom(focal(token)));
                }
                case METRES -> {
                    if (change.distanceM().isPresent()) {
                        throw new Refusal("two distances: "
                                + Plain.number(change.distanceM().getAsDouble()) + "m and " + word);
                    }
                    metres = word.endsWith("m") ? word : metres;
                    change = change.and(Change.distance(distance(token)));
                }
                case INDEX ->
                    throw new Refusal(word + ": the index belongs to the roll; load cn400 " + word + ", or fix roll "
                            + word + " if it was typed wrong");
                case EV, LUX, CANDELAS -> throw new Refusal(word + " is light: m " + word + " takes a reading");
                case WORD ->
                    throw bulb(word)
                            ? new Refusal(word + " needs its unit: " + word + "s is bulb, so many seconds by the watch")
                            : new Refusal(word + " is no number and no word of a frame line"
                                    + Nearest.question(word, states ? CORRECTIONS : List.of())
                                    + "; words for the frame stand behind a semicolon");
            }
        }
        Change pair = Rings.of(camera, lens).pair(numbers);
        Optional<ExposureTime> slow =
                pair.time().filter(FrameWords::isLong).or(() -> setting.time().filter(FrameWords::isLong));
        if (!metres.isEmpty() && slow.isPresent()) {
            doubt = Optional.of(metres + " is a distance in metres; the time in hand is " + slow.get()
                    + ", and minutes are typed " + metres + "in");
        }
        return new FrameWords(change.and(pair), count, doubt);
    }

    private static boolean isLong(ExposureTime time) {
        return time.exactSeconds() >= 1 - 1e-9;
    }

    private static boolean bulb(String word) {
        return word.startsWith("b") && Tokens.number(word.substring(1)).isPresent();
    }

    /** Where the words of a state end: at the next state or at a word that cannot belong to it. */
    private static int endOf(List<String> words, int at) {
        String state = words.get(at);
        int end = at + 1;
        if (state.equals("filter")) {
            boolean first = true;
            while (end < words.size()
                    && !CORRECTIONS.contains(words.get(end))
                    && FilterWords.goesOn(words.get(end), first)) {
                first = words.get(end).equals("and");
                end++;
            }
            return end;
        }
        boolean alone =
                state.equals("exposed") || state.equals("slate") || state.equals("blank") || state.equals("unlogged");
        return alone ? end : Math.min(words.size(), end + 1);
    }

    private static Change state(String word, List<String> rest, Camera camera, Optional<Lens> lens, Change before) {
        switch (word) {
            case "filter":
                return Change.filters(FilterWords.read(rest));
            case "exposed":
                return Change.kind(Frame.Kind.EXPOSED);
            case "slate":
                return Change.kind(Frame.Kind.SLATE);
            case "blank":
                return Change.kind(Frame.Kind.BLANK);
            case "unlogged":
                return Change.kind(Frame.Kind.UNLOGGED);
            default:
                if (rest.isEmpty()) {
                    throw new Refusal("something is missing after " + word);
                }
                return StateWords.read(word, rest.get(0), camera, lens, before.zoomMm());
        }
    }

    static int count(Token token) {
        if (token.value() != Math.rint(token.value()) || token.value() < 1 || token.value() > 99) {
            throw new Refusal(token.text() + " is no count: x1 to x99");
        }
        return (int) token.value();
    }

    private static double focal(Token token) {
        if (!(token.value() >= 1 && token.value() <= 5000)) {
            throw new Refusal(token.text() + " is no focal length: 1 to 5000 mm");
        }
        return token.value();
    }

    static double distance(Token token) {
        if (!(token.value() >= 0.01 && token.value() <= 100_000)) {
            throw new Refusal(token.text() + " is no distance: 0.01 m to 100 km");
        }
        return token.value();
    }

    private static Optional<String> oddFocal(Token token, Optional<Lens> lens) {
        if (lens.isEmpty() || lens.get().reaches(token.value())) {
            return Optional.empty();
        }
        return Optional.of(
                "the lens in hand is " + lens.get().name() + " (" + lens.get().focalWords() + "), not " + token.text());
    }

    /** What was set, in words: {@code f/4 1/125, 85 mm, 3 m}. */
    static String words(Optional<Aperture> aperture, Optional<ExposureTime> time, Change rest) {
        StringBuilder words = new StringBuilder();
        aperture.ifPresent(it -> words.append(it));
        time.ifPresent(it -> words.append(words.isEmpty() ? "" : " ").append(it));
        rest.zoomMm()
                .ifPresent(it -> words.append(words.isEmpty() ? "" : ", ")
                        .append(Plain.number(it))
                        .append(" mm"));
        rest.distanceM()
                .ifPresent(it -> words.append(words.isEmpty() ? "" : ", ")
                        .append(Plain.digits(it, 3))
                        .append(" m"));
        return words.toString();
    }

    static String extensionWords(Extension extension, Setting setting) {
        return extension + " takes " + takeup.exposure.Stops.words(setting.extensionStops());
    }
}
