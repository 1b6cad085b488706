package takeup;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Groups of classes that all need each other, directly or by way of one another: the strongly connected components of
 * their uses (R. Tarjan, "Depth-first search and linear graph algorithms", SIAM Journal on Computing 1, 1972).
 */
final class Knots {
    private final Map<String, Set<String>> uses;
    private final Map<String, Integer> met = new HashMap<>();
    private final Map<String, Integer> lowest = new HashMap<>();
    private final Deque<String> open = new ArrayDeque<>();
    private final List<Set<String>> knots = new ArrayList<>();

    private Knots(Map<String, Set<String>> uses) {
        this.uses = uses;
    }

    /** The knots of at least two classes. */
    static List<Set<String>> of(Map<String, Set<String>> uses) {
        Knots knots = new Knots(uses);
        for (String one : uses.keySet()) {
            if (!knots.met.containsKey(one)) {
                knots.visit(one);
            }
        }
        return knots.knots.stream().filter(it -> it.size() > 1).toList();
    }

    private void visit(String one) {
        met.put(one, met.size());
        lowest.put(one, met.get(one));
        open.push(one);
        for (String next : uses.getOrDefault(one, Set.of())) {
            if (!met.containsKey(next)) {
                visit(next);
                lowest.merge(one, lowest.get(next), Math::min);
            } else if (open.contains(next)) {
                lowest.merge(one, met.get(next), Math::min);
            }
        }
        if (lowest.get(one).equals(met.get(one))) {
            Set<String> knot = new TreeSet<>();
            String last;
            do {
                last = open.pop();
                knot.add(last);
            } while (!last.equals(one));
            knots.add(knot);
        }
    }
}
