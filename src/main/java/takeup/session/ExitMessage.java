package takeup.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import takeup.report.StatusText;
import takeup.roll.Roll;

/** What the terminal shows once the screen is gone: what was saved, then whatever was not. */
final class ExitMessage {
    private ExitMessage() {}

    static List<String> of(Session shoot) {
        List<String> lines = new ArrayList<>();
        lines.add("takeup: " + saved(shoot));
        for (SaveQueue.Waiting one : shoot.waiting()) {
            lines.add("NOT SAVED: " + one.answer().text());
        }
        for (PendingLines entered : shoot.todo()) {
            entered.lines().stream()
                    .filter(it -> entered.from() == PendingLines.From.PROMPT && !isQuit(it))
                    .forEach(it -> lines.add("NOT DONE: " + it));
        }
        return lines;
    }

    private static boolean isQuit(String line) {
        return line.strip().toLowerCase(Locale.ROOT).startsWith("quit");
    }

    private static String saved(Session shoot) {
        List<String> rolls = new ArrayList<>();
        for (Roll roll : shoot.saved().rolls().values()) {
            if (roll.state() == Roll.State.OPEN) {
                rolls.add(roll.id() + " in " + roll.place() + ": "
                        + roll.frames().size() + " logged, " + StatusText.leftWords(roll));
            }
        }
        return "saved in " + shoot.settings().folder()
                + (rolls.isEmpty() ? ", no roll is open" : ". " + String.join("; ", rolls)) + ".";
    }
}
