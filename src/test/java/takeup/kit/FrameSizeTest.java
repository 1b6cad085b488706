package takeup.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import takeup.ReferenceTable;

/** Sizes of pictures; gates as read, the rest follows from them (table formats). */
class FrameSizeTest {
    static Stream<ReferenceTable.Row> formats() {
        return ReferenceTable.rows("formats");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("formats")
    void aFrameSizeHasItsDiagonal(ReferenceTable.Row row) {
        String format = row.text("format");
        FrameSize size =
                FrameSize.named(format.substring(format.lastIndexOf(' ') + 1)).orElseThrow();
        assertEquals(row.number("diagonal_mm"), size.diagonalMm(), 1e-4);
        assertEquals(row.number("coc_d1500_mm"), size.circleOfConfusionMm(), 1e-7);
        assertEquals(row.number("crop_to_35"), 1 / size.handHeldLimit(1), 1e-5);
    }

    @Test
    void noFrameSizeIsMissingFromTheTable() {
        assertEquals(FrameSize.named().size(), formats().count());
    }
}
