package takeup.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/**
 * The film in the bag: {@code bag add 10 cn400 120 expires 2027-03 price 6.20}, {@code bag take 1 cn400 120}; and what
 * a loading takes from it.
 */
public final class BagCommand implements Command {
    private static final List<String> DOES = List.of("add", "take", "pack", "unpack");

    public static final CommandInfo INFO = CommandInfo.of("bag", "film into the bag or out of it; alone: what is in it")
            .usage("bag add 10 cn400 120 price 6.20", "bag take 1 cn400 120")
            .form("bag", "the film that is left, and the night-before list")
            .form("bag add 10 cn400 120", "film into the bag")
            .form("bag add 5 cn400 120 expires 2027-03", "with the month on the box")
            .form("bag add 5 cn400 120 price 6.20", "with what one roll costs")
            .form("bag add 5 cn400 120 batch 4711", "with the number of the emulsion")
            .form("bag take 1 cn400 120", "out of it; load takes its roll by itself")
            .form("bag pack", "out of the fridge what the plan still wants")
            .form("bag pack 5 cn400 120", "so many of one film out of the fridge")
            .form("bag unpack", "what is left goes back to the fridge")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        NightBefore night = NightBefore.of(context.state(), context.now());
        return arguments.rest().isEmpty()
                ? context.shows(
                        new ScreenAction.Show(ScreenAction.View.BAG),
                        "bag",
                        NightBeforeText.bagSentence(night),
                        NightBeforeJson.bag(night))
                : labelled(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return before.size() == 1
                ? DOES
                : Completions.with(state.kit().keys(Kit.Sort.STOCKS), "expires", "price", "batch");
    }

    /** The batch is kept letter for letter. */
    private static Outcome labelled(CommandContext context, Arguments arguments) {
        LabelWords said = LabelWords.of(arguments.line());
        return read(context, Arguments.of(said.rest()).rest(), said.label().batch());
    }

    static Outcome read(CommandContext context, List<String> words) {
        return read(context, words, Optional.empty());
    }

    private static Outcome read(CommandContext context, List<String> words, Optional<String> batch) {
        String first = words.isEmpty() ? "a name or a batch alone" : words.get(0);
        if (!DOES.contains(first)) {
            throw new CommandRejected("bag add, bag take, bag pack or bag unpack, not " + first
                    + Nearest.question(first, DOES) + "; bag alone shows what is in it");
        }
        List<String> rest = words.subList(1, words.size());
        return switch (first) {
            case "add" -> add(context, rest, batch);
            case "take" -> take(context, rest, batch);
            case "pack" -> BagPacking.pack(context, rest, batch);
            default -> BagPacking.unpack(context, rest, batch);
        };
    }

    private static Outcome add(CommandContext context, List<String> words, Optional<String> batch) {
        int count = LotArguments.count(words, "bag add");
        FilmLot lot = LotArguments.lot(context, words.subList(1, words.size()), batch);
        List<JournalEntry> entries =
                List.of(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot, count, Optional.empty())));
        return answered(
                context,
                entries,
                English.count(count, "roll") + " of " + lot + " into the bag",
                lot,
                LotArguments.aged(List.of(lot), context));
    }

    private static Outcome take(CommandContext context, List<String> words, Optional<String> batch) {
        int count = LotArguments.count(words, "bag take");
        FilmLot wanted = LotArguments.lot(context, words.subList(1, words.size()), batch);
        List<JournalEntry> entries = new ArrayList<>();
        LotArguments.outOf(context.state().day().bag().filled(), wanted, count, "the bag")
                .forEach((lot, rolls) ->
                        entries.add(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot, -rolls, Optional.empty()))));
        return answered(
                context,
                entries,
                English.count(count, "roll") + " of " + wanted.stock() + " " + wanted.size() + " out of the bag",
                wanted,
                "");
    }

    private static Outcome answered(
            CommandContext context, List<JournalEntry> entries, String what, FilmLot lot, String more) {
        Reply reply = context.reply(entries);
        int now = reply.after().day().bag().rolls(lot.stock(), lot.size());
        Json.Obj fields = Json.object()
                .and("stock", lot.stock())
                .and("filmSize", lot.size())
                .and("rolls", now);
        return reply.event("bag")
                .says(
                        English.capitalised(what),
                        "; it holds " + English.count(now, "roll") + " of " + lot.stock() + " " + lot.size() + "."
                                + more)
                .fields(fields)
                .accepted();
    }
}
