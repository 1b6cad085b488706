package takeup.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.advice.AdviceExplanation;
import takeup.advice.AdviceRequest;
import takeup.advice.Alternatives;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Stops;
import takeup.kit.Hold;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.text.Plain;

/** Why a suggestion is the best, and what would fit where nothing does, in words. */
public final class AdviceText {
    /** Of a push by more stops nobody speaks, not even to rule it out (common practice, no source). */
    private static final double MOST_PUSH = 5;

    private AdviceText() {}

    /** The explanation in a sentence or two. */
    public static String words(AdviceExplanation explained) {
        StringBuilder words =
                new StringBuilder(pair(explained.best())).append(": ").append(reason(explained));
        explained.tie().ifPresent(it -> words.append("; ").append(tie(it, explained.request())));
        explained
                .best()
                .depth()
                .ifPresent(it -> words.append("; sharp from ")
                        .append(SetupText.depth(it))
                        .append(explained
                                .request()
                                .camera()
                                .map(camera -> " (" + SharpText.circle(camera) + ")")
                                .orElse("")));
        List<String> neighbours = explained.neighbours().stream()
                .map(it -> pair(it.suggestion()) + " " + drawback(it))
                .toList();
        return words + "." + (neighbours.isEmpty() ? "" : " Beside it " + String.join(", ", neighbours) + ".");
    }

    /** Aperture and time of a suggestion: {@code f/4 1/125}. */
    static String pair(Suggestion row) {
        return row.aperture() + row.time().map(it -> " " + it).orElse("");
    }

    private static String reason(AdviceExplanation explained) {
        AdviceRequest request = explained.request();
        if (explained.best().time().isEmpty()) {
            return "no time is known for this film in so little light; bring more light, or bracket";
        }
        String inVain = explained
                .heldInVain()
                .map(it -> it + " is held but does not serve here; ")
                .orElse("");
        Optional<ExposureTime> heldTime = request.hold().flatMap(Hold::time);
        if (heldTime.isPresent() && inVain.isEmpty()) {
            return "at this aperture the light asks for nearest to " + heldTime.get() + ", which is held";
        }
        return inVain + explained.rule().map(it -> reason(it, explained)).orElse("there is no other pair to choose");
    }

    private static String reason(Suggestions.Rule rule, AdviceExplanation explained) {
        return switch (rule) {
            case USABLE -> "it is the only pair that this camera can set in this light";
            case KEEPS_HELD -> explained.best().aperture() + " is held";
            case STEADY -> "a second and longer needs a tripod";
            case ERROR -> "no other pair comes as near to the light";
            case SPOILS_NOTHING -> "of the pairs that come as near to the light it is the one without a warning";
            case NEAREST_IN_HAND, APERTURE_IN_HAND -> {
                Aperture inHand = explained.request().setting().aperture().orElseThrow();
                yield explained.best().aperture().isSameMark(inHand)
                        ? inHand + " was in hand, and no other pair comes nearer to the light"
                        : "of the pairs that come as near to the light it is nearest to what was in hand";
            }
            case SHOWN_BY_METER -> "the meter showed this pair";
            case HAND_HOLDABLE ->
                explained.best().has(Warning.Code.HAND_HELD)
                        ? "of the pairs that come as near to the light it shakes least"
                        : "of the pairs that come as near to the light it can be held by hand";
            case MIDDLE_OF_LENS ->
                "of the pairs that come as near to the light it is nearest to the middle of the lens";
        };
    }

    private static String tie(AdviceExplanation.Tie tie, AdviceRequest request) {
        return "halfway between " + tie.shorter() + " and " + tie.longer() + " "
                + (request.prefersOverexposure()
                        ? "negative film takes the longer, more light"
                        : "reversal film takes the shorter, less light");
    }

    private static String drawback(AdviceExplanation.Neighbour neighbour) {
        Suggestion row = neighbour.suggestion();
        return switch (neighbour.droppedBy()) {
            case USABLE -> row.time().isEmpty() ? "has no time that is long enough" : "is out of this camera's range";
            case KEEPS_HELD -> "does not keep what is held";
            case STEADY -> "needs a tripod";
            case ERROR -> "is " + Stops.error(row.errorStops().orElse(0));
            case SPOILS_NOTHING ->
                row.has(Warning.Code.RECIPROCITY_BEYOND) ? "is past the film's table" : "would spoil the frame";
            case NEAREST_IN_HAND, APERTURE_IN_HAND -> "is further from what is in hand";
            case SHOWN_BY_METER -> "is not what the meter showed";
            case HAND_HOLDABLE -> "is long for the hand";
            case MIDDLE_OF_LENS -> "is further from the middle of the lens";
        };
    }

    /** What would fit where nothing does, the least effort first. */
    public static List<String> words(Alternatives alternatives) {
        List<String> all = new ArrayList<>();
        alternatives.filter().ifPresent(it -> all.add(it.filter() + " brings " + pair(it.suggestion())));
        alternatives.tripod().ifPresent(it -> all.add("a tripod brings " + pair(it)));
        if (!alternatives.stocks().isEmpty()) {
            all.add("another stock serves: "
                    + String.join(
                            ", ",
                            alternatives.stocks().stream()
                                    .map(it -> it.stock().key() + " at EI "
                                            + it.stock().usualIndex() + " (" + pair(it.suggestion()) + ")")
                                    .toList()));
        }
        alternatives.push().filter(it -> it.stops() <= MOST_PUSH).ifPresent(it -> all.add(push(it)));
        return all;
    }

    private static String push(Alternatives.Push push) {
        String rated = "for " + push.aperture() + " " + push.time() + " the whole roll would need EI "
                + Plain.number(Plain.rounded(push.index(), 4)) + ": ";
        String stops = Plain.digits(Math.rint(push.stops() * 10) / 10, 3);
        return rated
                + switch (push.verdict()) {
                    case NOT_NEEDED -> "no push, it is not above box speed";
                    case TOO_FAR -> stops + " stops thin, further than a push reaches";
                    case POSSIBLE -> "push " + stops + ", or " + Stops.words(push.stops()) + " thin";
                };
    }
}
