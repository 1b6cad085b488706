package takeup.index;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import takeup.day.CameraPlace;
import takeup.records.FastIsoParser;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.FrameRow;
import takeup.search.RollHead;

/**
 * A roll as the index holds it: enough to list it and to find its frames.
 *
 * @param head what is listed
 * @param stamp sizes and times of the files that it was made of
 * @param loading the step that loaded it, by which rolls are put in order
 * @param frames a line for each frame, each ending in a line feed
 */
public record IndexedRoll(RollHead head, String stamp, long loading, String frames) {
    /** What the line of a roll begins with; that of a frame begins with a digit. */
    private static final String MARK = "roll\t";

    private static final int FIELDS = 16;

    public RollId id() {
        return head.summary().id();
    }

    /** Each of its frames, in the order of the film. A roll whose loading was undone has none. */
    public void forEachFrame(Consumer<FrameRow> taken) {
        int from = 0;
        while (from < frames.length() && head.summary().state() != Roll.State.WITHDRAWN) {
            int end = frames.indexOf('\n', from);
            taken.accept(new FrameRow(head, frames.substring(from, end)));
            from = end + 1;
        }
    }

    /** Its own line and those of its frames. */
    String text() {
        RollSummary roll = head.summary();
        StringBuilder line = new StringBuilder("roll");
        field(line, roll.id());
        field(line, stamp);
        field(line, loading);
        field(line, roll.state());
        field(line, roll.place().camera());
        optional(line, roll.place().back());
        field(line, roll.film().stock());
        field(line, roll.film().stockName());
        field(line, roll.film().exposureIndex());
        field(line, roll.film().development());
        field(line, roll.film().framesNominal());
        field(line, roll.framesUsed());
        field(line, roll.loadedAt());
        optional(line, roll.finishedAt());
        optional(line, head.shoot());
        optional(line, head.developed());
        return line.append('\n').append(frames).toString();
    }

    private static void field(StringBuilder line, Object value) {
        line.append('\t').append(FrameRow.escaped(value.toString()));
    }

    /** A mark in front tells what is empty from what is not there. */
    private static void optional(StringBuilder line, Optional<?> value) {
        field(line, value.map(it -> "=" + it).orElse(""));
    }

    /** Whether a line begins a roll. */
    static boolean isRoll(String text, int at) {
        return text.startsWith(MARK, at);
    }

    /** The roll of a line and of the lines of its frames; an IllegalArgumentException where it is none. */
    static IndexedRoll of(String line, String frames) {
        String[] fields = line.substring(MARK.length()).split("\t", -1);
        if (fields.length != FIELDS) {
            throw new IllegalArgumentException("a roll of the index has " + FIELDS + " fields");
        }
        for (int i = 0; i < fields.length; i++) {
            fields[i] = FrameRow.unescaped(fields[i]);
        }
        RollSummary summary = new RollSummary(
                RollId.parse(fields[0]).orElseThrow(IllegalArgumentException::new),
                Roll.State.valueOf(fields[3].toUpperCase(Locale.ROOT)),
                new CameraPlace(fields[4], optional(fields[5])),
                new RollSummary.FilmSummary(
                        fields[6], fields[7], Double.parseDouble(fields[8]), fields[9], Integer.parseInt(fields[10])),
                Integer.parseInt(fields[11]),
                FastIsoParser.time(fields[12]).orElseThrow(IllegalArgumentException::new),
                optional(fields[13]).map(it -> FastIsoParser.time(it).orElseThrow(IllegalArgumentException::new)));
        return new IndexedRoll(
                new RollHead(summary, optional(fields[14]), optional(fields[15])),
                fields[1],
                Long.parseLong(fields[2]),
                frames);
    }

    private static Optional<String> optional(String field) {
        return field.isEmpty() ? Optional.empty() : Optional.of(field.substring(1));
    }
}
