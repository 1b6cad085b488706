package takeup.search;

import java.util.List;

/** Words of a query that are still to be read. */
final class FindWords {
    private final List<String> all;
    private int at;

    FindWords(List<String> all) {
        this.all = all;
    }

    boolean isMore() {
        return at < all.size();
    }

    String next() {
        return all.get(at++);
    }

    String after(String word, String example) {
        if (!isMore()) {
            throw new IllegalArgumentException(word + " takes a word more, such as " + word + " " + example);
        }
        return next();
    }
}
