package takeup.ordering;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.console.Console;
import takeup.files.SenderFile;
import takeup.options.JsonOption;
import takeup.order.Sender;
import takeup.text.Padding;

/** {@code takeup order sender}: who sends the film, for sheet and labels of all orders to come. */
@Command(
        name = "sender",
        sortOptions = false,
        description = {
            "Shows who sends the film, and changes it: what is given here is printed on the sheet and the labels of "
                    + "all orders to come.",
            "It is kept in sender.json of the data folder. \"\" takes a line away."
        },
        footer = {
            "",
            "For example:",
            "  takeup order sender",
            "  takeup order sender --name \"Studio Ines\" --telephone 555-0134"
        })
final class OrderSenderSubcommand implements Callable<Integer> {
    @ParentCommand
    OrderOptions order;

    @Option(names = "--name", paramLabel = "WORDS", description = "Your name, or that of your studio.")
    String name;

    @Option(names = "--account", paramLabel = "WORDS", description = "Your account at the lab.")
    String account;

    @Option(names = "--telephone", paramLabel = "WORDS", description = "Your telephone number.")
    String telephone;

    @Option(names = "--email", paramLabel = "WORDS", description = "Your e-mail address.")
    String email;

    @Option(names = "--address", paramLabel = "WORDS", description = "Where the film goes back to, on one line.")
    String address;

    @Mixin
    JsonOption json;

    @Override
    public Integer call() throws IOException {
        OrderDesk desk = order.desk();
        SenderFile file = desk.sender();
        Optional<Sender> before = file.read();
        Sender known = before.orElse(Sender.NOBODY);
        Sender now = changed(known);
        if (!now.equals(known)) {
            file.save(now);
        } else if (before.isEmpty() && !json.isAsked()) {
            now = desk.askSender();
        }
        show(desk.console(), file, now);
        return 0;
    }

    private Sender changed(Sender known) {
        try {
            return new Sender(
                    given(name, known.name()),
                    given(account, known.account()),
                    given(telephone, known.telephone()),
                    given(email, known.email()),
                    given(address, known.address()));
        } catch (IllegalArgumentException e) {
            throw new CommandFailed(2, e.getMessage());
        }
    }

    private static String given(String typed, String known) {
        return typed == null ? known : typed.strip();
    }

    private void show(Console console, SenderFile file, Sender sender) {
        if (json.isAsked()) {
            console.json("sender", sender.object());
        } else if (sender.isNobody()) {
            console.line("Nobody is named yet in " + file.path()
                    + ". Try: takeup order sender --name NAME --telephone NUMBER");
        } else {
            sender.lines().forEach((what, words) -> console.line(Padding.cell(what, 11) + words));
        }
    }
}
