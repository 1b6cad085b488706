package takeup.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.exposure.Stops;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.roll.Frame;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.Nearest;
import takeup.text.Plain;

/**
 * What a frame line or a correction says.
 *
 * @param change aperture, time, focal length, distance and so on
 * @param count how many frames; empty where none was typed
 * @param question a question to ask first
 */
public record FrameArguments(SettingPatch change, OptionalInt count, Optional<String> question) {
    private static final List<String> CORRECTIONS = List.of(
            "filter", "lens", "ext", "tube", "mag", "flash", "tripod", "bias", "exposed", "blank", "unlogged", "slate");

    /** A frame line: aperture, time, focal length, distance and a count, in any order. */
    public static FrameArguments ofFrame(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, Line.FRAME);
    }

    /** What {@code fix} takes: a frame line without a count, and the states of a camera. */
    public static FrameArguments ofCorrection(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, Line.CORRECTION);
    }

    /** What {@code insert} takes: as {@code fix}, and a count. */
    public static FrameArguments ofInsertion(List<String> words, Camera camera, Setting setting) {
        return read(words, camera, setting, Line.INSERTION);
    }

    /** What kind of line the words stand in. */
    private enum Line {
        FRAME,
        CORRECTION,
        INSERTION
    }

    private static FrameArguments read(List<String> words, Camera camera, Setting setting, Line line) {
        boolean states = line != Line.FRAME;
        SettingPatch change = SettingPatch.NOTHING;
        List<Token> numbers = new ArrayList<>();
        OptionalInt count = OptionalInt.empty();
        Optional<String> question = Optional.empty();
        Optional<Lens> lens = setting.lens();
        String metres = "";
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            if (states && CORRECTIONS.contains(word) || word.equals("lens")) {
                int end = endOf(words, at);
                SettingPatch more = state(word, words.subList(at + 1, end), camera, lens, change);
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
                    if (line == Line.CORRECTION) {
                        throw new CommandRejected(
                                word + ": a correction takes no count; fix 3-5 corrects a row of frames");
                    }
                    if (count.isPresent()) {
                        throw new CommandRejected("two counts: x" + count.getAsInt() + " and " + word);
                    }
                    count = OptionalInt.of(count(token));
                }
                case MILLIMETRES -> {
                    if (change.zoomMm().isPresent()) {
                        throw new CommandRejected("two focal lengths: "
                                + Plain.number(change.zoomMm().getAsDouble()) + "mm and " + word);
                    }
                    Optional<String> odd = oddFocal(token, lens);
                    question = odd.isPresent() ? odd : question;
                    change = change.and(SettingPatch.zoom(focal(token)));
                }
                case METRES -> {
                    if (change.distanceM().isPresent()) {
                        throw new CommandRejected("two distances: "
                                + Plain.number(change.distanceM().getAsDouble()) + "m and " + word);
                    }
                    metres = word.endsWith("m") ? word : metres;
                    change = change.and(SettingPatch.distance(distance(token)));
                }
                case INDEX ->
                    throw new CommandRejected(word + ": the index belongs to the roll; load cn400 " + word
                            + ", or fix roll " + word + " if it was typed wrong");
                case EV, LUX, CANDELAS -> throw new CommandRejected(word + " is light: m " + word + " takes a reading");
                case WORD ->
                    throw bulb(word)
                            ? new CommandRejected(word + " needs its unit; for bulb, type " + word + "s")
                            : new CommandRejected(word + " is no number and no word of a frame line"
                                    + Nearest.question(word, states ? CORRECTIONS : List.of("lens"))
                                    + "; put a note after a semicolon");
            }
        }
        SettingPatch pair = DialNumbers.of(camera, lens).pair(numbers);
        Optional<ExposureTime> slow = isLong(pair.time()) ? pair.time() : setting.time();
        if (!metres.isEmpty() && isLong(slow)) {
            question = Optional.of(metres + " is a distance in metres; the time in hand is " + slow.get()
                    + ", and minutes are typed " + metres + "in");
        }
        return new FrameArguments(change.and(pair), count, question);
    }

    private static boolean isLong(Optional<ExposureTime> time) {
        return time.isPresent() && time.get().exactSeconds() >= 1 - 1e-9;
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
                    && FilterParser.goesOn(words.get(end), first)) {
                first = words.get(end).equals("and");
                end++;
            }
            return end;
        }
        boolean alone =
                state.equals("exposed") || state.equals("slate") || state.equals("blank") || state.equals("unlogged");
        return alone ? end : Math.min(words.size(), end + 1);
    }

    private static SettingPatch state(
            String word, List<String> rest, Camera camera, Optional<Lens> lens, SettingPatch before) {
        switch (word) {
            case "filter":
                return SettingPatch.filters(FilterParser.read(rest));
            case "exposed":
                return SettingPatch.kind(Frame.Kind.EXPOSED);
            case "slate":
                return SettingPatch.kind(Frame.Kind.SLATE);
            case "blank":
                return SettingPatch.kind(Frame.Kind.BLANK);
            case "unlogged":
                return SettingPatch.kind(Frame.Kind.UNLOGGED);
            default:
                if (rest.isEmpty()) {
                    throw new CommandRejected("something is missing after " + word);
                }
                return CameraStateParser.read(word, rest.get(0), camera, lens, before.zoomMm());
        }
    }

    public static int count(Token token) {
        if (token.value() != Math.rint(token.value()) || token.value() < 1 || token.value() > 99) {
            throw new CommandRejected(token.text() + " is no count: x1 to x99");
        }
        return (int) token.value();
    }

    private static double focal(Token token) {
        if (!(token.value() >= 1 && token.value() <= 5000)) {
            throw new CommandRejected(token.text() + " is no focal length: 1 to 5000 mm");
        }
        return token.value();
    }

    public static double distance(Token token) {
        if (!(token.value() >= 0.01 && token.value() <= 100_000)) {
            throw new CommandRejected(token.text() + " is no distance: 0.01 m to 100 km");
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
    public static String words(Optional<Aperture> aperture, Optional<ExposureTime> time, SettingPatch rest) {
        String pair = (aperture.isPresent() ? aperture.get().toString() : "")
                + (aperture.isPresent() && time.isPresent() ? " " : "")
                + (time.isPresent() ? time.get().toString() : "");
        List<String> words = new ArrayList<>();
        if (!pair.isEmpty()) {
            words.add(pair);
        }
        if (rest.zoomMm().isPresent()) {
            words.add(Plain.number(rest.zoomMm().getAsDouble()) + " mm");
        }
        if (rest.distanceM().isPresent()) {
            words.add(Plain.digits(rest.distanceM().getAsDouble(), 3) + " m");
        }
        return String.join(", ", words);
    }

    public static String extensionWords(Extension extension, Setting setting) {
        return extension + " takes " + Stops.words(setting.extensionStops());
    }
}
