package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.grid.PixelShape;
import takeup.lettering.SlateSheet;
import takeup.roll.RollId;
import takeup.scans.QrReader;
import takeup.scans.Slate;

/** Slates read back off pictures that film, lens and scanner have spoilt. */
@Tag("slow")
class SlateReadingTest {
    private static final int PICTURES = Integer.getInteger("slates", 240);

    @Test
    void nineteenOfTwentySpoiltPicturesAreReadRightAndNoneWrong() {
        List<Long> unread = LongStream.rangeClosed(1, PICTURES)
                .parallel()
                .filter(seed -> {
                    Slate shown = slate(seed);
                    Optional<Slate> read = QrReader.slate(
                            PhotographedSheet.of(seed, sheet(shown, seed).dots()));
                    read.ifPresent(it -> assertEquals(shown, it, "seed " + seed));
                    return read.isEmpty();
                })
                .boxed()
                .toList();
        assertTrue(unread.size() * 20 <= PICTURES, unread.size() + " unread: " + unread);
    }

    @ParameterizedTest(name = "{0}: no slate")
    @ValueSource(
            strings = {
                "https://boathouse.example/crew",
                "TAKEUP:R0007:1:00000000",
                "TAKEUP:R0007:1",
                "R0007",
                "TAKEUP:R0008:1:4B6C8B6A"
            })
    void anotherProgramsCodeAndABrokenCheckAreNoSlates(String text) {
        assertEquals(
                Optional.empty(),
                QrReader.slate(PhotographedSheet.straight(
                        SlateSheet.of(80, 21, PixelShape.HALF_CELL, text, "R", "0007")
                                .dots(),
                        8)),
                text);
        assertEquals(Optional.empty(), Slate.read(text));
    }

    @Test
    void anyOneCharacterReadWrongIsNoSlate() {
        String text = new Slate(new RollId("R", 7), 12).text();
        for (int i = 0; i < text.length(); i++) {
            for (char other : "0123456789ABCDEFR:".toCharArray()) {
                if (other != text.charAt(i)) {
                    assertEquals(
                            Optional.empty(),
                            Slate.read(text.substring(0, i) + other + text.substring(i + 1)),
                            other + " at " + i);
                }
            }
        }
    }

    @Test
    void aPictureWithoutACodeIsNoSlate() {
        for (long seed = 1; seed <= 6; seed++) {
            assertEquals(
                    Optional.empty(), QrReader.slate(PhotographedSheet.of(seed, new boolean[42][80])), "seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0} columns and {1} rows hold the code: {2}")
    @CsvSource({"80, 21, true", "33, 17, true", "32, 30, false", "40, 16, false"})
    void theCodeIsThereWhereItHasRoomWithItsBorder(int columns, int rows, boolean isThere) {
        Slate slate = new Slate(new RollId("R", 7), 1);
        boolean[][] dots = SlateSheet.of(columns, rows, PixelShape.HALF_CELL, slate.text(), "R", "0007")
                .dots();
        assertEquals(
                isThere ? Optional.of(slate) : Optional.empty(), QrReader.slate(PhotographedSheet.straight(dots, 8)));
    }

    /** Rolls and terminals of every kind that occurs. */
    private static Slate slate(long seed) {
        Random random = new Random(seed);
        return new Slate(
                new RollId(
                        random.nextInt(4) == 0 ? "KX" : "R",
                        1 + random.nextInt(random.nextInt(10) == 0 ? 200_000 : 400)),
                random.nextInt(random.nextInt(3) == 0 ? 73 : 2));
    }

    private static SlateSheet sheet(Slate slate, long seed) {
        int[][] sizes = {{80, 21}, {100, 27}, {120, 37}, {200, 47}};
        int[] size = sizes[(int) (seed % sizes.length)];
        return SlateSheet.of(
                size[0],
                size[1],
                PixelShape.HALF_CELL,
                slate.text(),
                slate.roll().letters(),
                slate.roll().toString().substring(slate.roll().letters().length()));
    }
}
