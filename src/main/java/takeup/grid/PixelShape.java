package takeup.grid;

/** How large the pixels of a slate are drawn: two to a cell where the terminal has half blocks, else one cell each. */
public enum PixelShape {
    HALF_CELL,
    WHOLE_CELL
}
