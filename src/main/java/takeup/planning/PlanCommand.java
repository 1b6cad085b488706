package takeup.planning;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.NextMoment;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.day.KeyMoment;
import takeup.day.Plan;
import takeup.day.PlanEvent;
import takeup.day.ShootInfo;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.kit.Kit;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.prompt.MomentParser;
import takeup.prompt.Sky;
import takeup.prompt.Tokens;
import takeup.report.MomentText;
import takeup.report.PlanJson;
import takeup.text.ClockText;
import takeup.text.English;

/**
 * The key moments: {@code plan 16:30 Prize-giving wants 12}, {@code plan 3 16:45} for another time, {@code plan late
 * 20} for all that are to come, {@code plan drop 3}.
 */
public final class PlanCommand implements Command {
    private static final int LATEST = 600;
    private static final int MOST = 200;

    public static final CommandInfo INFO = CommandInfo.of(
                    "plan", "a key moment; also must, cam 645, light ev12, on DATE; alone: the plan")
            .usage("plan 16:30 Prize-giving wants 12", "plan late 20")
            .form("plan", "the plan, with the sun's own moments")
            .form("plan 16:30 Prize-giving wants 12", "a key moment and the frames that it wants")
            .form("plan 16:30 Prize-giving wants 12 must", "one that the day is lost without")
            .form("plan 16:30 Prize-giving cam 645 back 2", "where it will be shot")
            .form("plan 16:30 Prize-giving light ev12", "the light to expect; light shade too")
            .form("plan 9:00 Boats on 2026-09-12", "on another day")
            .form("plan 3 16:45", "number 3 at another time")
            .form("plan late 20", "all that are to come 20 minutes later; plan early 5 too")
            .form("plan drop 3", "number 3 is out of the plan")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return arguments.rest().isEmpty()
                ? context.shows(
                        new ScreenAction.Show(ScreenAction.View.PLAN),
                        "plan",
                        sentence(context.state(), context.now()),
                        PlanJson.of(context.state(), context.now()))
                : read(context, arguments);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        if (before.size() == 1) {
            return List.of("drop", "late", "early");
        }
        return switch (before.get(before.size() - 1)) {
            case "cam" -> state.kit().keys(Kit.Sort.CAMERAS);
            case "light" -> Sky.words();
            default -> List.of("wants", "must", "cam", "back", "light", "on", "today", "tomorrow");
        };
    }

    private static Outcome read(CommandContext context, Arguments arguments) {
        List<String> rest = arguments.rest();
        List<String> words = DateTimeParser.of(arguments.textAfterWords(1));
        String first = DateTimeParser.small(words.get(0));
        if (first.equals("drop")) {
            return drop(context, rest.subList(1, rest.size()));
        }
        if (first.equals("late") || first.equals("early")) {
            return late(context, first, rest.subList(1, rest.size()));
        }
        boolean isNumber = first.length() < 3 && Tokens.number(first).isPresent();
        return isNumber ? change(context, first, words) : add(context, words);
    }

    private static Outcome add(CommandContext context, List<String> words) {
        Plan plan = context.state().day().plan();
        KeyMoment moment = MomentParser.read(
                words, plan.last() + 1, date(context), context.now().toLocalDate(), context::place);
        LocalDateTime now = context.now().toLocalDateTime();
        Optional<String> past = moment.at().plus(KeyMoment.LASTS).isBefore(now)
                ? Optional.of(ClockText.clock(moment.at()) + " on "
                        + moment.at().toLocalDate() + " is past (on tomorrow, on 2026-09-12 say another day)")
                : Optional.empty();
        return planned(context, List.of(moment), MomentText.planned(moment, now), "")
                .askedFirst(past);
    }

    /** The day of the shoot that is open, unless it is over. */
    private static LocalDate date(CommandContext context) {
        return context.state()
                .day()
                .shoot()
                .map(ShootInfo::date)
                .filter(it -> it.isAfter(context.now().toLocalDate()))
                .orElse(context.now().toLocalDate());
    }

    /** Moments into the plan, as one step. */
    static Outcome.Accepted planned(CommandContext context, List<KeyMoment> moments, String what, String more) {
        if (context.state().day().plan().moments().size() + moments.size() > MOST) {
            throw new CommandRejected("a plan holds up to " + MOST + " moments");
        }
        List<JournalEntry> entries = new ArrayList<>();
        moments.forEach(it -> entries.add(new JournalEntry.OnDay(new PlanEvent.MomentPlanned(it))));
        Json.Obj fields = moments.size() == 1
                ? PlanJson.moment(moments.get(0))
                : Json.object()
                        .and("moments", moments.stream().map(PlanJson::moment).toList());
        return context.reply(entries)
                .event("plan")
                .says(what, more + ".")
                .fields(fields)
                .accepted();
    }

    private static Outcome change(CommandContext context, String number, List<String> words) {
        KeyMoment moment = moment(context, number);
        if (words.size() != 2) {
            throw new CommandRejected("plan " + number + " takes its new time: plan " + number + " 16:45");
        }
        LocalTime time = DateTimeParser.time(words.get(1))
                .orElseThrow(() -> new CommandRejected(words.get(1) + " is no time of day: plan " + number + " 16:45"));
        KeyMoment moved = moment.at(moment.at().toLocalDate().atTime(time));
        return planned(
                context, List.of(moved), MomentText.planned(moved, context.now().toLocalDateTime()), "");
    }

    private static KeyMoment moment(CommandContext context, String number) {
        Plan plan = context.state().day().plan();
        return Tokens.number(number)
                .filter(it -> it == Math.rint(it))
                .map(Double::intValue)
                .flatMap(plan::moment)
                .orElseThrow(() -> new CommandRejected("no moment in the plan has the number " + number
                        + (plan.moments().isEmpty() ? ": there is no plan yet" : ": plan shows them")));
    }

    private static Outcome late(CommandContext context, String word, List<String> rest) {
        String typed = rest.size() == 1 ? rest.get(0) : "";
        String number = typed.endsWith("min") ? typed.substring(0, typed.length() - 3) : typed;
        int minutes = Tokens.number(number)
                .filter(it -> it == Math.rint(it) && it >= 1 && it <= LATEST)
                .map(Double::intValue)
                .orElseThrow(() -> new CommandRejected("how many minutes? plan " + word + " 20; up to " + LATEST));
        LocalDateTime now = context.now().toLocalDateTime();
        List<KeyMoment> moved = new ArrayList<>();
        for (KeyMoment moment :
                context.state().day().plan().ahead(now, context.now().toLocalDate())) {
            if (moment.at().isAfter(now)) {
                moved.add(moment.at(moment.at().plusMinutes(word.equals("late") ? minutes : -minutes)));
            }
        }
        if (moved.isEmpty()) {
            throw new CommandRejected("no moment is still to come today");
        }
        return planned(
                context,
                moved,
                English.count(moved.size(), "moment") + " " + minutes + " min "
                        + (word.equals("late") ? "later" : "earlier"),
                "; next " + MomentText.planned(moved.get(0), now));
    }

    private static Outcome drop(CommandContext context, List<String> rest) {
        KeyMoment moment = moment(context, Arguments.one("plan drop", rest, "plan drop 3"));
        return context.reply(new PlanEvent.MomentDropped(moment.number()))
                .event("plan")
                .says(moment.name() + " is out of the plan", ".")
                .fields(PlanJson.moment(moment))
                .accepted();
    }

    /** All that is planned and not over, in one sentence. */
    static String sentence(ShootState s, OffsetDateTime now) {
        List<KeyMoment> moments = s.day().plan().moments();
        if (moments.isEmpty()) {
            return "No plan yet. Try: plan 16:30 Prize-giving wants 12";
        }
        List<String> all = new ArrayList<>();
        moments.forEach(it -> all.add(MomentText.planned(it, now.toLocalDateTime())));
        return String.join("; ", all) + "."
                + NextMoment.of(s, now)
                        .map(it -> " " + English.capitalised(MomentText.line(it)) + ".")
                        .orElse("");
    }
}
