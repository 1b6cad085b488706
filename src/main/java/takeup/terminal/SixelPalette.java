package takeup.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The 256 colours that stand for all of a picture's: its colours are parted at the median of the widest channel until
 * there are enough groups (Heckbert, "Color image quantization for frame buffer display", SIGGRAPH 1982).
 */
final class SixelPalette {
    /** What a VT340 has at most by its protocol's own numbering, and every terminal of today has. */
    private static final int MOST = 256;

    private final int[] colours;
    private final Map<Integer, Integer> indexes = new HashMap<>();

    private SixelPalette(List<int[]> groups) {
        colours = new int[groups.size()];
        for (int i = 0; i < colours.length; i++) {
            colours[i] = mean(groups.get(i));
            for (int colour : groups.get(i)) {
                indexes.put(colour, i);
            }
        }
    }

    /** The palette of these dots. */
    static SixelPalette of(int[] dots) {
        int[] all = Arrays.stream(dots).map(it -> it & 0xffffff).distinct().toArray();
        List<int[]> groups = new ArrayList<>(List.of(all));
        while (groups.size() < MOST) {
            int widest = widest(groups);
            int[] group = groups.get(widest);
            if (group.length < 2) {
                break;
            }
            int shift = widestChannel(group);
            int[] sorted = Arrays.stream(group)
                    .boxed()
                    .sorted((one, other) -> Integer.compare(one >> shift & 0xff, other >> shift & 0xff))
                    .mapToInt(Integer::intValue)
                    .toArray();
            groups.set(widest, Arrays.copyOfRange(sorted, 0, sorted.length / 2));
            groups.add(Arrays.copyOfRange(sorted, sorted.length / 2, sorted.length));
        }
        return new SixelPalette(groups);
    }

    private static int widest(List<int[]> groups) {
        int widest = 0;
        int most = -1;
        for (int i = 0; i < groups.size(); i++) {
            int spread = spread(groups.get(i), widestChannel(groups.get(i)));
            if (spread > most) {
                most = spread;
                widest = i;
            }
        }
        return widest;
    }

    private static int widestChannel(int[] group) {
        int widest = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            widest = spread(group, shift) > spread(group, widest) ? shift : widest;
        }
        return widest;
    }

    private static int spread(int[] group, int shift) {
        int least = 255;
        int most = 0;
        for (int colour : group) {
            least = Math.min(least, colour >> shift & 0xff);
            most = Math.max(most, colour >> shift & 0xff);
        }
        return most - least;
    }

    private static int mean(int[] group) {
        int mean = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            long sum = 0;
            for (int colour : group) {
                sum += colour >> shift & 0xff;
            }
            mean |= (int) ((sum + group.length / 2) / group.length) << shift;
        }
        return mean;
    }

    int[] colours() {
        return colours.clone();
    }

    /** Which colour stands for a dot. */
    int index(int dot) {
        return indexes.get(dot & 0xffffff);
    }
}
