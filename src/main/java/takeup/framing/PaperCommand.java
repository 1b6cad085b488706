package takeup.framing;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.PaperEvent;
import takeup.day.PaperInput;
import takeup.prompt.CommandRejected;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.text.English;

/** Begins the reading of a paper form, and ends it. */
public enum PaperCommand implements Command {
    PAPER(CommandInfo.of("paper", "reads a paper form back, a line a frame: 7 5.6 125 veil; done ends it")
            .usage("paper r1")
            .form("paper r1", "reads the form of R0001 back; alone: of the roll in hand")
            .form("7 5.6 125 veil", "frame 7, and words; 7-9 for a row, \" for the same as above")
            .form("done", "ends it, and names the lines that did not fit")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER)),
    DONE(CommandInfo.of("done", "ends the reading of a paper form, and names the lines that did not fit")
            .needs(Need.PAPER)
            .with(CommandInfo.Trait.WORKS_DURING_PAPER));

    private final CommandInfo info;

    PaperCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        return this == PAPER ? begin(arguments, context) : end(arguments, context);
    }

    private static Outcome begin(Arguments arguments, CommandContext context) {
        Optional<RollId> id = context.rollNumber(arguments.rest());
        Arguments.alone(
                "paper",
                arguments
                        .rest()
                        .subList(id.isPresent() ? 1 : 0, arguments.rest().size()));
        Roll roll = context.roll(id, "paper r7");
        if (roll.state() == Roll.State.WITHDRAWN) {
            throw new CommandRejected(
                    "the loading of " + roll.id() + " was taken back: load it first, then read its paper");
        }
        // What was set aside of a form that this one follows.
        String aside = context.state()
                .day()
                .paper()
                .filter(it -> !it.aside().isEmpty())
                .map(it -> " " + aside(it))
                .orElse("");
        return context.reply(new PaperEvent.PaperStarted(roll.id()))
                .event("paper")
                .says(
                        "Reading the paper of " + roll.id() + ", "
                                + roll.film().stock().name() + ", next frame " + roll.next(),
                        ": a line a frame, 7 5.6 125 and words; \" is the same as above. done ends it." + aside)
                .fields(CommandContext.fields(roll).and("frame", roll.next()))
                .accepted();
    }

    private static Outcome end(Arguments arguments, CommandContext context) {
        arguments.alone();
        PaperInput paper = context.state()
                .day()
                .paper()
                .orElseThrow(() -> new CommandRejected("no paper is being read: paper r7 begins"));
        Roll roll = context.roll(paper.roll());
        long open = roll.frames().stream()
                .filter(it -> it.kind() == Frame.Kind.UNLOGGED)
                .count();
        return context.reply(new PaperEvent.PaperFinished())
                .event("paper")
                .says(
                        "The paper of " + roll.id() + " is read",
                        ": " + roll.framesUsed() + " of " + roll.film().framesNominal() + " frames"
                                + (open == 0 ? "" : ", " + open + " of them not written down") + ". "
                                + (paper.aside().isEmpty() ? "Every line fitted." : aside(paper)))
                .fields(CommandContext.fields(roll).and("aside", paper.aside()).and("unlogged", open))
                .accepted();
    }

    private static String aside(PaperInput paper) {
        int count = paper.aside().size();
        return English.count(count, "line") + " did not fit, and " + English.agree(count, "is", "are")
                + " kept in the day's journal: " + String.join(" / ", paper.aside()) + ". Type "
                + English.agree(count, "it", "them") + " right behind paper "
                + paper.roll().typed() + ".";
    }
}
