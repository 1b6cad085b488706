package takeup.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.exposure.ExposureTime;
import takeup.exposure.Scale;
import takeup.json.Json;

/** The fields of a camera's profile: its picture, backs, dial and lenses. */
final class CameraReader implements FieldsReader<Camera> {
    @Override
    public Camera read(String key, ProfileFields fields) {
        String name = fields.text("name");
        FrameSize frameSize = frameSize(fields);
        Map<FilmSize, Integer> frames = frames(fields);
        List<Camera.Back> backs = fields.has("backs") ? backs(fields) : List.of();
        Optional<Shutter> shutter =
                fields.has("times") ? Optional.of(shutter(fields.inside("times"), fields)) : Optional.empty();
        Optional<ExposureTime> sync = syncTime(fields, shutter);
        List<Lens> lenses = new ArrayList<>();
        if (fields.has("lenses")) {
            for (Json item : fields.list("lenses", 40)) {
                Lens lens = lens(fields.inside(item, "lenses"));
                for (Lens other : lenses) {
                    if (other.key().equals(lens.key())) {
                        throw fields.wrong(item, "lenses", "holds the key " + lens.key() + " twice");
                    }
                }
                lenses.add(lens);
            }
        }
        OptionalDouble circle = fields.has("circleOfConfusionMm")
                ? OptionalDouble.of(fields.number("circleOfConfusionMm", 0.001, 1))
                : OptionalDouble.empty();
        Camera.HandHeldRule handHeld = fields.has("handHeld") ? handHeld(fields) : Camera.HandHeldRule.SCALED;
        fields.done();
        return new Camera(
                key, name, new Camera.Picture(frameSize, circle, handHeld), frames, backs, shutter, sync, lenses);
    }

    private static Camera.HandHeldRule handHeld(ProfileFields fields) {
        return switch (fields.word("handHeld")) {
            case "scaled" -> Camera.HandHeldRule.SCALED;
            case "unscaled" -> Camera.HandHeldRule.UNSCALED;
            default -> throw fields.noneOf("handHeld", "scaled, unscaled");
        };
    }

    /** A size that has a name, or the two sides of a picture in mm. */
    private static FrameSize frameSize(ProfileFields fields) {
        if (!fields.has("frameSizeMm")) {
            Optional<FrameSize> size = FrameSize.named(fields.word("frameSize"));
            if (size.isEmpty()) {
                throw fields.noneOf("frameSize", words());
            }
            return size.get();
        }
        if (fields.has("frameSize")) {
            throw fields.wrong("frameSizeMm", "stands in place of frameSize: one of the two");
        }
        List<Json> sides = fields.list("frameSizeMm", 2);
        if (sides.size() == 2 && sides.get(0).isNumber(1, 1000) && sides.get(1).isNumber(1, 1000)) {
            return FrameSize.ofMm(((Json.Num) sides.get(0)).value(), ((Json.Num) sides.get(1)).value());
        }
        throw fields.wrong("frameSizeMm", "holds the two sides of the picture in mm, such as [100, 125]");
    }

    private static String words() {
        return String.join(
                        ", ", FrameSize.named().stream().map(Object::toString).toList())
                + "; any other is frameSizeMm: [100, 125]";
    }

    /** How many frames each film size gives. */
    private static Map<FilmSize, Integer> frames(ProfileFields fields) {
        ProfileFields inside = fields.inside("frames");
        Map<FilmSize, Integer> frames = new LinkedHashMap<>();
        for (String size : inside.object().fields().keySet()) {
            if (size.equals("source") || size.equals("note")) {
                continue;
            }
            Optional<FilmSize> filmSize = FilmSize.named(size);
            if (filmSize.isEmpty()) {
                throw inside.wrong(
                        inside.object().fields().get(size),
                        "frames",
                        "names film sizes: " + FilmSize.words() + ", not " + size);
            }
            frames.put(filmSize.get(), inside.whole(size, 1, 250));
        }
        if (frames.isEmpty()) {
            throw fields.wrong("frames", "names at least one film size");
        }
        return frames;
    }

    private static List<Camera.Back> backs(ProfileFields fields) {
        List<Camera.Back> backs = new ArrayList<>();
        for (Json item : fields.list("backs", 20)) {
            Camera.Back back = item instanceof Json.Obj
                    ? back(fields.inside(item, "backs"), item, fields)
                    : Camera.Back.plain(backName(item instanceof Json.Text text ? text.value() : "", item, fields));
            for (Camera.Back other : backs) {
                if (other.name().equals(back.name())) {
                    throw fields.wrong(item, "backs", "holds " + back.name() + " twice");
                }
            }
            backs.add(back);
        }
        return backs;
    }

    /** A back whose pictures are of another size than those of the body, and as many as that gives. */
    private static Camera.Back back(ProfileFields back, Json item, ProfileFields fields) {
        String name = backName(back.text("name"), item, fields);
        Optional<FrameSize> size =
                back.has("frameSize") || back.has("frameSizeMm") ? Optional.of(frameSize(back)) : Optional.empty();
        Map<FilmSize, Integer> frames = back.has("frames") ? frames(back) : Map.of();
        back.done();
        return new Camera.Back(name, size, frames);
    }

    private static String backName(String name, Json at, ProfileFields fields) {
        if (!ProfileReader.isKey(name)) {
            throw fields.wrong(at, "backs", "holds names of letters and digits in quotes");
        }
        return name.toLowerCase(Locale.ROOT);
    }

    private static Optional<ExposureTime> syncTime(ProfileFields fields, Optional<Shutter> shutter) {
        if (!fields.has("syncTime")) {
            return Optional.empty();
        }
        double seconds = fields.seconds("syncTime");
        return Optional.of(shutter.isPresent() ? shutter.get().read(seconds) : Scale.anyTime(seconds));
    }

    private static Shutter shutter(ProfileFields fields, ProfileFields around) {
        boolean bulb = fields.flag("bulb");
        try {
            Shutter dial = dial(fields, around, bulb);
            return fields.has("measured") ? dial.measured(measured(fields.inside("measured"))) : dial;
        } catch (IllegalArgumentException e) {
            throw around.wrong(fields.object(), "times:", e.getMessage());
        } finally {
            fields.ask("longest");
            fields.ask("fastest");
            fields.done();
        }
    }

    private static Shutter dial(ProfileFields fields, ProfileFields around, boolean bulb) {
        Optional<Scale> step = fields.step();
        if (fields.has("marks")) {
            List<Double> prints = new ArrayList<>();
            for (Json mark : fields.list("marks", 80)) {
                prints.add(fields.seconds(mark, "marks"));
            }
            return Shutter.of(prints, bulb);
        }
        if (step.isEmpty()) {
            throw around.wrong("times", "has a step (full, half, third) with longest and fastest, or marks");
        }
        return Shutter.between(fields.seconds("longest"), fields.seconds("fastest"), step.get(), bulb);
    }

    /** What a repairer's tester read at some marks: {@code "1/1000": "1/700"}; seconds as a number too. */
    private static Map<Double, Double> measured(ProfileFields fields) {
        Map<Double, Double> seconds = new LinkedHashMap<>();
        fields.object().fields().forEach((print, value) -> {
            if (!print.equals("source") && !print.equals("note")) {
                seconds.put(
                        fields.seconds(Json.of(print), print),
                        value.isNumber(1e-6, 3600) ? ((Json.Num) value).value() : fields.seconds(value, print));
            }
        });
        return seconds;
    }

    static Lens lens(ProfileFields fields) {
        String key = fields.text("key").toLowerCase(Locale.ROOT);
        if (!ProfileReader.isKey(key)) {
            throw fields.wrong("key", "is made of letters, digits, - and _");
        }
        String name = fields.text("name");
        double shortest;
        double longest;
        if (fields.has("focalMm") && fields.object().field("focalMm").get() instanceof Json.Arr zoom) {
            if (zoom.items().size() != 2
                    || !(zoom.items().get(0) instanceof Json.Num a)
                    || !(zoom.items().get(1) instanceof Json.Num b)) {
                throw fields.wrong(zoom, "focalMm", "is a number of mm, or for a zoom two in brackets");
            }
            shortest = a.value();
            longest = b.value();
        } else {
            shortest = fields.number("focalMm", 1, 5000);
            longest = shortest;
        }
        Optional<Scale> step = fields.step();
        try {
            Ring ring;
            if (fields.has("marks")) {
                List<Double> prints = new ArrayList<>();
                for (Json mark : fields.list("marks", 60)) {
                    if (!(mark instanceof Json.Num number) || !(number.value() >= 0.5 && number.value() <= 1000)) {
                        throw fields.wrong(mark, "marks", "holds f-numbers from 0.5 to 1000");
                    }
                    prints.add(number.value());
                }
                ring = Ring.of(prints);
            } else {
                double widest = fields.number("widest", 0.5, 1000);
                double narrowest = fields.number("narrowest", 0.5, 1000);
                if (step.isEmpty()) {
                    throw fields.wrong(fields.object(), "step", "is one of full, half, third");
                }
                ring = Ring.between(widest, narrowest, step.get());
            }
            fields.ask("widest");
            fields.ask("narrowest");
            Optional<Shutter> leaf =
                    fields.has("times") ? Optional.of(shutter(fields.inside("times"), fields)) : Optional.empty();
            // A leaf shutter takes flash at all its times.
            Optional<ExposureTime> sync = leaf.isPresent() && !fields.has("syncTime")
                    ? Optional.of(leaf.get().fastest())
                    : syncTime(fields, leaf);
            fields.done();
            return new Lens(key, name, shortest, longest, ring, leaf, sync);
        } catch (IllegalArgumentException e) {
            throw fields.wrong(fields.object(), "lens " + key + ":", e.getMessage());
        }
    }
}
