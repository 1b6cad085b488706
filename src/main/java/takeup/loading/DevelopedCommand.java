package takeup.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.prompt.RecipeParser;
import takeup.roll.DevelopedIn;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code developed r1 in fine-grain 1+1 9m45s at 20C}: how a finished roll was developed, at home or by a lab. */
public final class DevelopedCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("developed", "how a roll was developed")
            .usage("developed r7 in fine-grain 1+1 9m45s at 20C", "developed r7")
            .form("developed r7 in fine-grain 1+1 9m45s at 20C", "developer, time and temperature")
            .form("developed r7 in fine-grain 1+1 9m45s at 20C agitation 10s a minute by me", "and how, and by whom")
            .form("developed r7 by the lab on 2026-09-20", "as the last roll of this film, by somebody else, that day")
            .form("developed r7", "as the last roll of this film")
            .form("developed", "which rolls wait for it")
            .needs(Need.ANY_ROLL);

    /** So many rolls are gone back for the last recipe. Opinion. */
    private static final int FAR = 40;

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        if (arguments.rest().isEmpty()) {
            return waiting(context);
        }
        RollId id = context.rollNumber(arguments.rest())
                .orElseThrow(() -> new CommandRejected("say which roll: developed r7 and how"));
        Roll roll = context.roll(Optional.of(id), "developed r7");
        if (roll.state() != Roll.State.FINISHED) {
            throw new CommandRejected(id + " is not finished: unload it first");
        }
        RecipeParser typed =
                RecipeParser.of(arguments.textAfterWords(2), context.now().toLocalDate());
        DevelopedIn developed =
                typed.whole().orElseGet(() -> last(roll, context).again(typed.by(), typed.on()));
        Reply reply = context.reply(context.on(roll, new NoteEvent.Developed(developed)));
        return reply.event("fix")
                .says(id + " developed", " in " + developed.words() + ".")
                .fields(CommandContext.fields(roll).and("developer", developed.developer()))
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    /** The recipe of the last roll of the same film. */
    private static DevelopedIn last(Roll roll, CommandContext context) {
        String film = roll.film().stock().key();
        for (RollId id : newest(context)) {
            Roll earlier = context.roll(Optional.of(id), "");
            if (!id.equals(roll.id())
                    && earlier.developed().isPresent()
                    && earlier.film().stock().key().equals(film)) {
                return earlier.developed().get();
            }
        }
        throw new CommandRejected("no earlier roll of " + film + " has a recipe: developed "
                + roll.id().typed() + " in fine-grain 1+1 9m45s at 20C");
    }

    /** The newest rolls of this writer; those that were not read yet are read in one by one. */
    private static List<RollId> newest(CommandContext context) {
        return new TreeSet<>(context.state().known())
                .descendingSet().stream()
                        .filter(it -> it.letters().equals(context.letters()))
                        .limit(FAR)
                        .toList();
    }

    private static Outcome waiting(CommandContext context) {
        List<String> waiting = new ArrayList<>();
        for (RollId id : newest(context)) {
            Roll roll = context.roll(Optional.of(id), "");
            if (roll.state() == Roll.State.FINISHED && roll.developed().isEmpty()) {
                waiting.add(0, id + " (" + roll.film().stock().key() + ")");
            }
        }
        return context.says(
                "state",
                waiting.isEmpty()
                        ? "No roll waits for development."
                        : "Waiting for development: " + String.join(", ", waiting) + ".",
                Json.object().and("waiting", waiting));
    }
}
