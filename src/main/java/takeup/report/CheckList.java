package takeup.report;

import java.util.List;

/** A list with headings, to read and to tick off. */
public final class CheckList {
    private CheckList() {}

    /** A part of the list. */
    public record Section(String title, List<Item> items) {
        public Section {
            items = List.copyOf(items);
        }

        static Section of(String title, List<String> lines) {
            return new Section(title, lines.stream().map(Item::plain).toList());
        }
    }

    /** A line of it, and whether it asks for something to be done. */
    public record Item(String text, boolean caution) {
        static Item plain(String text) {
            return new Item(text, false);
        }

        static Item caution(String text) {
            return new Item(text, true);
        }
    }
}
