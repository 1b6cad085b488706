package takeup.shoot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import takeup.day.DayEvent;
import takeup.day.InHand;
import takeup.exposure.Light;
import takeup.kit.Camera;
import takeup.review.RatingTest;
import takeup.roll.Change;
import takeup.roll.Condition;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;

/**
 * The word {@code rating}: a bracket on one roll, frame by frame, each with a card in the picture. The first time it
 * tells the lab and puts the first card's setting in hand; then it logs the card and goes on to the next. Where the
 * setting in hand is another one by then, it is put right first.
 */
public final class RatingLines {
    private final Interpreter in;

    RatingLines(Interpreter in) {
        this.in = in;
    }

    Outcome read(List<String> rest) {
        Interpreter.alone("rating", rest);
        Roll roll = in.roll();
        Camera camera = in.camera();
        if (camera.isAutomatic()) {
            throw new Refusal(
                    camera.name() + " sets itself: a rating test needs a camera whose aperture is set by hand");
        }
        InHand inHand = in.s.inHand(camera);
        if (inHand.setting().flash()) {
            throw new Refusal("a rating test is shot without flash: flash off");
        }
        Light light =
                in.s.day().light().orElseThrow(() -> new Refusal("no light reading today: take one first (m 5.6 125)"));
        RatingCards cards = RatingCards.of(camera, inHand.setting(), roll, light)
                .orElseThrow(() -> new Refusal("this lens and shutter hold no bracket in this light (EV "
                        + takeup.exposure.Plain.decimals(light.ev100().stops(), 1) + "): try in other light"));
        RatingCards.Card card = cards.next(roll)
                .orElseThrow(() -> new Refusal("the rating test on " + roll.id()
                        + " has all its cards; once the scans are back: takeup rating " + roll.id()));
        boolean isBegun = isBegun(roll);
        if (isBegun && cards.isSet(inHand.setting(), card)) {
            return logged(roll, camera, inHand, cards, card, light);
        }
        List<Entry> entries = new ArrayList<>();
        if (!isBegun) {
            entries.add(new Entry.OnRoll(
                    roll.id(),
                    new RollEvent.Conditioned(new Condition(Condition.Kind.OTHER, Optional.of(RatingTest.ORDER)))));
        }
        entries.add(new Entry.OnDay(new DayEvent.Changed(camera.key(), inHand.with(cards.change(card)))));
        Situation after = in.after(entries);
        String text = asks(roll, cards, card) + " Space, or the word rating, logs it."
                + (isBegun ? "" : " The lab is told \"no density correction\".");
        return in.does(entries, after, in.state(after, text, List.of()), List.of());
    }

    private static String asks(Roll roll, RatingCards cards, RatingCards.Card card) {
        return Interpreter.upper(place(cards, card)) + ": set " + card.aperture() + " " + cards.time() + ", with "
                + roll.id() + " " + card.words() + " in the picture.";
    }

    private static String place(RatingCards cards, RatingCards.Card card) {
        return "card " + cards.place(card) + " of " + cards.cards().size();
    }

    /** Logs a card, and puts the next one's setting in hand; after the last the best for the roll's index. */
    private Outcome logged(
            Roll roll, Camera camera, InHand inHand, RatingCards cards, RatingCards.Card card, Light light) {
        Optional<RatingCards.Card> next = cards.after(card, roll);
        Optional<Change> then = next.map(cards::change)
                .or(() -> State.asking(in.s)
                        .flatMap(it -> it.advice(light).bestOne())
                        .filter(it -> it.time().isPresent())
                        .map(it -> Change.aperture(it.aperture())
                                .and(Change.time(it.time().get()))));
        List<Entry> more = then.map(
                        it -> List.<Entry>of(new Entry.OnDay(new DayEvent.Changed(camera.key(), inHand.with(it)))))
                .orElse(List.of());
        Outcome.Does does = new FrameLines(in).exposed(roll, inHand.setting(), RatingTest.NOTE + card.words(), more);
        String text = does.answer().text() + " "
                + next.map(it -> asks(roll, cards, it))
                        .orElse("The test has all its cards; the setting in hand is for EI "
                                + roll.film().index() + " again.");
        return new Outcome.Does(
                does.entries(),
                does.after(),
                new Outcome.Answer(
                        does.answer().event(),
                        text,
                        does.answer().fields(),
                        does.answer().warnings()),
                does.act(),
                does.settle());
    }

    private static boolean isBegun(Roll roll) {
        return roll.conditions().stream().anyMatch(it -> it.words().equals(Optional.of(RatingTest.ORDER)));
    }

    /**
     * The card that the next frame of the roll in hand carries, while its setting is in hand and no other frame came
     * between.
     */
    private static Optional<String> card(Situation s, boolean isLong) {
        Optional<Roll> roll = s.roll().filter(RatingLines::isBegun);
        if (roll.isEmpty() || s.camera().isEmpty() || s.day().light().isEmpty() || !isPutInHand(s, roll.get())) {
            return Optional.empty();
        }
        Setting setting = s.inHand().setting();
        Optional<RatingCards> cards = setting.flash()
                ? Optional.empty()
                : RatingCards.of(
                        s.camera().get(), setting, roll.get(), s.day().light().get());
        Optional<RatingCards.Card> card = cards.flatMap(it -> it.next(roll.get()))
                .filter(it -> cards.get().isSet(setting, it));
        return card.map(it -> isLong
                ? Interpreter.upper(place(cards.get(), it)) + ": " + roll.get().id() + " " + it.words()
                : it.words());
    }

    /** Whether the setting in hand was put there since the newest frame, and is not that frame's own. */
    private static boolean isPutInHand(Situation s, Roll roll) {
        Set<Long> undone = Situation.undone(s.happened());
        for (int i = s.happened().size() - 1; i >= 0; i--) {
            List<Entry> entries = s.happened().get(i).entries();
            for (int j = entries.size() - 1;
                    j >= 0 && !undone.contains(s.happened().get(i).step());
                    j--) {
                if (entries.get(j) instanceof Entry.OnDay onDay
                        && onDay.event() instanceof DayEvent.Changed changed
                        && changed.camera().equals(roll.camera().key())) {
                    return true;
                }
                if (entries.get(j) instanceof Entry.OnRoll onRoll
                        && onRoll.roll().equals(roll.id())
                        && onRoll.event() instanceof RollEvent.Added) {
                    return false;
                }
            }
        }
        return false;
    }

    /** What the card in the picture must say, while a test goes on: {@code Card 2 of 6: R0007 1/2 STOP UNDER}. */
    public static Optional<String> card(Situation s) {
        return card(s, true);
    }

    /** The line that one press of the space bar stands for. */
    static String space(Situation s) {
        return card(s, false).isPresent() ? "rating" : ".";
    }
}
