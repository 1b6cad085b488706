package takeup.order;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A lab, what it offers and what its form asks for.
 *
 * @param key the name of its file
 * @param name as printed on the order
 * @param processes our words for a process and the lab's own; empty if it gave none
 * @param offers what can be had of a wish; a wish that is not in it may be any words
 * @param form what it asks for
 * @param usual the wishes of an order that names no others
 * @param deadlines how long film, scans and negatives may wait
 */
public record Lab(
        String key,
        String name,
        Map<String, String> processes,
        Map<Wish, List<String>> offers,
        Form form,
        Wishes usual,
        Deadlines deadlines) {
    /** Days that an exposed roll may wait by default: common practice is to send it soon. */
    public static final int WAIT = 14;

    /** What it asks of each roll, what it needs to know of the whole order, and on which paper: A4 or Letter. */
    record Form(List<String> asks, List<String> needs, String paper) {
        Form {
            asks = List.copyOf(asks);
            needs = List.copyOf(needs);
        }
    }

    public Lab {
        processes = Collections.unmodifiableMap(new LinkedHashMap<>(processes));
        offers = Map.copyOf(offers);
    }

    /**
     * A lab's file, read.
     *
     * @param lab the lab; empty if the file is wrong
     * @param problems what is wrong with it, or was left out of it
     */
    public record Read(Optional<Lab> lab, List<String> problems) {}

    /** The lab that a file describes; the file is named in what is wrong with it. */
    public static Read of(String key, String file, String json) {
        return JsonLab.read(key, file, json);
    }

    /** The scan sizes that it offers; empty where any words will do. */
    public List<String> scanSizes() {
        return offered(Wish.SCAN_SIZE);
    }

    /** What can be had of a wish; empty where any words will do. */
    public List<String> offered(Wish wish) {
        return offers.getOrDefault(wish, List.of());
    }

    /** The lab's own word for a process, if it has one. */
    Optional<String> wordFor(String process) {
        LabDevelopment.Chemistry wanted = LabDevelopment.chemistry(process);
        for (Map.Entry<String, String> own : processes.entrySet()) {
            LabDevelopment.Chemistry has = LabDevelopment.chemistry(own.getKey());
            if (own.getKey().equalsIgnoreCase(process) || has == wanted && has != LabDevelopment.Chemistry.UNKNOWN) {
                return Optional.of(own.getValue());
            }
        }
        return Optional.empty();
    }

    /** Why a wish cannot be had here; empty if it can. */
    public Optional<String> whyNot(Wish wish, String words) {
        List<String> offered = offered(wish);
        return offered.isEmpty() || words.isBlank() || offered.contains(words.strip())
                ? Optional.empty()
                : Optional.of(words + " is no " + wish.words() + " of " + name + ": " + String.join(", ", offered));
    }
}
