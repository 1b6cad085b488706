package takeup.command;

import java.util.ArrayList;
import java.util.List;
import takeup.history.ShootState;
import takeup.kit.Lens;

/** Lists of words that commands offer for completion. */
public final class Completions {
    public static final List<String> ON_OFF = List.of("on", "off");

    private Completions() {}

    /** For a line that takes one word only. */
    public static List<String> once(List<String> before, List<String> words) {
        return before.size() == 1 ? words : List.of();
    }

    public static List<String> with(List<String> words, String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(more));
        return all;
    }

    /** The lenses of the camera in hand. */
    public static List<String> lenses(ShootState s) {
        return s.cameraInHand()
                .map(it -> it.lenses().stream().map(Lens::key).toList())
                .orElse(List.of());
    }
}
