package takeup.text;

import java.util.List;

/** How a table for a spreadsheet is written: cells of words and of numbers, in rows. */
public interface TableFormat {
    /** What stands before the first row. */
    String start();

    /** A cell of words; nothing is an empty cell. */
    String text(String words);

    /** A cell with a number that is given with a point. */
    String number(String plain);

    /** A cell that says yes or no. */
    String flag(boolean is);

    /** A row of such cells. */
    String row(List<String> cells);

    /** What stands behind the last row. */
    String end();
}
