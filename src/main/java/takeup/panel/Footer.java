package takeup.panel;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;

/**
 * The last line of the screen: keys that work now, and what each does. The views F2 to F5 are named one by one where
 * there is room for all of them, and else together, {@code F2-F5 lists}: one that is named says nothing about its
 * neighbours. A key without room is in help only.
 */
final class Footer {
    private static final String LISTS = "lists";

    private final List<KeyItem> items = new ArrayList<>();
    private int answers;

    /** A key before all others: the way back. */
    void first(String key, String action) {
        items.add(0, new KeyItem(key, action));
    }

    /** A key right behind the way back. */
    void second(String key, String action) {
        items.add(Math.min(1, items.size()), new KeyItem(key, action));
    }

    /** A key that answers what is asked, before all others and in this order. */
    void answer(String key, String action) {
        items.add(answers++, new KeyItem(key, action));
    }

    void then(String key, String action) {
        items.add(new KeyItem(key, action));
    }

    void draw(Grid grid, int row) {
        int margin = Layout.of(grid).margin();
        List<KeyItem> ordered = new ArrayList<>();
        int before = 0;
        for (KeyItem item : items) {
            ordered.add(isLast(item) ? ordered.size() : before++, item);
        }
        KeyItem.draw(end(ordered) > grid.columns() - margin ? together(ordered) : ordered, grid, row, margin);
    }

    /** What takes back a line typed earlier is the first to go. */
    private static boolean isLast(KeyItem item) {
        return item.key().equals("PgUp");
    }

    /** Whether it is one of F2 to F5. */
    private static boolean isList(KeyItem item) {
        String key = item.key();
        return key.length() == 2 && key.charAt(0) == 'F' && key.charAt(1) >= '2' && key.charAt(1) <= '5';
    }

    /** Where the last of the lists would end. */
    private static int end(List<KeyItem> items) {
        int at = 0;
        int end = 0;
        for (KeyItem item : items) {
            at += item.width();
            end = isList(item) ? at : end;
            at += 2;
        }
        return end;
    }

    /** The same with the lists as one: {@code F2-F5 lists}. */
    private static List<KeyItem> together(List<KeyItem> items) {
        List<KeyItem> lists = new ArrayList<>();
        List<KeyItem> all = new ArrayList<>();
        int at = 0;
        for (KeyItem item : items) {
            if (isList(item)) {
                at = lists.isEmpty() ? all.size() : at;
                lists.add(item);
            } else {
                all.add(item);
            }
        }
        if (lists.size() < 2) {
            return items;
        }
        String first = lists.get(0).key();
        String last = lists.get(lists.size() - 1).key();
        all.add(at, new KeyItem(first + (lists.size() == 2 ? " " : "-") + last, LISTS));
        return all;
    }
}
