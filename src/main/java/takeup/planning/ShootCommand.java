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
import takeup.prompt.DateTimeParser;
import takeup.report.RollText;
import takeup.report.StatusJson;
import takeup.report.StatusText;
import takeup.roll.Coordinates;
import takeup.roll.Roll;
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
        ShootInfo shoot = ShootArguments.read(context, DateTimeParser.of(arguments.textAfterWords(1)));
        Optional<ShootInfo> before = context.state().day().shoot();
        RollsOfShoot rolls = RollsOfShoot.of(context.state(), before, shoot, context.now());
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnDay(new PlanEvent.ShootOpened(shoot))));
        entries.addAll(rolls.assigned(rolls.own()));
        String more = shoot.position()
                        .map(it -> ", at " + it + light(it, shoot.date(), context.now()))
                        .orElse("") + "."
                + (shoot.client().isPresent() ? " The client's name stays on this machine." : "")
                + rolls.stays()
                + stillIn(context.state(), context.now()).map(it -> " " + it).orElse("");
        Json.Obj fields = Json.object()
                .and("name", shoot.name())
                .and("date", shoot.date())
                .and("latitude", shoot.position().map(Coordinates::latitude))
                .and("longitude", shoot.position().map(Coordinates::longitude));
        Outcome.Accepted opened = context.reply(entries)
                .event("shoot")
                .says("Shoot: " + shoot.name() + ", " + shoot.date(), more)
                .fields(fields)
                .accepted();
        return opened.thenAsking(rolls.question(context.after(opened)));
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
