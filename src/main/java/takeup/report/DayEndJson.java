package takeup.report;

import java.util.Optional;
import takeup.json.Json;
import takeup.roll.Roll;

/** The end of a day as other programs read it. */
public final class DayEndJson {
    private DayEndJson() {}

    public static Json.Obj of(DayEnd end) {
        return Json.object()
                .and("date", end.date())
                .and("rolls", end.rolls().stream().map(DayEndJson::of).toList())
                .and(
                        "missing",
                        end.rolls().stream()
                                .filter(it -> it.where() == Whereabouts.MISSING)
                                .map(DayEnd.RollEntry::id)
                                .toList())
                .and("ask", DayEndText.questions(end));
    }

    private static Json.Obj of(DayEnd.RollEntry entry) {
        Optional<Roll> roll = entry.roll();
        return Json.object()
                .and("roll", entry.id())
                .and("is", entry.where().code())
                .and("camera", roll.map(it -> it.camera().key()))
                .and("back", roll.flatMap(Roll::back))
                .and("stock", roll.map(it -> it.film().stock().key()))
                .and("framesUsed", roll.map(Roll::framesUsed))
                .and("framesNominal", roll.map(it -> it.film().framesNominal()))
                .and("words", DayEndText.words(entry))
                .and("label", DayEndText.label(entry));
    }
}
