package takeup.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.CommandContext;
import takeup.day.ShootInfo;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.Tokens;
import takeup.roll.Coordinates;
import takeup.roll.Place;

/** Reads what {@code shoot} takes: the name, then a date, a place and a client in any order. */
final class ShootArguments {
    private ShootArguments() {}

    /** The words behind {@code shoot}. */
    static ShootInfo read(CommandContext context, List<String> words) {
        LocalDate today = context.now().toLocalDate();
        List<String> name = new ArrayList<>();
        Optional<LocalDate> date = Optional.empty();
        Optional<Place> place = Optional.empty();
        Optional<String> client = Optional.empty();
        for (int at = 0; at < words.size(); at++) {
            String word = DateTimeParser.small(words.get(at));
            String next = at + 1 < words.size() ? words.get(at + 1) : "";
            boolean isNumber = !next.isEmpty() && (Tokens.isDigit(next.charAt(0)) || next.charAt(0) == '-');
            if (word.equals("on") && DateTimeParser.date(next, today).isPresent()) {
                date = DateTimeParser.date(next, today);
                at++;
            } else if (word.equals("on") && isNumber) {
                throw new CommandRejected(next + " is no date: on 2026-09-12, on today, on tomorrow");
            } else if (word.equals("at") && isNumber) {
                int end = endOfNumbers(words, at + 1);
                place = Optional.of(Place.at(Optional.of(position(words.subList(at + 1, end)))));
                at = end - 1;
            } else if (word.equals("at") && numbersBehindName(words, at) > 0) {
                int numbers = numbersBehindName(words, at);
                int end = endOfNumbers(words, numbers);
                place = Optional.of(new Place(
                        Optional.of(String.join(" ", words.subList(at + 1, numbers))),
                        Optional.of(position(words.subList(numbers, end))),
                        false));
                at = end - 1;
            } else if (word.equals("client") && name.isEmpty()) {
                // Taken for the name of the shoot it would go into every export.
                throw new CommandRejected("client stands behind the name of the shoot, with a name of its own: "
                        + "shoot Regatta day client Harriet Ruder");
            } else if (word.equals("client") && !next.isEmpty()) {
                client = Optional.of(String.join(" ", words.subList(at + 1, words.size())));
                at = words.size();
            } else if (date.isPresent() || place.isPresent()) {
                throw new CommandRejected(
                        words.get(at) + " is one word too many: shoot NAME, then on DATE, at LAT,LON, client WORDS");
            } else {
                name.add(words.get(at));
            }
        }
        if (name.isEmpty()) {
            throw new CommandRejected("the shoot has no name: shoot Regatta day");
        }
        if (name.size() == 1
                && context.state().kit().keys(Kit.Sort.CAMERAS).contains(DateTimeParser.small(name.get(0)))) {
            throw new CommandRejected(name.get(0) + " is a camera: cam " + name.get(0)
                    + " takes it up; a shoot is named as people call it (shoot Regatta day)");
        }
        return completed(context, String.join(" ", name), date, place, client);
    }

    /** What is not said again of the shoot that is open stays as it was. */
    private static ShootInfo completed(
            CommandContext context,
            String name,
            Optional<LocalDate> date,
            Optional<Place> place,
            Optional<String> client) {
        Optional<ShootInfo> same =
                context.state().day().shoot().filter(it -> it.name().equalsIgnoreCase(name));
        return new ShootInfo(
                name,
                date.or(() -> same.map(ShootInfo::date)).orElse(context.now().toLocalDate()),
                place(place, same.map(ShootInfo::place).orElse(Place.UNKNOWN)),
                client.or(() -> same.flatMap(ShootInfo::client)));
    }

    /** A place as it is said now; what is not said of it stays, and so does whether it is shared. */
    static Place place(Optional<Place> said, Place before) {
        return said.map(it -> new Place(
                        it.name().or(before::name), it.coordinates().or(before::coordinates), before.isShared()))
                .orElse(before);
    }

    /** Where the coordinates begin behind {@code at} and the name of a place; 0 where none stand there. */
    private static int numbersBehindName(List<String> words, int at) {
        for (int next = at + 2; next < words.size(); next++) {
            String word = words.get(next);
            boolean isSign =
                    word.equalsIgnoreCase("on") || word.equalsIgnoreCase("client") || word.equalsIgnoreCase("at");
            if (isSign) {
                return 0;
            }
            if (isNumber(word) && (word.indexOf('.') > 0 || word.indexOf(',') > 0)) {
                return next;
            }
        }
        return 0;
    }

    static boolean isNumber(String word) {
        return Tokens.isDigit(word.charAt(0)) || word.charAt(0) == '-' && word.length() > 1;
    }

    static int endOfNumbers(List<String> words, int from) {
        int end = from;
        while (end < words.size() && end < from + 2 && isNumber(words.get(end))) {
            end++;
        }
        return end;
    }

    /**
     * Degrees with a point: {@code 59.33,18.07} or {@code 59.33 18.07}; with a decimal comma a blank stands between
     * them.
     */
    static Coordinates position(List<String> words) {
        String said = String.join(" ", words);
        String[] parts =
                words.size() == 2 ? new String[] {cleaned(words.get(0)), cleaned(words.get(1))} : said.split(",", -1);
        try {
            if (parts.length == 2) {
                return new Coordinates(Double.parseDouble(plain(parts[0])), Double.parseDouble(plain(parts[1])));
            }
        } catch (IllegalArgumentException e) {
            // said below
        }
        throw new CommandRejected(said
                + " is no place on earth: at LAT,LON in degrees, such as at 59.33,18.07; south and west are negative");
    }

    private static String cleaned(String word) {
        String number = word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
        return number.replace(',', '.');
    }

    private static String plain(String number) {
        for (int at = 0; at < number.length(); at++) {
            char c = number.charAt(at);
            if (!Tokens.isDigit(c) && c != '.' && !(c == '-' && at == 0)) {
                throw new IllegalArgumentException(number);
            }
        }
        return number;
    }
}
