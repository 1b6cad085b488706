package takeup.reviewing;

import java.util.Optional;
import takeup.grid.Grid;
import takeup.grid.Size;
import takeup.message.Key;
import takeup.scans.Slate;
import takeup.screen.SlateView;
import takeup.terminal.Terminal;

/** A slate over the whole terminal until a key is pressed. */
record SlateScreen(String words) implements KeyLoop.View<Slate> {
    @Override
    public Grid render(Slate slate, Terminal terminal) {
        Size size = terminal.size();
        return SlateView.render(slate, words, size.columns(), size.rows(), terminal.pixels());
    }

    @Override
    public Optional<Slate> after(Slate slate, Key key) {
        return Optional.empty();
    }
}
