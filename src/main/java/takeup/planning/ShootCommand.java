package takeup.planning;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.day.PlanEvent;
import takeup.day.ShootInfo;
import takeup.day.Sun;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.Tokens;
import takeup.report.RollText;
import takeup.report.StatusJson;
import takeup.report.StatusText;
import takeup.roll.Assignment;
import takeup.roll.Coordinates;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.text.ClockText;
import takeup.text.Plain;

/**
 * {@code shoot NAME [on DATE] [at LAT,LON] [client WORDS]}: opens a shoot. What is in the cameras stays there and is
 * named.
 */
public final class ShootCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "shoot", "opens a shoot, also client WORDS; alone: the shoot screen")
            .usage("shoot Regatta day on 2026-09-12 at 59.33,18.07")
            .form("shoot", "back to the shoot screen")
            .form("shoot Regatta day", "opens a shoot for today; rolls loaded from now on belong to it")
            .form("shoot Regatta day on tomorrow", "for another day; on 2026-09-12 too")
            .form("shoot Regatta day at 59.33,18.07", "where it is, in degrees: brings the sun's times")
            .form("shoot Regatta day client Harriet Ruder", "for whom; it stays on this machine")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return arguments.rest().isEmpty()
                ? context.shows(
                        new ScreenAction.Show(ScreenAction.View.SHOOT),
                        "state",
                        StatusText.words(context.state(), context.now()),
                        StatusJson.of(context.state()))
                : open(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return List.of("on", "at", "client", "today", "tomorrow");
    }

    private static Outcome open(CommandContext context, Arguments arguments) {
        ShootInfo shoot = read(context, DateTimeParser.of(arguments.textAfterWords(1)));
        Optional<ShootInfo> before = context.state().day().shoot();
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnDay(new PlanEvent.ShootOpened(shoot))));
        for (Roll roll : context.state().rolls().values()) {
            if (roll.state() == Roll.State.OPEN && belongs(context, roll, before, shoot)) {
                entries.add(new JournalEntry.OnRoll(roll.id(), new RollEvent.ShootAssigned(assignment(shoot))));
            }
        }
        String more = shoot.position()
                        .map(it -> ", at " + it + light(it, shoot.date(), context.now()))
                        .orElse("") + "."
                + (shoot.client().isPresent() ? " The client's name stays on this machine." : "")
                + stillIn(context.state(), context.now()).map(it -> " " + it).orElse("");
        Json.Obj fields = Json.object()
                .and("name", shoot.name())
                .and("date", shoot.date())
                .and("latitude", shoot.position().map(Coordinates::latitude))
                .and("longitude", shoot.position().map(Coordinates::longitude));
        return context.reply(entries)
                .event("shoot")
                .says("Shoot: " + shoot.name() + ", " + shoot.date(), more)
                .fields(fields)
                .accepted();
    }

    public static Assignment assignment(ShootInfo shoot) {
        return new Assignment(shoot.name(), shoot.date(), shoot.client());
    }

    /** A roll that belongs to no shoot and was not begun on an earlier day, or to the one that this one puts right. */
    private static boolean belongs(CommandContext context, Roll roll, Optional<ShootInfo> before, ShootInfo shoot) {
        if (roll.assignment().isPresent()) {
            return before.map(it -> it.date().equals(shoot.date())
                                    && assignment(it).equals(roll.assignment().get()))
                            .orElse(false)
                    && !roll.assignment().get().equals(assignment(shoot));
        }
        return roll.frames().isEmpty()
                || roll.loadedAt().toLocalDate().equals(context.now().toLocalDate());
    }

    private static ShootInfo read(CommandContext context, List<String> words) {
        LocalDate today = context.now().toLocalDate();
        List<String> name = new ArrayList<>();
        Optional<LocalDate> date = Optional.empty();
        Optional<Coordinates> position = Optional.empty();
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
                int end = at + 1;
                while (end < words.size()
                        && end < at + 3
                        && (Tokens.isDigit(words.get(end).charAt(0))
                                || words.get(end).charAt(0) == '-')) {
                    end++;
                }
                position = Optional.of(position(words.subList(at + 1, end)));
                at = end - 1;
            } else if (word.equals("client") && name.isEmpty()) {
                // Taken for the name of the shoot it would go into every export.
                throw new CommandRejected("client stands behind the name of the shoot, with a name of its own: "
                        + "shoot Regatta day client Harriet Ruder");
            } else if (word.equals("client") && !next.isEmpty()) {
                client = Optional.of(String.join(" ", words.subList(at + 1, words.size())));
                at = words.size();
            } else if (date.isPresent() || position.isPresent()) {
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
        return completed(context, String.join(" ", name), date, position, client);
    }

    /** What is not said again of the shoot that is open stays as it was. */
    private static ShootInfo completed(
            CommandContext context,
            String name,
            Optional<LocalDate> date,
            Optional<Coordinates> position,
            Optional<String> client) {
        Optional<ShootInfo> same =
                context.state().day().shoot().filter(it -> it.name().equalsIgnoreCase(name));
        return new ShootInfo(
                name,
                date.or(() -> same.map(ShootInfo::date)).orElse(context.now().toLocalDate()),
                position.or(() -> same.flatMap(ShootInfo::position)),
                client.or(() -> same.flatMap(ShootInfo::client)));
    }

    /**
     * Degrees with a point: {@code 59.33,18.07} or {@code 59.33 18.07}; with a decimal comma a blank stands between
     * them.
     */
    private static Coordinates position(List<String> words) {
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

    private static String light(Coordinates position, LocalDate date, OffsetDateTime now) {
        String golden = "";
        String set = Sun.isDownAllDay(position, date, now.getOffset())
                ? ", the sun does not rise"
                : ", the sun does not set";
        for (Sun.At one : Sun.of(position, date, now.getOffset())) {
            String at = ClockText.clock(one.time());
            golden = one.event() == Sun.Event.GOLDEN_EVENING ? ", golden hour from " + at : golden;
            set = one.event() == Sun.Event.SUNSET ? ", sunset " + at : set;
        }
        return golden + set;
    }

    /**
     * The rolls that are in the cameras since an earlier day: age, stock, index, counter; empty where there is none.
     */
    public static Optional<String> stillIn(ShootState s, OffsetDateTime now) {
        List<String> all = new ArrayList<>();
        for (Roll roll : s.rolls().values()) {
            if (roll.state() == Roll.State.OPEN && roll.loadedAt().toLocalDate().isBefore(now.toLocalDate())) {
                all.add(roll.id() + " in " + roll.place() + " since "
                        + roll.loadedAt().toLocalDate() + ", "
                        + roll.film().stock().key() + " EI "
                        + Plain.number(roll.film().index().arithmetic()) + ", next frame " + roll.next() + ", "
                        + RollText.left(roll));
            }
        }
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of("In the cameras from before: " + String.join("; ", all) + ".");
    }
}
