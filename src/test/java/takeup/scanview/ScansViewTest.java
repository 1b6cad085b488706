package takeup.scanview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.exposure.FilmSpeed;
import takeup.exposure.Reciprocity;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.grid.Theme;
import takeup.kit.Camera;
import takeup.kit.FilmSize;
import takeup.kit.FrameSize;
import takeup.kit.Stock;
import takeup.message.Key;
import takeup.review.Density;
import takeup.review.FrameKey;
import takeup.review.Review;
import takeup.review.ReviewEvent;
import takeup.roll.Development;
import takeup.roll.Exposure;
import takeup.roll.Film;
import takeup.roll.Frame;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;
import takeup.scans.Picture;
import takeup.scans.Proposal;
import takeup.scans.Scan;
import takeup.scans.Slot;
import takeup.scans.Tone;
import takeup.session.Playing;
import takeup.terminal.Painter;

/** Four frames and three scans: the second frame has none. Keys in, screen and decisions out. */
class ScansViewTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-09-12T12:00:00+02:00");

    @Test
    void aFrameWithoutAScanStandsInItsPlace() {
        check(desk(0.5), "crew1.jpg 1, – 2, crew2.jpg 3, crew3.jpg 4");
        assertEquals(TextRole.CHOSEN, grid(desk(0.5)).role(1, 2));
        assertEquals(TextRole.CAUTION, grid(desk(0.5)).role(1, 3));
    }

    @Test
    void oneKeyJudgesAFrameAndGoesToTheNext() {
        ScansState desk = typed(desk(1), "t");
        assertEquals(List.of(new ReviewEvent.Judged(key(desk, 0), Optional.of(Density.THIN))), desk.toSave());
        assertEquals(1, desk.cursor());
        assertEquals("frame 1 is thin: on disk", desk.saved(Review.NONE).message());
        assertEquals(
                "NOT SAVED: the disk is full",
                desk.saveFailed("the disk is full").message());
        assertEquals(TextRole.ALARM, grid(desk.saveFailed("the disk is full")).role(0, 20));
    }

    @Test
    void fromAScanOnAllShowAFrameLaterAndTheLastFallsOff() {
        // Down twice: to the scan of frame 3.
        check(typed(desk(1), "vvDDe"), "crew1.jpg 1, crew2.jpg 2, crew3.jpg 3, – 4");
        check(typed(desk(1), "l"), "– 1, crew1.jpg 2, – 3, crew2.jpg 4, crew3.jpg –");
    }

    @Test
    void twoScansAreSwappedAndAFilmIsTurned() {
        assertEquals(List.of(3, 2, 0), typed(desk(1), "sDDDs").proposal().slotOf());
        assertEquals(List.of(3, 2, 0), typed(desk(1), "r").proposal().slotOf());
        assertEquals(List.of(-1, 2, 3), typed(desk(1), "n").proposal().slotOf());
    }

    @Test
    void whereItIsNotSureTheSameKeyTwiceAccepts() {
        ScansState asked = typed(desk(0.5), "a");
        assertEquals(List.of(), asked.toSave());
        assertTrue(asked.message().startsWith("not sure (50 %)"), asked.message());
        assertEquals(List.of(), typed(asked, "Da").toSave(), "another key in between withdraws it");
        ReviewEvent.Accepted accepted =
                (ReviewEvent.Accepted) typed(asked, "a").toSave().get(0);
        assertEquals(
                List.of("crew1.jpg", "crew2.jpg", "crew3.jpg"),
                accepted.scans().stream().map(ReviewEvent.PlacedScan::file).toList());
        assertEquals(
                3,
                ((ReviewEvent.Accepted) typed(desk(1), "a").toSave().get(0))
                        .scans()
                        .get(1)
                        .frames()
                        .get(0)
                        .number());
    }

    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({"120, 36", "80, 24", "60, 20", "40, 12", "20, 5", "1, 1"})
    void fitsEverySize(int columns, int rows) {
        for (String keys : List.of("", "v", "vDDD")) {
            Grid grid = ScansView.render(typed(desk(0.5), keys), pictures(), columns, rows);
            assertEquals(columns, grid.columns());
        }
    }

    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({"120, 36", "80, 24", "40, 12"})
    void theKeyThatLeavesIsAlwaysNamed(int columns, int rows) {
        String text = ScansView.render(desk(0.5), pictures(), columns, rows).text();
        assertTrue(text.contains("q leave"), text);
    }

    @Test
    void at80ColumnsEveryKeyIsNamed() {
        String text = grid(desk(0.5)).text();
        for (ScanKeys key : ScanKeys.all()) {
            assertTrue(
                    key.key().name() != Key.Name.CHARACTER || text.contains(key.key() + " " + key.does()),
                    key.does() + " is missing:\n" + text);
        }
        assertTrue(grid(typed(desk(0.5), "v")).text().contains("v list"));
    }

    @Test
    void aKeyWithoutMeaningNamesTheOthersAlsoWhereTheFooterHasNoRoomForThem() {
        shows("keys here: t g d a v o q l e s r n u", typed(desk(1), "?"), 40, 12);
    }

    @Test
    void acceptStandsInTheFooterAt40By12() {
        shows("a accept", desk(0.5), 40, 12);
    }

    @Test
    void aReadingThatFindsNoRoomIsNotCutToItsFirstLetter() {
        Roll read = Playing.medium("m 5.6 125", "11 500")
                .shoot()
                .shown()
                .rollInHand()
                .orElseThrow();
        String text = ScansOfTheDay.of(read, 0, 0, 40, 12).text();
        assertTrue(text.contains("f/11 1/500") && !text.contains("  E"), text);
        assertTrue(ScansOfTheDay.of(read, 0, 0, 80, 24).text().contains("EV 11.0, 4.0 under"));
    }

    @Test
    void theMarkOfASwapDoesNotReadAsALetterOfTheFilesName() {
        ScansState marked = typed(desk(1), "s");
        shows("s crew1.jpg", marked, 80, 24);
        shows("go to the other scan, then s again", marked, 40, 12);
        shows("s 1 ", typed(marked, "v"), 80, 24);
    }

    private static void shows(String words, ScansState desk, int columns, int rows) {
        String text = ScansView.render(desk, pictures(), columns, rows).text();
        assertTrue(text.contains(words), text);
    }

    @Test
    void theContactSheetIsPaintedInEachDepthOfColour() throws IOException {
        Grid sheet = ScansView.render(typed(desk(1), "v"), pictures(), 80, 24);
        String truecolor = painted(sheet, ColourDepth.TRUE, CharacterSet.UNICODE);
        // The left half of each picture is 0xc86432, the right half black.
        assertTrue(truecolor.contains("\u001b[0;38;2;200;100;50;48;2;200;100;50m▄"), truecolor);
        assertTrue(painted(sheet, ColourDepth.INDEXED, CharacterSet.UNICODE).contains(";38;5;"));
        String mono = painted(sheet, ColourDepth.NONE, CharacterSet.UNICODE);
        assertFalse(mono.contains("38;"), mono);
        assertTrue(mono.contains("▒▒") || mono.contains("░░"), mono);
        String ascii = painted(sheet, ColourDepth.NONE, CharacterSet.ASCII);
        assertTrue(ascii.contains("====") && ascii.chars().allMatch(it -> it < 0x7f), ascii);
        assertTrue(painted(sheet, ColourDepth.TRUE, CharacterSet.ASCII).contains("48;2;200;100;50m "));
    }

    private static String painted(Grid grid, ColourDepth depth, CharacterSet lettering) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new Painter(out, depth, lettering, Theme.named("dark").orElseThrow()).show(grid);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static void check(ScansState desk, String rows) {
        List<String> shown = new ArrayList<>();
        for (String line : grid(desk).text().split("\n")) {
            if (line.startsWith(" ")) {
                shown.add(line.substring(0, Math.min(17, line.length())).strip().replaceAll(" +", " "));
            }
        }
        assertEquals(rows, String.join(", ", shown));
    }

    private static Grid grid(ScansState desk) {
        return ScansView.render(desk, pictures(), 80, 24);
    }

    /** D is the key Down; all else is typed as it stands. */
    private static ScansState typed(ScansState desk, String keys) {
        ScansState now = desk;
        for (String key : keys.split("")) {
            now = key.isEmpty() ? now : ScanKeys.after(now, key.equals("D") ? Key.of(Key.Name.DOWN) : Key.typed(key));
        }
        return now;
    }

    private static FrameKey key(ScansState desk, int place) {
        return FrameKey.of(desk.roll().frames().get(place));
    }

    private static ScansState desk(double confidence) {
        Roll roll = roll();
        List<Scan> scans = List.of(scan(1), scan(2), scan(3));
        return ScansState.of(
                roll,
                "/back",
                new Proposal(
                        scans,
                        Slot.of(roll),
                        List.of(0, 2, 3),
                        false,
                        false,
                        confidence,
                        List.of("3 scans, 4 logged: frame 2 has no scan")),
                Review.NONE);
    }

    private static Scan scan(int number) {
        return new Scan("crew" + number + ".jpg", 90, 60, new Tone(0.5, 0.2, false));
    }

    private static Map<String, Picture> pictures() {
        int[] dots = new int[90 * 60];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = i % 90 < 45 ? 0xc86432 : 0;
        }
        Map<String, Picture> pictures = new TreeMap<>();
        for (int i = 1; i <= 3; i++) {
            pictures.put("crew" + i + ".jpg", new Picture(90, 60, dots));
        }
        return pictures;
    }

    private static Roll roll() {
        Camera camera = new Camera(
                "35",
                "35mm reflex",
                FrameSize.SMALL,
                Map.of(FilmSize.F135, 36),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of());
        Stock stock = new Stock(
                "bw400",
                "Black-and-white 400",
                Stock.Kind.BW_NEGATIVE,
                "black-and-white",
                new FilmSpeed(400),
                new FilmSpeed(400),
                List.of(FilmSize.F135),
                new Stock.Response(
                        1,
                        3,
                        new Reciprocity.Opening(List.of(new Reciprocity.Point(1, 0), new Reciprocity.Point(10, 1)))));
        List<RollRecord> records = new ArrayList<>();
        records.add(new RollRecord(
                1,
                NOON,
                new RollEvent.Loaded(
                        new RollId("R", 7),
                        camera,
                        Optional.empty(),
                        new Film(
                                stock, FilmSize.F135, new FilmSpeed(400), new Development("black-and-white", 0), 36))));
        for (int i = 1; i <= 4; i++) {
            records.add(new RollRecord(
                    i + 1,
                    NOON,
                    new RollEvent.Added(
                            Frame.of(i, Frame.Kind.EXPOSED, Exposure.UNKNOWN, Optional.empty()),
                            RollEvent.Origin.LOGGED,
                            OptionalInt.empty())));
        }
        return Roll.of(records).orElseThrow();
    }
}
