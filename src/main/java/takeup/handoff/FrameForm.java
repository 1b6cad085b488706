package takeup.handoff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.text.HtmlWriter;

/**
 * A form to write frames on with a pen, for the day the laptop dies: a sheet for each roll, from its next frame on, and
 * an empty one. What is written on it is read back line by line.
 */
public final class FrameForm {
    /** The paper that can be printed on. */
    public static final List<String> PAPERS = List.of("A4", "Letter");

    private static final int FRAMES = 36;
    /** A roll runs a little longer than it promises. */
    private static final int MORE = 2;

    private static final String HOW =
            "A line a frame. \" stands for the same as above; 7-9 for a row. No time to write: a stroke in the "
                    + "tally, and the words later.";

    private static final String STYLE = """
            @page { size: %1$s; margin: 12mm; }
            body { margin: 0; color: #000; background: #fff; font: 9.5pt/1.3 "Liberation Sans", Arial, \
            Helvetica, sans-serif; }
            section { break-after: page; }
            section:last-child { break-after: auto; }
            h1 { font-size: 13pt; margin: 0 0 1mm; }
            p { margin: 0 0 1mm; }
            table { border-collapse: collapse; width: 100%%; table-layout: fixed; }
            thead { display: table-header-group; }
            tr { height: %2$s; break-inside: avoid; }
            th, td { border: 0.2mm solid #000; padding: 0 1.5mm; text-align: left; }
            .frame { width: 14mm; text-align: right; }
            .value { width: 26mm; }
            .tally { border: 0.2mm solid #000; height: 8mm; padding: 0.5mm 1.5mm; font-size: 8pt; \
            margin-bottom: 1.5mm; }
            """;

    private FrameForm() {}

    /** The words in the head of a sheet, and the numbers of its frames. */
    private record Sheet(List<String> head, List<Integer> frames) {}

    private static List<Sheet> sheets(List<Roll> rolls, String next, LocalDate date) {
        List<Sheet> sheets = new ArrayList<>();
        for (Roll roll : rolls) {
            List<Integer> frames = new ArrayList<>();
            roll.frames().stream()
                    .filter(it -> it.kind() == Frame.Kind.UNLOGGED)
                    .forEach(it -> frames.add(it.number()));
            for (int number = roll.next();
                    number <= roll.film().framesNominal() + MORE
                            && roll.finishedAt().isEmpty();
                    number++) {
                frames.add(number);
            }
            sheets.add(new Sheet(
                    List.of(
                            "Roll " + roll.id(),
                            roll.camera().name()
                                    + roll.back().map(it -> ", back " + it).orElse(""),
                            roll.film().stock().name() + ", " + roll.film().size(),
                            roll.film().developmentWords(),
                            "meter at " + roll.film().index(),
                            date.toString()),
                    frames));
        }
        List<Integer> all = new ArrayList<>();
        for (int number = 1; number <= FRAMES + MORE; number++) {
            all.add(number);
        }
        sheets.add(new Sheet(
                List.of(
                        "Roll ______ (the next is " + next + ")",
                        "Camera and back ____________",
                        "Film ____________",
                        "Push, pull, normal ________",
                        "Meter at ______",
                        "Date __________"),
                all));
        return sheets;
    }

    /** The form as plain text of up to 78 columns; a sheet with 38 frames fits a page of 60 lines. */
    public static String text(List<Roll> rolls, String next, LocalDate date) {
        List<String> lines = new ArrayList<>();
        for (Sheet sheet : sheets(rolls, next, date)) {
            if (!lines.isEmpty()) {
                lines.add("");
                lines.add("-".repeat(78));
                lines.add("");
            }
            lines.addAll(wrapped(sheet.head));
            lines.add("Tally " + "_".repeat(72));
            lines.addAll(wrapped(List.of(HOW.split(" "))));
            lines.add("");
            lines.add("frame  aperture    time        words");
            for (int frame : sheet.frames) {
                String number = Integer.toString(frame);
                lines.add(" ".repeat(5 - Math.min(5, number.length())) + number + "  __________  __________  "
                        + "_".repeat(47));
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** Pieces over lines of up to 78 columns; the pieces of a head stand apart, words are joined by a blank. */
    private static List<String> wrapped(List<String> pieces) {
        String between = pieces.size() > 8 ? " " : "   ";
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String piece : pieces) {
            if (line.length() > 0 && line.length() + between.length() + piece.length() > 78) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : between).append(piece);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The form as a page that needs nothing else, a sheet a page; the paper is one of {@link #PAPERS}. */
    public static String html(List<Roll> rolls, String next, LocalDate date, String paper) {
        HtmlWriter html = new HtmlWriter();
        for (Sheet sheet : sheets(rolls, next, date)) {
            html.raw("<section>\n")
                    .element("h1", sheet.head.get(0))
                    .raw("\n")
                    .element("p", String.join(" \u00b7 ", sheet.head.subList(1, sheet.head.size())))
                    .raw("\n")
                    .element("p", HOW)
                    .raw("\n<div class=\"tally\">Tally</div>\n<table>\n<thead><tr>")
                    .element("th class=\"frame\"", "frame")
                    .element("th class=\"value\"", "aperture")
                    .element("th class=\"value\"", "time")
                    .element("th", "words")
                    .raw("</tr></thead>\n<tbody>\n");
            sheet.frames.forEach(it -> html.raw("<tr>")
                    .element("td class=\"frame\"", Integer.toString(it))
                    .raw("<td></td><td></td><td></td></tr>\n"));
            html.raw("</tbody>\n</table>\n</section>\n");
        }
        // 38 rows and the head fit the height of the paper: 297 mm, or 279 mm.
        String style = String.format(Locale.ROOT, STYLE, paper, paper.equals("A4") ? "6.1mm" : "5.6mm");
        return html.page(HtmlWriter.head("takeup: paper form", "\n" + style));
    }
}
