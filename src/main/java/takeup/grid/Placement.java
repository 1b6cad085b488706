package takeup.grid;

/**
 * Where a picture in true pixels stands: over so many cells.
 *
 * @param column its first column
 * @param row its first row
 * @param columns how many columns it has
 * @param rows how many rows it has
 * @param bitmap the picture
 */
public record Placement(int column, int row, int columns, int rows, Bitmap bitmap) {
    /** Whether a cell lies below it. */
    public boolean covers(int cellColumn, int cellRow) {
        return cellColumn >= column && cellColumn < column + columns && cellRow >= row && cellRow < row + rows;
    }
}
