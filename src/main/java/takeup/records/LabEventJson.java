package takeup.records;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import takeup.json.Json;
import takeup.roll.Costs;
import takeup.roll.DevelopedIn;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;

/** How a roll was developed and what it cost, to JSON and back. */
final class LabEventJson {
    private static final int HOT = 100;
    private static final int MUCH = 10_000_000;
    private static final int CENTS = 100;

    private LabEventJson() {}

    static Json.Obj of(NoteEvent.Developed event) {
        DevelopedIn how = event.how();
        Json.Obj json = Json.object().and("event", "developed").and("developer", how.developer());
        how.seconds().ifPresent(it -> json.and("seconds", it));
        how.celsius().ifPresent(it -> json.and("celsius", it));
        how.agitation().ifPresent(it -> json.and("agitation", it));
        how.by().ifPresent(it -> json.and("by", it));
        how.on().ifPresent(it -> json.and("on", it.toString()));
        return json;
    }

    static RollEvent developed(Fields fields) {
        OptionalInt seconds = fields.maybeCount("seconds");
        return new NoteEvent.Developed(new DevelopedIn(
                fields.text("developer"),
                seconds,
                fields.maybeNumber("celsius", 0, HOT),
                fields.maybeText("agitation"),
                fields.maybeText("by"),
                fields.maybeText("on")
                        .map(it -> FastIsoParser.date(it).orElseThrow(() -> new Fields.Unreadable("on is no date")))));
    }

    static Json.Obj of(NoteEvent.CostNoted event) {
        return Json.object()
                .and("event", "cost")
                .and("of", event.kind())
                .and("amount", event.amount().doubleValue());
    }

    /** What a later version pays for is kept as it stands. */
    static RollEvent cost(Fields fields, Supplier<String> text) {
        Optional<Costs.Kind> kind = Costs.Kind.named(fields.text("of"));
        double amount = fields.number("amount", 0, MUCH);
        return kind.isPresent()
                ? new NoteEvent.CostNoted(kind.get(), BigDecimal.valueOf(Math.round(amount * CENTS), 2))
                : new RollEvent.Unknown("cost", text.get());
    }
}
