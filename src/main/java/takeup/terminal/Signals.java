package takeup.terminal;

import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * What the system tells the program about its terminal: {@code WINCH}, its size changed; {@code CONT}, it goes on after
 * a stop. Each comes on a thread of its own.
 */
final class Signals implements SignalHandler {
    private final Terminal terminal;

    private Signals(Terminal terminal) {
        this.terminal = terminal;
    }

    /** From now on this terminal hears of them. */
    static void tell(Terminal terminal) {
        Signals signals = new Signals(terminal);
        signals.on("WINCH");
        signals.on("CONT");
    }

    private void on(String name) {
        try {
            Signal.handle(new Signal(name), this);
        } catch (IllegalArgumentException unknownHere) {
            // A system without this signal cannot send it either.
        }
    }

    @Override
    public void handle(Signal signal) {
        if (signal.getName().equals("CONT")) {
            terminal.continued();
        } else {
            terminal.resized();
        }
    }
}
