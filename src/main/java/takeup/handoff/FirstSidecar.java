package takeup.handoff;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import takeup.roll.Frame;
import takeup.roll.Roll;

/**
 * A sidecar of version 1.0.0. It bears no mark, and is known by what it says: what that version wrote of the frames as
 * the log had them at some time. One that anybody changed says something else.
 */
public final class FirstSidecar {
    static final String VERSION = "1.0.0";

    private static final List<Optional<String>> VERDICTS =
            List.of(Optional.empty(), Optional.of("thin"), Optional.of("good"), Optional.of("dense"));
    private static final Pattern FRAME = Pattern.compile("<rdf:li>frame ([0-9]{1,4})</rdf:li>");
    /** The figure was worked out, and came to something else for some frames then. */
    private static final Pattern EXPOSURE =
            Pattern.compile("; exposure (?:right|on meter|[0-9]+\\.[0-9] (?:over|under)(?: \\([^)<]*\\))?)");

    private FirstSidecar() {}

    /** Whether version 1.0.0 began this text, as it says itself; somebody may have changed it since. */
    public static boolean isBegunByIt(String text) {
        return text.contains(">takeup " + VERSION + "<") && !text.contains(SidecarDigest.SPACE);
    }

    /**
     * Whether version 1.0.0 wrote this text.
     *
     * @param states the roll as it was after each of its records
     */
    public static boolean isUnchanged(String text, List<Roll> states, Optional<String> scannedAt) {
        List<Integer> numbers = FRAME.matcher(text)
                .results()
                .map(it -> Integer.valueOf(it.group(1)))
                .toList();
        String there = withoutFigure(text);
        Set<Object> tried = new HashSet<>();
        for (Roll roll : states) {
            List<Frame> frames = numbers.stream()
                    .map(roll::indexOf)
                    .filter(it -> it >= 0)
                    .map(roll.frames()::get)
                    .toList();
            boolean isNew = frames.size() == numbers.size()
                    && !frames.isEmpty()
                    && tried.add(List.of(frames, roll.film(), roll.camera(frames.get(0))));
            if (isNew
                    && VERDICTS.stream()
                            .map(it -> Sidecar.ofFirstVersion(roll, frames, scannedAt, it))
                            .anyMatch(it -> Objects.equals(withoutFigure(it), there))) {
                return true;
            }
        }
        return false;
    }

    private static String withoutFigure(String text) {
        return EXPOSURE.matcher(text).replaceFirst("");
    }
}
