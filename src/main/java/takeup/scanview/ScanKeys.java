package takeup.scanview;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import takeup.message.Key;
import takeup.review.Density;

/**
 * A key of the Scans view and what it does: one table for handling, footer and {@code takeup keys}.
 *
 * @param key the key
 * @param does what it does, in a few words
 * @param action the desk after it
 */
public record ScanKeys(Key key, String does, UnaryOperator<ScansState> action) {
    /** Shows the contact sheet instead of the list, or the list again. */
    public static final Key OTHER_VIEW = Key.typed("v");

    private static final int PAGE = 10;

    /** All of them, the usual ones first. */
    public static List<ScanKeys> all() {
        return List.of(
                new ScanKeys(Key.typed("t"), "thin", it -> it.judged(Optional.of(Density.THIN))),
                new ScanKeys(Key.typed("g"), "good", it -> it.judged(Optional.of(Density.GOOD))),
                new ScanKeys(Key.typed("d"), "dense", it -> it.judged(Optional.of(Density.DENSE))),
                new ScanKeys(Key.typed("a"), "accept", ScansState::accepted),
                new ScanKeys(OTHER_VIEW, "contact sheet", ScansState::otherView),
                new ScanKeys(Key.typed("o"), "open", ScansState::opened),
                new ScanKeys(Key.typed("q"), "leave", UnaryOperator.identity()),
                new ScanKeys(Key.typed("l"), "shift from here", it -> it.shifted(1)),
                new ScanKeys(Key.typed("e"), "earlier", it -> it.shifted(-1)),
                new ScanKeys(Key.typed("s"), "swap", ScansState::swapped),
                new ScanKeys(Key.typed("r"), "reverse", ScansState::turned),
                new ScanKeys(Key.typed("n"), "not in the log", ScansState::unlogged),
                new ScanKeys(Key.typed("u"), "no verdict", it -> it.judged(Optional.empty())),
                new ScanKeys(Key.of(Key.Name.UP), "up", it -> it.moved(-1)),
                new ScanKeys(Key.of(Key.Name.DOWN), "down", it -> it.moved(1)),
                new ScanKeys(Key.of(Key.Name.LEFT), "one back", it -> it.moved(-1)),
                new ScanKeys(Key.of(Key.Name.RIGHT), "one on", it -> it.moved(1)),
                new ScanKeys(Key.of(Key.Name.PAGE_UP), "page up", it -> it.moved(-PAGE)),
                new ScanKeys(Key.of(Key.Name.PAGE_DOWN), "page down", it -> it.moved(PAGE)));
    }

    /** Whether a key leaves the view; what is not accepted by then is not kept. */
    public static boolean leaves(Key key) {
        return key.equals(Key.typed("q")) || key.equals(Key.ctrl('c')) || key.name() == Key.Name.ESCAPE;
    }

    /** The desk after a key; one that has no meaning here says so. */
    public static ScansState after(ScansState desk, Key key) {
        for (ScanKeys each : all()) {
            if (each.key.equals(key)) {
                return each.action.apply(desk);
            }
        }
        // A small window has no room for all of them in its last line.
        return desk.withMessage("keys here: "
                + String.join(
                        " ",
                        all().stream()
                                .map(it -> it.key.toString())
                                .filter(it -> it.length() == 1)
                                .toList()));
    }
}
