package takeup.loading;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import takeup.command.CommandContext;
import takeup.command.Outcome;
import takeup.day.ShootInfo;
import takeup.prompt.CommandRejected;
import takeup.roll.Assignment;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;

/** {@code fix roll r1 shoot Regatta day}: a roll belongs to another shoot. */
final class OtherShoot {
    private OtherShoot() {}

    static Outcome run(Roll roll, String name, CommandContext context) {
        if (name.isBlank()) {
            throw new CommandRejected("to which shoot? fix roll r7 shoot Regatta day");
        }
        Assignment shoot = known(name.strip(), context)
                .orElseGet(() -> new Assignment(name.strip(), date(roll), Optional.empty()));
        return context.reply(context.on(roll, new NoteEvent.ShootAssigned(shoot)))
                .event("fix")
                .says(roll.id().toString(), " belongs to " + shoot.name() + ", " + shoot.date() + ".")
                .titled("shoot of " + roll.id())
                .fields(RollWords.fields(roll).and("shoot", shoot.name()).and("shootDate", shoot.date()))
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    /** A shoot of that name: the one that is open, or one of another roll. */
    private static Optional<Assignment> known(String name, CommandContext context) {
        Stream<Assignment> open = context.state().day().shoot().map(ShootInfo::assignment).stream();
        Stream<Assignment> ofRolls = context.state().rolls().values().stream().flatMap(it -> it.assignment().stream());
        return Stream.concat(open, ofRolls)
                .filter(it -> it.name().equalsIgnoreCase(name))
                .findFirst();
    }

    private static LocalDate date(Roll roll) {
        return roll.assignment().map(Assignment::date).orElse(roll.loadedAt().toLocalDate());
    }
}
