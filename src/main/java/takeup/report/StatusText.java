package takeup.report;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.advice.EntryWarnings;
import takeup.advice.FilmBudget;
import takeup.advice.LoadChecks;
import takeup.advice.NextMoment;
import takeup.command.RatingCommand;
import takeup.day.BulbTimer;
import takeup.day.CameraPlace;
import takeup.day.CameraSetup;
import takeup.day.ShootPlan;
import takeup.exposure.Aperture;
import takeup.exposure.DepthOfField;
import takeup.exposure.ExposureTime;
import takeup.exposure.Extension;
import takeup.exposure.Light;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;
import takeup.history.ClockShiftNotes;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.ExposureWarnings;
import takeup.kit.Filter;
import takeup.kit.Kit;
import takeup.kit.Warning;
import takeup.roll.ExposureResult;
import takeup.roll.FrameWarnings;
import takeup.roll.Roll;
import takeup.roll.Setting;
import takeup.text.Plain;

/** The state in words, in JSON, and the warnings that stand while it lasts. */
public final class StatusText {
    private StatusText() {}

    /** The state as a sentence or two, without a glyph: the way in for a screen reader. */
    public static String words(ShootState s, OffsetDateTime now) {
        Optional<Camera> camera = s.cameraInHand();
        if (camera.isEmpty()) {
            return s.placeInHand().isPresent()
                    ? "The file of the camera in hand has a mistake: takeup check says which."
                    : "No camera in hand yet: type cam and one of "
                            + String.join(", ", s.kit().keys(Kit.Sort.CAMERAS)) + ".";
        }
        StringBuilder words = new StringBuilder(camera.get().name());
        s.placeInHand()
                .flatMap(it -> it.back())
                .ifPresent(it -> words.append(", back ").append(it));
        Optional<Roll> roll = s.rollInHand();
        if (roll.isEmpty()) {
            words.append(": no film.");
        } else {
            words.append(": ")
                    .append(roll.get().id())
                    .append(", ")
                    .append(roll.get().film().stock().name())
                    .append(" at EI ")
                    .append(roll.get().film().index())
                    .append(", ")
                    .append(roll.get().film().developmentWords())
                    .append(". Next frame ")
                    .append(roll.get().next())
                    .append(", ")
                    .append(leftWords(roll.get()))
                    .append('.');
        }
        String setting = setting(s.inHand());
        words.append(setting.isEmpty() ? " Nothing set." : " Set: " + setting + ".");
        words.append(' ').append(s.day().light().map(it -> light(it, now) + ".").orElse("No light reading today."));
        OptionalDouble error = errorInHand(s);
        if (error.isPresent()) {
            words.append(" For this light ")
                    .append(Stops.error(error.getAsDouble()))
                    .append('.');
        }
        reciprocity(s).ifPresent(it -> words.append(" Reciprocity: ").append(it).append('.'));
        timer(s).ifPresent(it -> words.append(" The bulb timer shows ")
                .append(seconds(it.elapsed(now)))
                .append('.'));
        s.day()
                .meter()
                .ifPresent(it -> words.append(" Meter in hand: ").append(it).append('.'));
        List<String> others = new ArrayList<>();
        for (CameraPlace place : s.placesInUse()) {
            if (!s.placeInHand().equals(Optional.of(place))) {
                others.add(place + ", "
                        + s.rollIn(place)
                                .map(it -> it.id() + ", " + it.film().stock().name() + " at EI "
                                        + it.film().index() + ", " + leftWords(it))
                                .orElse("no film"));
            }
        }
        words.append(others.isEmpty() ? "" : " Also in use: " + String.join("; ", others) + ".");
        s.day()
                .paper()
                .ifPresent(
                        it -> words.append(" The paper of ").append(it.roll()).append(" is being read; done ends it."));
        LoadChecks.of(s)
                .ifPresent(it ->
                        words.append(" Load routine, ").append(it.question()).append(" yes or no."));
        RatingCommand.card(s)
                .ifPresent(it -> words.append(" Rating test, ").append(it).append(": rating logs it."));
        NextMoment.of(s, now)
                .ifPresent(it -> words.append(" Plan: ").append(it.line()).append('.'));
        List<Warning.Code> standing = standing(s, now);
        if (!standing.isEmpty()) {
            words.append(" Warnings that stand: ")
                    .append(String.join(
                            ", ", standing.stream().map(Object::toString).toList()))
                    .append('.');
        }
        return words.toString();
    }

    /** Frames left in plain words: {@code 23 left} or {@code 2 past the end}. */
    public static String leftWords(Roll roll) {
        int left = roll.framesLeft();
        return left >= 0 ? left + " left" : -left + " past the end";
    }

    /** A light reading in words: {@code EV 11.3 at ISO 100, incident, 12 min old}. */
    public static String light(Light light, OffsetDateTime now) {
        return light.ev100() + " at ISO 100, " + light.method().word()
                + (light.zone().isPresent() && light.zone().getAsInt() != 5
                        ? " on zone " + light.zone().getAsInt()
                        : "")
                + (light.spanStops().isPresent()
                        ? ", span " + Stops.words(light.spanStops().getAsDouble())
                        : "") + ", " + age(light.at(), now);
    }

    /**
     * How a light was read, where the way of reading is a habit that shifts exposures: {@code read low}, {@code zone
     * 3}, {@code camera meter}. Empty for an incident reading as it is.
     */
    public static Optional<String> habit(Light light) {
        String kind = switch (light.method()) {
            case CAMERA -> "camera meter";
            case SKY -> "daylight rule";
            case REFLECTED -> "reflected";
            case SPOT -> "spot on zone " + light.zone().orElse(5);
            case INCIDENT, LUX -> "";
        };
        List<String> typed = List.of(light.typed().toLowerCase(Locale.ROOT).split(" "));
        String which = light.spanStops().isEmpty()
                ? ""
                : typed.contains("low") ? "read low" : typed.contains("high") ? "read high" : "";
        return kind.isEmpty() && which.isEmpty()
                ? Optional.empty()
                : Optional.of(which + (kind.isEmpty() || which.isEmpty() ? "" : ", ") + kind);
    }

    /**
     * How old something is: {@code just now}, {@code 12 min old}, {@code 2 h 5 min old}; of unknown age where the clock
     * went back since.
     */
    public static String age(OffsetDateTime then, OffsetDateTime now) {
        if (FrameWarnings.isAhead(then, now)) {
            return "of unknown age";
        }
        long minutes = Duration.between(then, now).toMinutes();
        if (minutes < 1) {
            return "just now";
        }
        return minutes < 60 ? minutes + " min old" : minutes / 60 + " h " + minutes % 60 + " min old";
    }

    /** What is in hand, in words: {@code f/4 1/125, 80mm f/2.8, filter yellow, bias +1/3}. */
    public static String setting(CameraSetup inHand) {
        Setting setting = inHand.setting();
        List<String> parts = new ArrayList<>();
        String pair = setting.aperture().map(Object::toString).orElse("")
                + (setting.aperture().isPresent() && setting.time().isPresent() ? " " : "")
                + setting.time().map(Object::toString).orElse("");
        if (!pair.isEmpty()) {
            parts.add(pair);
        }
        setting.lens().ifPresent(it -> parts.add(it.name()));
        parts.addAll(
                words(inHand).stream().map(it -> it.toLowerCase(Locale.ROOT)).toList());
        return String.join(", ", parts);
    }

    /** The words for all that is not neutral: FILTER yellow, BIAS +1/3, HOLD f/2.8. */
    public static List<String> words(CameraSetup inHand) {
        Setting setting = inHand.setting();
        List<String> words = new ArrayList<>();
        if (!setting.filters().isEmpty()) {
            words.add("FILTER "
                    + String.join(
                            " and ",
                            setting.filters().stream().map(Filter::name).toList()));
        }
        if (setting.extension().kind() != Extension.Kind.NONE) {
            words.add(setting.extension().toString().toUpperCase(Locale.ROOT).replace("MM", "mm"));
        }
        if (setting.biasStops() != 0) {
            words.add("BIAS " + bias(setting.biasStops()));
        }
        inHand.hold().ifPresent(it -> words.add("HOLD " + it));
        if (setting.flash()) {
            words.add("FLASH");
        }
        if (setting.tripod()) {
            words.add("TRIPOD");
        }
        setting.zoomMm().ifPresent(it -> words.add(Plain.number(it) + " mm"));
        setting.distanceM().ifPresent(it -> words.add(Plain.digits(it, 3) + " m"));
        return words;
    }

    /**
     * A bias as it is typed, with its unit where it could be read as an order to a lab: {@code +1/3}, {@code -1 stop}.
     */
    public static String bias(double stops) {
        double size = Math.abs(stops);
        double thirds = size * 3;
        boolean third = Math.abs(thirds - Math.rint(thirds)) < 1e-6 && Math.rint(thirds) % 3 != 0;
        String number =
                third ? (size > 1 ? (int) size + " " : "") + (int) Math.rint(thirds) % 3 + "/3" : Plain.digits(size, 3);
        return (stops < 0 ? "-" : "+") + number + (third && size < 1 ? "" : size > 1 ? " stops" : " stop");
    }

    /** The warnings that stand now, most urgent first; silenced ones left out. */
    public static List<Warning.Code> standing(ShootState s, OffsetDateTime now) {
        List<Warning.Code> codes = new ArrayList<>();
        Optional<Roll> roll = s.rollInHand();
        Optional<Light> light = s.day().light();
        boolean automatic = s.cameraInHand().map(Camera::isAutomatic).orElse(true);
        if (s.placeInHand().isPresent() && roll.isEmpty()) {
            codes.add(Warning.Code.NO_FILM);
        }
        roll.ifPresent(it -> {
            int nominal = it.film().framesNominal();
            if (it.framesLeft() < 0) {
                codes.add(Warning.Code.PAST_END);
            } else if (it.framesLeft() <= Math.max(2, s.kit().fewLeft(nominal))) {
                codes.add(Warning.Code.FRAMES_LEFT);
            }
            if (pushMismatch(it).isPresent()) {
                codes.add(Warning.Code.PUSH_MISMATCH);
            }
        });
        if (light.isPresent()) {
            if (EntryWarnings.meterSpeed(s).isPresent()) {
                codes.add(Warning.Code.METER_SPEED);
            }
            if (ExposureWarnings.span(
                            light.get().spanStops(), roll.map(it -> it.film().stock()))
                    .isPresent()) {
                codes.add(Warning.Code.SPAN);
            }
            if (FrameWarnings.isStale(light, now)) {
                codes.add(Warning.Code.STALE_LIGHT);
            }
            if (light.get().method() == Light.Method.CAMERA) {
                codes.add(Warning.Code.CAMERA_METER);
            }
            if (ExposureWarnings.sun(light.get().ev100()).isPresent()) {
                codes.add(Warning.Code.SUN);
            }
        } else if (roll.isPresent() && !automatic) {
            codes.add(Warning.Code.NO_LIGHT);
        }
        if (ClockShiftNotes.stands(s)) {
            codes.add(Warning.Code.CLOCK);
        }
        ShootPlan job = s.day().job();
        if (roll.map(it -> job.bag().loaded().get(it.id()))
                .filter(it -> it.isExpired(now.toLocalDate()))
                .isPresent()) {
            codes.add(Warning.Code.EXPIRED);
        }
        if (!job.plan().moments().isEmpty()) {
            NextMoment.of(s, now).flatMap(NextMoment::warning).ifPresent(it -> codes.add(it.code()));
            if (FilmBudget.of(s, now).isShort()) {
                codes.add(Warning.Code.BAG_LOW);
            }
        }
        codes.removeAll(s.day().quiet());
        return codes;
    }

    public static Optional<Warning> pushMismatch(Roll roll) {
        return ExposureWarnings.pushMismatch(
                roll.film().stock().boxSpeed().arithmetic(),
                roll.film().index().arithmetic(),
                roll.film().development().pushStops());
    }

    public static Warning noFilm(ShootState s) {
        return new Warning(
                Warning.Code.NO_FILM,
                "load a stock into " + s.placeInHand().map(Object::toString).orElse("the camera"));
    }

    /** All that is in hand, as other programs read it. */
    public static Json.Obj json(ShootState s) {
        CameraSetup inHand = s.inHand();
        Setting setting = inHand.setting();
        Optional<Roll> roll = s.rollInHand();
        return Json.object()
                .and("camera", s.placeInHand().map(it -> it.camera()))
                .and("back", s.placeInHand().flatMap(it -> it.back()))
                .and("roll", roll.map(Roll::id))
                .and("stock", roll.map(it -> it.film().stock().key()))
                .and("exposureIndex", roll.map(it -> it.film().index().arithmetic()))
                .and("frame", roll.map(Roll::next))
                .and("framesLeft", roll.map(Roll::framesLeft))
                .and("lens", setting.lens().map(it -> it.key()))
                .and("aperture", setting.aperture().map(Object::toString))
                .and("time", setting.time().map(Object::toString))
                .and("focalLengthMm", setting.focalMm())
                .and("distanceM", AdviceRequest.exact(setting.distanceM()))
                .and(
                        "filters",
                        setting.filters().stream()
                                .map(it -> Json.object()
                                        .and("name", it.name())
                                        .and("stops", AdviceRequest.exact(it.stops())))
                                .toList())
                .and("filterStops", AdviceRequest.exact(setting.filterStops()))
                .and(
                        "extension",
                        setting.extension().kind() == Extension.Kind.NONE
                                ? Optional.empty()
                                : Optional.of(setting.extension().toString()))
                .and("extensionStops", AdviceRequest.exact(setting.extensionStops()))
                .and("biasStops", AdviceRequest.exact(setting.biasStops()))
                .and("hold", inHand.hold().map(Object::toString))
                .and("flash", setting.flash())
                .and("tripod", setting.tripod())
                .and("meter", s.day().meter())
                .and("meterTime", s.day().preset().map(Object::toString))
                .and(
                        "ev100",
                        s.day().light().map(it -> AdviceRequest.exact(it.ev100().stops())));
    }

    /** The error of the setting in hand for the light of the day, in stops; empty where it cannot be known. */
    public static OptionalDouble errorInHand(ShootState s) {
        Setting setting = s.inHand().setting();
        if (s.rollInHand().isPresent()
                && setting.flash()
                && setting.aperture().isPresent()
                && s.day().flash().isPresent()) {
            return OptionalDouble.of(ExposureResult.path(s.rollInHand().get().film(), setting)
                    .flashError(s.day().flash().get(), setting.aperture().get()));
        }
        if (s.rollInHand().isEmpty()
                || s.day().light().isEmpty()
                || setting.aperture().isEmpty()
                || setting.time().isEmpty()
                || setting.flash()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(ExposureResult.path(s.rollInHand().get().film(), setting)
                .error(
                        s.day().light().get().ev100(),
                        setting.aperture().get(),
                        setting.time().get()));
    }

    /**
     * What the light that is there anyway does with the setting in hand while a flash reading stands beside it, in
     * stops; - is under.
     */
    public static OptionalDouble ambient(ShootState s) {
        Setting setting = s.inHand().setting();
        if (s.rollInHand().isEmpty()
                || s.day().light().isEmpty()
                || s.day().flash().isEmpty()
                || setting.aperture().isEmpty()
                || setting.time().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(ExposureResult.path(s.rollInHand().get().film(), setting)
                .error(
                        s.day().light().get().ev100(),
                        setting.aperture().get(),
                        setting.time().get()));
    }

    /**
     * What reciprocity makes of the aperture in hand, where it matters: {@code metered 1s, needs 2.7s, or 1s and open 1
     * stop}; past the table it says so. Empty where nothing is lost, and with flash.
     */
    public static Optional<String> reciprocity(ShootState s) {
        Setting setting = s.inHand().setting();
        if (s.rollInHand().isEmpty()
                || s.day().light().isEmpty()
                || setting.aperture().isEmpty()
                || setting.flash()) {
            return Optional.empty();
        }
        Reciprocity film = s.rollInHand().get().film().stock().reciprocity();
        double metered = ExposureResult.path(s.rollInHand().get().film(), setting)
                .metered(s.day().light().get().ev100(), setting.aperture().get());
        OptionalDouble corrected = film.corrected(metered);
        String words = "metered " + ExposureTime.words(metered);
        if (corrected.isEmpty()) {
            return Optional.of(words + ": no time is long enough, open the lens");
        }
        boolean beyond = film.beyond(metered);
        if (!beyond && !Stops.above(Stops.of(corrected.getAsDouble() / metered), 0)) {
            return Optional.empty();
        }
        OptionalDouble open = film.openStops(metered);
        return Optional.of(words + ", needs " + ExposureTime.words(corrected.getAsDouble())
                + (open.isPresent()
                        ? ", or " + ExposureTime.words(metered) + " and open " + Stops.words(open.getAsDouble())
                        : "")
                + (beyond ? ", PAST THE TABLE" : ""));
    }

    /** From where to where it is sharp: {@code 2.83 m to 3.19 m}. */
    public static String depth(DepthOfField depth) {
        return Plain.digits(depth.nearM(), 3) + " m to "
                + (depth.farM().isPresent() ? Plain.digits(depth.farM().getAsDouble(), 3) + " m" : "infinity");
    }

    /** The bulb timer of the camera in hand, if it runs. */
    public static Optional<BulbTimer> timer(ShootState s) {
        return s.placeInHand().map(it -> s.day().timers().get(it.camera()));
    }

    /** A frame as it is typed on the camera in hand: {@code 4 125}, or {@code 4 100} where the dial has no 125. */
    public static String example(ShootState s) {
        double aperture = s.inHand().setting().lens().stream()
                .flatMap(it -> it.ring().marks().stream())
                .min(Comparator.comparingDouble(it -> Math.abs(it.stops() - 4)))
                .map(Aperture::fNumber)
                .orElse(4.0);
        String time = s.cameraInHand().flatMap(Camera::shutter).stream()
                .flatMap(it -> it.marks().stream())
                .min(Comparator.comparingDouble(it -> Math.abs(it.stops() + 7)))
                .map(ExposureTime::dial)
                .orElse("125");
        return Plain.number(aperture) + " " + time;
    }

    /** Whole seconds as people say them: {@code 0s}, {@code 27s}, {@code 4m10s}. */
    public static String seconds(double seconds) {
        double whole = Math.floor(seconds + 1e-9);
        return whole < 1 ? "0s" : ExposureTime.literal(whole).toString();
    }

    /** What an advice is asked for now; empty without a film. */
    public static Optional<AdviceRequest> asking(ShootState s) {
        return s.rollInHand()
                .map(it -> new AdviceRequest(
                        s.cameraInHand(),
                        s.inHand().setting(),
                        s.inHand().hold(),
                        Optional.of(it.film().stock()),
                        it.film().index(),
                        it.film().development().pushStops(),
                        s.meterInHand()));
    }
}
