package takeup.history;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;

/**
 * A list that does not change. One with an element more shares all but the last few with the one it came of: a step at
 * the end of a long day copies no more than one at its beginning.
 */
final class GrowingList<E> extends AbstractList<E> implements RandomAccess {
    /** So many elements lie in one piece, as a power of two; they are copied for each further one in it. */
    private static final int BITS = 6;

    private static final int PIECE = 1 << BITS;

    /** All full but the last one. */
    private final Object[][] pieces;

    private final int size;

    private GrowingList(Object[][] pieces, int size) {
        this.pieces = pieces;
        this.size = size;
    }

    static <E> GrowingList<E> of(List<E> elements) {
        if (elements instanceof GrowingList<E> same) {
            return same;
        }
        Object[] all = elements.toArray();
        Object[][] pieces = new Object[(all.length + PIECE - 1) >> BITS][];
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = Arrays.copyOfRange(all, i << BITS, Math.min(all.length, (i + 1) << BITS));
        }
        return new GrowingList<>(pieces, all.length);
    }

    /** The same and one more. */
    GrowingList<E> and(E element) {
        int last = size >> BITS;
        Object[][] more = Arrays.copyOf(pieces, last + 1);
        int before = size - (last << BITS);
        Object[] piece = before == 0 ? new Object[1] : Arrays.copyOf(pieces[last], before + 1);
        piece[before] = element;
        more[last] = piece;
        return new GrowingList<>(more, size + 1);
    }

    @Override
    @SuppressWarnings("unchecked") // none but elements go in
    public E get(int index) {
        Objects.checkIndex(index, size);
        return (E) pieces[index >> BITS][index & PIECE - 1];
    }

    @Override
    public int size() {
        return size;
    }
}
