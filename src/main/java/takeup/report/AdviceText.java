package takeup.report;

import java.util.ArrayList;
import java.util.List;
import takeup.advice.AdviceExplanation;
import takeup.advice.AdviceRequest;
import takeup.advice.Alternatives;
import takeup.exposure.Stops;
import takeup.kit.Suggestion;
import takeup.text.Plain;

/** Why a suggestion is the best, and what would fit where nothing does, in words. */
public final class AdviceText {
    private AdviceText() {}

    /** The explanation in a sentence or two. */
    public static String words(AdviceExplanation explained) {
        StringBuilder words =
                new StringBuilder(pair(explained.best())).append(": ").append(reason(explained));
        explained.tie().ifPresent(it -> words.append("; ").append(tie(it, explained.request())));
        explained.best().depth().ifPresent(it -> words.append("; sharp from ").append(SetupText.depth(it)));
        List<String> neighbours = explained.neighbours().stream()
                .map(it -> pair(it.suggestion()) + " " + drawback(it.drawback(), explained.request()))
                .toList();
        return words + "." + (neighbours.isEmpty() ? "" : " Beside it " + String.join(", ", neighbours) + ".");
    }

    /** Aperture and time of a suggestion: {@code f/4 1/125}. */
    static String pair(Suggestion row) {
        return row.aperture() + row.time().map(it -> " " + it).orElse("");
    }

    private static String reason(AdviceExplanation explained) {
        AdviceRequest request = explained.request();
        String inVain = explained
                .heldInVain()
                .map(it -> it + " is held but does not serve here; ")
                .orElse("");
        return switch (explained.reason()) {
            case NEAREST_TO_HELD_TIME ->
                "at this aperture the light asks for nearest to "
                        + request.hold().orElseThrow() + ", which is held";
            case APERTURE_HELD -> explained.best().aperture() + " is held";
            case APERTURE_IN_HAND -> inVain + request.setting().aperture().orElseThrow() + " is in hand";
            case NEAREST_APERTURE ->
                inVain + "of what serves it lies nearest to "
                        + request.setting()
                                .aperture()
                                .map(it -> it + ", which is in hand")
                                .orElse("f/5.6");
        };
    }

    private static String tie(AdviceExplanation.Tie tie, AdviceRequest request) {
        return "halfway between " + tie.shorter() + " and " + tie.longer() + " "
                + (request.prefersOverexposure()
                        ? "negative film takes the longer, more light"
                        : "reversal film takes the shorter, less light");
    }

    private static String drawback(AdviceExplanation.Drawback drawback, AdviceRequest request) {
        return switch (drawback) {
            case NO_TIME -> "has no time that is long enough";
            case OUT_OF_RANGE -> "is beyond the dial";
            case ABOVE_SYNC_SPEED -> "is faster than the flash sync";
            case HAND_HELD -> "is too long for the hand";
            case BEYOND_RECIPROCITY_TABLE -> "is past the film's table";
            case FURTHER_FROM_HELD -> "is further from what is held";
            case FURTHER_FROM_APERTURE ->
                "is further from "
                        + request.setting()
                                .aperture()
                                .map(it -> it + " in hand")
                                .orElse("f/5.6");
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
        alternatives.push().ifPresent(it -> all.add(push(it)));
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
