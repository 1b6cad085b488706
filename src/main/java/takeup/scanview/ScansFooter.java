package takeup.scanview;

import java.util.ArrayList;
import java.util.List;
import takeup.grid.Grid;
import takeup.message.Key;
import takeup.panel.KeyItem;

/** The keys of the scans view over one row or two; arrows need no mention. */
final class ScansFooter {
    /** What the key that leaves takes, with the blanks before it. */
    private static final int WAY_OUT = 9;

    private final List<List<KeyItem>> rows = new ArrayList<>();

    /** In so many rows at most; where the keys find no room in them, the way out still does. */
    ScansFooter(ScansState scans, int columns, int most) {
        rows.add(new ArrayList<>());
        boolean hasWayOut = false;
        int at = 0;
        for (ScanKeys key : ScanKeys.all()) {
            if (key.key().name() != Key.Name.CHARACTER) {
                continue;
            }
            KeyItem item = item(key, scans);
            boolean isWayOut = ScanKeys.leaves(key.key());
            if (at + item.width() > columns && rows.size() < most) {
                rows.add(new ArrayList<>());
                at = 0;
            }
            int reserved = most == 1 && !isWayOut && !hasWayOut ? WAY_OUT : 0;
            if (at + item.width() + reserved <= columns) {
                rows.get(rows.size() - 1).add(item);
                at += item.width() + 2;
                hasWayOut |= isWayOut;
            }
        }
    }

    private static KeyItem item(ScanKeys key, ScansState scans) {
        boolean isBackToList = scans.isSheet() && key.key().equals(ScanKeys.OTHER_VIEW);
        return new KeyItem(key.key().toString(), isBackToList ? "list" : key.does());
    }

    int rows() {
        return rows.size();
    }

    void draw(Grid grid, int first) {
        for (int i = 0; i < rows.size(); i++) {
            KeyItem.draw(rows.get(i), grid, first + i, 0);
        }
    }
}
