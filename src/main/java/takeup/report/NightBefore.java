package takeup.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.advice.FilmBudget;
import takeup.advice.NextMoment;
import takeup.day.CameraPlace;
import takeup.day.Coordinates;
import takeup.day.FilmLot;
import takeup.day.KeyMoment;
import takeup.day.ShootInfo;
import takeup.day.Sun;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.roll.Roll;
import takeup.text.ClockText;
import takeup.text.English;
import takeup.text.Plain;

/** The night-before list: film in the bag, what is in the cameras, whether it is enough, and what to check. */
public final class NightBefore {
    private NightBefore() {}

    /** A part of the list. */
    public record Section(String title, List<Item> items) {
        public Section {
            items = List.copyOf(items);
        }
    }

    /** A line of it, and whether it asks for something to be done. */
    public record Item(String text, boolean caution) {}

    /** The film in the bag, the cameras, and the check list, without the client. */
    public static List<Section> of(ShootState s, OffsetDateTime now) {
        return of(s, now, false);
    }

    /** The same; the words about the client only for those who asked for them. */
    public static List<Section> of(ShootState s, OffsetDateTime now, boolean withClient) {
        List<Section> all = new ArrayList<>();
        s.day()
                .job()
                .occasion()
                .ifPresent(it -> all.add(new Section(
                        "Shoot",
                        List.of(new Item(
                                it.name() + ", " + it.date()
                                        + it.position().map(at -> ", at " + at).orElse("")
                                        + it.client()
                                                .filter(client -> withClient)
                                                .map(client -> ", for " + client)
                                                .orElse(""),
                                false)))));
        all.add(new Section("Film in the bag", film(s, now)));
        all.add(new Section("In the cameras", cameras(s, now)));
        FilmBudget enough = FilmBudget.of(s, now);
        FilmBudgetText.words(enough)
                .ifPresent(it -> all.add(new Section(
                        "Enough for the plan?",
                        List.of(new Item(English.capitalised(it), enough.isShort() || !enough.isBagKept())))));
        all.add(new Section("To check", checks(s)));
        return all;
    }

    private static List<Item> film(ShootState s, OffsetDateTime now) {
        if (!s.day().job().bag().kept()) {
            return List.of(new Item("no bag is kept: bag add 10 cn400 120 expires 2027-03 price 6.20", false));
        }
        List<Item> items = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : s.day().job().bag().filled()) {
            boolean expired = lot.getKey().isExpired(now.toLocalDate());
            items.add(new Item(
                    lot.getValue() + " × " + lot.getKey() + (expired ? ": EXPIRED, test a roll first" : ""), expired));
        }
        return items.isEmpty() ? List.of(new Item("none left", true)) : items;
    }

    private static List<Item> cameras(ShootState s, OffsetDateTime now) {
        List<Item> items = new ArrayList<>();
        for (CameraPlace place : s.placesInUse()) {
            Optional<Roll> roll = s.rollIn(place);
            boolean isOld = roll.map(it -> it.loadedAt().toLocalDate().isBefore(now.toLocalDate()))
                    .orElse(false);
            items.add(new Item(
                    place + ": "
                            + roll.map(it -> it.id() + ", " + it.film().stock().key() + " EI "
                                            + it.film().index() + ", next frame " + it.next() + ", "
                                            + RollText.left(it) + ", since "
                                            + (isOld
                                                    ? it.loadedAt()
                                                            .toLocalDate()
                                                            .toString()
                                                    : ClockText.clock(it.loadedAt())))
                                    .orElse("no film"),
                    roll.isEmpty()));
        }
        for (Roll roll : s.rolls().values()) {
            if (roll.state() == Roll.State.REWOUND) {
                items.add(new Item(
                        roll.id() + ", " + roll.film().stock().key() + " EI "
                                + roll.film().index() + ", rewound after frame " + roll.lastPassed() + ", "
                                + RollText.left(roll) + ": load "
                                + roll.id().typed()
                                + " goes on with it",
                        false));
            }
        }
        return items.isEmpty() ? List.of(new Item("no camera in use yet: cam and its key", false)) : items;
    }

    private static List<Item> checks(ShootState s) {
        List<Item> items = new ArrayList<>();
        Set<String> powered = new LinkedHashSet<>();
        cameras(s).forEach(it -> powered.add(it.name()));
        s.day().meter().flatMap(it -> s.kit().meter(it)).ifPresent(it -> powered.add(it.name()));
        items.add(new Item(
                "[ ] batteries, and spare ones: "
                        + (powered.isEmpty() ? "each camera and the meter" : String.join(", ", powered)),
                false));
        Set<String> speeds = new LinkedHashSet<>();
        for (Roll roll : s.rolls().values()) {
            if (roll.state() == Roll.State.OPEN) {
                speeds.add(roll.film().index() + " for " + roll.id() + " in " + roll.place());
            }
        }
        items.add(new Item(
                "[ ] the meter's speed: " + (speeds.isEmpty() ? "that of the first roll" : String.join(", ", speeds)),
                speeds.size() > 1));
        items.add(new Item("[ ] each back that has no film: loaded, or known to be empty", false));
        items.add(new Item("[ ] a pen for the rolls, a pocket for those that are exposed", false));
        return items;
    }

    /** The cameras in use, and those that the plan names. */
    private static Set<Camera> cameras(ShootState s) {
        Set<Camera> all = new LinkedHashSet<>();
        s.placesInUse().forEach(it -> s.camera(it.camera()).ifPresent(all::add));
        s.day()
                .job()
                .plan()
                .moments()
                .forEach(it -> it.camera().flatMap(s::camera).ifPresent(all::add));
        return all;
    }

    /** The bag in one sentence, for a pipe. */
    public static String bagSentence(ShootState s, OffsetDateTime now) {
        List<String> parts = new ArrayList<>();
        for (Section section : of(s, now)) {
            if (section.title().startsWith("Film") || section.title().startsWith("Enough")) {
                parts.add((section.title().startsWith("Film") ? "In the bag: " : "")
                        + String.join(
                                "; ", section.items().stream().map(Item::text).toList()) + ".");
            }
        }
        return String.join(" ", parts);
    }

    /** The bag, the cameras and the sum as other programs read them. */
    public static Json.Obj bag(ShootState s, OffsetDateTime now) {
        List<Json> lots = new ArrayList<>();
        for (Map.Entry<FilmLot, Integer> lot : s.day().job().bag().filled()) {
            lots.add(Json.object()
                    .and("stock", lot.getKey().stock())
                    .and("filmSize", lot.getKey().size())
                    .and("expires", lot.getKey().expires().map(Object::toString))
                    .and("expired", lot.getKey().isExpired(now.toLocalDate()))
                    .and("price", lot.getKey().price().map(it -> it.doubleValue()))
                    .and("rolls", lot.getValue()));
        }
        List<Json> cameras = new ArrayList<>();
        for (CameraPlace place : s.placesInUse()) {
            Optional<Roll> roll = s.rollIn(place);
            cameras.add(Json.object()
                    .and("camera", place.camera())
                    .and("back", place.back())
                    .and("roll", roll.map(Roll::id))
                    .and("stock", roll.map(it -> it.film().stock().key()))
                    .and("exposureIndex", roll.map(it -> it.film().index().arithmetic()))
                    .and("frame", roll.map(Roll::next))
                    .and("framesLeft", roll.map(Roll::framesLeft))
                    .and("loadedOn", roll.map(it -> it.loadedAt().toLocalDate().toString())));
        }
        FilmBudget enough = FilmBudget.of(s, now);
        return Json.object()
                .and("kept", enough.isBagKept())
                .and("film", lots)
                .and("cameras", cameras)
                .and(
                        "enough",
                        Json.object()
                                .and("framesWanted", enough.framesWanted())
                                .and("framesInCameras", enough.framesInCameras())
                                .and("rollsInBag", enough.rollsInBag())
                                .and("framesInBag", enough.framesInBag())
                                .and("rollsForNoCamera", enough.rollsForNoCamera())
                                .and("framesOver", enough.framesOver()));
    }

    /** The plan as other programs read it: the moments, the next one with what is advised, the sun's times. */
    public static Json.Obj plan(ShootState s, OffsetDateTime now) {
        List<Json> moments = new ArrayList<>();
        for (KeyMoment moment : s.day().job().plan().moments()) {
            moments.add(PlanJson.moment(moment).and("minutes", moment.minutesFrom(now.toLocalDateTime())));
        }
        Optional<NextMoment> next = NextMoment.of(s, now);
        List<Json> sun = new ArrayList<>();
        sun(s, now)
                .forEach(it -> sun.add(Json.object()
                        .and("what", it.event())
                        .and(
                                "at",
                                it.time().toLocalDate() + "T"
                                        + ClockText.clock(it.time())
                                        + it.time().getOffset())));
        return Json.object()
                .and(
                        "shoot",
                        s.day()
                                .job()
                                .occasion()
                                .map(it -> Json.object()
                                        .and("name", it.name())
                                        .and("date", it.date())
                                        .and("latitude", it.position().map(Coordinates::latitude))
                                        .and("longitude", it.position().map(Coordinates::longitude))))
                .and("moments", moments)
                .and(
                        "next",
                        next.map(it -> Json.object()
                                .and("number", it.moment().number())
                                .and("minutes", it.minutes())
                                .and("framesLeft", it.left() < 0 ? Optional.empty() : Optional.of(it.left()))
                                .and(
                                        "advice",
                                        it.advice()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-'))
                                .and("text", MomentText.line(it))))
                .and(
                        "pace",
                        NextMoment.pace(s, now).isPresent()
                                ? Optional.of(
                                        Json.digits(NextMoment.pace(s, now).getAsDouble(), 3))
                                : Optional.empty())
                .and("sun", sun);
    }

    /** The whole list as other programs read it; the words about the client only for those who asked for them. */
    public static Json.Obj json(ShootState s, OffsetDateTime now, boolean withClient) {
        Json.Obj json = Json.object();
        plan(s, now).fields().forEach(json::and);
        if (withClient) {
            json.and("client", s.day().job().occasion().flatMap(ShootInfo::client));
        }
        return json.and("bag", bag(s, now))
                .and(
                        "check",
                        checks(s).stream().map(it -> it.text().substring(4)).toList());
    }

    /** The sun's times on the day of the shoot, where its place is known. */
    static List<Sun.At> sun(ShootState s, OffsetDateTime now) {
        Optional<ShootInfo> occasion = s.day().job().occasion();
        LocalDate date = occasion.map(ShootInfo::date)
                .filter(it -> it.isAfter(now.toLocalDate()))
                .orElse(now.toLocalDate());
        return s.day()
                .job()
                .position()
                .map(it -> Sun.of(it, date, now.getOffset()))
                .orElse(List.of());
    }

    /** How the pace of today is said: {@code your pace today: 5.5 frames a minute in a burst}. */
    static Optional<String> paceWords(ShootState s, OffsetDateTime now) {
        return NextMoment.pace(s, now).stream()
                .mapToObj(it -> "your pace today: " + Plain.decimals(it, 1) + " frames a minute in a burst")
                .findFirst();
    }
}
