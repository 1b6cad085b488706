package takeup.loading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.command.Arguments;
import takeup.command.Command;
import takeup.command.CommandContext;
import takeup.command.CommandInfo;
import takeup.command.Need;
import takeup.command.Outcome;
import takeup.command.Reply;
import takeup.history.JournalEntry;
import takeup.history.ShootState;
import takeup.prompt.CommandRejected;
import takeup.roll.Costs;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollId;

/** {@code cost r7 film 9.80 development 12}: what a roll cost. */
public final class CostCommand implements Command {
    public static final CommandInfo INFO = CommandInfo.of("cost", "what a roll cost")
            .usage("cost film 9.80", "cost r7 development 12 scans 8.50")
            .form("cost film 9.80", "the film of the roll in hand, in your own money")
            .form("cost r7 development 12 scans 8.50", "of another roll; takeup costs adds up")
            .needs(Need.ANY_ROLL);

    @Override
    public CommandInfo info() {
        return INFO;
    }

    @Override
    public Outcome run(Arguments arguments, CommandContext context) {
        Optional<RollId> id = RollWords.named(arguments.rest(), context);
        Roll roll = context.roll(id, "cost r7 film 9.80");
        List<String> words = arguments
                .rest()
                .subList(id.isPresent() ? 1 : 0, arguments.rest().size());
        if (words.isEmpty() || words.size() % 2 == 1) {
            throw new CommandRejected("say what for and how much: cost film 9.80");
        }
        List<JournalEntry> entries = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < words.size(); i += 2) {
            String word = words.get(i);
            Costs.Kind kind = Costs.Kind.named(word)
                    .orElseThrow(() -> new CommandRejected(
                            "a roll costs film, development and scans; " + word + " is none of them"));
            BigDecimal amount = amount(words.get(i + 1));
            entries.addAll(
                    entries.isEmpty()
                            ? context.on(roll, new NoteEvent.CostNoted(kind, amount))
                            : List.of(new JournalEntry.OnRoll(roll.id(), new NoteEvent.CostNoted(kind, amount))));
            said.add(kind + " " + amount.toPlainString());
        }
        Reply reply = context.reply(entries);
        return reply.event("fix")
                .says("Costs of " + roll.id(), ": " + String.join(", ", said) + ".")
                .fields(CommandContext.fields(roll))
                .exports(context.rollsToExport(roll))
                .accepted();
    }

    private static BigDecimal amount(String typed) {
        String plain = typed.replace(',', '.');
        if (!plain.matches("\\d{1,7}(\\.\\d{1,2})?")) {
            throw new CommandRejected(typed + " is no amount, such as 9.80");
        }
        return new BigDecimal(plain).setScale(2);
    }

    @Override
    public List<String> completions(List<String> before, ShootState state) {
        return List.of("film", "development", "scans");
    }
}
