package takeup.dispatch;

import java.util.ArrayList;
import java.util.List;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.FrameNumbering;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.ScreenAction;
import takeup.framing.FrameDescription;
import takeup.json.Json;
import takeup.report.RollText;
import takeup.report.StatusJson;
import takeup.report.StatusText;
import takeup.roll.Roll;
import takeup.text.English;

/** Words that show or say how things stand, and log nothing. */
public enum ViewCommand implements Command {
    SAY(CommandInfo.of("say", "the state in words")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER)),
    MORE(CommandInfo.of("more", "the last answer whole, until the next key")
            .with(CommandInfo.Trait.WORKS_DURING_PAPER)),
    FRAMES(CommandInfo.of("frames", "the frames of this roll")
            .needs(Need.FILM)
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER)),
    ROLLS(CommandInfo.of("rolls", "all rolls")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER)),
    BIG(CommandInfo.of("big", "the counter across the room")
            .with(CommandInfo.Trait.SHOWS_ONLY, CommandInfo.Trait.WORKS_DURING_PAPER));

    private final CommandInfo info;

    ViewCommand(CommandInfo info) {
        this.info = info;
    }

    @Override
    public CommandInfo info() {
        return info;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Json.Obj state = StatusJson.of(context.state());
        return switch (this) {
            case SAY -> context.says("state", StatusText.words(context.state(), context.now()), state);
            case MORE -> context.shows(new ScreenAction.ShowAgain(), "state", "Every answer here is whole.", state);
            case FRAMES ->
                context.shows(new ScreenAction.Show(ScreenAction.View.FRAMES), "state", frames(context), state);
            case ROLLS -> context.shows(new ScreenAction.Show(ScreenAction.View.ROLLS), "state", rolls(context), state);
            case BIG -> context.shows(new ScreenAction.ToggleBigCounter(), "state", next(context), state);
        };
    }

    private static String frames(CommandContext context) {
        Roll roll = context.roll();
        if (roll.frames().isEmpty()) {
            return roll.id() + ": no frame yet.";
        }
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= roll.frames().size(); i++) {
            String words = FrameDescription.of(roll, roll.frames().get(from));
            if (i == roll.frames().size()
                    || !words.equals(FrameDescription.of(roll, roll.frames().get(i)))
                    || roll.frames().get(i).number() != roll.frames().get(i - 1).number() + 1) {
                all.add(FrameNumbering.words(
                                roll.frames().get(from).number(),
                                roll.frames().get(i - 1).number()) + ", " + words);
                from = i;
            }
        }
        return roll.id() + ": " + String.join("; ", all) + ".";
    }

    private static String rolls(CommandContext context) {
        List<String> all = new ArrayList<>();
        context.state()
                .rolls()
                .values()
                .forEach(it -> all.add(
                        it.id() + ", " + it.film().stock().name() + " in " + it.place() + ", " + it.state() + ", "
                                + (it.state() == Roll.State.OPEN || it.state() == Roll.State.REWOUND
                                        ? RollText.left(it)
                                        : it.framesUsed() + " frames")));
        int earlier = context.state().known().size() - context.state().rolls().size();
        List<String> sentences = new ArrayList<>();
        if (!all.isEmpty()) {
            sentences.add(String.join("; ", all) + ".");
        }
        if (earlier > 0) {
            sentences.add("Not read here, since finished before: " + English.count(earlier, "roll")
                    + "; takeup rolls lists all.");
        }
        return sentences.isEmpty() ? "No roll yet." : String.join(" ", sentences);
    }

    private static String next(CommandContext context) {
        return context.state()
                .rollInHand()
                .map(it -> "Next frame " + it.next() + ", " + RollText.left(it) + ".")
                .orElse("No film in hand.");
    }
}
