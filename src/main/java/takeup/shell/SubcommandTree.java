package takeup.shell;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command with all that may stand behind it: what help prints, as plain data for completions and the man page.
 *
 * @param path its words without the program's name: "" for the program, {@code order new}
 * @param about what it does, a sentence each
 * @param flags its options, those of every command among them
 * @param places its positional words in their order
 * @param footer what help says at the end
 * @param below its sub-commands
 */
public record SubcommandTree(
        String path,
        List<String> about,
        List<Flag> flags,
        List<Place> places,
        List<String> footer,
        List<SubcommandTree> below) {
    /**
     * An option.
     *
     * @param names {@code --data}, or several
     * @param label what follows it, {@code DIR}; "" where nothing does
     * @param about what it does
     * @param kind what may follow; "" where nothing does
     */
    record Flag(List<String> names, String label, String about, String kind) {}

    /**
     * A positional word.
     *
     * @param label {@code ROLL}
     * @param about what it is
     * @param kind what may stand there
     * @param isRepeated whether more of its sort may follow
     * @param isOptional whether it may be left out
     */
    record Place(String label, String about, String kind, boolean isRepeated, boolean isOptional) {}

    /** The program's, with all commands in the order of help; what is hidden there is left out. */
    public static SubcommandTree of(CommandSpec spec) {
        return of(spec, "");
    }

    private static SubcommandTree of(CommandSpec spec, String path) {
        List<Flag> flags = new ArrayList<>();
        for (OptionSpec option : spec.options()) {
            if (!option.hidden()) {
                String label = option.arity().max() == 0 ? "" : option.paramLabel();
                flags.add(new Flag(
                        List.of(option.names()),
                        label,
                        about(option),
                        label.isEmpty() ? "" : CompletionKinds.kind(path, option.longestName(), label)));
            }
        }
        List<Place> places = new ArrayList<>();
        for (PositionalParamSpec place : spec.positionalParameters()) {
            places.add(new Place(
                    place.paramLabel(),
                    about(place),
                    place.paramLabel().equals("COMMAND")
                            ? "=" + String.join(" ", spec.root().subcommands().keySet())
                            : CompletionKinds.kind(path, "", place.paramLabel()),
                    place.arity().max() > 1
                            || place.index().max() > place.index().min(),
                    place.arity().min() == 0));
        }
        List<SubcommandTree> below = new ArrayList<>();
        for (CommandLine command : spec.subcommands().values()) {
            below.add(of(
                    command.getCommandSpec(),
                    path.isEmpty() ? command.getCommandName() : path + " " + command.getCommandName()));
        }
        return new SubcommandTree(
                path,
                List.of(spec.usageMessage().description()),
                flags,
                places,
                List.of(spec.usageMessage().footer()),
                below);
    }

    private static String about(ArgSpec spec) {
        return String.join(" ", spec.description());
    }

    /** This one and all below it, those above first. */
    List<SubcommandTree> all() {
        List<SubcommandTree> all = new ArrayList<>(List.of(this));
        below.forEach(it -> all.addAll(it.all()));
        return all;
    }

    /** Whether an option of this command goes with one below it at least. */
    boolean passesOn(Flag flag) {
        return flags.contains(flag) && below.stream().anyMatch(it -> it.flags.contains(flag));
    }

    /** Whether it goes with all of them. */
    boolean passesToAll(Flag flag) {
        return !below.isEmpty()
                && below.stream()
                        .allMatch(it -> it.flags.contains(flag) && (it.below.isEmpty() || it.passesToAll(flag)));
    }

    /** The last word of its path. */
    String name() {
        return path.substring(path.lastIndexOf(' ') + 1);
    }
}
