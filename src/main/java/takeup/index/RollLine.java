package takeup.index;

import java.util.Locale;
import takeup.day.CameraPlace;
import takeup.records.FastIsoParser;
import takeup.report.RollSummary;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.search.RollHead;
import takeup.text.TabFields;

/**
 * What every kind of entry says of its roll, in one line.
 *
 * @param loading the step that loaded it, by which rolls are put in order
 */
record RollLine(RollHead head, long loading) {
    private static final int FIELDS = 16;

    static String text(Roll roll, long loading) {
        RollHead head = RollHead.of(roll);
        RollSummary summary = head.summary();
        return TabFields.line(
                        summary.id(),
                        loading,
                        summary.state(),
                        summary.place().camera(),
                        summary.place().back(),
                        summary.film().stock(),
                        summary.film().stockName(),
                        summary.film().exposureIndex(),
                        summary.film().development(),
                        summary.film().framesNominal(),
                        summary.framesUsed(),
                        summary.loadedAt(),
                        summary.finishedAt(),
                        summary.name(),
                        head.shoot(),
                        head.developed())
                + "\n";
    }

    /** The line that a text begins with. */
    static RollLine of(String text) {
        String[] fields = TabFields.values(text.substring(0, text.indexOf('\n')), FIELDS);
        RollSummary summary = new RollSummary(
                RollId.parse(fields[0]).orElseThrow(IllegalArgumentException::new),
                Roll.State.valueOf(fields[2].toUpperCase(Locale.ROOT)),
                new CameraPlace(fields[3], TabFields.optional(fields[4])),
                new RollSummary.FilmSummary(
                        fields[5], fields[6], Double.parseDouble(fields[7]), fields[8], Integer.parseInt(fields[9])),
                Integer.parseInt(fields[10]),
                FastIsoParser.time(fields[11]).orElseThrow(IllegalArgumentException::new),
                TabFields.optional(fields[12])
                        .map(it -> FastIsoParser.time(it).orElseThrow(IllegalArgumentException::new)),
                TabFields.optional(fields[13]));
        return new RollLine(
                new RollHead(summary, TabFields.optional(fields[14]), TabFields.optional(fields[15])),
                Long.parseLong(fields[1]));
    }

    /** What follows behind that line. */
    static String rest(String text) {
        return text.substring(text.indexOf('\n') + 1);
    }
}
