package takeup.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.day.CameraEvent;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Light;
import takeup.exposure.LightPath;
import takeup.history.JournalEntry;
import takeup.history.JournalStep;
import takeup.history.ShootState;
import takeup.kit.Camera;
import takeup.kit.Lens;
import takeup.review.RatingTest;
import takeup.roll.Condition;
import takeup.roll.ExposureResult;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.Setting;
import takeup.roll.SettingPatch;

/**
 * The bracket of a rating test for the light that was read last: one time, and an aperture for each card. Common
 * practice brackets by the aperture alone, half stops about box speed and two stops over it.
 *
 * @param time the time of all frames
 * @param cards the cards that this lens and shutter come to, from thin to dense
 */
public record RatingBracket(ExposureTime time, List<Card> cards) {
    private static final double[] STOPS = {-1, -0.5, 0, 0.5, 1, 2};
    /** A mark so near to a card's stops will do; what it really comes to is worked out from the frame later. */
    private static final double NEAR = 0.2;
    /** Fewer cards bracket nothing. */
    static final int FEWEST = 4;

    /** A card and the aperture for it. */
    public record Card(double stops, Aperture aperture) {
        /** What the card in the picture says: {@code 1/2 STOP UNDER}. */
        public String words() {
            return RatingTest.card(stops);
        }
    }

    /** The card that the next frame of a roll carries, and the bracket that it is one of. */
    public record NextCard(Roll roll, RatingBracket bracket, Card card) {}

    public RatingBracket {
        cards = List.copyOf(cards);
    }

    /**
     * The bracket; of several times that serve as well the shortest. Empty where no time leaves room for enough cards.
     */
    public static Optional<RatingBracket> of(Camera body, Setting setting, Roll roll, Light light) {
        Camera camera = body.withLens(setting.lens());
        Optional<Lens> lens = setting.lens();
        if (lens.isEmpty() || camera.shutter().isEmpty()) {
            return Optional.empty();
        }
        LightPath path = ExposureResult.path(roll.film(), setting);
        double rated = roll.film().stock().stopsOverBox(roll.film().index()) + setting.biasStops();
        Optional<RatingBracket> best = Optional.empty();
        for (ExposureTime time : camera.shutter().get().marks()) {
            List<Card> cards = new ArrayList<>();
            for (double stops : STOPS) {
                Aperture nearest = null;
                double least = NEAR;
                for (Aperture aperture : lens.get().ring().marks()) {
                    double off = Math.abs(path.error(light.ev100(), aperture, time) + rated - stops);
                    if (off < least) {
                        least = off;
                        nearest = aperture;
                    }
                }
                if (nearest != null) {
                    cards.add(new Card(stops, nearest));
                }
            }
            boolean isBetter = best.isEmpty()
                    || cards.size() > best.get().cards.size()
                    || cards.size() == best.get().cards.size()
                            && time.exactSeconds() < best.get().time.exactSeconds();
            best = cards.size() >= FEWEST && isBetter ? Optional.of(new RatingBracket(time, cards)) : best;
        }
        return best;
    }

    /**
     * The card that the next frame of the roll in hand carries, while its setting is in hand and no other frame came
     * between.
     */
    public static Optional<NextCard> inHand(ShootState s) {
        Optional<Roll> roll = s.rollInHand();
        Setting setting = s.inHand().setting();
        if (roll.isEmpty()
                || s.cameraInHand().isEmpty()
                || s.day().light().isEmpty()
                || setting.flash()
                || !isBegun(s, roll.get())
                || !isPutInHand(s, roll.get())) {
            return Optional.empty();
        }
        return of(s.cameraInHand().get(), setting, roll.get(), s.day().light().get())
                .flatMap(bracket -> bracket.next(roll.get())
                        .filter(it -> bracket.isSet(setting, it))
                        .map(it -> new NextCard(roll.get(), bracket, it)));
    }

    /**
     * Whether the rating test on a roll was begun: a line told the lab of it and put a setting in hand, or frames carry
     * its cards. A condition that was typed in the same words begins none.
     */
    public static boolean isBegun(ShootState s, Roll roll) {
        for (Frame frame : roll.frames()) {
            if (frame.note().isPresent() && frame.note().get().startsWith(RatingTest.NOTE)) {
                return true;
            }
        }
        // Most rolls carry no such condition, and then a long day is not gone through at each frame.
        return isOrdered(roll)
                && s.history()
                        .standingNewestFirst()
                        .anyMatch(it -> it.has(CameraEvent.CameraSetupChanged.class) && tellsLab(it, roll));
    }

    private static boolean isOrdered(Roll roll) {
        for (Condition condition : roll.conditions()) {
            if (isOrder(condition)) {
                return true;
            }
        }
        return false;
    }

    private static boolean tellsLab(JournalStep step, Roll roll) {
        return step.entries().stream()
                .filter(it -> it.isOn(roll.id()))
                .anyMatch(it -> it.as(NoteEvent.ConditionNoted.class)
                        .filter(noted -> isOrder(noted.condition()))
                        .isPresent());
    }

    private static boolean isOrder(Condition condition) {
        return condition.words().equals(Optional.of(RatingTest.ORDER));
    }

    /** Whether the setting in hand was put there since the newest frame, and is not that frame's own. */
    private static boolean isPutInHand(ShootState s, Roll roll) {
        return s.history()
                .standingNewestFirst()
                .flatMap(JournalStep::entriesNewestFirst)
                .filter(it -> isSetting(it, roll) || it.isOn(roll.id()) && it.is(RollEvent.Added.class))
                .findFirst()
                .filter(it -> isSetting(it, roll))
                .isPresent();
    }

    private static boolean isSetting(JournalEntry entry, Roll roll) {
        return entry.as(CameraEvent.CameraSetupChanged.class)
                .filter(it -> it.camera().equals(roll.camera().key()))
                .isPresent();
    }

    /** The first card that no frame of the roll carries yet. */
    public Optional<Card> next(Roll roll) {
        return open(cards, roll);
    }

    /** The same once one of them is shot. */
    public Optional<Card> after(Card card, Roll roll) {
        return open(cards.stream().filter(it -> !it.equals(card)).toList(), roll);
    }

    private static Optional<Card> open(List<Card> cards, Roll roll) {
        return cards.stream()
                .filter(it -> roll.frames().stream()
                        .noneMatch(frame -> frame.note().equals(Optional.of(RatingTest.NOTE + it.words()))))
                .findFirst();
    }

    /** What of the setting in hand is another for a card. */
    public SettingPatch change(Card card) {
        return SettingPatch.aperture(card.aperture).and(SettingPatch.time(time));
    }

    /** Whether a card's setting is in hand. */
    public boolean isSet(Setting setting, Card card) {
        return setting.aperture().equals(Optional.of(card.aperture))
                && setting.time().equals(Optional.of(time));
    }

    /** Which of the cards it is, counted from 1. */
    public int number(Card card) {
        return cards.indexOf(card) + 1;
    }
}
