package takeup.order;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** An order to a file of format {@code takeup-order}, version 1, and back. Not known is null, never 0. */
final class JsonOrder {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final DateTimeFormatter TO_THE_SECOND =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssXXX", Locale.ROOT);

    private final JsonGenerator out;

    private JsonOrder(JsonGenerator out) {
        this.out = out;
    }

    static String text(Order order, String programVersion) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            DefaultIndenter indent = new DefaultIndenter("  ", "\n");
            generator.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
            new JsonOrder(generator).order(order, programVersion);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return visible(text.append("\n").toString());
    }

    /**
     * What JSON allows as it is, and a terminal might obey or an eye not see, as escapes: it stands in strings alone.
     */
    private static String visible(String json) {
        StringBuilder seen = new StringBuilder(json.length());
        for (int at = 0; at < json.length(); at++) {
            char c = json.charAt(at);
            boolean isPair = Character.isHighSurrogate(c)
                            && at + 1 < json.length()
                            && Character.isLowSurrogate(json.charAt(at + 1))
                    || Character.isLowSurrogate(c) && at > 0 && Character.isHighSurrogate(json.charAt(at - 1));
            int type = Character.getType(c);
            if (c >= 0x7f
                    && !isPair
                    && (type == Character.SURROGATE
                            || type == Character.CONTROL
                            || type == Character.FORMAT
                            || type == Character.LINE_SEPARATOR
                            || type == Character.PARAGRAPH_SEPARATOR)) {
                String hex = Integer.toHexString(c);
                seen.append("\\u").append("0000".substring(hex.length())).append(hex);
            } else {
                seen.append(c);
            }
        }
        return seen.toString();
    }

    private void order(Order order, String programVersion) throws IOException {
        out.writeStartObject();
        text("format", "takeup-order");
        out.writeNumberField("version", 1);
        out.writeNumberField("revision", order.revision());
        out.writeObjectFieldStart("madeBy");
        text("program", "takeup");
        text("version", programVersion);
        out.writeEndObject();
        text("order", order.order());
        text("madeAt", order.madeAt().format(TO_THE_SECOND));
        out.writeBooleanField("withdrawn", order.withdrawn());
        lab(order.lab());
        maybe("reference", order.reference());
        maybe("client", order.client());
        out.writeBooleanField("flies", order.flies());
        parcel(order.parcel());
        out.writeArrayFieldStart("counts");
        for (Map.Entry<String, Integer> count : order.counts().entrySet()) {
            out.writeStartObject();
            text("words", count.getKey());
            out.writeNumberField("rolls", count.getValue());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeObjectFieldStart("wishes");
        for (Wish wish : Wish.values()) {
            maybe(wish.field(), order.wishes().of(wish));
        }
        out.writeEndObject();
        out.writeArrayFieldStart("rolls");
        for (OrderedRoll roll : order.rolls()) {
            roll(roll);
        }
        out.writeEndArray();
        out.writeArrayFieldStart("checks");
        for (OrderCheck check : order.checks()) {
            out.writeStartObject();
            text("code", check.code());
            out.writeBooleanField("blocking", check.isBlocking());
            texts("rolls", check.rolls());
            text("text", check.text());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("progress");
        for (Order.Progress step : order.progress()) {
            out.writeStartObject();
            text("stage", step.stage().word());
            text("on", step.on().toString());
            texts("rolls", step.rolls());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void lab(Order.Recipient lab) throws IOException {
        out.writeObjectFieldStart("lab");
        text("key", lab.key());
        text("name", lab.name());
        texts("asks", lab.asks());
        text("paper", lab.paper());
        out.writeNumberField("sendWithinDays", lab.sendWithinDays());
        days("scansKeptDays", lab.scansKeptDays());
        days("negativesKeptDays", lab.negativesKeptDays());
        out.writeEndObject();
    }

    private void parcel(Optional<Order.Parcel> parcel) throws IOException {
        if (parcel.isEmpty()) {
            out.writeNullField("parcel");
            return;
        }
        out.writeObjectFieldStart("parcel");
        out.writeNumberField("number", parcel.get().number());
        out.writeNumberField("of", parcel.get().of());
        texts("others", parcel.get().others());
        out.writeEndObject();
    }

    private void roll(OrderedRoll roll) throws IOException {
        out.writeStartObject();
        text("roll", roll.roll());
        out.writeNumberField("revision", roll.revision());
        maybe("labNumber", roll.labNumber());
        text("filmSize", roll.filmSize());
        text("frameSize", roll.frameSize());
        maybe("special", roll.special());
        text("stock", roll.stock());
        text("kind", roll.kind());
        number("boxSpeed", roll.development().boxSpeed());
        number("exposureIndex", roll.development().index());
        text("process", roll.development().process());
        text("labProcess", roll.labProcess());
        number("pushStops", roll.development().pushStops());
        text("words", roll.words());
        out.writeNumberField("framesExpected", roll.framesExpected());
        text("body", roll.body());
        text("date", roll.date());
        texts("condition", roll.condition());
        maybe("note", roll.note());
        out.writeEndObject();
    }

    private void text(String name, String value) throws IOException {
        out.writeStringField(name, value);
    }

    private void maybe(String name, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            out.writeStringField(name, value.get());
        } else {
            out.writeNullField(name);
        }
    }

    private void texts(String name, List<String> values) throws IOException {
        out.writeArrayFieldStart(name);
        for (String value : values) {
            out.writeString(value);
        }
        out.writeEndArray();
    }

    private void days(String name, OptionalInt value) throws IOException {
        if (value.isPresent()) {
            out.writeNumberField(name, value.getAsInt());
        } else {
            out.writeNullField(name);
        }
    }

    private void number(String name, double value) throws IOException {
        out.writeFieldName(name);
        out.writeNumber(BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
    }

    static Order read(String file, String text) throws Unreadable {
        JsonFields json = JsonFields.of(file, text);
        if (!json.has("format") || !json.text("format").equals("takeup-order")) {
            throw json.wrong("format", "is not takeup-order, so this is no order");
        }
        if (json.whole("version", 1, 1_000_000) > 1) {
            throw json.wrong("version", "is newer than 1, the one that is known here: use a newer takeup");
        }
        String number = json.text("order");
        if (!Order.parse(number).equals(Optional.of(number))) {
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
                json.whole("revision", 1, Integer.MAX_VALUE),
                json.time("madeAt"),
                json.flag("withdrawn"),
                to(json.object("lab")),
                json.maybeText("reference"),
                json.maybeText("client"),
                json.flag("flies"),
                parcel(json),
                JsonLab.wishes(json.object("wishes")),
                rolls,
                checks,
                progress);
    }

    private static LocalDate date(JsonFields json, String name) throws Unreadable {
        try {
            return LocalDate.parse(json.text(name));
        } catch (DateTimeException e) {
            throw json.wrong(name, "is no date, such as 2026-09-12");
        }
    }

    private static Order.Recipient to(JsonFields lab) throws Unreadable {
        return new Order.Recipient(
                lab.text("key"),
                lab.text("name"),
                lab.texts("asks"),
                lab.oneOf("paper", List.of("A4", "Letter")),
                lab.whole("sendWithinDays", 1, 3650),
                days(lab, "scansKeptDays"),
                days(lab, "negativesKeptDays"));
    }

    private static OptionalInt days(JsonFields json, String name) throws Unreadable {
        return json.has(name) ? OptionalInt.of(json.whole(name, 1, 3650)) : OptionalInt.empty();
    }

    private static Optional<Order.Parcel> parcel(JsonFields json) throws Unreadable {
        Optional<JsonFields> parcel = json.maybeObject("parcel");
        return parcel.isEmpty()
                ? Optional.empty()
                : Optional.of(new Order.Parcel(
                        parcel.get().whole("number", 1, 100),
                        parcel.get().whole("of", 1, 100),
                        parcel.get().texts("others")));
    }

    private static OrderedRoll roll(JsonFields json) throws Unreadable {
        return new OrderedRoll(
                JsonRoll.number(json, "roll"),
                json.whole("revision", 1, Integer.MAX_VALUE),
                json.maybeText("labNumber"),
                json.oneOf("filmSize", JsonRoll.FILM_SIZES),
                json.oneOf("frameSize", JsonRoll.FRAME_SIZES),
                json.maybeText("special"),
                json.text("stock"),
                json.oneOf("kind", JsonRoll.KINDS),
                new LabDevelopment(
                        json.text("process"),
                        json.number("pushStops", -5, 5),
                        json.number("exposureIndex", 0.1, 1e6),
                        json.number("boxSpeed", 0.1, 1e6)),
                json.text("labProcess"),
                json.whole("framesExpected", 0, 10_000),
                json.text("body"),
                json.text("date"),
                json.texts("condition"),
                json.maybeText("note"));
    }
}
