package takeup.roll;

import java.util.Locale;
import java.util.Optional;

/**
 * The number written on the cassette or the band: R0007. One to three capital letters of the writer, then four digits
 * or more; typed {@code r7}.
 */
public record RollId(String letters, int number) implements Comparable<RollId> {
    public RollId {
        if (letters.isEmpty() || letters.length() > 3 || capitals(letters) < letters.length()) {
            throw new IllegalArgumentException("a roll number begins with one to three capital letters");
        }
        if (number < 1 || number > 99_999_999) {
            throw new IllegalArgumentException("rolls are numbered from 1");
        }
    }

    /** With how many capital letters a word begins. */
    private static int capitals(String word) {
        int capitals = 0;
        while (capitals < word.length() && word.charAt(capitals) >= 'A' && word.charAt(capitals) <= 'Z') {
            capitals++;
        }
        return capitals;
    }

    /** A roll number as it is typed, in either case, with or without leading zeros: {@code r7}, {@code R0007}. */
    public static Optional<RollId> parse(String typed) {
        String word = typed.toUpperCase(Locale.ROOT);
        int letters = capitals(word);
        if (letters < 1 || letters > 3 || word.length() == letters || word.length() > letters + 8) {
            return Optional.empty();
        }
        int number = 0;
        for (int at = letters; at < word.length(); at++) {
            char c = word.charAt(at);
            if (c < '0' || c > '9') {
                return Optional.empty();
            }
            number = 10 * number + c - '0';
        }
        return number < 1 ? Optional.empty() : Optional.of(new RollId(word.substring(0, letters), number));
    }

    /** The number as it is typed: {@code r7}. */
    public String typed() {
        return letters.toLowerCase(Locale.ROOT) + number;
    }

    // Written by hand, here and in CameraPlace: the generated equals costs time at its first use, before the first
    // paint.
    @Override
    public boolean equals(Object other) {
        return other instanceof RollId roll && number == roll.number && letters.equals(roll.letters);
    }

    @Override
    public int hashCode() {
        return 31 * letters.hashCode() + number;
    }

    @Override
    public int compareTo(RollId other) {
        return letters.equals(other.letters) ? Integer.compare(number, other.number) : letters.compareTo(other.letters);
    }

    @Override
    public String toString() {
        String digits = Integer.toString(number);
        return letters + "0000".substring(Math.min(4, digits.length())) + digits;
    }
}
