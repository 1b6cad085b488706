package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.exposure.Stops;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.kit.MeteredPair;
import takeup.kit.Shutter;
import takeup.kit.Suggestion;
import takeup.kit.Suggestions;
import takeup.kit.Warning;
import takeup.report.SetupText;
import takeup.session.Session;
import takeup.text.Plain;
import takeup.text.Width;

/**
 * The pairs that the light of the day asks for, the best one marked: what to set, its error, what speaks against it.
 */
public final class SuggestionList {
    private static final String HEAD = "  to set        error     over box";
    /** Columns of a row without what is sharp. */
    private static final int PLAIN = 46;

    private final Session session;
    private final Grid grid;
    private final Layout layout;
    private final List<Suggestion> suggestions;
    private final Optional<Shutter> shutter;
    private final int best;
    private final int chosen;
    private final boolean hasDepth;

    public SuggestionList(Session session, Optional<Suggestions> advice, Grid grid) {
        this.session = session;
        this.grid = grid;
        this.layout = Layout.of(grid);
        this.suggestions = advice.isPresent() ? advice.get().suggestions() : List.of();
        this.shutter = session.shown().shutterInHand();
        this.best = advice.isPresent() ? advice.get().best() : -1;
        this.chosen = session.view().chosen();
        this.hasDepth = layout.isWideList() && hasDepth(suggestions);
    }

    private static boolean hasDepth(List<Suggestion> suggestions) {
        for (Suggestion suggestion : suggestions) {
            if (suggestion.depth().isPresent()) {
                return true;
            }
        }
        return false;
    }

    public boolean isEmpty() {
        return suggestions.isEmpty();
    }

    /** The column at which another list may begin beside it. */
    public int end() {
        return layout.margin() + (hasDepth ? 65 : 44);
    }

    /** Which columns frames have room for beside it. */
    public FrameText.Columns columnsBeside() {
        return layout.columns() >= (hasDepth ? 106 : 100) ? FrameText.Columns.TIMED : FrameText.Columns.TIGHT;
    }

    /** Draws a heading and so many rows at most: those around the highlighted one, else around the best. */
    public void draw(int row, int count) {
        if (isEmpty()) {
            return;
        }
        int margin = layout.margin();
        grid.put(margin, row, hasDepth ? Width.pad(HEAD, PLAIN) + "sharp" : HEAD, TextRole.LABEL);
        int width = layout.isTwoLists() ? end() - margin - 2 : layout.columns();
        List<Integer> rows = seen(count);
        for (int i = 0; i < rows.size(); i++) {
            int index = rows.get(i);
            int line = row + 1 + i;
            if (index == chosen) {
                grid.fill(margin, line, width, TextRole.CHOSEN);
            }
            grid.put(margin, line, Width.cut(text(index), width), role(index));
        }
    }

    /** The rows around the highlighted one, else around the best; the meter's own is always among them. */
    private List<Integer> seen(int count) {
        int middle = chosen >= 0 ? chosen : best;
        int first = Math.max(0, Math.min(suggestions.size() - count, middle - count / 2));
        List<Integer> rows = new ArrayList<>();
        for (int i = first; i < Math.min(suggestions.size(), first + count); i++) {
            rows.add(i);
        }
        int own = rows.size() < suggestions.size() ? own() : -1;
        if (own >= 0 && !rows.contains(own) && rows.size() > 1) {
            boolean isAbove = own < first;
            rows.set(isAbove ? 0 : rows.size() - 1, own);
        }
        return rows;
    }

    /** Which row has the pair that the meter showed; -1 where it showed none. */
    private int own() {
        Optional<MeteredPair> shown = session.shownByMeter();
        for (int i = 0; i < suggestions.size() && shown.isPresent(); i++) {
            if (shown.get().aperture().isSameMark(suggestions.get(i).aperture())) {
                return i;
            }
        }
        return -1;
    }

    private TextRole role(int index) {
        if (index == chosen) {
            return TextRole.CHOSEN;
        }
        return index == best ? TextRole.STRONG : TextRole.NORMAL;
    }

    /** Pair, error, stops above box speed, what speaks against it. Brackets hold the highlighted pair. */
    private String text(int index) {
        Suggestion it = suggestions.get(index);
        boolean isChosen = index == chosen;
        String time = Plain.textOr(it.time(), "–") + (isChosen ? "]" : "");
        String error =
                it.errorStops().isPresent() ? Stops.onMeter(it.errorStops().getAsDouble()) : "";
        String sum = it.overBoxStops().isPresent() ? overBox(it.overBoxStops().getAsDouble()) : "";
        String row = mark(index)
                + (isChosen ? "[" : " ")
                + Width.pad(it.aperture().toString(), 6)
                + Width.pad(Width.pad(time, 7) + " " + error, 18)
                + Width.pad(sum, sum.length() > 4 ? 10 : 5)
                + remark(it);
        if (!hasDepth) {
            return row;
        }
        return Width.pad(row, PLAIN)
                + (it.depth().isPresent() ? SetupText.depth(it.depth().get()) : "");
    }

    /** The arrow is what Enter takes, here as in every list; the dot is the best. */
    private String mark(int index) {
        if (index == chosen) {
            return "►";
        }
        return index == best ? "•" : " ";
    }

    /** What spoils the frame first; then that the time is none of the dial's; then what else there is to say. */
    private String remark(Suggestion row) {
        boolean isByTheWatch = row.time().isPresent()
                && shutter.isPresent()
                && shutter.get().isByTheWatch(row.time().get());
        if (!row.warnings().isEmpty()) {
            Warning first = row.warnings().get(0);
            boolean isSlow = first.code() == Warning.Code.RECIPROCITY || first.code() == Warning.Code.HAND_HELD;
            if (!isByTheWatch || !isSlow) {
                return brief(first);
            }
        }
        return isByTheWatch ? "by the watch" : "";
    }

    private static String overBox(double stops) {
        return Stops.tenths(stops) + (stops > -0.05 ? "" : " under");
    }

    private static String brief(Warning warning) {
        return switch (warning.code()) {
            case OUT_OF_RANGE -> "not on dial";
            case SYNC_SPEED -> "sync";
            case RECIPROCITY_BEYOND -> "past table";
            default -> warning.code().toString();
        };
    }
}
