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
import takeup.day.PlanEvent;
import takeup.day.ShootInfo;
import takeup.history.JournalEntry;
import takeup.history.RollsOfDay;
import takeup.history.ShootState;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.prompt.DateTimeParser;
import takeup.roll.NoteEvent;
import takeup.roll.Place;
import takeup.roll.Roll;
import takeup.roll.RollId;

/**
 * {@code place boathouse at 59.33,18.07}: where the shoot is. Its coordinates stay in the data folder until
 * {@code place share} lets exports and sidecars have them.
 */
public final class PlaceCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("place", "where the shoot is, and who may know")
            .usage("place boathouse at 59.33,18.07", "place share", "place private")
            .form("place boathouse", "the name of its place, in exports and sidecars")
            .form("place boathouse at 59.33,18.07", "with coordinates, which stay on this machine")
            .form("place share", "exports and sidecars may hold the coordinates")
            .form("place private", "they may not, any more")
            .form("place", "says where, and who may know")
            .with(CommandInfo.Trait.SHOWS_ONLY);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        ShootInfo shoot = context.state()
                .day()
                .shoot()
                .orElseThrow(() -> new CommandRejected("no shoot is open: shoot Regatta day first"));
        List<String> words = DateTimeParser.of(arguments.textAfterWords(1));
        if (words.isEmpty()) {
            return context.says("shoot", words(shoot) + ".", fields(shoot));
        }
        boolean isShare = words.size() == 1 && words.get(0).equalsIgnoreCase("share");
        boolean isPrivate = words.size() == 1 && words.get(0).equalsIgnoreCase("private");
        if (isShare && shoot.position().isEmpty()) {
            throw new CommandRejected("the coordinates are not known yet: place boathouse at LAT,LON first");
        }
        return isShare || isPrivate
                ? set(shoot, shoot.place().sharing(isShare), context)
                : set(shoot, ShootArguments.place(Optional.of(read(words)), shoot.place()), context);
    }

    private static Place read(List<String> words) {
        int at = 0;
        while (at < words.size() && !(words.get(at).equalsIgnoreCase("at") && isNumberAt(words, at + 1))) {
            at++;
        }
        Optional<String> name =
                Optional.of(String.join(" ", words.subList(0, at))).filter(it -> !it.isEmpty());
        if (at == words.size()) {
            return new Place(name, Optional.empty(), false);
        }
        if (ShootArguments.endOfNumbers(words, at + 1) < words.size()) {
            throw new CommandRejected(
                    words.get(words.size() - 1) + " is one word too many: place boathouse at 59.33,18.07");
        }
        return new Place(name, Optional.of(ShootArguments.position(words.subList(at + 1, words.size()))), false);
    }

    private static boolean isNumberAt(List<String> words, int at) {
        return at < words.size() && ShootArguments.isNumber(words.get(at));
    }

    /** The shoot with another place, and so its rolls: those that came out of a camera today, too. */
    private static Outcome set(ShootInfo shoot, Place place, CommandContext context) {
        ShootInfo now = new ShootInfo(shoot.name(), shoot.date(), place, shoot.client());
        List<JournalEntry> entries = new ArrayList<>(List.of(new JournalEntry.OnDay(new PlanEvent.ShootOpened(now))));
        List<RollId> exports = new ArrayList<>();
        for (Roll roll : rolls(shoot, context)) {
            if (!roll.assignment().equals(Optional.of(now.assignment()))) {
                entries.addAll(context.on(roll, new NoteEvent.ShootAssigned(now.assignment())));
                exports.addAll(context.rollsToExport(roll));
            }
        }
        return context.reply(entries)
                .event("shoot")
                .says(words(now), ".")
                .titled("place of " + shoot.name())
                .fields(fields(now))
                .exports(exports)
                .accepted();
    }

    private static List<Roll> rolls(ShootInfo shoot, CommandContext context) {
        RollsOfDay.finishedUnread(context.state(), context.now()).forEach(context::roll);
        return context.state().rolls().values().stream()
                .filter(it -> it.state() != Roll.State.WITHDRAWN)
                .filter(it ->
                        it.assignment().filter(shoot.assignment()::isSameShoot).isPresent())
                .toList();
    }

    private static String words(ShootInfo shoot) {
        Place place = shoot.place();
        String where = place.name().map(it -> ", at " + it).orElse("")
                + place.coordinates().map(it -> " (" + it + ")").orElse("");
        return shoot.name()
                + (where.isEmpty() ? ": no place said" : where)
                + place.coordinates().map(it -> whoMayKnow(place)).orElse("");
    }

    private static String whoMayKnow(Place place) {
        return place.isShared()
                ? ". Exports and sidecars hold the coordinates; place private takes them out"
                : ". The coordinates stay on this machine; place share lets exports and sidecars have them";
    }

    private static Json.Obj fields(ShootInfo shoot) {
        return Json.object()
                .and("name", shoot.name())
                .and("place", shoot.place().name())
                .and("shared", shoot.place().isShared());
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return Completions.once(before, List.of("share", "private"));
    }
}
