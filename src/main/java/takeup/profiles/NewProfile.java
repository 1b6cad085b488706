package takeup.profiles;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Locale;
import java.util.Optional;
import takeup.console.CommandFailed;
import takeup.files.ProfileFiles;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.ProfileReader;
import takeup.options.GlobalOptions;
import takeup.options.OwnProfile;

/** Writes a starting file for a stock or a camera of the photographer's own: its notes say what each field may be. */
final class NewProfile {
    private static final String STOCK = """
            {"note": "Change what is in quotes and the numbers; takeup check says whether the file is right.",
             "name": "My stock %1$s",
             "kind": "colour-negative",
             "process": "C-41",
             "boxSpeed": 400,
             "usualEI": 400,
             "filmSizes": ["135", "120"],
             "latitude": {"note": "stops of less and of more light that it bears, 0 to 10; an opinion: say \
            whose in source",
              "underStops": 1, "overStops": 2, "source": "to be filled in"},
             "reciprocity": {"note": "none (upToSeconds), power (exponent, fromSeconds), table (points: \
            [metered s, corrected s], first [t, t]), stops (points: [s, stops to open], first [t, 0])",
              "model": "none", "upToSeconds": 1, "source": "the maker's sheet: to be filled in"},
             "source": "kind is one of colour-negative, bw-negative, colour-reversal, bw-reversal; process as \
            the lab calls it; usualEI is how you rate it"}
            """;
    private static final String CAMERA = """
            {"note": "Change what is in quotes and the numbers; takeup check says whether the file is right.",
             "name": "My camera %1$s",
             "frameSize": "24x36",
             "frames": {"note": "how many frames each film size gives by this camera's own counter", "135": 36},
             "times": {"note": "step is full, half or third; or marks instead, as engraved: [\\"1s\\", \
            \\"1/2\\", \\"1/5\\"]",
              "step": "full", "longest": "1s", "fastest": "1/1000", "bulb": true},
             "syncTime": "1/60",
             "lenses": [
              {"note": "a zoom has two focal lengths: [28, 90]; an irregular ring has marks: [3.5, 4, 5.6] \
            instead of the step and its ends",
               "key": "50", "name": "50mm f/1.8", "focalMm": 50, "widest": 1.8, "narrowest": 16, "step": "full"}],
             "source": "frameSize is one of 18x24, 24x36, 24x65, 6x4.5, 6x6, 6x7, 6x8, 6x9, 6x12, 6x17; \
            src/docs/settings.md names what else there is: frameSizeMm, backs, measured, a lens's own times"}
            """;

    private final GlobalOptions global;
    private final Kit.Sort sort;

    NewProfile(GlobalOptions global, Kit.Sort sort) {
        this.global = global;
        this.sort = sort;
    }

    /** Writes the file; an existing one is never touched. It may start as a copy of another one. */
    int write(String typed, Optional<String> like) {
        boolean isStock = sort == Kit.Sort.STOCKS;
        String key = typed.toLowerCase(Locale.ROOT);
        if (!ProfileReader.isKey(key) || isStock && FilmSize.named(key).isPresent()) {
            throw new CommandFailed(2, typed + " is no key: letters, digits, - and _, and no film size");
        }
        OwnProfile own = new OwnProfile(global, sort, key);
        if (Files.exists(own.path())) {
            throw new CommandFailed(1, own.path() + " is there already and is not touched");
        }
        String text = like.map(this::copy).orElseGet(() -> (isStock ? STOCK : CAMERA).replace("%1$s", key));
        try {
            own.write(text);
        } catch (IOException e) {
            throw GlobalOptions.unusable(global.folder(), e);
        }
        global.console()
                .line(own.path()
                        + (isStock
                                ? " is a stock to start from: change it, then type load "
                                : " is a camera to start from: change it, then type cam ")
                        + key);
        return 0;
    }

    private String copy(String like) {
        return ProfileFiles.of(global.folder())
                .file(sort, like.toLowerCase(Locale.ROOT))
                .filter(it -> it.problem().isEmpty())
                .flatMap(it -> factsOf(it.text(), like))
                .orElseThrow(() -> new CommandFailed(2, global.kit().whyNot(sort, like)));
    }

    /** The fields of a profile, one a line, without the notes and sources: those speak of the other one. */
    private static Optional<String> factsOf(String text, String like) {
        try {
            if (!(JsonText.read(text) instanceof Json.Obj profile)) {
                return Optional.empty();
            }
            StringBuilder lines = new StringBuilder("{\"note\": \"The figures are those of "
                    + like.toLowerCase(Locale.ROOT) + ": change them, and write where yours come from into source.\"");
            ((Json.Obj) withoutRemarks(profile))
                    .fields()
                    .forEach((name, value) -> lines.append(",\n ")
                            .append(JsonText.line(Json.of(name)))
                            .append(": ")
                            .append(JsonText.line(value)));
            return Optional.of(
                    lines.append(",\n \"source\": \"to be filled in\"}\n").toString());
        } catch (JsonText.NotJson e) {
            return Optional.empty();
        }
    }

    private static Json withoutRemarks(Json json) {
        if (json instanceof Json.Arr list) {
            return Json.of(list.items().stream().map(NewProfile::withoutRemarks).toList());
        }
        if (!(json instanceof Json.Obj object)) {
            return json;
        }
        Json.Obj facts = Json.object();
        object.fields().forEach((name, value) -> {
            if (!name.equals("note") && !name.equals("source")) {
                facts.and(name, withoutRemarks(value));
            }
        });
        return facts;
    }
}
