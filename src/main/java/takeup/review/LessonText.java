package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import takeup.exposure.Stops;
import takeup.text.English;
import takeup.text.Padding;
import takeup.text.Plain;

/** A lesson in words, and its verdicts as a plot of characters: what a photographer reads in the terminal. */
public final class LessonText {
    private static final int LEFT = -4;
    private static final int RIGHT = 6;
    private static final String SHADES = " .:oO#";

    private LessonText() {}

    /** All of it: counts, the plot, the findings. */
    public static List<String> of(VerdictCounts tally, Lesson lesson) {
        List<String> lines = new ArrayList<>();
        lines.add(English.count(tally.judged(), "frame") + " judged on " + English.count(tally.rolls(), "roll")
                + (tally.unknown() > 0 ? "; of " + tally.unknown() + " the log cannot tell the exposure" : ""));
        if (tally.usable() > 0) {
            lines.add("");
            lines.addAll(plot(tally));
            lines.add("");
            for (JudgedFrame.Factor factor : JudgedFrame.Factor.values()) {
                table(tally, factor, lines);
            }
        }
        lines.add("");
        findings(lesson).forEach(lines::add);
        lines.add("Verdicts are by the texture of the shadows; the brightness of a scan may be the lab's.");
        return lines;
    }

    /** What was found, a sentence each. */
    public static List<String> findings(Lesson lesson) {
        List<String> said = new ArrayList<>();
        if (!lesson.isEnough()) {
            said.add("Not enough frames: " + lesson.frames() + " judged with a known exposure, " + Lesson.FEWEST
                    + " at least.");
            return said;
        }
        lesson.findings().forEach(it -> said.add(words(it)));
        if (said.isEmpty() && lesson.scatter().low() > Lesson.WILD) {
            said.add("Nothing to change: frames came back well where the log feared for them, so these stocks "
                    + "bear more than their files say ("
                    + lesson.frames() + " frames).");
            return said;
        }
        if (said.isEmpty()) {
            said.add("Nothing to change: the verdicts follow the log within chance (" + lesson.frames() + " frames).");
        }
        said.add("Frames lie about the log with " + range(lesson.scatter()) + " of scatter"
                + (lesson.scatter().high() < 0.9 ? ", which is usual." : "."));
        return said;
    }

    /** One finding as a sentence. */
    public static String words(Finding finding) {
        String how = range(finding.stops()) + (finding.stops().estimate() < 0 ? " thinner" : " denser")
                + " than the log says";
        String alike = finding.otherCauses().isEmpty()
                ? ""
                : " It may as well be " + String.join(" or ", finding.otherCauses())
                        + ": the log cannot tell them apart.";
        String frames = " (" + English.count(finding.frames(), "frame") + ")";
        return switch (finding.kind()) {
            case RATING ->
                finding.name() + frames + ": consistently " + how + ": rate it at " + newIndex(finding) + "." + alike;
            case EQUIPMENT ->
                finding.factor() + " " + finding.name() + frames + ": " + how + ", and not elsewhere: "
                        + (finding.factor() == JudgedFrame.Factor.BODY
                                ? "that shutter, or its meter; have it timed."
                                : "that lens; look at its diaphragm.")
                        + alike;
            case TECHNIQUE ->
                finding.factor() + " " + finding.name() + frames + ": " + how
                        + ", and not elsewhere: technique; meter a roll of it in two ways." + alike;
            case SCATTER ->
                finding.name() + frames + ": scattered, " + range(finding.stops())
                        + ": technique or equipment; no rating helps.";
        };
    }

    /** What a stock is to be rated at, for a finding about its rating: {@code 200}. */
    public static String newIndex(Finding finding) {
        return Plain.number(finding.newIndex(
                Double.parseDouble(finding.name().substring(finding.name().lastIndexOf(' ') + 1))));
    }

    private static String range(ConfidenceInterval stops) {
        double low = Math.min(Math.abs(stops.low()), Math.abs(stops.high()));
        double high = Math.max(Math.abs(stops.low()), Math.abs(stops.high()));
        boolean isOpen = high > 3.9;
        return Stops.words(stops.estimate()) + " (" + Plain.decimals(low, 1)
                + (isOpen ? " or more)" : " to " + Plain.decimals(high, 1) + ")");
    }

    /**
     * Stops over box by the log from left to right, the verdict from top to bottom; the darker a place, the more
     * frames.
     */
    private static List<String> plot(VerdictCounts tally) {
        int width = 2 * (RIGHT - LEFT) + 1;
        int[][] at = new int[Density.values().length][width];
        int most = 1;
        for (Map.Entry<JudgedFrame, Integer> each : tally.counts().entrySet()) {
            int column = (int) Math.round(2 * (each.getKey().overTenths() / 10.0 - LEFT));
            int[] row = at[each.getKey().verdict().ordinal()];
            column = Math.max(0, Math.min(width - 1, column));
            row[column] += each.getValue();
            most = Math.max(most, row[column]);
        }
        List<String> lines = new ArrayList<>();
        for (Density density : new Density[] {Density.DENSE, Density.GOOD, Density.THIN}) {
            StringBuilder line = new StringBuilder("  " + (density + "     ").substring(0, 6) + "|");
            for (int each : at[density.ordinal()]) {
                int shade = each == 0 ? 0 : 1 + (int) Math.floor((SHADES.length() - 2) * (each / (double) most));
                line.append(' ').append(SHADES.charAt(Math.min(shade, SHADES.length() - 1)));
            }
            lines.add(line.toString().stripTrailing());
        }
        StringBuilder axis = new StringBuilder("         ");
        for (int stop = LEFT; stop <= RIGHT; stop++) {
            String number = Integer.toString(stop);
            axis.append(" ".repeat(2 - number.length())).append(number).append("  ");
        }
        lines.add(axis.toString().stripTrailing() + "  stops over box by the log");
        return lines;
    }

    private static void table(VerdictCounts tally, JudgedFrame.Factor factor, List<String> lines) {
        tally.by(factor).forEach((name, counts) -> {
            int all = counts[0] + counts[1] + counts[2];
            ConfidenceInterval thin =
                    ConfidenceInterval.share(counts[Density.THIN.ordinal()], all, ConfidenceInterval.CONFIDENCE);
            lines.add("  " + Padding.cell(factor.toString(), 8) + Padding.cell(name, 22)
                    + Padding.cell(English.count(all, "frame"), 12)
                    + Padding.cell(counts[0] + " thin", 9) + Padding.cell(counts[1] + " good", 9)
                    + Padding.cell(counts[2] + " dense", 10)
                    + "thin " + Math.round(100 * thin.low()) + " to " + Math.round(100 * thin.high()) + " %");
        });
    }
}
