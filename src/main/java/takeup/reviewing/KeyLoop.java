package takeup.reviewing;

import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import takeup.grid.Grid;
import takeup.grid.Theme;
import takeup.message.Key;
import takeup.options.GlobalOptions;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalListener;

/**
 * The loop of a view that fills the terminal and takes one key at a time. Not for the shoot screen, which has a clock
 * and a disk besides its keys.
 */
final class KeyLoop {
    /** A key, or nothing: the terminal changed its size. */
    private final LinkedBlockingQueue<Optional<Key>> keys = new LinkedBlockingQueue<>();

    private volatile boolean ended;

    /** A view of some state. */
    interface View<S> {
        Grid render(S state, Terminal terminal);

        /** The state after a key; empty if the key leaves the view. */
        Optional<S> after(S state, Key key);

        /** Once, behind the first picture; {@code ready} draws it anew. */
        default void started(Terminal terminal, Runnable ready) {}

        /** What is still to be fetched once a picture is shown; {@code ready} draws it anew. */
        default void shown(S state, Runnable ready) {}
    }

    private final class Told implements TerminalListener {
        @Override
        public void pressed(Key key) {
            keys.add(Optional.of(key));
        }

        @Override
        public void changed() {
            keys.add(Optional.empty());
        }

        @Override
        public void ended(String why) {
            ended = true;
            keys.add(Optional.empty());
        }
    }

    /** Shows the view until a key leaves it or the terminal ends. */
    <S> void run(GlobalOptions global, View<S> view, S first) throws NoTerminal {
        Theme theme = Theme.named(global.theme()).orElseThrow();
        try (Terminal terminal = Terminal.open(global.terminal(), theme)) {
            terminal.listen(new Told());
            Optional<S> state = Optional.of(first);
            Runnable ready = () -> keys.add(Optional.empty());
            boolean isFirst = true;
            while (!ended && state.isPresent()) {
                terminal.show(view.render(state.get(), terminal));
                if (isFirst) {
                    view.started(terminal, ready);
                    isFirst = false;
                }
                view.shown(state.get(), ready);
                Optional<Key> key = keys.take();
                if (key.isPresent()) {
                    state = view.after(state.get(), key.get());
                    if (state.isPresent()) {
                        terminal.next();
                    }
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
