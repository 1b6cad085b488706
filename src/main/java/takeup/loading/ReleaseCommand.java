package takeup.loading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.KnownNames;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.json.Json;
import takeup.prompt.CommandRejected;
import takeup.prompt.SceneWords;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.Release;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code release Anna, Ben}: who on a roll signed a model release. It is private, and in no file that is handed on. */
public final class ReleaseCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("release", "who signed a model release; it stays here")
            .usage("release Anna, Ben", "release r7 3-5")
            .form("release Anna, Ben", "they signed, for all frames of the roll in hand")
            .form("release 1 ; on paper", "all who are on frame 1 did, and where that is kept")
            .form("release r2 nobody", "nobody did, on another roll")
            .form("release r2", "who did, and who did not")
            .needs(Need.ANY_ROLL)
            .with(CommandInfo.Trait.TAKES_NOTE);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Optional<RollId> id = RollWords.named(arguments.rest(), context);
        Roll roll = context.roll(id, "release r7 Anna");
        String typed = namesOf(arguments, id.isPresent() ? 2 : 1);
        if (typed.isEmpty()) {
            return context.says("release", roll.id() + ": " + words(roll) + ".", fields(roll));
        }
        List<String> people = isNumbers(typed) ? onFrames(typed, roll) : spelled(typed, roll, context);
        Reply reply = context.reply(context.on(roll, new NoteEvent.Released(people, arguments.note())));
        Roll now = reply.roll(roll.id());
        return reply.event("release")
                .says("Releases of " + roll.id(), ": " + words(now) + ".")
                .fields(fields(now))
                .accepted();
    }

    private static String namesOf(Arguments arguments, int words) {
        String text = arguments.textAfterWords(words);
        int semicolon = arguments.line().indexOf(';') < 0 ? -1 : text.indexOf(';');
        boolean isNoteAlone =
                arguments.note().isPresent() && arguments.tokens().words().size() <= words;
        return isNoteAlone ? "" : (semicolon < 0 ? text : text.substring(0, semicolon)).strip();
    }

    private static boolean isNumbers(String typed) {
        return typed.matches("\\d{1,3}(-\\d{1,3})?");
    }

    private static List<String> onFrames(String typed, Roll roll) {
        String[] ends = typed.split("-");
        int from = FrameNumbering.number(ends[0], "release 7");
        int to = FrameNumbering.number(ends[ends.length - 1], "release 3-5");
        Set<String> people = new LinkedHashSet<>();
        for (Frame frame : roll.frames()) {
            if (frame.number() >= from && frame.number() <= to) {
                people.addAll(frame.scene().people());
            }
        }
        if (people.isEmpty()) {
            throw new CommandRejected("nobody is named on " + FrameNumbering.words(from, to) + " of " + roll.id()
                    + ": fix " + roll.id().typed() + " " + typed + " with Anna; or name who signed: release Anna");
        }
        return List.copyOf(people);
    }

    private static List<String> spelled(String typed, Roll roll, CommandContext context) {
        List<String> known = new ArrayList<>(onRoll(roll));
        known.addAll(KnownNames.people(context.state(), context.now().toLocalDate()));
        return new SceneWords("", Optional.of(SceneWords.people(typed)), Optional.empty())
                .spelledAs(known, List.of())
                .people()
                .orElseThrow();
    }

    private static Set<String> onRoll(Roll roll) {
        Set<String> people = new LinkedHashSet<>();
        roll.frames().forEach(it -> people.addAll(it.scene().people()));
        return people;
    }

    private static Set<String> unsigned(Roll roll) {
        Set<String> people = new LinkedHashSet<>();
        roll.frames().forEach(it -> people.addAll(roll.notes().unreleased(it)));
        return people;
    }

    private static String words(Roll roll) {
        List<String> signed =
                roll.notes().releases().stream().map(Release::toString).toList();
        Set<String> others = unsigned(roll);
        return (signed.isEmpty() ? "nobody signed a release" : "signed by " + String.join("; ", signed))
                + (others.isEmpty() ? "" : "; not by " + String.join(", ", others));
    }

    private static Json.Obj fields(Roll roll) {
        return CommandContext.fields(roll)
                .and(
                        "released",
                        roll.notes().releases().stream().map(Release::name).toList())
                .and("unreleased", List.copyOf(unsigned(roll)));
    }
}
