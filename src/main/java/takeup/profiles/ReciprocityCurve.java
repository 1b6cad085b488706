package takeup.profiles;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import takeup.exposure.Reciprocity;
import takeup.exposure.Stops;

/** The time to set against the metered one, both axes in doublings, drawn in at most 60 x 14 characters. */
final class ReciprocityCurve {
    private static final int COLUMNS = 46;
    private static final double LOWEST = 0.5;
    /** Stops on each axis: the metered one from 1/2 s to 4 min, the time to set to 17 min. */
    private static final double ACROSS = 9;

    private static final int ROWS = 11;

    private ReciprocityCurve() {}

    /**
     * The lines of the drawing: upwards the time to set, to the right the metered one; {@code *} is past what is
     * published, {@code .} what the meter said.
     */
    static List<String> of(Reciprocity film) {
        List<String> lines = new ArrayList<>();
        for (int row = ROWS; row >= 0; row--) {
            StringBuilder line = new StringBuilder(label(row)).append("│");
            for (int column = 0; column < COLUMNS; column++) {
                line.append(mark(film, row, column));
            }
            lines.add(line.toString().stripTrailing());
        }
        StringBuilder axis = new StringBuilder("      └").append("─".repeat(COLUMNS));
        String[] ticks = {"1/2s", "", "2s", "", "8s", "", "32s", "", "2m", ""};
        for (int stop = 0; stop < ticks.length; stop++) {
            int at = 7 + (int) Math.round(stop * (COLUMNS - 1) / ACROSS);
            axis.replace(at, Math.min(axis.length(), at + ticks[stop].length()), ticks[stop]);
        }
        lines.add(axis + " metered");
        lines.add(0, "  set");
        return lines;
    }

    private static char mark(Reciprocity film, int row, int column) {
        double stops = column * ACROSS / (COLUMNS - 1);
        double metered = LOWEST * Stops.factor(stops);
        OptionalDouble corrected = film.corrected(metered);
        if (corrected.isPresent() && Math.round(Stops.of(corrected.getAsDouble() / LOWEST)) == row) {
            return film.beyond(metered) ? '*' : '▪';
        }
        return Math.round(stops) == row ? '·' : ' ';
    }

    private static String label(int row) {
        return switch (row) {
            case 11 -> "  17m ";
            case 9 -> "   4m ";
            case 7 -> "   1m ";
            case 4 -> "   8s ";
            case 1 -> "   1s ";
            default -> "      ";
        };
    }
}
