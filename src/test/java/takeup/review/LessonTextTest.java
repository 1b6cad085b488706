package takeup.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a lesson says: one sentence for each cause, and what to do about it. */
class LessonTextTest {
    private static final ConfidenceInterval UNDER = new ConfidenceInterval(-1, -1.4, -0.7);
    private static final ConfidenceInterval OVER = new ConfidenceInterval(0.8, 0.5, 1.1);
    private static final ConfidenceInterval USUAL = new ConfidenceInterval(0.4, 0.3, 0.5);
    private static final ConfidenceInterval WILD = new ConfidenceInterval(1.6, 1.2, 2.1);

    @Test
    void aRatingThatIsOffIsPutRight() {
        Finding finding = new Finding(
                Finding.Kind.RATING,
                JudgedFrame.Factor.RATING,
                "bw400 rated 400",
                Optional.of(new JudgedFrame.Rating("bw400", 400)),
                30,
                UNDER,
                List.of());
        check(
                "bw400 rated 400 (30 frames): consistently 1 stop (0.7 to 1.4) thinner than the log says: rate it at 200.",
                finding);
    }

    @Test
    void aBodyThatIsOffIsToBeTimed() {
        check(
                "body 35 (1 frame): 0.8 stops (0.5 to 1.1) denser than the log says, and not elsewhere: that shutter, "
                        + "or its meter; have it timed.",
                finding(Finding.Kind.EQUIPMENT, JudgedFrame.Factor.BODY, "35", 1, OVER));
    }

    @Test
    void aLensThatIsOffIsToBeLookedAt() {
        check(
                "lens 645 80 (12 frames): 0.8 stops (0.5 to 1.1) denser than the log says, and not elsewhere: that lens; "
                        + "look at its diaphragm.",
                finding(Finding.Kind.EQUIPMENT, JudgedFrame.Factor.LENS, "645 80", 12, OVER));
    }

    @Test
    void aWayOfMeteringThatIsOffIsToBeCompared() {
        check(
                "method spot (12 frames): 1 stop (0.7 to 1.4) thinner than the log says, and not elsewhere: technique; "
                        + "meter a roll of it in two ways.",
                finding(Finding.Kind.TECHNIQUE, JudgedFrame.Factor.METHOD, "spot", 12, UNDER));
    }

    @Test
    void scatterIsNoMatterOfTheRating() {
        check(
                "spot (12 frames): scattered, 1.6 stops (1.2 to 2.1): technique or equipment; no rating helps.",
                finding(Finding.Kind.SCATTER, JudgedFrame.Factor.METHOD, "spot", 12, WILD));
    }

    @Test
    void whatTheLogCannotTellApartIsNamed() {
        Finding finding = new Finding(
                Finding.Kind.TECHNIQUE,
                JudgedFrame.Factor.LIGHT,
                "indoors",
                Optional.empty(),
                9,
                UNDER,
                List.of("body 35", "method spot"));
        check(
                "light indoors (9 frames): 1 stop (0.7 to 1.4) thinner than the log says, and not elsewhere: technique; "
                        + "meter a roll of it in two ways. It may as well be body 35 or method spot: the log cannot "
                        + "tell them apart.",
                finding);
    }

    @Test
    void aRangeWithoutAnEndSaysOrMore() {
        check(
                "method spot (12 frames): 3 stops (1.0 or more) thinner than the log says, and not elsewhere: technique; "
                        + "meter a roll of it in two ways.",
                finding(
                        Finding.Kind.TECHNIQUE,
                        JudgedFrame.Factor.METHOD,
                        "spot",
                        12,
                        new ConfidenceInterval(-3, -6, -1)));
    }

    @Test
    void withTooFewFramesNothingIsSaid() {
        lesson(new Lesson(11, List.of(), USUAL), "Not enough frames: 11 judged with a known exposure, 12 at least.");
    }

    @Test
    void whereTheVerdictsFollowTheLogNothingIsToBeChanged() {
        lesson(
                new Lesson(40, List.of(), USUAL),
                "Nothing to change: the verdicts follow the log within chance (40 frames).",
                "Frames lie about the log with 0.4 stops (0.3 to 0.5) of scatter, which is usual.");
    }

    @Test
    void whereFramesCameBackBetterThanTheFileSaysNothingIsToBeChanged() {
        lesson(
                new Lesson(40, List.of(), WILD),
                "Nothing to change: frames came back well where the log feared for them, so these stocks bear more "
                        + "than their files say (40 frames).");
    }

    /** Two stops over is 12 half stops from the left end at -4; the darkest sign is for the most frames. */
    @Test
    void theVerdictsStandInAPlotAndInATableForEachFactor() {
        VerdictCounts counts = new VerdictCounts();
        counts.add(frame(20, Density.DENSE), 3);
        counts.add(frame(0, Density.GOOD), 16);
        counts.add(frame(0, Density.THIN), 1);
        List<String> lines = LessonText.of(counts, new Lesson(20, List.of(), USUAL));
        assertEquals(
                List.of(
                        "  dense |" + " ".repeat(25) + ".",
                        "  good  |" + " ".repeat(17) + "#",
                        "  thin  |" + " ".repeat(17) + ".",
                        "         -4  -3  -2  -1   0   1   2   3   4   5   6  stops over box by the log"),
                lines.subList(2, 6));
        // By Wilson's method 1 of 20 lies between 0.9 and 23.6 % (as worked out by hand for 4 of 20 in the test
        // beside).
        assertEquals(
                "  body    645                   20 frames   1 thin   16 good  3 dense   thin 1 to 24 %", lines.get(8));
    }

    private static JudgedFrame frame(int overTenths, Density verdict) {
        return new JudgedFrame(
                new JudgedFrame.Rating("bw400", 400),
                new JudgedFrame.Gear("645", "645 80"),
                "incident",
                "shade",
                "",
                overTenths,
                new JudgedFrame.Latitude(1, 2),
                verdict);
    }

    private static Finding finding(
            Finding.Kind kind, JudgedFrame.Factor factor, String name, int frames, ConfidenceInterval stops) {
        return new Finding(kind, factor, name, Optional.empty(), frames, stops, List.of());
    }

    private static void check(String sentence, Finding finding) {
        assertEquals(sentence, LessonText.words(finding));
    }

    private static void lesson(Lesson lesson, String... sentences) {
        assertEquals(Arrays.asList(sentences), LessonText.findings(lesson));
    }
}
