package takeup.order;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A lab and what it wants to be told.
 *
 * @param key the name of its file
 * @param name as it stands on the order
 * @param processes our words for a process and the lab's own; empty where it was not said
 * @param scanSizes the scan sizes that it offers; empty where any word will do
 * @param fileTypes likewise
 * @param asks what its form asks of each roll
 * @param needs what it wants to know of the whole order
 * @param usual the wishes that hold unless others are said
 * @param paper A4 or Letter
 * @param sendWithinDays how long an exposed roll may wait before takeup speaks of it
 * @param scansKeptDays after so many days it deletes the scans
 * @param negativesKeptDays after so many days it destroys negatives that nobody asked for
 */
public record Lab(
        String key,
        String name,
        Map<String, String> processes,
        List<String> scanSizes,
        List<String> fileTypes,
        List<String> asks,
        List<String> needs,
        Wishes usual,
        String paper,
        int sendWithinDays,
        OptionalInt scansKeptDays,
        OptionalInt negativesKeptDays) {
    /** Days that an exposed roll may wait where nobody said otherwise: common practice is to send it soon. */
    public static final int WAIT = 14;

    public Lab {
        processes = Collections.unmodifiableMap(new LinkedHashMap<>(processes));
        scanSizes = List.copyOf(scanSizes);
        fileTypes = List.copyOf(fileTypes);
        asks = List.copyOf(asks);
        needs = List.copyOf(needs);
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

    /** The lab's own word for a process, if it has one. */
    Optional<String> wordFor(String process) {
        LabDevelopment.Chemistry wanted = new LabDevelopment(process, 0, 100, 100).chemistry();
        for (Map.Entry<String, String> own : processes.entrySet()) {
            LabDevelopment.Chemistry has = new LabDevelopment(own.getKey(), 0, 100, 100).chemistry();
            if (own.getKey().equalsIgnoreCase(process) || has == wanted && has != LabDevelopment.Chemistry.UNKNOWN) {
                return Optional.of(own.getValue());
            }
        }
        return Optional.empty();
    }

    /** Why a wish cannot be had here; empty if it can. */
    public Optional<String> whyNot(Wish wish, String words) {
        List<String> offered = wish == Wish.SCAN_SIZE ? scanSizes : wish == Wish.FILE_TYPE ? fileTypes : List.of();
        return offered.isEmpty() || words.isBlank() || offered.contains(words.strip())
                ? Optional.empty()
                : Optional.of(words + " is no " + wish.words() + " of " + name + ": " + String.join(", ", offered));
    }
}
