package takeup.framing;

import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.roll.Frame;

/** Frames without a setting: wasted ones, and those that nobody wrote down. */
public enum BareFrameCommand implements Command {
    BLANK(CommandInfo.of("blank", "wasted frames")
            .usage("blank x2")
            .form("blank", "one wasted frame")
            .form("blank x2 ; lens cap", "two, and why")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE)),
    UNLOGGED(CommandInfo.of("unlogged", "exposed, but nobody wrote them down")
            .usage("unlogged x3")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE)),
    TALLY(CommandInfo.of("tally", "counts frames that are written down later; Ctrl-T counts one")
            .usage("tally x3")
            .form("tally", "one frame counted, its setting to be filled in later")
            .form("tally x3", "three of them")
            .form("fix 1 4 60", "fills one in; so does a line of paper")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.TAKES_NOTE));

    private final CommandInfo info;

    BareFrameCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Frame.Kind kind = this == BLANK ? Frame.Kind.BLANK : Frame.Kind.UNLOGGED;
        context.roll();
        int count = FrameNumbering.count(kind.toString(), arguments.rest());
        return NewFrames.bare(kind, count, arguments.note()).outcome(context, Optional.empty());
    }
}
