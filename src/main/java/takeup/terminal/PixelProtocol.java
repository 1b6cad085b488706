package takeup.terminal;

import takeup.grid.Placement;

/** How a terminal is told to draw a picture in true pixels where the cursor stands. */
interface PixelProtocol {
    /** Takes away all pictures; they are drawn anew. */
    String cleared();

    /** Draws a picture over its cells. */
    String drawn(Placement placement);
}
