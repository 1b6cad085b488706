package takeup.shoot;

import java.util.ArrayList;
import java.util.List;
import takeup.roll.Roll;

/** What the terminal shows once the screen is gone: what was saved, then whatever was not. */
final class Farewell {
    private Farewell() {}

    static List<String> of(Shoot shoot) {
        List<String> lines = new ArrayList<>();
        lines.add("takeup: " + saved(shoot));
        for (Ledger.Waiting one : shoot.waiting()) {
            lines.add("NOT SAVED: " + one.answer().text());
        }
        for (Entered entered : shoot.todo()) {
            entered.lines().stream()
                    .filter(it -> entered.from() == Entered.From.PROMPT && !isQuit(it))
                    .forEach(it -> lines.add("NOT DONE: " + it));
        }
        return lines;
    }

    private static boolean isQuit(String line) {
        return line.strip().toLowerCase(java.util.Locale.ROOT).startsWith("quit");
    }

    private static String saved(Shoot shoot) {
        List<String> rolls = new ArrayList<>();
        for (Roll roll : shoot.kept().rolls().values()) {
            if (roll.state() == Roll.State.OPEN) {
                rolls.add(roll.id() + " in " + roll.place() + ": "
                        + roll.frames().size() + " logged, " + State.leftWords(roll));
            }
        }
        return "saved in " + shoot.settings().folder()
                + (rolls.isEmpty() ? ", no roll is open" : ". " + String.join("; ", rolls)) + ".";
    }
}
