package takeup.report;

import java.util.Optional;
import takeup.advice.RatingBracket;
import takeup.history.ShootState;

/** The cards of a rating test in words: {@code Card 2 of 6: R0007 1/2 STOP UNDER}. */
public final class RatingText {
    private RatingText() {}

    /** What the card in the next picture must say, while a test goes on. */
    public static Optional<String> nextCard(ShootState s) {
        Optional<RatingBracket.NextCard> found = RatingBracket.inHand(s);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        RatingBracket.NextCard next = found.get();
        return Optional.of(number(next.bracket(), next.card()) + ": "
                + next.roll().id() + " " + next.card().words());
    }

    /** What to set for a card, and to have in the picture. */
    public static String instruction(RatingBracket.NextCard next) {
        return number(next.bracket(), next.card()) + ": set " + next.card().aperture() + " "
                + next.bracket().time() + ", with " + next.roll().id() + " "
                + next.card().words()
                + " in the picture.";
    }

    private static String number(RatingBracket bracket, RatingBracket.Card card) {
        return "Card " + bracket.number(card) + " of " + bracket.cards().size();
    }
}
