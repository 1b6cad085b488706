package takeup.screen;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.text.Width;

/**
 * The last line of the screen: keys that work now, and what each does. The views F2 to F5 are named one by one where
 * there is room for all of them, and else together, {@code F2-F5 lists}: one that is named says nothing about its
 * neighbours. What finds no room is left to help.
 */
final class Footer {
    private static final String LISTS = "lists";

    private record Item(String key, String does) {
        int width() {
            return Width.of(key) + 1 + Width.of(does);
        }

        boolean isList() {
            return key.length() == 2 && key.charAt(0) == 'F' && key.charAt(1) >= '2' && key.charAt(1) <= '5';
        }

        /** What takes back a line typed earlier is the first to go. */
        boolean isLast() {
            return key.equals("PgUp");
        }
    }

    private final List<Item> items = new ArrayList<>();
    private int answers;

    /** A key before all others: the way back. */
    void first(String key, String does) {
        items.add(0, new Item(key, does));
    }

    /** A key that answers what is asked, before all others and in this order. */
    void answer(String key, String does) {
        items.add(answers++, new Item(key, does));
    }

    void then(String key, String does) {
        items.add(new Item(key, does));
    }

    void draw(Grid grid, int row) {
        int margin = Layout.of(grid).margin();
        grid.fill(row, TextRole.BAR);
        items.sort((one, other) -> Boolean.compare(one.isLast(), other.isLast()));
        int room = grid.columns() - margin;
        int column = margin;
        for (Item item : end(items) > room ? together() : items) {
            if (column + item.width() <= room) {
                column = grid.put(column, row, item.key(), TextRole.KEY);
                column = grid.put(column, row, " " + item.does(), TextRole.BAR) + 2;
            }
        }
    }

    /** Where the last of the lists would end. */
    private static int end(List<Item> items) {
        int at = 0;
        int end = 0;
        for (Item item : items) {
            at += item.width();
            end = item.isList() ? at : end;
            at += 2;
        }
        return end;
    }

    /** The same with the lists as one. */
    private List<Item> together() {
        List<Item> lists = items.stream().filter(Item::isList).toList();
        List<Item> all = new ArrayList<>();
        for (Item item : items) {
            if (!item.isList()) {
                all.add(item);
            } else if (item == lists.get(0)) {
                all.add(
                        lists.size() == 1
                                ? item
                                : new Item(
                                        item.key()
                                                + (lists.size() == 2 ? " " : "-")
                                                + lists.get(lists.size() - 1).key(),
                                        LISTS));
            }
        }
        return all;
    }
}
