package takeup.order;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import takeup.json.DecimalFields;
import takeup.json.Json;
import takeup.json.JsonFields;
import takeup.json.JsonText;

/** An order to a file of format {@code takeup-order}, version 1, and back. Not known is null, never 0. */
final class JsonOrder {
    private static final DateTimeFormatter TO_THE_SECOND =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssXXX", Locale.ROOT);

    private JsonOrder() {}

    static String text(Order order, String programVersion) {
        List<Json> counts = new ArrayList<>();
        order.counts()
                .forEach((words, rolls) ->
                        counts.add(Json.object().and("words", words).and("rolls", rolls)));
        Json.Obj wishes = Json.object();
        for (Wish wish : Wish.values()) {
            wishes.and(wish.field(), order.instructions().wishes().of(wish));
        }
        return JsonText.pretty(DecimalFields.in(Json.object()
                .and("format", "takeup-order")
                .and("version", 1)
                .and("revision", order.revision())
                .and("madeBy", Json.object().and("program", "takeup").and("version", programVersion))
                .and("order", order.order())
                .and("madeAt", order.madeAt().format(TO_THE_SECOND))
                .and("withdrawn", order.withdrawn())
                .and("lab", of(order.lab()))
                .and("reference", order.reference())
                .and("client", order.instructions().client())
                .and("sender", order.instructions().sender().map(Sender::object))
                .and("flies", order.instructions().flies())
                .and("parcel", order.parcel().map(JsonOrder::of))
                .and("counts", counts)
                .and("wishes", wishes)
                .and("rolls", order.rolls().stream().map(JsonOrder::of).toList())
                .and("checks", order.checks().stream().map(JsonOrder::of).toList())
                .and("progress", order.progress().stream().map(JsonOrder::of).toList())));
    }

    private static Json of(OrderCheck check) {
        return Json.object()
                .and("code", check.code())
                .and("blocking", check.isBlocking())
                .and("rolls", check.rolls())
                .and("text", check.text());
    }

    private static Json of(Order.Progress step) {
        return Json.object()
                .and("stage", step.stage().word())
                .and("on", step.on())
                .and("rolls", step.rolls());
    }

    private static Json of(Order.Recipient lab) {
        return Json.object()
                .and("key", lab.key())
                .and("name", lab.name())
                .and("asks", lab.asks())
                .and("paper", lab.paper())
                .and("sendWithinDays", lab.deadlines().sendWithin())
                .and("scansKeptDays", lab.deadlines().scansKept())
                .and("negativesKeptDays", lab.deadlines().negativesKept());
    }

    private static Json of(Order.Parcel parcel) {
        return Json.object()
                .and("number", parcel.number())
                .and("of", parcel.of())
                .and("others", parcel.others());
    }

    private static Json of(OrderedRoll roll) {
        Json.Obj json = Json.object().and("roll", roll.roll());
        roll.film().label().name().ifPresent(it -> json.and("name", it));
        roll.film().label().batch().ifPresent(it -> json.and("batch", it));
        return json.and("revision", roll.revision())
                .and("labNumber", roll.labNumber())
                .and("filmSize", roll.film().filmSize())
                .and("frameSize", roll.film().frameSize())
                .and("special", roll.film().special())
                .and("stock", roll.film().stock())
                .and("kind", roll.film().kind())
                .and("boxSpeed", roll.development().boxSpeed())
                .and("exposureIndex", roll.development().index())
                .and("process", roll.development().process())
                .and("labProcess", roll.atLab().process())
                .and("pushStops", roll.development().pushStops())
                .and("words", roll.words())
                .and("framesExpected", roll.framesExpected())
                .and("body", roll.body())
                .and("date", roll.date())
                .and("condition", roll.notes().condition())
                .and("note", roll.notes().note());
    }

    static Order read(String file, String text) {
        JsonFields json = JsonFields.ofFile(file, text);
        if (!json.has("format") || !json.text("format").equals("takeup-order")) {
            throw json.wrong("format", "is not takeup-order, so this is no order");
        }
        if (json.whole("version", 1, 1_000_000) > 1) {
            throw json.wrong("version", "is newer than 1, the one that is known here: use a newer takeup");
        }
        String number = json.text("order");
        if (!OrderNumbers.parse(number).equals(Optional.of(number))) {
            throw json.wrong("order", "is no order number, such as ORD-001");
        }
        json.mustHave("reference", "client", "parcel");
        List<OrderedRoll> rolls = new ArrayList<>();
        for (JsonFields roll : json.objects("rolls")) {
            rolls.add(roll(roll));
        }
        List<OrderCheck> checks = new ArrayList<>();
        for (JsonFields check : json.objects("checks")) {
            checks.add(new OrderCheck(
                    check.text("code"), check.flag("blocking"), check.texts("rolls"), check.text("text")));
        }
        List<Order.Progress> progress = new ArrayList<>();
        for (JsonFields step : json.objects("progress")) {
            progress.add(new Order.Progress(
                    Stage.named(step.oneOf("stage", Stage.all())).orElseThrow(),
                    date(step, "on"),
                    step.texts("rolls")));
        }
        return new Order(
                number,
                new Order.Version(
                        json.whole("revision", 1, Integer.MAX_VALUE), json.time("madeAt"), json.flag("withdrawn")),
                to(json.object("lab")),
                new OrderInstructions(
                        json.maybeText("reference"),
                        json.maybeText("client"),
                        json.flag("flies"),
                        JsonLab.wishes(json.object("wishes")),
                        json.has("sender") ? json.maybeObject("sender").map(Sender::of) : Optional.empty()),
                parcel(json),
                rolls,
                checks,
                progress);
    }

    private static LocalDate date(JsonFields json, String name) {
        try {
            return LocalDate.parse(json.text(name));
        } catch (DateTimeException e) {
            throw json.wrong(name, "is no date, such as 2026-09-12");
        }
    }

    private static Order.Recipient to(JsonFields lab) {
        return new Order.Recipient(
                lab.text("key"),
                lab.text("name"),
                lab.texts("asks"),
                lab.oneOf("paper", List.of("A4", "Letter")),
                new Deadlines(
                        lab.whole("sendWithinDays", 1, 3650),
                        JsonLab.days(lab, "scansKeptDays"),
                        JsonLab.days(lab, "negativesKeptDays")));
    }

    private static Optional<Order.Parcel> parcel(JsonFields json) {
        Optional<JsonFields> parcel = json.maybeObject("parcel");
        return parcel.isEmpty()
                ? Optional.empty()
                : Optional.of(new Order.Parcel(
                        parcel.get().whole("number", 1, 100),
                        parcel.get().whole("of", 1, 100),
                        parcel.get().texts("others")));
    }

    private static OrderedRoll roll(JsonFields json) {
        return new OrderedRoll(
                JsonRoll.number(json, "roll"),
                json.whole("revision", 1, Integer.MAX_VALUE),
                new OrderedRoll.AtLab(json.maybeText("labNumber"), json.text("labProcess")),
                new RollFilm(
                        json.oneOf("filmSize", JsonRoll.FILM_SIZES),
                        JsonRoll.frameSize(json),
                        json.text("stock"),
                        json.oneOf("kind", JsonRoll.KINDS),
                        new LabDevelopment(
                                json.text("process"),
                                json.number("pushStops", -5, 5),
                                json.number("exposureIndex", 0.1, 1e6),
                                json.number("boxSpeed", 0.1, 1e6)),
                        JsonRoll.label(json)),
                json.whole("framesExpected", 0, 10_000),
                json.text("body"),
                json.text("date"),
                new LabNotes(json.texts("condition"), json.maybeText("note")));
    }
}
