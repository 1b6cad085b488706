package takeup.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import takeup.json.JsonFields;

/**
 * A file of format {@code takeup-roll}, version 1, to what an order takes from it. Fields that it does not know are
 * passed over.
 */
final class JsonRoll {
    static final List<String> FILM_SIZES = List.of("135", "120", "220", "127", "sheet", "instant");
    private static final Pattern FRAME_SIZE = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,3})?x[0-9]{1,4}(\\.[0-9]{1,3})?");
    static final List<String> KINDS = List.of("colour-negative", "bw-negative", "colour-reversal", "bw-reversal");
    private static final List<String> STATES = List.of("open", "rewound", "finished", "withdrawn");
    private static final List<String> FRAME_KINDS = List.of("exposed", "blank", "unlogged", "lost", "slate");
    private static final List<String> CONDITIONS = List.of("torn", "opened", "stuck", "partial", "other");

    private JsonRoll() {}

    static ExposedRoll read(String file, String text) {
        JsonFields json = JsonFields.ofFile(file, text);
        if (!json.has("format") || !json.text("format").equals("takeup-roll")) {
            throw json.wrong("format", "is not takeup-roll, so this is no roll");
        }
        if (json.whole("version", 1, 1_000_000) > 1) {
            throw json.wrong("version", "is newer than 1, the one that is known here: use a newer takeup");
        }
        json.mustHave(
                "madeBy",
                "shoot",
                "camera",
                "stock",
                "framesUsed",
                "framesNominal",
                "counterChecks",
                "loadedAt",
                "finishedAt",
                "condition",
                "note",
                "frames");
        JsonFields madeBy = json.object("madeBy");
        madeBy.mustHave("program", "version");
        JsonFields shoot = json.object("shoot");
        shoot.mustHave("name", "date", "client");
        JsonFields camera = json.object("camera");
        camera.mustHave("key", "back");
        JsonFields stock = json.object("stock");
        stock.mustHave("key");
        JsonFields development = json.object("development");
        development.mustHave("words");
        json.whole("framesUsed", 0, 10_000);
        json.whole("framesNominal", 1, 250);
        json.objects("counterChecks");
        return new ExposedRoll(
                number(json, "roll"),
                json.whole("revision", 1, Integer.MAX_VALUE),
                new ExposedRoll.Status(
                        json.oneOf("state", STATES), json.time("loadedAt"), json.maybeTime("finishedAt")),
                new ExposedRoll.Shoot(shoot.text("date"), shoot.maybeText("client")),
                new ExposedRoll.Body(camera.text("name"), camera.maybeText("back")),
                new RollFilm(
                        json.oneOf("filmSize", FILM_SIZES),
                        frameSize(camera),
                        stock.text("name"),
                        stock.oneOf("kind", KINDS),
                        new LabDevelopment(
                                development.text("process"),
                                development.number("pushStops", -5, 5),
                                json.number("exposureIndex", 0.1, 1e6),
                                stock.number("boxSpeed", 0.1, 1e6)),
                        label(json)),
                new ExposedRoll.Exposures(json.whole("framesExposed", 0, 10_000), frames(json)),
                new LabNotes(conditions(json), json.maybeText("note")));
    }

    /** What stands on the roll beside its number; both are left out where there is nothing. */
    static RollFilm.Label label(JsonFields json) {
        return new RollFilm.Label(json.maybeText("name"), json.maybeText("batch"));
    }

    /** The size of a picture: one that has a name, such as 6x7, or two sides in mm. */
    static String frameSize(JsonFields json) {
        String size = json.text("frameSize");
        if (!FRAME_SIZE.matcher(size).matches()) {
            throw json.wrong("frameSize", "is no size of a picture, such as 24x36, 6x7 or 100x125");
        }
        return size;
    }

    /** A roll's number: one to three capital letters, four to eight digits. */
    static String number(JsonFields json, String name) {
        String number = json.text(name);
        if (!isNumber(number)) {
            throw json.wrong(name, "is no roll number, such as R0007");
        }
        return number;
    }

    private static boolean isNumber(String text) {
        int letters = 0;
        while (letters < text.length() && text.charAt(letters) >= 'A' && text.charAt(letters) <= 'Z') {
            letters++;
        }
        int digits = text.length() - letters;
        return letters >= 1
                && letters <= 3
                && digits >= 4
                && digits <= 8
                && text.substring(letters).chars().allMatch(it -> it >= '0' && it <= '9');
    }

    private static List<String> conditions(JsonFields json) {
        List<String> conditions = new ArrayList<>();
        for (JsonFields condition : json.objects("condition")) {
            condition.mustHave("words");
            String kind = condition.oneOf("kind", CONDITIONS);
            Optional<String> words = condition.maybeText("words").filter(it -> !it.isBlank());
            String front = kind.equals("other") ? "" : kind + ": ";
            conditions.add(words.map(it -> front + it).orElse(kind));
        }
        return conditions;
    }

    private static List<ExposedFrame> frames(JsonFields json) {
        List<ExposedFrame> frames = new ArrayList<>();
        for (JsonFields frame : json.objects("frames")) {
            frame.mustHave(
                    "sequence",
                    "was",
                    "at",
                    "atKnown",
                    "aperture",
                    "fNumber",
                    "exactFNumber",
                    "time",
                    "seconds",
                    "exactSeconds",
                    "lens",
                    "focalLengthMm",
                    "distanceM",
                    "light",
                    "flashLight",
                    "filters",
                    "filterStops",
                    "extensionStops",
                    "biasStops",
                    "meteredSeconds",
                    "correctedSeconds",
                    "errorStops",
                    "overBoxStops",
                    "flash",
                    "tripod",
                    "warnings",
                    "note",
                    "furtherExposures");
            frames.add(new ExposedFrame(
                    frame.whole("frame", -1000, 10_000),
                    frame.oneOf("kind", FRAME_KINDS),
                    frame.maybeTime("at"),
                    frame.maybeText("aperture"),
                    frame.maybeText("time"),
                    frame.maybeText("lens"),
                    frame.maybeNumber("errorStops", -1000, 1000),
                    frame.maybeText("note")));
        }
        return frames;
    }
}
