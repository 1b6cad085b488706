package takeup.handoff;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.exposure.FilmSpeed;
import takeup.json.Json;
import takeup.json.JsonText;
import takeup.kit.Camera;
import takeup.kit.Stock;
import takeup.kit.Warning;
import takeup.roll.Assignment;
import takeup.roll.CounterCheck;
import takeup.roll.DevelopedIn;
import takeup.roll.Exposure;
import takeup.roll.ExposureResult;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.FrameWarnings;
import takeup.roll.Place;
import takeup.roll.Release;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.text.IsoTime;

/**
 * A roll as JSON for other programs: format {@code takeup-roll}, version 1, described by the schema {@code roll}. Not
 * known is null, never 0.
 */
public final class RollJson {
    private static final int VERSION = 1;

    private RollJson() {}

    /** The roll in a state of any kind, as text on several lines that ends in a line feed. */
    public static String text(Roll roll, MadeBy madeBy) {
        return JsonText.pretty(of(roll, madeBy));
    }

    /** What is private, and there only where it was asked for. */
    public enum Private {
        CLIENT,
        RELEASES
    }

    /** The same with what is private, for those who asked for it. */
    public static String text(Roll roll, MadeBy madeBy, Set<Private> asked) {
        return JsonText.pretty(of(roll, madeBy, asked));
    }

    /** The roll in a state of any kind, as plain data, without what is private. */
    public static Json.Obj of(Roll roll, MadeBy madeBy) {
        return of(roll, madeBy, Set.of());
    }

    private static Json.Obj of(Roll roll, MadeBy madeBy, Set<Private> asked) {
        Optional<String> client =
                roll.assignment().flatMap(Assignment::client).filter(it -> asked.contains(Private.CLIENT));
        Film film = roll.film();
        Json.Obj json = Json.object()
                .and("format", "takeup-roll")
                .and("version", VERSION)
                .and("revision", roll.revision())
                .and("madeBy", Json.object().and("program", "takeup").and("version", madeBy.version()))
                .and("folder", madeBy.folder())
                .and("roll", roll.id())
                .and("state", roll.state())
                .and(
                        "shoot",
                        SceneFields.into(
                                Json.object()
                                        .and("name", roll.assignment().map(Assignment::name))
                                        .and(
                                                "date",
                                                roll.assignment()
                                                        .map(Assignment::date)
                                                        .orElse(roll.loadedAt().toLocalDate()))
                                        .and("client", client),
                                roll.assignment().map(Assignment::place).orElse(Place.UNKNOWN)))
                .and("camera", camera(roll))
                .and("filmSize", film.size())
                .and("stock", stock(film.stock()))
                .and("exposureIndex", speed(film.index()))
                .and(
                        "development",
                        Json.object()
                                .and("process", film.development().process())
                                .and(
                                        "pushStops",
                                        RoundedJson.stops(film.development().pushStops()))
                                .and("words", film.developmentWords()))
                .and("framesNominal", film.framesNominal())
                .and("framesUsed", roll.framesUsed())
                .and("framesExposed", roll.framesExposed())
                .and("counterChecks", counterChecks(roll));
        later(roll, json);
        if (asked.contains(Private.RELEASES)) {
            json.and("releases", releases(roll));
        }
        return json.and("loadedAt", IsoTime.of(roll.loadedAt()))
                .and("finishedAt", roll.finishedAt().map(IsoTime::of))
                .and(
                        "condition",
                        roll.conditions().stream()
                                .map(it -> Json.object().and("kind", it.kind()).and("words", it.words()))
                                .toList())
                .and("note", roll.note())
                .and("frames", frames(roll));
    }

    /**
     * Each look at the counter, and since when a difference can have come about: since the look before, or the loading.
     */
    private static List<Json> counterChecks(Roll roll) {
        List<Json> all = new ArrayList<>();
        OffsetDateTime since = roll.loadedAt();
        for (CounterCheck check : roll.counterChecks()) {
            all.add(Json.object()
                    .and("at", IsoTime.of(check.at()))
                    .and("expected", check.expected())
                    .and("shown", check.shown())
                    .and("difference", check.shown() - check.expected())
                    .and("since", IsoTime.of(since)));
            since = check.at();
        }
        return all;
    }

    private static List<Json> releases(Roll roll) {
        List<Json> all = new ArrayList<>();
        for (Release release : roll.notes().releases()) {
            all.add(Json.object()
                    .and("name", release.name())
                    .and("on", release.on().toString())
                    .and("words", release.words()));
        }
        return all;
    }

    /** What few rolls have; where there is nothing to say the fields are left out. */
    private static void later(Roll roll, Json.Obj json) {
        roll.film().label().name().ifPresent(it -> json.and("name", it));
        roll.film().label().batch().ifPresent(it -> json.and("batch", it));
        if (!roll.loadChecks().isEmpty()) {
            json.and(
                    "loadChecks",
                    roll.loadChecks().stream()
                            .map(it -> Json.object()
                                    .and("at", IsoTime.of(it.at()))
                                    .and("frame", it.frame())
                                    .and("check", it.what())
                                    .and("answer", it.answer()))
                            .toList());
        }
        roll.developed().ifPresent(it -> json.and("developed", developed(it)));
        if (!roll.rewindings().isEmpty()) {
            json.and(
                    "rewinds",
                    roll.rewindings().stream()
                            .map(it -> Json.object()
                                    .and("at", IsoTime.of(it.at()))
                                    .and("after", it.after())
                                    .and("loadedAt", it.again().map(IsoTime::of))
                                    .and("spare", it.spare()))
                            .toList());
        }
    }

    private static Json developed(DevelopedIn how) {
        return Json.object()
                .and("developer", how.developer())
                .and(
                        "seconds",
                        RoundedJson.number(
                                how.seconds().stream().asDoubleStream().findFirst()))
                .and("celsius", RoundedJson.number(how.celsius()))
                .and("agitation", how.agitation())
                .and("by", how.by())
                .and("on", how.on());
    }

    private static Json camera(Roll roll) {
        Camera camera = roll.camera();
        return Json.object()
                .and("key", camera.key())
                .and("name", camera.name())
                .and("frameSize", camera.frameSize())
                .and("back", roll.back());
    }

    private static Json stock(Stock stock) {
        return Json.object()
                .and("key", stock.key())
                .and("name", stock.name())
                .and("kind", stock.kind())
                .and("boxSpeed", speed(stock.boxSpeed()));
    }

    private static Json speed(FilmSpeed speed) {
        return RoundedJson.exact(speed.arithmetic());
    }

    private static List<Json> frames(Roll roll) {
        List<List<Warning>> warnings = FrameWarnings.of(roll);
        List<Json> frames = new ArrayList<>();
        for (Frame frame : roll.frames()) {
            int sequence = frames.size() + 1;
            frames.add(frame(roll, frame, sequence, warnings.get(sequence - 1)));
        }
        return frames;
    }

    private static Json frame(Roll roll, Frame frame, int sequence, List<Warning> warnings) {
        Json.Obj json = Json.object()
                .and("frame", frame.number())
                .and("sequence", sequence)
                .and("id", frame.id())
                .and("was", frame.was())
                .and("kind", frame.kind());
        ExposureFields.into(json, shown(frame), ExposureResult.of(roll, frame));
        SceneFields.into(json, roll, frame);
        return json.and("warnings", warnings.stream().map(Warning::json).toList())
                .and("note", frame.note())
                .and(
                        "furtherExposures",
                        frame.further().stream()
                                .map(it -> further(roll.film(), it))
                                .toList());
    }

    /** The first exposure as others see it: a blank frame had none, whatever was set. */
    static Exposure shown(Frame frame) {
        Exposure first = frame.exposure();
        return frame.kind() == Frame.Kind.BLANK
                ? new Exposure(first.at(), Setting.NONE, Optional.empty(), Optional.empty())
                : first;
    }

    private static Json further(Film film, Exposure exposure) {
        Json.Obj json = Json.object();
        ExposureFields.into(json, exposure, ExposureResult.of(film, exposure));
        return json;
    }
}
