package takeup.planning;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Completions;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.command.ScreenAction;
import takeup.day.Bag;
import takeup.day.FilmLot;
import takeup.day.PlanEvent;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.prompt.CommandRejected;
import takeup.prompt.LabelWords;
import takeup.prompt.Tokens;
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
    private static final int MOST = 999;
    private static final List<String> DOES = List.of("add", "take");

    public static final CommandInfo INFO = CommandInfo.of("bag", "film into the bag or out of it; alone: what is in it")
            .usage("bag add 10 cn400 120 price 6.20", "bag take 1 cn400 120")
            .form("bag", "the film that is left, and the night-before list")
            .form("bag add 10 cn400 120", "film into the bag")
            .form("bag add 5 cn400 120 expires 2027-03", "with the month on the box")
            .form("bag add 5 cn400 120 price 6.20", "with what one roll costs")
            .form("bag add 5 cn400 120 batch 4711", "with the number of the emulsion")
            .form("bag take 1 cn400 120", "out of it; load takes its roll by itself")
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
                ? List.of("add", "take")
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
            throw new CommandRejected("bag add or bag take, not " + first + Nearest.question(first, DOES)
                    + "; bag alone shows what is in it");
        }
        return first.equals("add")
                ? add(context, words.subList(1, words.size()), batch)
                : take(context, words.subList(1, words.size()), batch);
    }

    private static Outcome add(CommandContext context, List<String> words, Optional<String> batch) {
        int count = count(words, "add");
        FilmLot lot = lot(context, words.subList(1, words.size()), batch);
        List<JournalEntry> entries =
                List.of(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot, count, Optional.empty())));
        String aged = lot.isExpired(context.now().toLocalDate())
                ? " " + English.capitalised(FilmAge.words(lot, context)) + "."
                : "";
        return answered(context, entries, English.count(count, "roll") + " of " + lot + " into the bag", lot, aged);
    }

    private static Outcome take(CommandContext context, List<String> words, Optional<String> batch) {
        int count = count(words, "take");
        FilmLot wanted = lot(context, words.subList(1, words.size()), batch);
        Bag bag = context.state().day().bag();
        List<JournalEntry> entries = new ArrayList<>();
        int left = count;
        for (Map.Entry<FilmLot, Integer> lot : bag.filled()) {
            boolean fits = lot.getKey().is(wanted.stock(), wanted.size())
                    && (wanted.expires().isEmpty()
                            || wanted.expires().equals(lot.getKey().expires()))
                    && (wanted.batch().isEmpty()
                            || wanted.batch().equals(lot.getKey().batch()));
            if (fits && left > 0) {
                int taken = Math.min(left, lot.getValue());
                entries.add(new JournalEntry.OnDay(new PlanEvent.BagChanged(lot.getKey(), -taken, Optional.empty())));
                left -= taken;
            }
        }
        if (left > 0) {
            throw new CommandRejected(
                    "the bag holds " + English.count(count - left, "roll") + " of " + wanted + ", not " + count);
        }
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

    private static int count(List<String> words, String how) {
        String word = words.isEmpty() ? "" : words.get(0);
        return Tokens.number(word.startsWith("x") ? word.substring(1) : word)
                .filter(it -> it >= 1 && it <= MOST && it == Math.rint(it))
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected("how many rolls? bag " + how + " 10 cn400 120; 1 to " + MOST));
    }

    private static FilmLot lot(CommandContext context, List<String> words, Optional<String> batch) {
        Optional<Stock> stock = Optional.empty();
        Optional<FilmSize> size = Optional.empty();
        Optional<YearMonth> expires = Optional.empty();
        Optional<BigDecimal> price = Optional.empty();
        for (int at = 0; at < words.size(); at++) {
            String word = words.get(at);
            String next = at + 1 < words.size() ? words.get(at + 1) : "";
            if (word.equals("expires")) {
                expires = Optional.of(month(next));
                at++;
            } else if (word.equals("price")) {
                price = Optional.of(price(next));
                at++;
            } else if (FilmSize.named(word).isPresent()) {
                size = FilmSize.named(word);
            } else if (stock.isPresent()) {
                throw new CommandRejected("two stocks: " + stock.get().key() + " and " + word);
            } else {
                stock = Optional.of(context.state()
                        .kit()
                        .stock(word)
                        .orElseThrow(
                                () -> new CommandRejected(context.state().kit().whyNot(Kit.Sort.STOCKS, word))));
            }
        }
        Stock found = stock.orElseThrow(() -> new CommandRejected("which film? bag add 10 cn400 120"));
        return new FilmLot(found.key(), size.orElseGet(() -> size(context, found)), expires, price, batch);
    }

    /** The only size it comes in, or the only one that the camera in hand takes of it. */
    private static FilmSize size(CommandContext context, Stock stock) {
        List<FilmSize> sizes = stock.filmSizes();
        Optional<Camera> camera = context.state().cameraInHand();
        List<FilmSize> fitting = sizes.size() == 1 || camera.isEmpty()
                ? sizes
                : sizes.stream().filter(camera.get().frames()::containsKey).toList();
        if (fitting.size() != 1) {
            throw new CommandRejected("which size? " + stock.name() + " comes in "
                    + String.join(" and ", sizes.stream().map(Object::toString).toList()));
        }
        return fitting.get(0);
    }

    private static YearMonth month(String word) {
        try {
            return YearMonth.parse(word.length() == 10 ? word.substring(0, 7) : word);
        } catch (DateTimeException e) {
            throw new CommandRejected((word.isEmpty() ? "nothing" : word) + " is no month: expires 2027-03");
        }
    }

    private static BigDecimal price(String word) {
        boolean plain = !word.isEmpty() && word.length() <= 12;
        int points = 0;
        for (int at = 0; at < word.length(); at++) {
            char c = word.charAt(at);
            plain &= Tokens.isDigit(c) || c == '.';
            points += c == '.' ? 1 : 0;
        }
        if (!plain || points > 1 || word.equals(".")) {
            throw new CommandRejected((word.isEmpty() ? "nothing" : word)
                    + " is no price: price 6.20, for one roll, in the money that you reckon in");
        }
        return new BigDecimal(word.endsWith(".") ? word.substring(0, word.length() - 1) : word);
    }
}
