package takeup.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for the two parcels that leave the fewest moments in one of them, and of these the most even ones: tries every
 * way, roll by roll in the order of their moments, and drops a way once it is worse than the best so far. After a
 * million steps the best so far has to do.
 */
final class SplitSearch {
    private static final int MOST_STEPS = 1_000_000;

    private final List<ExposedRoll> rolls;
    private final List<MustHaveMoment> moments;
    /** For each moment the places in {@link #rolls} of those that hold it. */
    private final List<List<Integer>> held = new ArrayList<>();

    private final boolean[] inSecond;
    private boolean[] best = new boolean[0];
    private int bestCost = Integer.MAX_VALUE;
    private int steps;

    SplitSearch(List<ExposedRoll> all, List<MustHaveMoment> moments) {
        this.moments = moments;
        this.rolls = new ArrayList<>(all);
        // Rolls that share a moment stand together, so that a way that cannot work is dropped early.
        rolls.sort(Comparator.comparingInt((ExposedRoll it) -> firstMoment(it)));
        for (MustHaveMoment moment : moments) {
            List<Integer> places = new ArrayList<>();
            for (int at = 0; at < rolls.size(); at++) {
                if (moment.isOn(rolls.get(at))) {
                    places.add(at);
                }
            }
            held.add(places);
        }
        inSecond = new boolean[rolls.size()];
    }

    private int firstMoment(ExposedRoll roll) {
        for (int at = 0; at < moments.size(); at++) {
            if (moments.get(at).isOn(roll)) {
                return at;
            }
        }
        return moments.size();
    }

    Split best() {
        go(0, 0);
        List<String> first = new ArrayList<>();
        List<String> second = new ArrayList<>();
        for (int at = 0; at < rolls.size(); at++) {
            (best[at] ? second : first).add(rolls.get(at).roll());
        }
        first.sort(null);
        second.sort(null);
        return new Split(first, second, remarks());
    }

    private void go(int at, int seconds) {
        if (++steps > MOST_STEPS && best.length > 0) {
            return;
        }
        // A parcel more than half full already cannot become even again; of an odd number one is over in any case.
        int uneven = Math.max(0, 2 * Math.max(seconds, at - seconds) - rolls.size() - rolls.size() % 2);
        int cost = together(at) * 1000 + uneven;
        if (cost >= bestCost) {
            return;
        }
        if (at == rolls.size()) {
            bestCost = cost;
            best = inSecond.clone();
            return;
        }
        // The emptier parcel first; the very first roll goes to the first one, since the two are alike.
        boolean start = at > 0 && 2 * seconds < at;
        for (boolean second : at == 0 ? new boolean[] {false} : new boolean[] {start, !start}) {
            inSecond[at] = second;
            go(at + 1, seconds + (second ? 1 : 0));
        }
    }

    /** Moments of several rolls that are all placed, and all in one parcel. */
    private int together(int placed) {
        int count = 0;
        for (List<Integer> places : held) {
            count +=
                    places.size() > 1 && places.get(places.size() - 1) < placed && isTogether(places, inSecond) ? 1 : 0;
        }
        return count;
    }

    private static boolean isTogether(List<Integer> places, boolean[] second) {
        return places.stream().allMatch(it -> second[it] == second[places.get(0)]);
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (int at = 0; at < moments.size(); at++) {
            List<Integer> places = held.get(at);
            String name = PrintedText.of(moments.get(at).name());
            if (places.isEmpty()) {
                remarks.add("no roll holds a picture of " + name);
            } else if (places.size() == 1) {
                remarks.add(name + " is on " + rolls.get(places.get(0)).roll() + " alone");
            } else if (isTogether(places, best)) {
                remarks.add(name + " stays in one parcel: "
                        + String.join(
                                ", ",
                                places.stream().map(it -> rolls.get(it).roll()).toList()));
            }
        }
        return remarks;
    }
}
