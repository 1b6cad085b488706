package takeup.scans;

import java.util.Comparator;
import java.util.Locale;

/**
 * The order in which a person reads file names: {@code 2.jpg} before {@code 10.jpg}. Runs of the digits 0 to 9 count as
 * numbers, all else letter by letter and in either case; names that differ in nothing else are told apart by their
 * bytes.
 */
public final class NaturalOrder implements Comparator<String> {
    /** The one order there is. */
    public static final NaturalOrder BY_NAME = new NaturalOrder();

    private NaturalOrder() {}

    @Override
    public int compare(String a, String b) {
        String left = a.toLowerCase(Locale.ROOT);
        String right = b.toLowerCase(Locale.ROOT);
        int i = 0;
        int j = 0;
        while (i < left.length() && j < right.length()) {
            int order;
            if (isDigit(left.charAt(i)) && isDigit(right.charAt(j))) {
                int iEnd = end(left, i);
                int jEnd = end(right, j);
                order = compareDigits(left.substring(i, iEnd), right.substring(j, jEnd));
                i = iEnd;
                j = jEnd;
            } else {
                order = Character.compare(left.charAt(i++), right.charAt(j++));
            }
            if (order != 0) {
                return order;
            }
        }
        int rest = Integer.compare(left.length() - i, right.length() - j);
        return rest != 0 ? rest : a.compareTo(b);
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static int end(String text, int from) {
        int at = from;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static int compareDigits(String a, String b) {
        String left = bare(a);
        String right = bare(b);
        int length = Integer.compare(left.length(), right.length());
        int order = length != 0 ? length : left.compareTo(right);
        // Of 0 and 00 the longer one stands for the earlier frame: films begin at 00.
        return order != 0 || left.length() > 1 || !left.equals("0") ? order : Integer.compare(b.length(), a.length());
    }

    /** Without leading zeros; nought stays as one. */
    private static String bare(String digits) {
        int at = 0;
        while (at < digits.length() - 1 && digits.charAt(at) == '0') {
            at++;
        }
        return digits.substring(at);
    }
}
