package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.grid.Grid;
import takeup.grid.Theme;
import takeup.message.Key;
import takeup.scanview.ScansOfTheDay;
import takeup.session.Playing;

/**
 * The pictures of the README and of the manual are what the program draws. After a change of the screen {@code mvn -q
 * test -Dtest=PicturesTest -Dpictures=draw} draws them anew: look at them then.
 */
class PicturesTest {
    private static final Path FOLDER = Path.of("src/docs/pictures");

    /**
     * A picture: the name of its file, a theme, what is on the screen at a moment of regatta day or later, and its
     * words.
     */
    record Picture(String name, String theme, Grid grid, String title) {
        Picture(String name, String theme, int columns, int rows, Playing day, String title) {
            this(name, theme, Screen.render(day.shoot(), columns, rows), title);
        }

        String svg() {
            return SvgPicture.of(grid, Theme.named(theme).orElseThrow(), title);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Picture> pictures() {
        return List.of(
                new Picture(
                        "shoot",
                        "dark",
                        120,
                        40,
                        portraits().type("4 125 ; the crew, one step b"),
                        "The shoot screen: next frame 12, 5 left, f/5.6 1/125 to set, a bar of the sum, the "
                                + "roll as film, and an echo of the line being typed"),
                new Picture(
                        "sun",
                        "sun",
                        80,
                        24,
                        portraits().lines("x3").press(Key.of(Key.Name.DOWN), Key.of(Key.Name.DOWN)),
                        "The same in the theme for full sun, a suggestion highlighted, few frames left"),
                new Picture(
                        "night",
                        "night",
                        80,
                        24,
                        evening(),
                        "The theme for the dark: a long exposure on a tripod, with what reciprocity asks for"),
                new Picture(
                        "frames",
                        "dark",
                        100,
                        30,
                        portraits().lines("lost 3", "blank").press(Key.of(Key.Name.F2)),
                        "The frames of a roll, newest first, each with its setting, error, light and notes"),
                new Picture("first-start", "dark", 80, 24, Playing.of(), "The first start: pick a camera"),
                new Picture(
                        "scans",
                        "dark",
                        ScansOfTheDay.of(
                                portraits()
                                        .lines("11 500 ; typed late", "2.8 60", "yes", "8 250", "5.6 125", "4 60")
                                        .shoot()
                                        .shown()
                                        .rollInHand()
                                        .orElseThrow(),
                                12,
                                3,
                                110,
                                30),
                        "Scans of a roll beside what was set and read: one frame did not come back, four are "
                                + "judged, the scan under the cursor stands large at the right"));
    }

    /** Crew portraits at the boathouse: a 35mm body beside the 645, which is in hand. */
    private static Playing portraits() {
        return Playing.of("cam 35", "load bw400", "8 250 ; coach on the quay", "x3")
                .later(4)
                .lines("cam 645", "load cn400", "meter hand", "m 4.1 125", "2.8 250 ; Ines, bow seat", "x2")
                .later(3)
                .lines("m 4.6 125", "2.8 250 ; Tarek, cox", "x3")
                .later(6)
                .lines("m 5.6.3 125", "4 250 ; the eight at the doors", "x2")
                .later(2)
                .lines("5.6 125", "; blades crossed")
                .later(4);
    }

    /** Old shells under the roof, when the light has gone. */
    private static Playing evening() {
        return Playing.of(
                        "cam 645 2",
                        "load bw100 @80",
                        "meter hand",
                        "lens 80",
                        "tripod on",
                        "m ev2",
                        "hold f8",
                        "8 30s ; old shell under the roof")
                .later(3)
                .lines("m ev1.5")
                .later(1);
    }

    @ParameterizedTest(name = "{0}.svg")
    @MethodSource("pictures")
    void aPictureIsWhatTheProgramDraws(Picture picture) throws IOException {
        Path file = FOLDER.resolve(picture.name + ".svg");
        if ("draw".equals(System.getProperty("pictures"))) {
            Files.writeString(file, picture.svg());
        }
        assertEquals(
                Files.readString(file),
                picture.svg(),
                file + " shows another screen: mvn -q test -Dtest=PicturesTest -Dpictures=draw draws it anew");
    }

    /** A picture that is looked at on another machine must bring all of itself. */
    @ParameterizedTest(name = "{0}.svg")
    @MethodSource("pictures")
    void aPictureRefersToNothingElse(Picture picture) {
        String svg = picture.svg().replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        assertFalse(
                svg.contains("http")
                        || svg.contains("href")
                        || svg.contains("url(")
                        || svg.contains("<script")
                        || svg.contains("<style"),
                svg);
    }

    @Test
    void everyLetterOfTheScreenStandsInItsPicture() {
        Picture picture = pictures().get(0);
        String drawn = picture.svg()
                .replaceAll("(?s)<title>.*</title>|<[^>]*>|\\s", "")
                .replace("&gt;", ">");
        String shown = picture.grid.text().replaceAll("[▁▂▃▄▅▆▇█▀▌▐\\s]", "");
        assertEquals(shown, drawn);
    }

    @Test
    void everyPictureIsShownSomewhereAndEveryPictureThatIsShownIsThere() throws IOException {
        Set<String> drawn =
                new TreeSet<>(pictures().stream().map(it -> it.name + ".svg").toList());
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(
                    drawn,
                    new TreeSet<>(files.map(it -> it.getFileName().toString()).toList()));
        }
        StringBuilder pages = new StringBuilder(Files.readString(Path.of("README.md")));
        try (Stream<Path> files = Files.list(FOLDER.getParent())) {
            for (Path page : files.filter(Files::isRegularFile).sorted().toList()) {
                pages.append(Files.readString(page));
            }
        }
        for (String name : drawn) {
            assertTrue(pages.indexOf("pictures/" + name) >= 0, name + " is shown nowhere");
        }
    }
}
