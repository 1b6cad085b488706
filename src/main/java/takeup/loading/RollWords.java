package takeup.loading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.day.CameraEvent;
import takeup.day.CameraPlace;
import takeup.day.DayEvent;
import takeup.history.JournalEntry;
import takeup.json.Json;
import takeup.kit.Warning;
import takeup.prompt.CommandRejected;
import takeup.report.RollText;
import takeup.roll.Roll;
import takeup.roll.RollChange;
import takeup.roll.RollEvent;
import takeup.roll.RollId;

/** What the words about a whole roll have in common. */
final class RollWords {
    private RollWords() {}

    /** A roll number in front of free words: {@code r7} is one, {@code f8} is a word. */
    static Optional<RollId> named(List<String> words, CommandContext context) {
        return context.rollNumber(words)
                .filter(it -> it.letters().equals(context.letters())
                        || context.state().known().contains(it));
    }

    /** The same where a stock could be called so: {@code bw400}. */
    static Optional<RollId> namedNotStock(List<String> words, CommandContext context) {
        return named(words, context)
                .filter(it -> context.state().kit().stock(words.get(0)).isEmpty());
    }

    /** Refuses to put a film where another one is. */
    static void refuseTakenPlace(CameraPlace place, CommandContext context) {
        context.state().rollIn(place).ifPresent(it -> {
            throw new CommandRejected(it.id() + " (" + it.film().stock().name() + ", " + RollText.left(it) + ") is in "
                    + place + ": unload it first");
        });
    }

    /** Asks first where a roll that cannot be read may be in the place. */
    static Outcome asking(Outcome.Accepted loaded, CameraPlace place, CommandContext context) {
        return context.state()
                .unreadableIn(place)
                .map(it -> (Outcome) new Outcome.NeedsConfirmation(
                        it + " cannot be read, and may be in " + place
                                + " (takeup check says why); yes loads all the same",
                        loaded))
                .orElse(loaded);
    }

    /** The entries of a film that goes into the camera in hand: a camera that was not used yet is taken up. */
    static List<JournalEntry> putIn(RollId id, RollEvent event, CommandContext context) {
        CameraPlace place = context.state().placeInHand().orElseThrow();
        List<JournalEntry> entries = new ArrayList<>();
        if (!context.state().day().used().contains(place)) {
            entries.add(new JournalEntry.OnDay(new CameraEvent.CameraSelected(place)));
        }
        entries.add(new JournalEntry.OnRoll(id, event));
        return entries;
    }

    /** Puts right what was said of a roll. */
    static Outcome.Accepted corrected(
            Roll roll, RollChange change, Function<Roll, String> text, CommandContext context) {
        List<JournalEntry> entries = context.on(roll, new RollEvent.RollCorrected(change));
        if (roll.state() == Roll.State.FINISHED) {
            change.label()
                    .name()
                    .ifPresent(it -> entries.add(new JournalEntry.OnDay(new DayEvent.RollNamed(roll.id(), it))));
        }
        Reply reply = context.reply(entries);
        Roll now = reply.roll(roll.id());
        List<Warning> before = roll.film().warnings();
        return reply.event("fix")
                .says(roll.id().toString(), text.apply(now))
                .titled("correction of " + roll.id())
                .fields(fields(now))
                .warnings(now.film().warnings().stream()
                        .filter(it -> !before.contains(it))
                        .toList())
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    static Json.Obj fields(Roll roll) {
        return Json.object()
                .and("roll", roll.id())
                .and("camera", roll.camera().key())
                .and("back", roll.back())
                .and("stock", roll.film().stock().key())
                .and("filmSize", roll.film().size())
                .and("exposureIndex", roll.film().index().arithmetic())
                .and("pushStops", roll.film().development().pushStops())
                .and("process", roll.film().development().process())
                .and("development", roll.film().developmentWords())
                .and("framesNominal", roll.film().framesNominal())
                .and("framesUsed", roll.framesUsed())
                .and("framesLeft", roll.framesLeft())
                .and("state", roll.state());
    }
}
