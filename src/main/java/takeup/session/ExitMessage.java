package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import takeup.message.PendingLines;
import takeup.report.RollText;
import takeup.roll.Roll;

/** What the terminal shows once the screen is gone: what was saved, then whatever was not. */
final class ExitMessage {
    private ExitMessage() {}

    static List<String> of(Session session) {
        List<String> lines = new ArrayList<>();
        lines.add("takeup: " + saved(session));
        for (SaveQueue.Waiting one : session.waiting()) {
            lines.add("NOT SAVED: " + one.answer().text());
        }
        for (PendingLines.Batch batch : session.pendingLines().batches()) {
            batch.lines().stream()
                    .filter(it -> batch.from() == PendingLines.From.PROMPT && !isQuit(it))
                    .forEach(it -> lines.add("NOT DONE: " + it));
        }
        return lines;
    }

    private static boolean isQuit(String line) {
        return line.strip().toLowerCase(Locale.ROOT).startsWith("quit");
    }

    private static String saved(Session session) {
        List<String> rolls = new ArrayList<>();
        for (Roll roll : session.saved().rolls().values()) {
            if (roll.state() == Roll.State.OPEN) {
                rolls.add(roll.id() + " in " + roll.place() + ": "
                        + roll.frames().size() + " logged, " + RollText.left(roll));
            }
        }
        return "saved in " + session.settings().folder()
                + (rolls.isEmpty() ? ", no roll is open" : ". " + String.join("; ", rolls)) + ".";
    }
}
