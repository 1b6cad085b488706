package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;
import takeup.kit.Filter;
import takeup.kit.FrameSize;

/** Sums that manuals, courses and forums print with their answer; the sources stand in the table worked_examples. */
class WorkedExamplesTest {
    private static final Reciprocity NO_FAILURE = new Reciprocity.None(OptionalDouble.empty());
    private static final Map<String, String> NO_TYPE_ANSWERS = Map.of(
            "w16", "the grey card's reading is the setting itself: nothing is worked out",
            "w71", "no type adds two lights on one subject: the answer is 1 + 4",
            "w75", "a film speed goes to degrees, not back: checked that way below",
            "w76", "a film speed goes to degrees, not back: checked that way below",
            "w86", "how many frames a roll holds stands in the camera's profile",
            "w87", "how many frames a roll holds stands in the camera's profile",
            "w88", "how many frames a roll holds stands in the camera's profile");

    static Stream<Sum> sums() {
        return ReferenceTable.rows("worked_examples")
                .filter(it -> !NO_TYPE_ANSWERS.containsKey(it.text("id")))
                .map(it -> new Sum(it.text("id"), it.text("given"), it));
    }

    /** A row that neither has a sum in {@link #answer} nor a reason above fails here by its id. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("sums")
    void theAnswerIsTheExactOne(Sum sum) {
        double exact = sum.row.number("our_exact_answer");
        assertEquals(exact, answer(sum), 1e-5 * Math.max(Math.abs(exact), 0.1));
    }

    /** To 0.05 stop, either way; the head of the table explains the differences from 0.1 stop up. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("sums")
    void theAnswerLiesAsFarFromThePrintedOneAsTheTableSays(Sum sum) {
        double difference = sum.row.has("difference_stops") ? Math.abs(sum.row.number("difference_stops")) : 0;
        String unit = sum.row.text("unit");
        double printed = printed(sum.row.text("printed_answer"));
        double answer = answer(sum);
        double apart;
        if (List.of("stops", "EV", "zone").contains(unit)) {
            apart = printed - answer;
        } else if (unit.equals("f-number")) {
            apart = Scale.anyAperture(printed).stops() - 2 * Stops.of(answer);
        } else if (sum.row.text("asked").equals("extension")) {
            apart = 2 * Stops.of(printed / answer);
        } else {
            apart = Stops.of((unit.equals("s") ? Scale.anyTime(printed).exactSeconds() : printed) / answer);
        }
        assertEquals(difference, Math.abs(apart), 0.05);
    }

    @Test
    void everyReasonBelongsToARow() {
        List<String> ids =
                ReferenceTable.rows("worked_examples").map(it -> it.text("id")).toList();
        assertTrue(ids.containsAll(NO_TYPE_ANSWERS.keySet()), ids.toString());
    }

    @Test
    void theSpeedsThatArePrintedForDegreesHaveThoseDegrees() {
        List<ReferenceTable.Row> rows = ReferenceTable.rows("worked_examples")
                .filter(it -> it.text("given").startsWith("degrees="))
                .toList();
        assertEquals(
                List.of("w75", "w76"), rows.stream().map(it -> it.text("id")).toList());
        for (ReferenceTable.Row row : rows) {
            assertEquals("degrees=" + new FilmSpeed(row.number("printed_answer")).degrees(), row.text("given"));
        }
    }

    private static double answer(Sum it) {
        switch (it.id) {
            case "w01", "w02", "w03", "w04", "w06", "w07", "w18":
                return path(100, 0, 0).metered(it.light(), it.f(" new_f="));
            case "w08", "w09":
                return path(100, 0, 0).metered(new ExposureValue(it.number("ev=")), it.f("f="));
            case "w10":
                return it.light().stops();
            case "w11":
                return it.light().at100(new FilmSpeed(it.number("iso="))).stops();
            case "w12":
                List<Aperture> marks = Scale.THIRD.apertures();
                return marks.get(marks.indexOf(
                                        Scale.THIRD.aperture(it.number("f=")).orElseThrow())
                                + (int) Math.round(3 * it.number("plus_stops=")))
                        .exactFNumber();
            case "w13":
                return Stops.factor(it.number("ev100=")
                        - ExposureValue.ofLux(1, it.number("C=")).stops());
            case "w14": // f/16 at 1/ISO, whatever the ISO; the constant is in footcandles, and so is the answer
                ExposureValue noon = ExposureValue.of(it.f("f="), ExposureTime.literal(1 / 200.0))
                        .at100(new FilmSpeed(200));
                return Stops.factor(
                        noon.stops() - ExposureValue.ofLux(1, it.number("C=")).stops());
            case "w15":
                return new ExposureValue(0)
                        .at100(new FilmSpeed(it.number("iso")))
                        .stops();
            case "w17": // the rule in the wording time = 1/ISO, taken from ISO 400
                ExposureValue sun = ExposureValue.of(it.f("f="), ExposureTime.literal(1 / 400.0))
                        .at100(new FilmSpeed(400));
                return path(it.number("iso="), 0, 0).metered(sun, it.f("f="));
            case "w19", "w23":
                return opening(path(100, Stops.of(it.number("factor=")), 0), it);
            case "w20":
                return path(100, Filter.factor("", it.number("factor=")).stops(), 0)
                        .metered(it.light(), it.f("new_f="));
            case "w24":
                return path(100, Stops.of(it.number("factor=")), 0).metered(it.lightAt(it.t()), Aperture.literal(1));
            case "w25":
                return path(100, it.number("polariser_stops="), 0).metered(it.lightAt(it.t()), Aperture.literal(1));
            case "w21", "w22":
                return Filter.factor("", it.number("factor=")).stops();
            case "w26":
                return Stream.of(it.given.substring("factors=".length()).split(" "))
                        .mapToDouble(factor ->
                                Filter.factor("", Double.parseDouble(factor)).stops())
                        .sum();
            case "w27":
                return Stops.factor(it.number("stops="));
            case "w28":
                return it.light().stops();
            case "w29", "w30":
                return path(100, it.number("nd_stops="), 0).metered(it.light(), it.f("f="));
            case "w31":
                return path(100, it.number("nd_stops="), 0).metered(it.lightAt(it.t()), Aperture.literal(1));
            case "w32":
                return new LightPath(FilmSpeed.ISO_100, 0, it.draw(), 0, NO_FAILURE).metered(it.light(), it.f(" f="));
            case "w33":
                return opening(
                        new LightPath(
                                FilmSpeed.ISO_100,
                                0,
                                Stops.ofMagnification(it.number("magnification=")),
                                0,
                                NO_FAILURE),
                        it);
            case "w34":
                return new LightPath(
                                FilmSpeed.ISO_100, 0, Stops.ofMagnification(it.number("magnification=")), 0, NO_FAILURE)
                        .metered(it.light(), it.f(" f="));
            case "w35": // m = f / (distance - f)
                return drawFor(
                        it.number("focal="), it.number("focal=") / (it.number("distance=") - it.number("focal=")));
            case "w36":
                return drawFor(it.number("focal="), it.number("magnification="));
            case "w37":
                return magnification(it);
            case "w38": // distance = f (1 + 1/m)
                return it.number("focal=") * (1 + 1 / magnification(it));
            case "w39":
                return it.draw();
            case "w40":
                return Stops.ofMagnification(1 / (it.number("distance=") - 1));
            case "w41":
                return it.number("iso=") / Stops.factor(it.draw());
            case "w42":
                return new Reciprocity.Power(it.number("P="), 1)
                        .corrected(it.number("metered="))
                        .orElseThrow();
            case "w43", "w44":
                FilmSpeed paper = new FilmSpeed(it.number("iso="));
                Reciprocity twice = new Reciprocity.Table(List.of(
                        new Reciprocity.Point(1, 1),
                        new Reciprocity.Point(100, 200),
                        new Reciprocity.Point(1000, 2000)));
                return new LightPath(paper, 0, 0, 0, it.id.equals("w43") ? NO_FAILURE : twice)
                        .corrected(it.light().at100(paper), Aperture.literal(it.number("pinhole ") / it.number("mm/")))
                        .orElseThrow();
            case "w45":
                return opening(path(100, 0, 3 - 5), it);
            case "w46":
                return path(100, 0, 6 - 5).metered(it.light(), it.f("f="));
            case "w47":
                return it.f("highlight f=").stops() - it.f("shadow f=").stops();
            case "w48":
                return 2 + it.f("highlight f=").stops() - it.f("shadow f=").stops();
            case "w49":
                return path(100, 0, 0 - 5).error(new ExposureValue(0), Aperture.literal(1), ExposureTime.literal(1));
            case "w51":
                return opening(path(100, 0, 1), it);
            case "w52":
                return it.f("white f=").stops() - it.f("black f=").stops();
            case "w53":
                return Aperture.mark(
                                11,
                                (it.f("readings f=").stops() + it.f("and f=").stops()) / 2)
                        .exactFNumber();
            case "w54", "w55", "w56", "w57", "w59", "w62":
                return it.guide().fNumber(new FilmSpeed(it.number("iso=")), 1, it.metres("distance="));
            case "w58", "w60":
                return it.guide()
                        .distanceM(
                                new FilmSpeed(it.number("iso=")), 1, it.f(" f=").exactFNumber());
            case "w61":
                return it.guide().fNumber(new FilmSpeed(it.number("iso=")), it.number("power="), GuideNumber.FOOT);
            case "w63":
                return GuideNumber.together(List.of(it.guide(), it.guide(), it.guide()))
                        .fNumber(FilmSpeed.ISO_100, 1, it.metres("each at "));
            case "w64":
                return GuideNumber.together(List.of(it.guide(), it.guide())).metres();
            case "w65":
                GuideNumber one = new GuideNumber(it.f("f=").exactFNumber());
                return GuideNumber.together(List.of(one, one, one, one)).fNumber(FilmSpeed.ISO_100, 1, 1);
            case "w66":
                GuideNumber unit = new GuideNumber(36);
                return Stops.factor(
                        -2 * Stops.of(GuideNumber.together(List.of(unit, unit)).metres() / unit.metres()));
            case "w67":
                return Aperture.mark(
                                32,
                                it.f("f=").stops() + GuideNumber.fallOff(it.number("distance=") / it.number(" at ")))
                        .exactFNumber();
            case "w68":
                return it.f("f=").exactFNumber()
                        / GuideNumber.inFeet(1).fNumber(FilmSpeed.ISO_100, 1, it.metres(" at "));
            case "w69":
                return Stops.factor(GuideNumber.fallOff(it.number("light ")));
            case "w70":
                return 1 + Stops.factor(GuideNumber.fallOff(it.number("output at ") / it.number("fill at ")));
            case "w72":
                return Stops.factor(
                        it.f("key meters f=").stops() - it.f("fill f=").stops());
            case "w73":
                return Stops.of(it.number("ratio ") - 1);
            case "w74":
                return Stops.factor(ExposureValue.ofLux(it.number("key=") * ExposureValue.LUX_PER_FOOTCANDLE, 250)
                                .stops()
                        - ExposureValue.ofLux(it.number("fill=") * ExposureValue.LUX_PER_FOOTCANDLE, 250)
                                .stops());
            case "w77":
                return path(it.number("ei="), 0, 0)
                        .metered(it.light().at100(new FilmSpeed(it.number("box="))), it.f(" f="));
            case "w78":
                return -new FilmSpeed(it.number("box=")).stopsOver(new FilmSpeed(it.number("ei=")));
            case "w79":
                return new FilmSpeed(it.number("box=")).stopsOver(new FilmSpeed(it.number("ei=")));
            case "w80":
                return DepthOfField.of(it.number(" as ") * 25.4, it.f(" f="), it.number("coc=") * 25.4, 3)
                                .hyperfocalM()
                        / GuideNumber.FOOT;
            case "w81":
                return DepthOfField.of(it.number("focal="), it.f(" f="), it.number("coc="), 3)
                        .hyperfocalM();
            case "w82":
                double hyperfocal = DepthOfField.of(it.number("focal="), it.f(" f="), it.number("coc="), 3)
                        .hyperfocalM();
                return DepthOfField.of(it.number("focal="), it.f(" f="), it.number("coc="), hyperfocal)
                        .nearM();
            case "w83", "w84":
                return FrameSize.SMALL.handHeldLimit(it.number("focal=") * it.number("crop="));
            case "w85":
                return FrameSize.SMALL.handHeldLimit(it.number("focal="));
            default:
                throw new IllegalArgumentException(it.id + " has neither a sum nor a reason");
        }
    }

    private static LightPath path(double index, double filterStops, double biasStops) {
        return new LightPath(new FilmSpeed(index), filterStops, 0, biasStops, NO_FAILURE);
    }

    /** The f-number that exposes right at the time given: f/1, closed by as much as it is over. */
    private static double opening(LightPath path, Sum it) {
        ExposureTime time = it.given.contains("t=1") ? it.t() : ExposureTime.literal(1);
        ExposureValue light = ExposureValue.of(it.f("f="), time);
        return Aperture.mark(1, path.error(light, Aperture.literal(1), time)).exactFNumber();
    }

    /** (1 + m) times the focal length, in its unit. */
    private static double drawFor(double focal, double magnification) {
        return focal * Stops.factor(Stops.ofMagnification(magnification) / 2);
    }

    private static double magnification(Sum it) {
        return Stops.factor(it.draw() / 2) - 1;
    }

    /** The number in {@code about 1 2/3}, {@code 35.4 (set 35)}, {@code 5 over}; words are taken for w52 and w66. */
    private static double printed(String text) {
        String words = text.replace("about ", "").replace("half", "1/2").replace("four or five", "4");
        double sum = 0;
        for (String word : words.split(" ")) {
            if (!Character.isDigit(word.charAt(0)) && word.charAt(0) != '-') {
                break;
            }
            sum += value(word);
        }
        return sum;
    }

    private static double value(String text) {
        int slash = text.indexOf('/');
        return slash < 0
                ? Double.parseDouble(text)
                : Double.parseDouble(text.substring(0, slash)) / Double.parseDouble(text.substring(slash + 1));
    }

    /** A row and what it gives; a number is read where it follows certain words. */
    record Sum(String id, String given, ReferenceTable.Row row) {
        double number(String after) {
            int at = given.indexOf(after);
            if (at < 0) {
                throw new IllegalArgumentException(id + " gives no " + after);
            }
            int from = at + after.length();
            int end = from;
            while (end < given.length() && "0123456789.".indexOf(given.charAt(end)) >= 0
                    || end + 1 < given.length()
                            && given.charAt(end) == '/'
                            && Character.isDigit(given.charAt(end + 1))) {
                end++;
            }
            return value(given.substring(from, end));
        }

        Aperture f(String after) {
            return third() ? Scale.THIRD.aperture(number(after)).orElseThrow() : Scale.anyAperture(number(after));
        }

        ExposureTime t() {
            return third() ? Scale.THIRD.time(number("t=")).orElseThrow() : Scale.anyTime(number("t="));
        }

        ExposureValue light() {
            return ExposureValue.of(f("f="), t());
        }

        ExposureValue lightAt(ExposureTime time) {
            return ExposureValue.of(Aperture.literal(1), time);
        }

        double draw() {
            return new Extension(Extension.Kind.DRAW, number("extension="))
                    .stops(OptionalDouble.of(number("focal=")))
                    .orElseThrow();
        }

        GuideNumber guide() {
            return given.contains("ft") ? GuideNumber.inFeet(number("gn=")) : new GuideNumber(number("gn="));
        }

        double metres(String after) {
            return number(after) * (given.contains("ft") ? GuideNumber.FOOT : 1);
        }

        private boolean third() {
            return given.contains("third-stop dial");
        }

        @Override
        public String toString() {
            return id + " " + given + ": " + row.text("asked");
        }
    }
}
