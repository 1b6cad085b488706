package takeup.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.advice.PackingList;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.NightBeforeJson;
import takeup.text.ClockText;
import takeup.text.English;

/** Film from the fridge into the bag, and what was not used back: {@code bag pack}, {@code bag unpack}. */
final class BagPacking {
    private BagPacking() {}

    /** What the plan wants; or so many rolls of one film. */
    static Outcome pack(CommandContext context, List<String> words, Optional<String> batch) {
        if (!context.state().day().fridge().kept()) {
            throw new CommandRejected("no fridge is kept: fridge add 10 cn400 120 expires 2027-03, then bag pack");
        }
        if (!words.isEmpty() || batch.isPresent()) {
            int count = LotArguments.count(words, "bag pack");
            FilmLot wanted = LotArguments.lot(context, words.subList(1, words.size()), batch);
            Map<FilmLot, Integer> lots =
                    LotArguments.outOf(context.state().day().fridge().filled(), wanted, count, "the fridge");
            return packed(context, new PackingList(lots, List.of()), ".");
        }
        if (PackingList.wanted(context.state(), context.now()).isEmpty()) {
            throw new CommandRejected("no moment of the plan says how many frames it wants: plan 16:30 Prize-giving "
                    + "wants 12; or say what to pack: bag pack 5 cn400 120");
        }
        PackingList list = PackingList.of(context.state(), context.now());
        return packed(context, list, isShort(list).orElse(": enough for the plan."));
    }

    private static Outcome packed(CommandContext context, PackingList list, String verdict) {
        Map<FilmLot, Integer> lots = list.rolls();
        String what =
                lots.isEmpty() ? "Nothing packed" : "Packed " + English.count(sum(lots), "roll") + " from the fridge";
        String more = lots.isEmpty() ? "" : ": " + LotArguments.words(lots);
        String end = lots.isEmpty() && list.isShort().isEmpty() ? ": bag and cameras have enough for the plan." : "";
        String behind = verdict.startsWith(":") && !lots.isEmpty() ? ". Enough for the plan." : verdict;
        return context.reply(moved(lots, 1))
                .event("bag")
                .says(what, end.isEmpty() ? more + behind + LotArguments.aged(lots.keySet(), context) : end)
                .fields(Json.object()
                        .and("packed", NightBeforeJson.lots(lots, context.now().toLocalDate()))
                        .and(
                                "short",
                                list.isShort().stream()
                                        .map(it -> Json.object()
                                                .and("moment", it.moment().number())
                                                .and("frames", it.frames())
                                                .and("camera", it.camera().map(Camera::key)))
                                        .toList()))
                .accepted();
    }

    private static Optional<String> isShort(PackingList list) {
        return list.isShort().isEmpty()
                ? Optional.empty()
                : Optional.of(". MISSING: "
                        + String.join(
                                "; ",
                                list.isShort().stream().map(BagPacking::words).toList())
                        + ".");
    }

    private static String words(PackingList.Shortage shortage) {
        String why = shortage.camera()
                .map(it -> "neither bag nor fridge has more film for " + it.key())
                .orElse("no camera is named for it or in use (cam)");
        return English.count(shortage.frames(), "frame") + " for "
                + ClockText.clock(shortage.moment().at()) + " "
                + shortage.moment().name() + ", " + why;
    }

    /** All that is in the bag back to the fridge; or so many rolls of one film. */
    static Outcome unpack(CommandContext context, List<String> words, Optional<String> batch) {
        List<Map.Entry<FilmLot, Integer>> filled = context.state().day().bag().filled();
        Map<FilmLot, Integer> lots = new LinkedHashMap<>();
        if (words.isEmpty() && batch.isEmpty()) {
            filled.forEach(it -> lots.put(it.getKey(), it.getValue()));
        } else {
            int count = LotArguments.count(words, "bag unpack");
            FilmLot wanted = LotArguments.lot(context, words.subList(1, words.size()), batch);
            lots.putAll(LotArguments.outOf(filled, wanted, count, "the bag"));
        }
        if (lots.isEmpty()) {
            throw new CommandRejected("the bag is empty: there is nothing to put back");
        }
        return context.reply(moved(lots, -1))
                .event("bag")
                .says("Back to the fridge", ": " + LotArguments.words(lots) + ".")
                .fields(Json.object()
                        .and(
                                "unpacked",
                                NightBeforeJson.lots(lots, context.now().toLocalDate())))
                .accepted();
    }

    private static int sum(Map<FilmLot, Integer> lots) {
        return lots.values().stream().mapToInt(it -> it).sum();
    }

    /** Into the bag where the sign is 1, back to the fridge where it is -1. */
    private static List<JournalEntry> moved(Map<FilmLot, Integer> lots, int sign) {
        List<JournalEntry> entries = new ArrayList<>();
        lots.forEach((lot, rolls) -> {
            entries.add(new JournalEntry.OnDay(new PlanEvent.FridgeChanged(lot, -sign * rolls)));
            entries.add(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot, sign * rolls, Optional.empty())));
        });
        return entries;
    }
}
