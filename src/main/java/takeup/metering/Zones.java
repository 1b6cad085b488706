package takeup.metering;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import takeup.advice.AdviceRequest;
import takeup.exposure.ExposureValue;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.json.Json;
import takeup.kit.ExposureWarnings;
import takeup.kit.Stock;
import takeup.kit.Suggestion;
import takeup.prompt.Reading;
import takeup.prompt.Sky;
import takeup.report.AdviceJson;
import takeup.text.Plain;

/** Several readings as zones: how far apart, what the shadows ask for, and what the highlights get then. */
final class Zones {
    private Zones() {}

    /** The zones in words, with a blank in front; "" for a single reading, or one that was placed on a zone. */
    static String words(Reading reading, Light light, AdviceRequest request) {
        if (reading.lowestEv().isEmpty()
                || request.stock().isEmpty()
                || light.zone().isPresent() && light.zone().getAsInt() != 5) {
            return "";
        }
        Light shadows = new Light(
                new ExposureValue(reading.lowestEv().getAsDouble()),
                light.method(),
                light.typed(),
                OptionalDouble.empty(),
                light.zone(),
                light.index(),
                light.at());
        Optional<Suggestion> row = SettingChoice.withinAStop(request.advice(shadows), request.hold());
        return row.isPresent() && row.get().overBoxStops().isPresent()
                ? words(shadows, row.get(), light.spanStops().orElse(0), request)
                : "";
    }

    /**
     * What is to be said of a reading before its settings: where each of several readings falls that have their zones
     * and whether that fits, or what the table says of a sky. Sentences, each with a blank in front.
     */
    static String remarks(Reading reading, Optional<Stock> stock) {
        Optional<Reading.Placed> placed = reading.decisive(kind(stock));
        if (placed.isEmpty()) {
            Optional<Sky> sky = reading.basis().sky();
            Optional<String> range = sky.isPresent() ? sky.get().range() : Optional.empty();
            return range.isPresent() ? " " + range.get() + "." : "";
        }
        StringBuilder remarks = new StringBuilder();
        for (Reading.Placed other : reading.basis().placed()) {
            if (other != placed.get()) {
                remarks.append(' ').append(falls(other, placed.get())).append('.');
            }
        }
        return remarks.toString();
    }

    /** What sort of picture is on the film; one that is not known counts as negative. */
    private static Stock.Kind kind(Optional<Stock> stock) {
        return stock.isPresent() ? stock.get().kind() : Stock.Kind.COLOUR_NEGATIVE;
    }

    private static String falls(Reading.Placed other, Reading.Placed placed) {
        double on = other.fallsOn(placed);
        double past = other.zone() > placed.zone() ? on - other.zone() : other.zone() - on;
        double span = Math.abs(other.ev100().stops() - placed.ev100().stops());
        String where = "With " + placed.ev100() + " on zone " + placed.zone() + ", " + other.ev100() + " falls on zone "
                + Plain.number(Math.rint(on * 10) / 10) + ": the span of " + Stops.words(span);
        return Stops.above(past, 0)
                ? where + " does not fit, zone " + other.zone() + " is " + Stops.words(past)
                        + (other.zone() > placed.zone() ? " below" : " above")
                : where + " fits";
    }

    /** Where each of several readings falls that have their zones, for other programs; empty for any other reading. */
    static List<Json> json(Reading reading, Optional<Stock> stock) {
        return reading.decisive(kind(stock))
                .map(placed -> reading.basis().placed().stream()
                        .map(it -> (Json) Json.object()
                                .and("ev100", AdviceJson.exact(it.ev100().stops()))
                                .and("zone", it.zone())
                                .and("fallsOn", AdviceJson.exact(it.fallsOn(placed))))
                        .toList())
                .orElse(List.of());
    }

    private static String words(Light shadows, Suggestion row, double span, AdviceRequest request) {
        double tolerated = ExposureWarnings.highlightStops(request.stock().orElseThrow());
        double highlights = row.overBoxStops().getAsDouble() + span + request.pushStops();
        double past = highlights - tolerated;
        return " Shadows at " + shadows.ev100() + " ask for " + SettingChoice.pair(row) + "; the highlights, "
                + Stops.words(span) + " up, then get " + Stops.words(highlights)
                + (highlights < 0 ? " under" : " over") + " box speed, and this film tolerates "
                + Stops.words(tolerated)
                + (Stops.above(past, 0) ? ": " + Stops.words(past) + " too much" : "") + ".";
    }
}
