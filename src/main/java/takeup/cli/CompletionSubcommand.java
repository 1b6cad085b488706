package takeup.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import takeup.console.CommandFailed;
import takeup.options.GlobalOptions;
import takeup.shell.BashCompletion;
import takeup.shell.CompletionKinds;
import takeup.shell.FishCompletion;
import takeup.shell.SubcommandTree;
import takeup.shell.ZshCompletion;
import takeup.text.Nearest;

/** {@code takeup completion bash}: what a shell needs to complete takeup's commands, options, keys and roll numbers. */
@Command(
        name = "completion",
        sortOptions = false,
        description = {"Prints what lets a shell complete commands, options, keys of profiles and roll numbers."},
        footer = {
            "",
            "The line for bash goes into ~/.bashrc; zsh has the same in ~/.zshrc, after compinit.",
            "",
            "For example:",
            "  eval \"$(takeup completion bash)\"",
            "  takeup completion fish > ~/.config/fish/completions/takeup.fish"
        })
final class CompletionSubcommand implements Callable<Integer> {
    @ParentCommand
    GlobalOptions global;

    @Parameters(paramLabel = "SHELL", arity = "0..1", description = "bash, zsh, or fish.")
    String shell;

    @Option(
            names = "--words",
            paramLabel = "KIND",
            description = "Prints words of a kind that change with your data, a line each; the shell asks for them: "
                    + "cameras, stocks, meters, labs, rolls, orders.")
    String words;

    @Override
    public Integer call() throws IOException {
        if ((shell == null) == (words == null)) {
            throw new CommandFailed(2, "name a shell: " + String.join(", ", CompletionKinds.SHELLS));
        }
        if (words != null) {
            CompletionKinds.words(words, global.folder()).forEach(global.console()::line);
            return 0;
        }
        SubcommandTree tree = SubcommandTree.of(global.allCommands());
        global.console()
                .raw(
                        switch (shell) {
                            case "bash" -> new BashCompletion(tree).script();
                            case "zsh" -> new ZshCompletion(tree).script();
                            case "fish" -> new FishCompletion(tree).script();
                            default ->
                                throw new CommandFailed(
                                        2,
                                        shell + " is no shell known here: " + String.join(", ", CompletionKinds.SHELLS)
                                                + Nearest.question(shell, CompletionKinds.SHELLS));
                        });
        return 0;
    }
}
