package takeup.planning;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import takeup.command.CommandContext;
import takeup.day.FilmLot;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.Kit;
import takeup.kit.Stock;
import takeup.prompt.CommandRejected;
import takeup.prompt.Tokens;
import takeup.text.English;

/** How many rolls of which film: {@code 10 cn400 120 expires 2027-03 price 6.20}. */
final class LotArguments {
    private static final int MOST = 999;

    private LotArguments() {}

    /**
     * So many rolls out of lots, those that expire first in front; a date or a batch that was said must be theirs.
     *
     * @param where what holds the lots, to be named where they do not have that many
     */
    static Map<FilmLot, Integer> outOf(
            List<Map.Entry<FilmLot, Integer>> lots, FilmLot wanted, int count, String where) {
        Map<FilmLot, Integer> all = new LinkedHashMap<>();
        int left = count;
        for (Map.Entry<FilmLot, Integer> lot : lots) {
            boolean fits = lot.getKey().is(wanted.stock(), wanted.size())
                    && (wanted.expires().isEmpty()
                            || wanted.expires().equals(lot.getKey().expires()))
                    && (wanted.batch().isEmpty()
                            || wanted.batch().equals(lot.getKey().batch()));
            if (fits && left > 0) {
                int taken = Math.min(left, lot.getValue());
                all.put(lot.getKey(), taken);
                left -= taken;
            }
        }
        if (left > 0) {
            throw new CommandRejected(
                    where + " holds " + English.count(count - left, "roll") + " of " + wanted + ", not " + count);
        }
        return all;
    }

    /** Lots in words: {@code 2 × cn400 120, expires 2027-03; 1 × bw400 120}. */
    static String words(Map<FilmLot, Integer> lots) {
        return lots.entrySet().stream()
                .map(it -> it.getValue() + " × " + it.getKey())
                .collect(Collectors.joining("; "));
    }

    /** How old the film of those lots is, where it is past its month: sentences, each behind a space. */
    static String aged(Iterable<FilmLot> lots, CommandContext context) {
        StringBuilder words = new StringBuilder();
        for (FilmLot lot : lots) {
            if (lot.isExpired(context.now().toLocalDate())) {
                words.append(' ')
                        .append(English.capitalised(FilmAge.words(lot, context)))
                        .append('.');
            }
        }
        return words.toString();
    }

    static int count(List<String> words, String how) {
        String word = words.isEmpty() ? "" : words.get(0);
        return Tokens.number(word.startsWith("x") ? word.substring(1) : word)
                .filter(it -> it >= 1 && it <= MOST && it == Math.rint(it))
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected("how many rolls? " + how + " 10 cn400 120; 1 to " + MOST));
    }

    static FilmLot lot(CommandContext context, List<String> words, Optional<String> batch) {
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
