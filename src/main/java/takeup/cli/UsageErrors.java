package takeup.cli;

import java.nio.file.InvalidPathException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import takeup.console.CommandFailed;
import takeup.text.Nearest;

/** What is wrong with a command line, in words. */
final class UsageErrors {
    private UsageErrors() {}

    /** Why a path cannot be one; where the locale is at fault, what to do about it. */
    static String noPath(InvalidPathException problem) {
        boolean isUnnamed = problem.getInput().indexOf('\ufffd') >= 0;
        return "this is no path: " + problem.getInput()
                + (isUnnamed ? "; with LC_ALL=C.UTF-8 in the environment it may be one" : "");
    }

    /**
     * Refuses what Java could not read: it hands on a sign of its own for such bytes, and a file of that name would be
     * another one than was meant.
     */
    static void refuseUnreadable(String[] arguments) {
        for (String argument : arguments) {
            if (argument.indexOf('\ufffd') >= 0) {
                throw new CommandFailed(
                        2, argument + " is not UTF-8: give the file or folder a name of UTF-8 letters and name that");
            }
        }
    }

    /** What cannot be parsed; of several unknown words the first, with the nearest known one. */
    static String words(ParameterException problem) {
        if (problem instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unknown(
                    unmatched.getUnmatched().get(0), problem.getCommandLine().getCommandSpec());
        }
        String words = problem.getMessage();
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }

    private static String unknown(String word, CommandSpec command) {
        if (word.startsWith("-")) {
            return word + " is no option of " + command.qualifiedName()
                    + Nearest.question(word, command.optionsMap().keySet());
        }
        if (command.subcommands().isEmpty() || !command.positionalParameters().isEmpty()) {
            return word + " is one word too many for " + command.qualifiedName();
        }
        return word + " is no command" + (command.parent() == null ? "" : " of " + command.qualifiedName())
                + Nearest.question(word, command.subcommands().keySet());
    }

    /** Where to read on. */
    static String hint(ParameterException problem) {
        String command = problem.getCommandLine().getCommandSpec().qualifiedName();
        return command + (command.equals("takeup") ? " --help shows the commands" : " --help shows what it takes");
    }
}
