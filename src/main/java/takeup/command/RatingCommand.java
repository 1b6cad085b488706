package takeup.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.advice.RatingBracket;
import takeup.day.CameraSetup;
import takeup.day.DayEvent;
import takeup.exposure.Light;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.prompt.CommandRejected;
import takeup.report.StatusText;
import takeup.review.RatingTest;
import takeup.roll.Condition;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;
import takeup.text.English;
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
        return read(context, arguments.rest());
    }

    static Outcome read(CommandContext context, List<String> rest) {
        Arguments.alone("rating", rest);
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
        boolean isBegun = isBegun(roll);
        if (isBegun && cards.isSet(inHand.setting(), card)) {
            return logged(context, roll, camera, inHand, cards, card, light);
        }
        List<JournalEntry> entries = new ArrayList<>();
        if (!isBegun) {
            entries.add(new JournalEntry.OnRoll(
                    roll.id(),
                    new RollEvent.ConditionNoted(new Condition(Condition.Kind.OTHER, Optional.of(RatingTest.ORDER)))));
        }
        entries.add(
                new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(camera.key(), inHand.with(cards.change(card)))));
        ShootState after = context.after(entries);
        String text = asks(roll, cards, card) + " Space, or the word rating, logs it."
                + (isBegun ? "" : " The lab is told \"no density correction\".");
        return context.does(entries, after, context.stateAnswer(after, text, List.of()), List.of());
    }

    private static String asks(Roll roll, RatingBracket cards, RatingBracket.Card card) {
        return English.capitalised(place(cards, card)) + ": set " + card.aperture() + " " + cards.time() + ", with "
                + roll.id() + " " + card.words() + " in the picture.";
    }

    private static String place(RatingBracket cards, RatingBracket.Card card) {
        return "card " + cards.place(card) + " of " + cards.cards().size();
    }

    /** Logs a card, and puts the next one's setting in hand; after the last the best for the roll's index. */
    private static Outcome logged(
            CommandContext context,
            Roll roll,
            Camera camera,
            CameraSetup inHand,
            RatingBracket cards,
            RatingBracket.Card card,
            Light light) {
        Optional<RatingBracket.Card> next = cards.after(card, roll);
        Optional<SettingPatch> then = next.map(cards::change)
                .or(() -> StatusText.asking(context.state())
                        .flatMap(it -> it.advice(light).bestOne())
                        .filter(it -> it.time().isPresent())
                        .map(it -> SettingPatch.aperture(it.aperture())
                                .and(SettingPatch.time(it.time().get()))));
        List<JournalEntry> more = then.map(it -> List.<JournalEntry>of(
                        new JournalEntry.OnDay(new DayEvent.CameraSetupChanged(camera.key(), inHand.with(it)))))
                .orElse(List.of());
        Outcome.Accepted does =
                FrameCommands.exposed(context, roll, inHand.setting(), RatingTest.NOTE + card.words(), more);
        String text = does.answer().text() + " "
                + next.map(it -> asks(roll, cards, it))
                        .orElse("The test has all its cards; the setting in hand is for EI "
                                + roll.film().index() + " again.");
        return new Outcome.Accepted(
                does.entries(),
                does.after(),
                new Outcome.Answer(
                        does.answer().event(),
                        text,
                        does.answer().fields(),
                        does.answer().warnings()),
                does.screenAction(),
                does.export());
    }

    private static boolean isBegun(Roll roll) {
        return roll.conditions().stream().anyMatch(it -> it.words().equals(Optional.of(RatingTest.ORDER)));
    }

    /**
     * The card that the next frame of the roll in hand carries, while its setting is in hand and no other frame came
     * between.
     */
    private static Optional<String> card(ShootState s, boolean isLong) {
        Optional<Roll> roll = s.rollInHand().filter(RatingCommand::isBegun);
        if (roll.isEmpty() || s.cameraInHand().isEmpty() || s.day().light().isEmpty() || !isPutInHand(s, roll.get())) {
            return Optional.empty();
        }
        Setting setting = s.inHand().setting();
        Optional<RatingBracket> cards = setting.flash()
                ? Optional.empty()
                : RatingBracket.of(
                        s.cameraInHand().get(),
                        setting,
                        roll.get(),
                        s.day().light().get());
        Optional<RatingBracket.Card> card = cards.flatMap(it -> it.next(roll.get()))
                .filter(it -> cards.get().isSet(setting, it));
        return card.map(it -> isLong
                ? English.capitalised(place(cards.get(), it)) + ": "
                        + roll.get().id() + " " + it.words()
                : it.words());
    }

    /** Whether the setting in hand was put there since the newest frame, and is not that frame's own. */
    private static boolean isPutInHand(ShootState s, Roll roll) {
        Set<Long> undone = ShootState.undone(s.history());
        for (int i = s.history().size() - 1; i >= 0; i--) {
            List<JournalEntry> entries = s.history().get(i).entries();
            for (int j = entries.size() - 1;
                    j >= 0 && !undone.contains(s.history().get(i).step());
                    j--) {
                if (entries.get(j) instanceof JournalEntry.OnDay onDay
                        && onDay.event() instanceof DayEvent.CameraSetupChanged changed
                        && changed.camera().equals(roll.camera().key())) {
                    return true;
                }
                if (entries.get(j) instanceof JournalEntry.OnRoll onRoll
                        && onRoll.roll().equals(roll.id())
                        && onRoll.event() instanceof RollEvent.Added) {
                    return false;
                }
            }
        }
        return false;
    }

    /** What the card in the picture must say, while a test goes on: {@code Card 2 of 6: R0007 1/2 STOP UNDER}. */
    public static Optional<String> card(ShootState s) {
        return card(s, true);
    }

    /** The line that one press of the space bar stands for. */
    public static String space(ShootState s) {
        return card(s, false).isPresent() ? "rating" : ".";
    }
}
