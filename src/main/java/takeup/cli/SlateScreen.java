package takeup.cli;

import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import takeup.scans.Slate;
import takeup.screen.Size;
import takeup.screen.SlateView;
import takeup.screen.Theme;
import takeup.session.Key;
import takeup.terminal.NoTerminal;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalEnvironment;

/** A slate over the whole terminal until a key is pressed. */
final class SlateScreen {
    /** A key, or nothing: the terminal changed its size. */
    private final LinkedBlockingQueue<Optional<Key>> keys = new LinkedBlockingQueue<>();

    private volatile boolean ended;

    void run(Slate slate, String words, TerminalEnvironment environment, String theme) throws NoTerminal {
        try (Terminal terminal = Terminal.open(environment, Theme.named(theme).orElseThrow())) {
            terminal.listen(
                    key -> keys.add(Optional.of(key)),
                    () -> keys.add(Optional.empty()),
                    () -> keys.add(Optional.empty()),
                    why -> {
                        ended = true;
                        keys.add(Optional.empty());
                    });
            boolean isPressed = false;
            while (!ended && !isPressed) {
                Size size = terminal.size();
                terminal.show(SlateView.render(slate, words, size.columns(), size.rows(), terminal.drawsHalves()));
                isPressed = keys.take().isPresent();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
