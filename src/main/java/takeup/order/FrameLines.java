package takeup.order;

import java.time.OffsetDateTime;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import takeup.text.TabFields;

/** Frames of a roll as lines of text, cut apart at the first look: of thousands of rolls hardly any is looked at. */
final class FrameLines extends AbstractList<ExposedFrame> {
    private static final int FIELDS = 8;

    private final String text;
    private final int size;
    private List<ExposedFrame> frames = List.of();

    FrameLines(String text) {
        this.text = text;
        this.size = (int) text.chars().filter(it -> it == '\n').count();
    }

    /** A line for each frame, each ending in a line feed. */
    static String of(List<ExposedFrame> frames) {
        StringBuilder lines = new StringBuilder();
        for (ExposedFrame frame : frames) {
            lines.append(TabFields.line(
                            frame.frame(),
                            frame.kind(),
                            frame.at(),
                            frame.aperture(),
                            frame.time(),
                            frame.lens(),
                            frame.errorStops(),
                            frame.note()))
                    .append('\n');
        }
        return lines.toString();
    }

    private static ExposedFrame frame(String line) {
        String[] fields = TabFields.values(line, FIELDS);
        return new ExposedFrame(
                Integer.parseInt(fields[0]),
                fields[1],
                TabFields.optional(fields[2]).map(OffsetDateTime::parse),
                TabFields.optional(fields[3]),
                TabFields.optional(fields[4]),
                TabFields.optional(fields[5]),
                TabFields.optional(fields[6]).map(Double::valueOf),
                TabFields.optional(fields[7]));
    }

    @Override
    public synchronized ExposedFrame get(int index) {
        if (frames.isEmpty()) {
            List<ExposedFrame> all = new ArrayList<>(size);
            text.lines().forEach(it -> all.add(frame(it)));
            frames = all;
        }
        return frames.get(index);
    }

    @Override
    public int size() {
        return size;
    }
}
