package takeup.order;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import takeup.text.HtmlWriter;

/** A page with the frames of one roll: the film drawn as a strip, then a table. Half a page holds 36 frames. */
final class FrameSheet {
    /** Fewest rows of a table before the next one begins beside it. */
    private static final int LEAST_ROWS = 12;

    private FrameSheet() {}

    static void into(HtmlWriter html, ExposedRoll roll, Set<OrderedRoll.Extra> extras) {
        RollFilm film = roll.film();
        html.element("h2", roll.roll() + " · " + film.stock());
        Map<String, String> heads = new LinkedHashMap<>();
        heads.put(
                "development",
                PrintedText.of(film.development().process()) + ", "
                        + film.development().words());
        heads.put(
                "film",
                film.filmSize() + " " + film.frameSize()
                        + film.special().map(it -> ", " + it).orElse("") + " · "
                        + roll.camera().printed());
        heads.put(
                "frames",
                roll.exposures().expected() + " exposed · loaded "
                        + roll.shoot().date());
        if (!roll.notes().condition().isEmpty()) {
            heads.put("special instructions", String.join("; ", roll.notes().condition()));
        }
        heads(html, heads);
        List<ExposedFrame> frames = roll.frames();
        if (frames.isEmpty()) {
            html.element("p", "no frames logged");
            return;
        }
        html.raw(FrameStrip.of(frames, film.filmSize())).raw("<div class=\"frames\">\n");
        int rows = Math.max(LEAST_ROWS, (frames.size() + 1) / 2);
        for (int from = 0; from < frames.size(); from += rows) {
            table(html, frames.subList(from, Math.min(frames.size(), from + rows)), extras);
        }
        html.raw("</div>\n");
    }

    /** Names and words, side by side in two columns. */
    private static void heads(HtmlWriter html, Map<String, String> heads) {
        html.raw("<dl class=\"heads\">\n");
        heads.forEach((name, words) ->
                html.raw("<div>").element("dt", name).element("dd", words).raw("</div>\n"));
        html.raw("</dl>\n");
    }

    private static void table(HtmlWriter html, List<ExposedFrame> frames, Set<OrderedRoll.Extra> extras) {
        boolean withNotes = extras.contains(OrderedRoll.Extra.NOTES);
        html.raw("<table class=\"" + (withNotes ? "noted" : "plain") + "\">\n<thead><tr>")
                .element("th class=\"at\"", "frame")
                .element("th class=\"set\"", "setting")
                .element("th class=\"lens\"", "lens")
                .element("th class=\"light\"", "light");
        if (withNotes) {
            html.element("th", "note");
        }
        html.raw("</tr></thead>\n<tbody>\n");
        for (ExposedFrame frame : frames) {
            String setting = frame.aperture().orElse("")
                    + (frame.aperture().isPresent() && frame.time().isPresent() ? " · " : "")
                    + frame.time().orElse("");
            html.raw("<tr>")
                    .element("td", Integer.toString(frame.frame()))
                    .element("td", setting)
                    .element("td", frame.lens().orElse(""))
                    .element("td", frame.kind().equals("exposed") ? frame.error() : frame.kind());
            if (withNotes) {
                html.element("td", frame.note().orElse(""));
            }
            html.raw("</tr>\n");
        }
        html.raw("</tbody>\n</table>\n");
    }
}
