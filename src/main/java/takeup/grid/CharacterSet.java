package takeup.grid;

import takeup.text.Hidden;

/** Which characters the terminal can show, by its locale. */
public enum CharacterSet {
    /** All of them. */
    UNICODE,
    /** Letters of all scripts, but none of the program's own {@link Glyphs}. */
    PLAIN_GLYPHS,
    /**
     * ASCII alone: glyphs in their ASCII form, all else as a visible escape such as {@code \}{@code u{e9}}; never a
     * {@code ?}.
     */
    ASCII;

    /** A line of plain output in these letters. */
    public String of(String line) {
        String shown = Hidden.shown(line);
        return this == ASCII ? spell(shown, false) : shown;
    }

    /** A text of the program's own as the screen would show it in these letters. */
    public String spelt(String text) {
        return this == UNICODE ? text : spell(text, false);
    }

    /**
     * The same screen in these letters. What grows longer pushes the rest of its row to the right, but only up to the
     * next two blanks, which give way: so columns and frames further right stay where they were.
     */
    public Grid of(Grid grid) {
        if (this == UNICODE) {
            return grid;
        }
        Grid spelt = Grid.of(grid.columns(), grid.rows());
        for (int row = 0; row < grid.rows(); row++) {
            spell(grid, spelt, row);
        }
        return spelt;
    }

    private void spell(Grid grid, Grid spelt, int row) {
        int at = 0;
        char before = 0;
        for (int column = 0; column < grid.columns(); column++) {
            Cell cell = grid.cell(column, row);
            if (column == grid.cursorColumn() && row == grid.cursorRow()) {
                spelt.cursor(Math.min(at, grid.columns() - 1), row);
            }
            if (cell.isPicture()) {
                spelt.putPixels(column, row, cell.pixels());
                at = column + 1;
                before = ' ';
                continue;
            }
            boolean owing = at > column;
            if (!cell.isSecondHalf() && !(owing && cell.isBlank() && before == ' ')) {
                String text = isFigure(cell) ? cell.text() : spell(cell.text(), Character.isDigit(before));
                at = spelt.put(at, row, text, cell.role());
                before = text.charAt(text.length() - 1);
            }
        }
    }

    /**
     * Whole blocks of large figures and upper halves stay: they are painted with the ground, so that figures are solid.
     * A lower half is no ground, since it would join what stands above and make a 6 of a 5; nor is an upper one on the
     * plate of a warning, where the ground is the letter's and would hide the plate.
     */
    private static boolean isFigure(Cell cell) {
        boolean isLetter = cell.role() == TextRole.READOUT || cell.role() == TextRole.STRONG;
        return cell.text().equals("█") || cell.text().equals("▀") && isLetter;
    }

    private String spell(String text, boolean isAfterDigit) {
        StringBuilder spelt = new StringBuilder();
        boolean isDigit = isAfterDigit;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int point = text.codePointAt(at);
            String glyph = Glyphs.ascii(point, isDigit);
            String letter = this == ASCII && point >= 0x7f ? Hidden.escaped(point) : Character.toString(point);
            spelt.append(glyph.isEmpty() ? letter : glyph);
            isDigit = Character.isDigit(spelt.charAt(spelt.length() - 1));
        }
        return spelt.toString();
    }
}
