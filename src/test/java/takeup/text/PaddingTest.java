package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PaddingTest {
    @Test
    void aCellIsFilledUpToItsWidth() {
        assertEquals("R0007  |", Padding.cell("R0007", 7) + "|");
    }

    @Test
    void aTextThatIsTooLongStillDoesNotTouchTheNext() {
        assertEquals("regatta day |", Padding.cell("regatta day", 7) + "|");
    }
}
