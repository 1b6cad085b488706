package takeup.console;

import java.time.temporal.ChronoUnit;
import java.util.concurrent.BlockingQueue;
import takeup.message.Key;
import takeup.message.Message;
import takeup.terminal.Terminal;
import takeup.terminal.TerminalListener;

/** Puts what the terminal tells into the queue of messages. */
public record TerminalMessages(Terminal terminal, BlockingQueue<Message> messages, MonotonicClock ticks)
        implements TerminalListener {
    @Override
    public void pressed(Key key) {
        messages.add(new Message.Pressed(
                key,
                Clock.wall().truncatedTo(ChronoUnit.MILLIS),
                ticks.now(),
                terminal.cameAlone() ? Message.Arrival.ALONE : Message.Arrival.WITH_OTHERS));
        if (!mayLeave(key)) {
            terminal.next();
        }
    }

    @Override
    public void changed() {
        messages.add(new Message.Resized());
    }

    @Override
    public void ended(String why) {
        messages.add(new Message.Ended(why));
    }

    /** Whether it may end the program: the next key is read only then, since a read holds up the end by 300 ms. */
    public static boolean mayLeave(Key key) {
        return key.name() == Key.Name.ENTER || key.equals(Key.ctrl('c'));
    }
}
