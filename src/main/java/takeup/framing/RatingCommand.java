package takeup.framing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceRequest;
import takeup.advice.RatingBracket;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.day.CameraEvent;
import takeup.day.CameraSetup;
import takeup.exposure.Light;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.RatingText;
import takeup.review.RatingTest;
import takeup.roll.Condition;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.SettingPatch;
import takeup.text.Plain;

/**
 * The word {@code rating}: a bracket on one roll, frame by frame, each with a card in the picture. The first time it
 * tells the lab and puts the first card's setting in hand; then it logs the card and goes on to the next. Where the
 * setting in hand is another one by then, it is put right first.
 */
public final class RatingCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of(
                    "rating", "a rating test: a bracket with cards, frame by frame")
            .form(
                    "rating",
                    "begins the test on this roll, or logs the card whose setting is in hand; Space does that too")
            .needs(Need.FILM, Need.LIGHT);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        arguments.alone();
        Roll roll = context.roll();
        Camera camera = context.camera();
        if (camera.isAutomatic()) {
            throw new CommandRejected(
                    camera.name() + " sets itself: a rating test needs a camera whose aperture is set by hand");
        }
        CameraSetup inHand = context.state().inHand(camera);
        if (inHand.setting().flash()) {
            throw new CommandRejected("a rating test is shot without flash: flash off");
        }
        Light light = context.state()
                .day()
                .light()
                .orElseThrow(() -> new CommandRejected("no light reading today: take one first (m 5.6 125)"));
        RatingBracket cards = RatingBracket.of(camera, inHand.setting(), roll, light)
                .orElseThrow(() -> new CommandRejected("this lens and shutter hold no bracket in this light (EV "
                        + Plain.decimals(light.ev100().stops(), 1) + "): try in other light"));
        RatingBracket.Card card = cards.next(roll)
                .orElseThrow(() -> new CommandRejected("the rating test on " + roll.id()
                        + " has all its cards; once the scans are back: takeup rating " + roll.id()));
        RatingBracket.NextCard next = new RatingBracket.NextCard(roll, cards, card);
        return RatingBracket.isBegun(context.state(), roll) && cards.isSet(inHand.setting(), card)
                ? logged(next, light, context)
                : putInHand(next, context);
    }

    /** Puts the setting of a card in hand; the first time it tells the lab, too. */
    private static Outcome putInHand(RatingBracket.NextCard next, CommandContext context) {
        Roll roll = next.roll();
        boolean isBegun = RatingBracket.isBegun(context.state(), roll);
        List<JournalEntry> entries = new ArrayList<>();
        if (!isBegun) {
            entries.add(new JournalEntry.OnRoll(
                    roll.id(),
                    new NoteEvent.ConditionNoted(new Condition(Condition.Kind.OTHER, Optional.of(RatingTest.ORDER)))));
        }
        entries.add(setting(next.bracket().change(next.card()), context));
        return context.reply(entries)
                .says(
                        RatingText.instruction(next),
                        " Space, or the word rating, logs it."
                                + (isBegun ? "" : " The lab is told \"no density correction\"."))
                .titled("rating test on " + roll.id())
                .accepted();
    }

    private static JournalEntry setting(SettingPatch change, CommandContext context) {
        Camera camera = context.camera();
        return new JournalEntry.OnDay(new CameraEvent.CameraSetupChanged(
                camera.key(), context.state().inHand(camera).with(change)));
    }

    /** Logs a card, and puts the next one's setting in hand; after the last the best for the roll's index. */
    private static Outcome logged(RatingBracket.NextCard card, Light light, CommandContext context) {
        Roll roll = card.roll();
        RatingBracket cards = card.bracket();
        Optional<RatingBracket.Card> next = cards.after(card.card(), roll);
        Optional<SettingPatch> then = next.map(cards::change)
                .or(() -> AdviceRequest.inHand(context.state())
                        .flatMap(it -> it.advice(light).bestOne())
                        .filter(it -> it.time().isPresent())
                        .map(it -> SettingPatch.aperture(it.aperture())
                                .and(SettingPatch.time(it.time().get()))));
        Outcome.Accepted logged = NewFrames.exposed(
                        context.setting(),
                        1,
                        Optional.of(RatingTest.NOTE + card.card().words()))
                .reply(context, then.map(it -> setting(it, context)).stream().toList())
                .accepted();
        String more = next.map(it -> RatingText.instruction(new RatingBracket.NextCard(roll, cards, it)))
                .orElse("The test has all its cards; the setting in hand is for EI "
                        + roll.film().index() + " again.");
        return logged.answering(logged.answer().saying(logged.answer().text() + " " + more));
    }

    /** The line that one press of the space bar stands for. */
    public static String space(ShootState s) {
        return RatingBracket.inHand(s).isPresent() ? "rating" : ".";
    }
}
