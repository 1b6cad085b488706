package takeup.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import takeup.exposure.Stops;
import takeup.text.English;
import takeup.text.Padding;
import takeup.text.Plain;

/** A lesson in words, and its verdicts as a plot of characters: what a photographer reads in the terminal. */
public final class LessonText {
    /** Stops over box at the left and the right end of a plot, and the verdicts from top to bottom. */
    static final int LEFT = -4;

    static final int RIGHT = 6;
    static final List<Density> ROWS = List.of(Density.DENSE, Density.GOOD, Density.THIN);

    private static final String SHADES = " .:oO#";

    private LessonText() {}

    /** All of it: counts, the plot, the findings. */
    public static List<String> of(VerdictCounts counts, Lesson lesson) {
        List<String> lines = new ArrayList<>();
        lines.add(English.count(counts.judged(), "frame") + " judged on " + English.count(counts.rolls(), "roll")
                + (counts.unknown() > 0 ? "; of " + counts.unknown() + " the log cannot tell the exposure" : ""));
        if (counts.usable() > 0) {
            lines.add("");
            lines.addAll(plot(counts));
            lines.add("");
            for (JudgedFrame.Factor factor : JudgedFrame.Factor.values()) {
                table(counts, factor, lines);
            }
        }
        lines.add("");
        findings(lesson).forEach(lines::add);
        lines.add("Verdicts are by the texture of the shadows; the brightness of a scan may be the lab's.");
        return lines;
    }

    /** What was found, a sentence each. */
    public static List<String> findings(Lesson lesson) {
        List<String> lines = new ArrayList<>();
        if (!lesson.isEnough()) {
            lines.add("Not enough frames: " + lesson.frames() + " judged with a known exposure, " + Lesson.FEWEST
                    + " at least.");
            return lines;
        }
        lesson.findings().forEach(it -> lines.add(words(it)));
        if (lines.isEmpty() && lesson.scatter().low() > Lesson.WILD) {
            lines.add("Nothing to change: frames came back well where the log feared for them, so these stocks "
                    + "bear more than their files say ("
                    + lesson.frames() + " frames).");
            return lines;
        }
        if (lines.isEmpty()) {
            lines.add("Nothing to change: the verdicts follow the log within chance (" + lesson.frames() + " frames).");
        }
        lines.add("Frames lie about the log with " + range(lesson.scatter()) + " of scatter"
                + (lesson.scatter().high() < 0.9 ? ", which is usual." : "."));
        return lines;
    }

    /** One finding as a sentence. */
    public static String words(Finding finding) {
        String how = range(finding.stops()) + (finding.stops().estimate() < 0 ? " thinner" : " denser")
                + " than the log says";
        String otherwise = finding.otherCauses().isEmpty()
                ? ""
                : " It may as well be " + String.join(" or ", finding.otherCauses())
                        + ": the log cannot tell them apart.";
        String frames = " (" + English.count(finding.frames(), "frame") + ")";
        return switch (finding.kind()) {
            case RATING ->
                finding.name() + frames + ": consistently " + how + ": rate it at " + newIndex(finding) + "."
                        + otherwise;
            case EQUIPMENT ->
                finding.factor() + " " + finding.name() + frames + ": " + how + ", and not elsewhere: "
                        + (finding.factor() == JudgedFrame.Factor.BODY
                                ? "that shutter, or its meter; have it timed."
                                : "that lens; look at its diaphragm.")
                        + otherwise;
            case TECHNIQUE ->
                finding.factor() + " " + finding.name() + frames + ": " + how
                        + ", and not elsewhere: technique; meter a roll of it in two ways." + otherwise;
            case DEVELOPMENT ->
                finding.factor() + " " + finding.name() + frames + ": " + how
                        + ", and not elsewhere: the developer; look at its age, time and temperature." + otherwise;
            case SCATTER ->
                finding.name() + frames + ": scattered, " + range(finding.stops())
                        + ": technique or equipment; no rating helps.";
        };
    }

    /** What a stock is to be rated at from now on: {@code 200}. */
    public static String newIndex(Finding finding) {
        return Plain.number(finding.newIndex().orElseThrow());
    }

    private static String range(ConfidenceInterval stops) {
        double low = Math.min(Math.abs(stops.low()), Math.abs(stops.high()));
        double high = Math.max(Math.abs(stops.low()), Math.abs(stops.high()));
        boolean isOpen = high > 3.9;
        return Stops.words(stops.estimate()) + " (" + Plain.decimals(low, 1)
                + (isOpen ? " or more)" : " to " + Plain.decimals(high, 1) + ")");
    }

    /** How many frames of a verdict the log puts at each place of a plot that has so many places a stop. */
    static int[] bins(VerdictCounts counts, Density verdict, int perStop) {
        int[] bins = new int[perStop * (RIGHT - LEFT) + 1];
        counts.counts().forEach((frame, count) -> {
            if (frame.verdict() == verdict) {
                int place = (int) Math.round(perStop * (frame.overStops() - LEFT));
                bins[Math.max(0, Math.min(bins.length - 1, place))] += count;
            }
        });
        return bins;
    }

    /**
     * Stops over box by the log from left to right, the verdict from top to bottom; the darker a place, the more
     * frames.
     */
    private static List<String> plot(VerdictCounts counts) {
        int most = ROWS.stream()
                .flatMapToInt(it -> Arrays.stream(bins(counts, it, 2)))
                .max()
                .orElse(1);
        List<String> lines = new ArrayList<>();
        for (Density verdict : ROWS) {
            StringBuilder line = new StringBuilder("  " + Padding.cell(verdict.toString(), 6) + "|");
            for (int frames : bins(counts, verdict, 2)) {
                int shade = frames == 0 ? 0 : 1 + (SHADES.length() - 2) * frames / most;
                line.append(' ').append(SHADES.charAt(shade));
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

    private static void table(VerdictCounts counts, JudgedFrame.Factor factor, List<String> lines) {
        counts.by(factor)
                .forEach((name, by) -> lines.add("  " + Padding.cell(factor.toString(), 8) + Padding.cell(name, 22)
                        + Padding.cell(English.count(by.all(), "frame"), 12)
                        + Padding.cell(by.thin() + " thin", 9) + Padding.cell(by.good() + " good", 9)
                        + Padding.cell(by.dense() + " dense", 10)
                        + "thin " + by.thinShare()));
    }
}
