package takeup.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Aperture;
import takeup.exposure.ExposureTime;
import takeup.exposure.Light;
import takeup.exposure.Stops;
import takeup.kit.Hold;
import takeup.kit.Shutter;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.report.StatusText;

/** Why one suggestion is the best, and why its neighbours are not, in a sentence or two. */
public final class AdviceExplanation {
    private AdviceExplanation() {}

    public static String words(AdviceRequest asking, Light light, Suggestions advice) {
        Suggestion best = advice.bestOne().orElseThrow();
        StringBuilder words = new StringBuilder(pair(best)).append(": ").append(chosen(asking, best));
        tie(asking, best).ifPresent(it -> words.append("; ").append(it));
        List<String> others = new ArrayList<>();
        for (int at : new int[] {advice.best() - 1, advice.best() + 1}) {
            if (at >= 0 && at < advice.suggestions().size()) {
                Suggestion other = advice.suggestions().get(at);
                others.add(pair(other) + " " + against(asking, other, best));
            }
        }
        best.depth().ifPresent(it -> words.append("; sharp from ").append(StatusText.depth(it)));
        return words + "." + (others.isEmpty() ? "" : " Beside it " + String.join(", ", others) + ".");
    }

    static String pair(Suggestion row) {
        return row.aperture() + row.time().map(it -> " " + it).orElse("");
    }

    private static String chosen(AdviceRequest asking, Suggestion best) {
        Optional<Hold> hold = asking.hold();
        if (hold.flatMap(Hold::time).isPresent()) {
            return "at this aperture the light asks for nearest to " + hold.get() + ", which is held";
        }
        String although = hold.flatMap(Hold::aperture)
                .filter(it -> !same(it, best.aperture()))
                .map(it -> it + " is held but does not serve here; ")
                .orElse("");
        if (hold.flatMap(Hold::aperture).isPresent() && although.isEmpty()) {
            return best.aperture() + " is held";
        }
        Optional<Aperture> inHand = asking.setting().aperture();
        return although
                + inHand.map(it -> same(it, best.aperture())
                                ? it + " is in hand"
                                : "of what serves it lies nearest to " + it + ", which is in hand")
                        .orElse("of what serves it lies nearest to f/5.6");
    }

    /** Where two marks of the dial are equally near, the kind of film decides. */
    private static Optional<String> tie(AdviceRequest asking, Suggestion best) {
        Optional<Shutter> shutter = asking.camera().flatMap(it -> it.shutter());
        if (shutter.isEmpty()
                || best.correctedSeconds().isEmpty()
                || asking.hold().flatMap(Hold::time).isPresent()) {
            return Optional.empty();
        }
        double seconds = best.correctedSeconds().getAsDouble();
        ExposureTime more = shutter.get().nearest(seconds, true);
        ExposureTime less = shutter.get().nearest(seconds, false);
        return more.equals(less)
                ? Optional.empty()
                : Optional.of("halfway between " + less + " and " + more + " "
                        + (asking.prefersOverexposure()
                                ? "negative film takes the longer, more light"
                                : "reversal film takes the shorter, less light"));
    }

    private static String against(AdviceRequest asking, Suggestion other, Suggestion best) {
        if (other.time().isEmpty()) {
            return "has no time that is long enough";
        }
        for (Warning.Code code : List.of(
                Warning.Code.OUT_OF_RANGE,
                Warning.Code.SYNC_SPEED,
                Warning.Code.HAND_HELD,
                Warning.Code.RECIPROCITY_BEYOND)) {
            if (other.has(code) && !best.has(code)) {
                return switch (code) {
                    case OUT_OF_RANGE -> "is beyond the dial";
                    case SYNC_SPEED -> "is faster than the flash sync";
                    case HAND_HELD -> "is too long for the hand";
                    default -> "is past the film's table";
                };
            }
        }
        if (asking.hold().isPresent()) {
            return "is further from what is held";
        }
        return "is further from "
                + asking.setting().aperture().map(it -> it + " in hand").orElse("f/5.6");
    }

    public static boolean same(Aperture a, Aperture b) {
        return Math.abs(a.stops() - b.stops()) < Stops.TOLERANCE;
    }
}
