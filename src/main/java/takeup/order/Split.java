package takeup.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The rolls of an order in two parcels, so that one that is lost or spoilt does not take a must-have moment with it.
 *
 * @param first the rolls of the one
 * @param second the rolls of the other
 * @param remarks what could not be had, each one sentence
 */
public record Split(List<String> first, List<String> second, List<String> remarks) {
    public Split {
        first = List.copyOf(first);
        second = List.copyOf(second);
        remarks = List.copyOf(remarks);
    }

    /** By what rolls are parted. */
    public enum By {
        MOMENTS,
        NUMBER,
        BODY
    }

    /** Odd and even places: neighbours in time travel apart. */
    public static Split byNumber(List<ExposedRoll> rolls) {
        List<String> first = new ArrayList<>();
        List<String> second = new ArrayList<>();
        for (ExposedRoll roll : rolls) {
            (first.size() <= second.size() ? first : second).add(roll.roll());
        }
        return new Split(first, second, List.of());
    }

    /**
     * All rolls of a camera together, the cameras with most rolls first, each to the parcel that holds fewer so far.
     */
    public static Split byBody(List<ExposedRoll> rolls) {
        Map<String, List<String>> bodies = new TreeMap<>();
        rolls.forEach(it -> bodies.computeIfAbsent(it.camera().name(), camera -> new ArrayList<>())
                .add(it.roll()));
        List<String> first = new ArrayList<>();
        List<String> second = new ArrayList<>();
        bodies.values().stream()
                .sorted(Comparator.comparing((List<String> it) -> -it.size()))
                .forEach(it -> (first.size() <= second.size() ? first : second).addAll(it));
        return new Split(first, second, List.of());
    }

    /**
     * Moments that several rolls hold end up in both parcels, as far as that can be; then the parcels are of a size.
     */
    public static Split byMoments(List<ExposedRoll> rolls, List<MustHaveMoment> moments) {
        return new SplitSearch(rolls, moments).best();
    }
}
