package takeup.loading;

import takeup.command.CommandContext;
import takeup.prompt.CommandRejected;
import takeup.roll.Roll;
import takeup.roll.RollId;
import takeup.roll.RollLabel;

/** The photographer's own names of rolls. */
final class RollNames {
    private RollNames() {}

    /** Refuses a name that means another roll. */
    static void refuseTaken(RollLabel label, CommandContext context) {
        label.name().ifPresent(name -> {
            boolean isNumber = RollId.parse(name)
                    .filter(it -> it.letters().equals(context.letters()))
                    .isPresent();
            if (isNumber) {
                throw new CommandRejected(
                        name + " is a roll number here: a name of your own reads otherwise (as B-12)");
            }
            context.rollNamed(name).ifPresent(it -> {
                throw new CommandRejected(name + " is the name of " + it + " already");
            });
        });
    }

    /** The name behind a number: {@code (B-12)}; nothing where it has none. */
    static String beside(RollLabel label) {
        return label.name().map(it -> " (" + it + ")").orElse("");
    }

    /** What stands on a roll, as a sentence would say it. */
    static String words(Roll roll) {
        RollLabel label = roll.film().label();
        return label.name().map(it -> ", named " + it).orElse("")
                + label.batch().map(it -> ", batch " + it).orElse("");
    }
}
