package takeup.terminal;

import java.util.HashMap;
import java.util.Map;
import takeup.grid.Bitmap;

/**
 * Reads a sixel picture back, as DEC describes it (VT330/VT340 Programmer Reference Manual, volume 2, chapter 14):
 * {@code "} raster attributes, {@code #} colour, {@code !} repeat, {@code $} back to the left, {@code -} next band.
 */
final class SixelReader {
    private final String text;
    private int at;

    private SixelReader(String text) {
        this.text = text;
    }

    static Bitmap read(String sixel) {
        if (!sixel.startsWith("\u001bP") || !sixel.endsWith("\u001b\\")) {
            throw new AssertionError("no device control string");
        }
        return new SixelReader(sixel.substring(sixel.indexOf('q') + 1, sixel.length() - 2)).picture();
    }

    private Bitmap picture() {
        Map<Integer, Integer> colours = new HashMap<>();
        int[] dots = new int[0];
        int columns = 0;
        int rows = 0;
        int colour = 0;
        int column = 0;
        int top = 0;
        while (at < text.length()) {
            char sign = text.charAt(at++);
            switch (sign) {
                case '"' -> {
                    int[] raster = numbers();
                    columns = raster[2];
                    rows = raster[3];
                    dots = new int[columns * rows];
                }
                case '#' -> {
                    int[] said = numbers();
                    colour = said[0];
                    if (said.length == 5) {
                        colours.put(colour, level(said[2]) << 16 | level(said[3]) << 8 | level(said[4]));
                    }
                }
                case '$' -> column = 0;
                case '-' -> {
                    column = 0;
                    top += 6;
                }
                default -> {
                    int count = 1;
                    if (sign == '!') {
                        count = numbers()[0];
                        sign = text.charAt(at++);
                    }
                    for (int i = 0; i < count; i++, column++) {
                        for (int bit = 0; bit < 6; bit++) {
                            if ((sign - '?' >> bit & 1) == 1) {
                                dots[(top + bit) * columns + column] = colours.get(colour);
                            }
                        }
                    }
                }
            }
        }
        return new Bitmap(columns, rows, dots);
    }

    private static int level(int percent) {
        return (percent * 255 + 50) / 100;
    }

    private int[] numbers() {
        int start = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == ';')) {
            at++;
        }
        String[] words = text.substring(start, at).split(";");
        int[] numbers = new int[words.length];
        for (int i = 0; i < words.length; i++) {
            numbers[i] = Integer.parseInt(words[i]);
        }
        return numbers;
    }
}
