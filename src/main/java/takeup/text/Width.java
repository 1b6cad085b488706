package takeup.text;

import java.util.ArrayList;
import java.util.List;

/** How many columns a text takes on the screen: 4 for {@code f/11}, 2 for one Chinese character. */
public final class Width {
    /**
     * First and last of the characters that take two columns: those that are wide or full-width, or shown as a picture
     * unless told otherwise (Unicode Standard Annex 11, East Asian Width, W and F; neighbouring blocks drawn together).
     */
    private static final int[] WIDE = {
        0x1100, 0x115f, 0x231a, 0x231b, 0x2329, 0x232a, 0x23e9, 0x23ec, 0x23f0, 0x23f0, 0x23f3, 0x23f3, 0x25fd, 0x25fe,
        0x2614, 0x2615, 0x2648, 0x2653, 0x267f, 0x267f, 0x2693, 0x2693, 0x26a1, 0x26a1, 0x26aa, 0x26ab, 0x26bd, 0x26be,
        0x26c4, 0x26c5, 0x26ce, 0x26ce, 0x26d4, 0x26d4, 0x26ea, 0x26ea, 0x26f2, 0x26f3, 0x26f5, 0x26f5, 0x26fa, 0x26fa,
        0x26fd, 0x26fd, 0x2705, 0x2705, 0x270a, 0x270b, 0x2728, 0x2728, 0x274c, 0x274c, 0x274e, 0x274e, 0x2753, 0x2755,
        0x2757, 0x2757, 0x2795, 0x2797, 0x27b0, 0x27b0, 0x27bf, 0x27bf, 0x2b1b, 0x2b1c, 0x2b50, 0x2b50, 0x2b55, 0x2b55,
        0x2e80, 0x303e, 0x3041, 0x3247, 0x3250, 0x4dbf, 0x4e00, 0xa4cf, 0xa960, 0xa97f, 0xac00, 0xd7a3, 0xf900, 0xfaff,
        0xfe10, 0xfe19, 0xfe30, 0xfe6f, 0xff00, 0xff60, 0xffe0, 0xffe6, 0x16fe0, 0x18d08, 0x1b000, 0x1b2ff, 0x1f004,
        0x1f004, 0x1f0cf, 0x1f0cf, 0x1f18e, 0x1f18e, 0x1f191, 0x1f19a, 0x1f200, 0x1f320, 0x1f32d, 0x1f335, 0x1f337,
        0x1f37c, 0x1f37e, 0x1f393, 0x1f3a0, 0x1f3ca, 0x1f3cf, 0x1f3d3, 0x1f3e0, 0x1f3f0, 0x1f3f4, 0x1f3f4, 0x1f3f8,
        0x1f43e, 0x1f440, 0x1f440, 0x1f442, 0x1f4fc, 0x1f4ff, 0x1f53d, 0x1f54b, 0x1f54e, 0x1f550, 0x1f567, 0x1f57a,
        0x1f57a, 0x1f595, 0x1f596, 0x1f5a4, 0x1f5a4, 0x1f5fb, 0x1f64f, 0x1f680, 0x1f6c5, 0x1f6cc, 0x1f6cc, 0x1f6d0,
        0x1f6d2, 0x1f6d5, 0x1f6d7, 0x1f6dd, 0x1f6df, 0x1f6eb, 0x1f6ec, 0x1f6f4, 0x1f6fc, 0x1f7e0, 0x1f7eb, 0x1f7f0,
        0x1f7f0, 0x1f90c, 0x1f93a, 0x1f93c, 0x1f945, 0x1f947, 0x1f9ff, 0x1fa70, 0x1faff, 0x20000, 0x2fffd, 0x30000,
        0x3fffd
    };

    /** The two shapes that are shown as pictures. */
    private static final int WIDE_SHAPES = 0x25fd;

    private Width() {}

    /** Columns that the text takes with nothing {@link Hidden} in it; marks that sit on a letter take none. */
    public static int of(String text) {
        return ofShown(Hidden.shown(text));
    }

    private static int ofShown(String seen) {
        int columns = 0;
        int at = 0;
        while (at < seen.length()) {
            if (seen.charAt(at) < 0x300) {
                columns++;
                at++;
            } else {
                int point = seen.codePointAt(at);
                columns += of(point);
                at += Character.charCount(point);
            }
        }
        return columns;
    }

    /** Columns of one character that is fit to be shown: 0, 1 or 2. */
    public static int of(int point) {
        if (point < 0x300 || Hidden.isOfTheScreen(point) && (point < WIDE_SHAPES || point > WIDE_SHAPES + 1)) {
            return 1;
        }
        int type = Character.getType(point);
        // The later parts of a Korean syllable join the first one, which is counted as two.
        if (type == Character.NON_SPACING_MARK
                || type == Character.ENCLOSING_MARK
                || point >= 0x1160 && point <= 0x11ff) {
            return 0;
        }
        return wide(point) ? 2 : 1;
    }

    private static boolean wide(int point) {
        int low = 0;
        int high = WIDE.length / 2 - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (point < WIDE[2 * middle]) {
                high = middle - 1;
            } else if (point > WIDE[2 * middle + 1]) {
                low = middle + 1;
            } else {
                return true;
            }
        }
        return false;
    }

    /**
     * The text with nothing {@link Hidden} in it and, where it takes more columns than these, cut with … as its last
     * sign.
     */
    public static String cut(String text, int columns) {
        String seen = Hidden.shown(text);
        if (ofShown(seen) <= columns) {
            return seen;
        }
        if (columns < 1) {
            return "";
        }
        int used = 0;
        int at = 0;
        while (used + of(seen.codePointAt(at)) < columns) {
            used += of(seen.codePointAt(at));
            at += Character.charCount(seen.codePointAt(at));
        }
        // A mark that sits on the last letter stays with it.
        while (at < seen.length() && of(seen.codePointAt(at)) == 0) {
            at += Character.charCount(seen.codePointAt(at));
        }
        return seen.substring(0, at) + "…";
    }

    /** The text cut to so many columns, or filled up to them with blanks on the right. */
    public static String pad(String text, int columns) {
        String cut = cut(text, columns);
        return cut + " ".repeat(Math.max(0, columns - of(cut)));
    }

    /** The text cut to so many columns, or filled up to them with blanks on the left, as numbers stand in a list. */
    public static String padLeft(String text, int columns) {
        String cut = cut(text, columns);
        return " ".repeat(Math.max(0, columns - of(cut))) + cut;
    }

    /** A text broken at blanks into rows of so many columns. */
    public static List<String> rows(String text, int columns) {
        return rows(text, columns, Integer.MAX_VALUE);
    }

    /** The same in so many rows at most; the last one has all the rest, and may be too long. */
    public static List<String> rows(String text, int columns, int most) {
        List<String> rows = new ArrayList<>();
        String rest = text;
        while (of(rest) > Math.max(1, columns) && rows.size() < most - 1) {
            int end = Math.max(1, rowEnd(rest, Math.max(1, columns)));
            rows.add(rest.substring(0, end));
            rest = rest.substring(end).strip();
        }
        rows.add(rest);
        return rows;
    }

    /** Where the first row of a text ends: at the last blank that fits. */
    private static int rowEnd(String text, int columns) {
        int blank = 0;
        int at = 0;
        while (at < text.length() && of(text.substring(0, at + 1)) <= columns) {
            if (text.charAt(at) == ' ') {
                blank = at;
            }
            at++;
        }
        return blank == 0 ? at : blank;
    }
}
