package takeup.roll;

import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Supplier;

/**
 * Numbers of rolls, each once and in their order: what a start has to know of ten thousand finished rolls, none of
 * which it reads. They lie packed side by side, since as many {@link RollId} in a hash set delay the first paint. Some
 * may be waited for: they are asked for when an answer depends on them.
 */
public final class RollNumbers extends AbstractSet<RollId> {
    private static final RollNumbers NONE = new RollNumbers(new long[0]);
    /** Above the largest number of a roll. */
    private static final long ROOM = 100_000_000;

    /** Letters and number of each, so that they stand in the order of {@link RollId}. */
    private final long[] packed;
    /** Where there are more, which others may be among these too; null where these are all. */
    private final Supplier<RollNumbers> more;

    private RollNumbers(long[] packed) {
        this(packed, null);
    }

    private RollNumbers(long[] packed, Supplier<RollNumbers> more) {
        this.packed = packed;
        this.more = more;
    }

    /** These numbers. */
    public static RollNumbers of(Collection<RollId> rolls) {
        return rolls instanceof RollNumbers numbers ? numbers : NONE.and(rolls);
    }

    /**
     * The numbers among names that are written as a number writes itself; others, such as {@code r7} and {@code R007},
     * are passed over.
     */
    public static RollNumbers named(List<String> names) {
        long[] all = new long[names.size()];
        int count = 0;
        for (String name : names) {
            long one = named(name);
            if (one >= 0) {
                all[count++] = one;
            }
        }
        return new RollNumbers(inOrder(Arrays.copyOf(all, count)));
    }

    private static long named(String name) {
        int letters = 0;
        while (letters < name.length() && letters < 4 && name.charAt(letters) >= 'A' && name.charAt(letters) <= 'Z') {
            letters++;
        }
        int digits = name.length() - letters;
        if (letters < 1 || letters > 3 || digits < 4 || digits > 8 || digits > 4 && name.charAt(letters) == '0') {
            return -1;
        }
        long number = 0;
        for (int at = letters; at < name.length(); at++) {
            char c = name.charAt(at);
            if (c < '0' || c > '9') {
                return -1;
            }
            number = 10 * number + c - '0';
        }
        return number == 0 ? -1 : packed(name, letters, number);
    }

    /** The first letters of a word as three places of a number; a place without a letter comes before A. */
    private static long packed(String word, int letters, long number) {
        long front = 0;
        for (int at = 0; at < 3; at++) {
            front = 27 * front + (at < letters ? word.charAt(at) - 'A' + 1 : 0);
        }
        return front * ROOM + number;
    }

    private static long packed(RollId roll) {
        return packed(roll.letters(), roll.letters().length(), roll.number());
    }

    private static RollId unpacked(long one) {
        StringBuilder letters = new StringBuilder(3);
        for (long front = one / ROOM; front > 0; front /= 27) {
            if (front % 27 > 0) {
                letters.insert(0, (char) ('A' + front % 27 - 1));
            }
        }
        return new RollId(letters.toString(), (int) (one % ROOM));
    }

    private static long[] inOrder(long[] all) {
        Arrays.sort(all);
        int count = 0;
        for (long one : all) {
            if (count == 0 || all[count - 1] != one) {
                all[count++] = one;
            }
        }
        return count == all.length ? all : Arrays.copyOf(all, count);
    }

    /** These, and more that are asked for once an answer depends on them: always the same ones. */
    public RollNumbers andLater(Supplier<RollNumbers> others) {
        return new RollNumbers(packed, others);
    }

    /** All of them together: waits for those that are not there yet. */
    private RollNumbers all() {
        if (more == null) {
            return this;
        }
        return packed.length == 0 ? more.get() : more.get().and(new RollNumbers(packed));
    }

    /** These and others. */
    public RollNumbers and(Collection<RollId> others) {
        if (areHere(others)) {
            return this;
        }
        long[] all = Arrays.copyOf(packed, packed.length + others.size());
        int count = packed.length;
        for (RollId one : others) {
            all[count++] = packed(one);
        }
        return new RollNumbers(inOrder(all), more);
    }

    private boolean areHere(Collection<RollId> others) {
        for (RollId one : others) {
            if (!isHere(one)) {
                return false;
            }
        }
        return true;
    }

    private boolean isHere(RollId roll) {
        return Arrays.binarySearch(packed, packed(roll)) >= 0;
    }

    /** The highest number of a writer, by its letters; 0 where it has none. */
    public int highest(String letters) {
        long end = packed(letters, letters.length(), ROOM - 1);
        int at = Arrays.binarySearch(packed, end);
        int lastAt = at >= 0 ? at : -at - 2;
        long last = lastAt < 0 ? 0 : packed[lastAt];
        int highest = last / ROOM == end / ROOM ? (int) (last % ROOM) : 0;
        return more == null ? highest : Math.max(highest, more.get().highest(letters));
    }

    @Override
    public boolean contains(Object other) {
        return other instanceof RollId roll
                && (isHere(roll) || more != null && more.get().contains(roll));
    }

    @Override
    public boolean isEmpty() {
        return packed.length == 0 && (more == null || more.get().isEmpty());
    }

    /** Whether there is more than one. */
    public boolean areSeveral() {
        return packed.length > 1 || size() > 1;
    }

    @Override
    public int size() {
        return more == null ? packed.length : all().size();
    }

    @Override
    public Iterator<RollId> iterator() {
        return more == null ? inOrder() : all().iterator();
    }

    private Iterator<RollId> inOrder() {
        return new Iterator<>() {
            private int at;

            @Override
            public boolean hasNext() {
                return at < packed.length;
            }

            @Override
            public RollId next() {
                if (at == packed.length) {
                    throw new NoSuchElementException();
                }
                return unpacked(packed[at++]);
            }
        };
    }
}
