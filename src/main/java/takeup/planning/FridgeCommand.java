package takeup.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.command.ScreenAction;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.prompt.LabelWords;
import takeup.report.NightBefore;
import takeup.report.NightBeforeJson;
import takeup.report.NightBeforeText;
import takeup.text.English;
import takeup.text.Nearest;

/** The film that stays behind: {@code fridge add 20 cn400 120 batch 4711 expires 2027-03}. */
public final class FridgeCommand implements Command {
    private static final List<String> DOES = List.of("add", "take");

    public static final CommandInfo INFO = CommandInfo.of(
                    "fridge", "film at home, with batches and dates; bag pack takes from it")
            .usage("fridge add 9 cn400 120", "fridge take 1 cn400 120")
            .form("fridge", "the film that is in it")
            .form("fridge add 20 cn400 120 expires 2027-03", "film that came in")
            .form("fridge add 20 cn400 120 batch 4711 price 6.20", "with its emulsion and what one roll costs")
            .form("fridge take 1 cn400 120", "out of it, and not into the bag")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        LabelWords said = LabelWords.of(arguments.line());
        List<String> words = Arguments.of(said.rest()).rest();
        Optional<String> batch = said.label().batch();
        if (words.isEmpty() && batch.isEmpty()) {
            NightBefore night = NightBefore.of(context.state(), context.now());
            return context.shows(
                    new ScreenAction.Show(ScreenAction.View.BAG),
                    "fridge",
                    NightBeforeText.fridgeSentence(night),
                    NightBeforeJson.fridge(night));
        }
        String first = words.isEmpty() ? "a batch alone" : words.get(0);
        if (!DOES.contains(first)) {
            throw new CommandRejected("fridge add or fridge take, not " + first + Nearest.question(first, DOES)
                    + "; fridge alone shows what is in it");
        }
        int count = LotArguments.count(words.subList(1, words.size()), "fridge " + first);
        FilmLot lot = LotArguments.lot(context, words.subList(2, words.size()), batch);
        return first.equals("add") ? add(context, lot, count) : take(context, lot, count);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return before.size() == 1
                ? DOES
                : Completions.with(state.kit().keys(Kit.Sort.STOCKS), "expires", "price", "batch");
    }

    private static Outcome add(CommandContext context, FilmLot lot, int count) {
        return answered(
                context,
                List.of(new JournalEntry.OnDay(new PlanEvent.FridgeChanged(lot, count))),
                English.count(count, "roll") + " of " + lot + " into the fridge",
                lot,
                LotArguments.aged(List.of(lot), context));
    }

    private static Outcome take(CommandContext context, FilmLot wanted, int count) {
        List<JournalEntry> entries = new ArrayList<>();
        LotArguments.outOf(context.state().day().fridge().filled(), wanted, count, "the fridge")
                .forEach((lot, rolls) -> entries.add(new JournalEntry.OnDay(new PlanEvent.FridgeChanged(lot, -rolls))));
        String what = English.count(count, "roll") + " of " + wanted.stock() + " " + wanted.size();
        return answered(context, entries, what + " out of the fridge", wanted, "");
    }

    private static Outcome answered(
            CommandContext context, List<JournalEntry> entries, String what, FilmLot lot, String more) {
        Reply reply = context.reply(entries);
        int now = reply.after().day().fridge().filled().stream()
                .filter(it -> it.getKey().is(lot.stock(), lot.size()))
                .collect(Collectors.summingInt(Map.Entry::getValue));
        return reply.event("fridge")
                .says(
                        what,
                        "; it holds " + English.count(now, "roll") + " of " + lot.stock() + " " + lot.size() + "."
                                + more)
                .fields(Json.object()
                        .and("stock", lot.stock())
                        .and("filmSize", lot.size())
                        .and("rolls", now))
                .accepted();
    }
}
