package takeup.terminal;

import sun.misc.Signal;

/**
 * What the system tells the program about its terminal: {@code WINCH}, its size changed; {@code CONT}, it goes on after
 * a stop.
 */
final class Signals {
    private Signals() {}

    /** Runs this, on a thread of its own, each time the signal comes. */
    static void on(String name, Runnable then) {
        try {
            Signal.handle(new Signal(name), signal -> then.run());
        } catch (IllegalArgumentException unknownHere) {
            // A system without this signal cannot send it either.
        }
    }
}
